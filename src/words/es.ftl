### Español, el de la América hispana, sin modismos de un solo país. De «usted» a las personas adultas; a las niñas y los niños, frases cortas.
### Los números llevan punto decimal, como en México y en los Estados Unidos.

## lists

words-one-of = { $before } o { $last }

## words of an event

error-words-at = templates/words.ftl, línea { $line }: { $read }: { $what }
error-words-too-large = templates/words.ftl tiene más de { $most } MB. Deje solo las frases que usted cambia
error-words-unknown = no hay ninguna frase con ese nombre. Para escribir una nota, empiece la línea con #
error-words-unknown-near = no hay ninguna frase con ese nombre. ¿Quiso decir { $near }?
error-words-renamed = esta frase ahora se llama { $now }. Cambie el nombre que está antes del signo =
error-words-twice = esta frase aparece dos veces. Deje solo una
error-words-variable-near = en { $word } no hay ningún dato con ese nombre. ¿Quiso decir { $near }?
error-words-variable-known = en { $word } no hay ningún dato con ese nombre. Los que hay son { $known }
error-words-variable-none = en { $word } no hay ningún dato que poner. Quite las llaves
error-words-syntax = no se puede leer esta línea. Escríbala como “print-squares = Cuadros”. Si la frase sigue, empiece la línea siguiente con espacios
error-words-braces = falta una llave. Cada { "{" } necesita su { "}" }
error-words-default = marque con * una sola de las opciones, como *[other]
error-words-quotes = falta una comilla. Cada " necesita otra en la misma línea
error-words-empty = falta la frase. Va después del signo =
error-words-placeable = entre { "{" } y { "}" } use solo los datos que pone el programa, como { "{ $name }" }
error-words-term = quite el - del principio. Escriba el nombre de la frase igual que en el programa
error-words-attribute = después del signo = ponga una sola frase, sin líneas que empiecen con un punto
error-words-reference = entre llaves use solo los datos que pone el programa, como { "{ $name }" }. Aquí no sirven otras frases, ni funciones, ni \u
error-words-control = esta línea contiene un carácter de control. Bórrela y escríbala de nuevo
error-words-depth = aquí hay demasiadas llaves, unas dentro de otras

## lengths

clock-hours = 24
clock-of-12 = { $hour }:{ $minute } { $half ->
    [morning] de la mañana
   *[afternoon] de la tarde
}
clock-of-24 = { $hour }:{ $minute }
length-both = { $first } ({ $second })
length-mm = { $length } mm
length-m = { $length } m
length-in = { $length } pulg
length-ft = { $feet } { $feet ->
    [1] pie
   *[other] pies
}
length-ft-in = { $feet } { $feet ->
    [1] pie
   *[other] pies
} { $inches } pulg
length-about = unos { $length }
area-m2 = { $area } m²
area-ft2 = { $area } pies²
part-percent = { $percent } %
part-less = < { $percent } %

## states of a cell

state-right = en su lugar
state-wrong = en otro lugar
state-turned = girado
state-empty = vacío
state-unread = no se pudo leer
state-unseen = fuera de la foto
state-reserve = en reserva
state-free = queda libre

## program

help = Planea un evento en el que muchas personas dibujan juntas una imagen grande, imprime el material y revisa la pared con una foto

## new

help-new = Empieza un evento: crea su carpeta a partir de una imagen y propone una cuadrícula
help-new-folder = La carpeta que se va a crear. También da nombre al evento, a menos que use --name
help-new-pictures = La imagen que se va a dibujar: PNG, JPEG, WebP, TIFF, HEIC o SVG. Su archivo no se modifica. Si la usa varias veces, solo se hace una página que muestra las imágenes una al lado de la otra para compararlas
help-new-area = Dibujar solo una parte de la imagen: borde izquierdo, borde superior, ancho y alto en porcentaje, como 10,20,60,60
help-new-from-paper = La imagen es una foto de un dibujo en papel: se busca la hoja, se endereza y se empareja la luz
help-new-corners = Dónde están las cuatro esquinas de la hoja en esa foto, en píxeles: x,y x,y x,y x,y entre comillas (si no se dicen, el programa las busca)
help-new-columns = Cuántos cuadros a lo ancho
help-new-rows = Cuántos cuadros a lo alto
help-new-squares = Cuántos cuadros en total, más o menos, en lugar de --columns y --rows
help-new-border = Agregar un borde de reserva: un anillo de cuadros con dibujo alrededor de la imagen, que solo se cuelga si viene más gente que piezas hay
help-new-name = El nombre del evento
help-new-credit = De quién es la imagen, como “Dibujo de Ana, 3.º, con su permiso”. Lo dicen los impresos que muestran la imagen
help-new-tag = Tres caracteres que lleva cada código de este evento, de entre 23456789ABCDEFGHJKLMNPQRSTUVWXYZ (si se omite, se eligen al azar)
help-new-colours = Cuántos lápices de color se usan (si no se indica, los que basten para mostrar toda la imagen, de 4 a 9)
help-new-pencils = Un archivo con sus propios lápices: [[pencils]] con name y srgb; también sirve el event.toml de otro evento
help-new-black-and-white = Usar solo grises: 4, o tantos como diga --colors
help-new-fit = Qué hacer si la imagen no tiene la forma de la cuadrícula: crop la recorta, pad le agrega márgenes
help-new-square-mm = Lado de cada cuadro de papel, en mm (si se omite: 127, que son 5 pulg; 125 si las medidas se leen en mm)
help-new-piece-mm = Lado de cada pieza, la parte pequeña de la imagen que recibe un visitante, en mm (si se omite: 25.4, que es 1 pulg; 25 si las medidas se leen en mm)
help-new-paper = El papel de la impresora: letter (carta), tabloid (tabloide), a4 o a3 (si se omite: letter)
help-new-flip = Por qué borde voltea el papel la impresora al imprimir a dos caras: long-edge (el largo), short-edge (el corto) o none (una sola cara)
help-new-units = Las unidades que leen las personas: inch (pulgadas) o mm (si se omite: pulgadas con letter y tabloid, mm con a4 y a3)
help-new-join = apart: piezas y cuadros en hojas distintas; beside: cada pieza junto a su cuadro en una tira, para que nadie tenga que emparejarlos

new-usual-name = Noche en la biblioteca
new-working = Eligiendo los colores de los lápices
new-made = Se creó { $folder } para “{ $name }” (clave { $tag }): event.toml, { $file } y picture-preview.png, que muestra la cuadrícula.
new-squares = { $count ->
    [one] 1 cuadro
   *[other] { $count } cuadros
}
new-grid-given = La cuadrícula es de { $columns } × { $rows }, { $squares }, como usted pidió.
new-grid-rows-follow = La cuadrícula es de { $columns } × { $rows }, { $squares }. De todas las que tienen ese ancho, es la que menos recorta la imagen.
new-grid-columns-follow = La cuadrícula es de { $columns } × { $rows }, { $squares }. De todas las que tienen esa altura, es la que menos recorta la imagen.
new-grid-near-count = La cuadrícula es de { $columns } × { $rows }, { $squares }. Se acerca a los { $wished } que usted pidió y recorta poco la imagen.
new-grid-fits-best = La cuadrícula es de { $columns } × { $rows }, { $squares }. Va bien con la forma de la imagen y es para unos { $visitors } visitantes que dibujen una pieza cada uno. Con --visitors diga cuántos espera, o elija otra con --columns, --rows o --squares.
new-grid-suits-crowd = La cuadrícula es de { $columns } × { $rows }, { $squares }. Va bien con sus visitantes y con la forma de la imagen.
new-border = Alrededor va un borde de reserva: { $squares } con un dibujo que se repite. Cuélguelos solo si viene más gente que piezas hay. La pared entera tiene entonces { $columns } × { $rows }.
new-ask = Unas preguntas, para que la cuadrícula sea adecuada. Pulse la tecla Entrar para omitir una.
new-ask-visitors = ¿Cuántos visitantes espera? (como 80 o 60-120)
new-ask-each = ¿Cuántas piezas dibujará cada uno? (1, o menos si las familias comparten)
new-ask-minutes = ¿Durante cuántos minutos dibujarán?
new-ask-seats = ¿Cuántas personas pueden sentarse a dibujar a la vez?
new-ask-credit = ¿De quién es la imagen? (como “Dibujo de Ana, 3.º, con su permiso”; lo dicen los impresos que muestran la imagen)
new-nothing-lost = No se recorta nada. Se dibuja la imagen completa.
new-lost-sides = Para que quepa en la cuadrícula se recorta el { $percent } % de la imagen, la mitad a la izquierda y la mitad a la derecha.
new-lost-top-and-bottom = Para que quepa en la cuadrícula se recorta el { $percent } % de la imagen, la mitad arriba y la mitad abajo.
new-wall = El mural terminado medirá { $width } de ancho y { $height } de alto. Deje { $cards } más a cada lado para las tarjetas de borde.
new-added-sides = Se dibuja la imagen completa. Para que tenga la forma de la cuadrícula, se agregaron franjas en blanco a la izquierda y a la derecha (el { $percent } % del mural).
new-added-top-and-bottom = Se dibuja la imagen completa. Para que tenga la forma de la cuadrícula, se agregaron franjas en blanco arriba y abajo (el { $percent } % del mural).
new-pencils = Se usan { $count } lápices: { $names }. Puede cambiarles el nombre en event.toml.
new-paper = Para { $name } nadie necesita lápiz: queda el blanco del papel.
new-pencils-fitting = Son los menos que muestran los colores de sus áreas más grandes. Si algo pequeño perdió su color, pida más con --colors.
new-lost-colour = Atención: { $from } pasa a ser { $to }. Cubre el { $percent } % de la imagen.
new-lost-keeps = Con { $count } lápices se conserva cada color: --colors { $count }
new-text = El texto del dibujo aparece con el tipo de letra del programa. Revíselo en picture-preview.png, o convierta el texto en trazos en su programa de dibujo.
new-credit = ¿De quién es la imagen? Si no es suya, pida permiso antes de imprimirla. Luego dígalo en event.toml con credit = "…" en la línea debajo de file, y los impresos que muestran la imagen dirán de quién es.
new-coarse = Cada pieza tenía solo { $pixels } píxeles de ancho, así que se amplió la imagen. Con un archivo más grande se verá mejor.
new-from-paper = El dibujo se tomó de su hoja. Revise { $file }: debe estar el dibujo completo, sobre blanco. Si no, indique las esquinas de la hoja con --corners.
new-closer = Más de cerca, la imagen sirve para más personas: de { $pieces } piezas, { $then-plain } serían de un solo color y { $then-hard } difíciles; ahora son { $plain } y { $hard }. Para probarlo, empiece de nuevo en otra carpeta con --area { $area }
new-warn-alike = Atención: { $one } y { $other } se ven casi iguales y se van a confundir. Pruebe con menos colores (--colors) o con sus propios lápices (--pencils).
new-warn-rare = Atención: { $pieces ->
    [0] ninguna pieza necesita { $pencil }
    [one] solo 1 pieza necesita { $pencil }
   *[other] solo { $pieces } piezas necesitan { $pencil }
}, así que puede prescindir de ese lápiz.
new-warn-white = Atención: { $count ->
    [one] 1 pieza es toda blanca y no tiene nada que dibujar
   *[other] { $count } piezas son todas blancas y no tienen nada que dibujar
}. Cuelgue usted esos cuadros en blanco, o recorte más la imagen.
new-warn-plain = Atención: { $plain } piezas son de un solo color y solo { $drawn } tienen algo que dibujar. Es más divertido con una imagen que tenga más detalle o con menos cuadros.
new-next = Ahora revise picture-preview.png en { $folder }. Si quiere, cambie ahí event.toml. Luego escriba: everysquare print { $folder }
## varias imágenes para elegir

print-pictures = Imágenes para elegir
pictures-intro = El mismo evento con cada imagen. No hay una mejor: elija la que la gente va a querer dibujar.
pictures-head-name = Imagen
pictures-head-squares = Cuadros
pictures-head-plain = Un color
pictures-head-easy = Fáciles
pictures-head-medium = Medianas
pictures-head-hard = Difíciles
pictures-head-pencils = Lápices
pictures-head-narrowest = Forma más angosta
pictures-head-half = La mitad se conoce con
pictures-hung = Con el { $percent }% colgado
pictures-alt = { $name } en los colores de sus lápices con su cuadrícula, y la pared con un cuarto, la mitad y tres cuartos de los cuadros colgados.
pictures-grid = La cuadrícula es de { $columns } × { $rows }, { $squares }: { $width } de ancho y { $height } de alto.
pictures-levels = De las piezas, { $plain } son de un solo color, { $easy } fáciles, { $medium } medianas y { $hard } difíciles.
pictures-pencils = { $count ->
    [one] Usa 1 lápiz: { $names }.
   *[other] Usa { $count } lápices: { $names }.
}
pictures-narrow = { $pieces ->
    [one] En 1 pieza hay una forma difícil de colorear: en el cuadro mide solo { $width } de ancho, menos de dos trazos de un lápiz de niño.
   *[other] En { $pieces } piezas hay una forma difícil de colorear: en el cuadro la más angosta mide solo { $width } de ancho, menos de dos trazos de un lápiz de niño.
}
pictures-known = Repartiendo en orden, la mitad de lo que muestra la imagen está colgada con unos { $squares } de { $cells } cuadros.
pictures-made = Se hizo { $file }, que muestra las imágenes una al lado de la otra. No se hizo nada más.
pictures-next = Ahora mírelo con su equipo. Luego empiece con la imagen que elija, por ejemplo: everysquare new { $folder } --picture { $picture }

## colours of pencils, in words that a child knows

colour-red = rojo
colour-orange = naranja
colour-yellow = amarillo
colour-lime-green = verde limón
colour-olive = verde olivo
colour-green = verde
colour-teal = verde azulado
colour-turquoise = turquesa
colour-blue = azul
colour-purple = morado
colour-pink = rosa
colour-brown = café
colour-cream = crema
colour-white = blanco
colour-grey = gris
colour-black = negro
colour-very-light = { $colour } muy claro
colour-light = { $colour } claro
colour-dark = { $colour } oscuro
colour-very-dark = { $colour } muy oscuro
colour-numbered = { $colour } { $number }

## plan

help-plan = Calcula si la cuadrícula va bien con los visitantes, el tiempo y la pared, y qué materiales hacen falta
help-plan-folder = La carpeta del evento
help-crowd-visitors = Cuántos visitantes espera, como 80 o 60-120
help-crowd-arrivals = Cómo llegan: drifting (poco a poco), at-once (todos juntos) o in-classes (por clases)
help-crowd-each = Cuántas piezas dibuja cada visitante; menos de 1 si las familias comparten una
help-crowd-start = A qué hora empiezan, como 18:30 o 6:30pm
help-crowd-end = A qué hora terminan, en lugar de --minutes
help-crowd-minutes = Cuántos minutos se va a dibujar
help-crowd-seats = Cuántas personas pueden sentarse a dibujar a la vez
help-crowd-giving-out = Cuántos ayudantes entregan piezas
help-crowd-hanging = Cuántos ayudantes cuelgan cuadros
help-plan-wall = El espacio que hay en la pared, como 8x6ft o 2.4x1.8m; para varios tableros, uno al lado de otro, "4x6ft, door, 5x6ft"
help-plan-hang = Altura del borde inferior sobre el piso, en mm (si se omite, se propone una)
help-plan-save = Guardar estos números en event.toml

plan-title = Plan para “{ $name }”
plan-levels = Piezas por nivel
plan-head-level = nivel
plan-head-mark = marca
plan-border = borde de reserva
plan-head-pieces = piezas
plan-head-minutes = minutos c/u
plan-head-last = última entrega
plan-decided = { $count ->
    [one] 1 pieza tiene el nivel que le da event.toml.
   *[other] { $count } piezas tienen el nivel que les da event.toml.
}
plan-balanced = Los niveles están equilibrados, como dice event.toml. Las piezas con algo que dibujar se reparten en tres grupos iguales.
plan-keep-free = / queda libre: { $spots }. { $count ->
    [one] Nadie dibuja esa pieza, y su cuadro no se imprime.
   *[other] Nadie dibuja esas piezas, y sus cuadros no se imprimen.
}
plan-crowd = Visitantes y tiempo
plan-evening = { $visitors } visitantes, que llegan { $arrivals ->
    [at-once] todos juntos
    [in-classes] clase por clase
   *[drifting] poco a poco
} y dibujan { $each ->
    [1] una pieza cada uno
   *[other] { $each } piezas cada uno
}. { $seats ->
    [one] Puede dibujar 1 persona
   *[other] Pueden dibujar { $seats } personas
} a la vez, durante { $minutes } minutos.
plan-clock = De { $start } a { $end }.
plan-assumed = Usted no indicó { $numbers }, así que se usaron valores aproximados. Agregue { $options } con sus propios números.
plan-seats-free = { $free ->
    [one] Queda libre 1 asiento.
   *[other] Quedan libres { $free } asientos.
}
plan-helpers = Ayudantes
plan-helpers-needed = Con estos ayudantes casi nadie espera más de { $minutes } minutos:
plan-helpers-given = Usted prevé { $giving-out } para entregar y { $hanging } para colgar. Para que casi nadie espere más de { $minutes } minutos harían falta:
plan-others = Cuadrículas que se ajustan mejor:
plan-others-as-well = Otras cuadrículas posibles:
plan-head-grid = cuadrícula
plan-head-whole = completo
plan-head-without = sin pieza
plan-head-size = mural
plan-head-lost = imagen recortada
plan-others-why = “completo” es la probabilidad de que el mural se complete; “sin pieza”, cuántos visitantes se quedan sin una. Sirven de { $least } a { $most } piezas. Para usar una de estas cuadrículas, cambie columns y rows en event.toml antes de imprimir.
plan-no-others = Ninguna otra cuadrícula con cuadros de este tamaño se ajusta a los visitantes, la pared y la imagen.
plan-wall = La pared
plan-wall-size = Los cuadros miden { $width } de ancho y { $height } de alto. Con las tarjetas de borde alrededor, { $around_width } de ancho y { $around_height } de alto.
plan-parts = La pared tiene { $count ->
    [one] 1 parte
   *[other] { $count } partes
}. { $crossing ->
    [0] Ningún contorno pasa de una parte a la siguiente.
    [one] 1 contorno pasa de una parte a la siguiente.
   *[other] { $crossing } contornos pasan de una parte a la siguiente.
}
plan-part = Parte { $number }: lugares { $from } a { $to }, { $width } de ancho y { $height } de alto, con el borde inferior a { $hang } del piso.
place-one-board = Todo cabe en el tablero { $number } ({ $size }); el mural cuelga ahí en una sola pieza.
plan-part-heights = Parte { $number }:
plan-room-fits = Cabe en su espacio de { $width } × { $height }.
plan-room-without-cards = En su espacio de { $width } × { $height } caben los cuadros, pero no todas las tarjetas de borde. Puede prescindir de las tarjetas. Con cuadros de { $square } cabría todo.
plan-room-too-small = No cabe en su espacio de { $width } × { $height }. Cabrían cuadros de { $square } como máximo. Cambie square_mm en event.toml o elija otra cuadrícula.
plan-hang = El borde inferior queda a { $hang } del piso.
plan-hang-proposed = Se propone colgar el borde inferior a { $hang } del piso, para que los adultos alcancen lo más posible. Con --hang se elige otra altura.
plan-head-row = fila
plan-head-upper = borde superior
plan-head-from-5 = 5 años o más
plan-head-from-9 = 9 años o más
plan-head-seated = sentados
plan-head-adults = adultos
plan-means-floor = piso
plan-means-stool = banquito
plan-means-ladder = escalera
plan-means-helper = adulto
plan-reach = Quién puede colgar cada fila. Casi todos los niños de 5 años o más alcanzan { $five }; los de 9 años o más, { $nine }; un adulto sentado, { $seated }; un adulto de pie, { $adults }. Al banquito ({ $stool }) y a la escalera se suben únicamente los adultos. “adulto”: un adulto lo cuelga por ellos.
plan-pencils = Lápices
plan-head-pencil = lápiz
plan-head-drawing = del tiempo
plan-head-pencils = lápices
plan-pencils-why = { $count } lápices en total. Con { $seats ->
    [one] 1 asiento ocupado
   *[other] { $seats } asientos ocupados
}, el { $sure } % del tiempo nadie tiene que esperar un color.
plan-supplies = Qué más hace falta
plan-sheets = { $count } hojas de papel { $paper }: { $documents }.
plan-cutting = Cortarlo todo lleva unos { $minutes } minutos: { $cuts } cortes, { $stack } hojas a la vez.
plan-no-sheets = No se pueden contar las hojas de papel: { $why }.
plan-join-apart = Las piezas y los cuadros se imprimen aparte: { $sheets } hojas, { $color } de ellas en color, y unos { $minutes } minutos para cortar ({ $cuts } cortes, { $stack } hojas a la vez). En tiras, cada pieza junto a su cuadro, son { $other-sheets } hojas, { $other-color } de ellas en color, y unos { $other-minutes } minutos; así nadie tiene que emparejar piezas y cuadros. Para eso ponga join = "beside" en event.toml.
plan-join-beside = Las piezas y los cuadros se imprimen en tiras: { $sheets } hojas, { $color } de ellas en color, y unos { $minutes } minutos para cortar ({ $cuts } cortes, { $stack } hojas a la vez). Aparte, son { $other-sheets } hojas, { $other-color } de ellas en color, y unos { $other-minutes } minutos; entonces alguien tiene que buscar el cuadro de cada pieza. Para eso ponga join = "apart" en event.toml.
plan-things = Hacen falta { $tape } de cinta para los cuadros y { $cards } tarjetas; sacapuntas: { $sharpeners }; gomas de borrar: { $erasers }.
plan-fire = En la pared habrá alrededor de { $area } de papel. Las normas contra incendios lo limitan, algunas a la décima parte de una pared. Antes de imprimir, pregunte a la dirección, a quien esté a cargo del edificio o a los bomberos.
plan-fire-part = En la pared habrá alrededor de { $area } de papel, el { $percent } del espacio que usted indicó. Las normas contra incendios lo limitan, algunas a la décima parte de una pared. Antes de imprimir, pregunte a la dirección, a quien esté a cargo del edificio o a los bomberos.
plan-fire-boards = En la pared habrá alrededor de { $area } de papel. Cubre { $boards }. Las normas contra incendios lo limitan, algunas a la décima parte de una pared. Antes de imprimir, pregunte a la dirección, a quien esté a cargo del edificio o a los bomberos.
plan-fire-board = el { $percent } del tablero para { $from } a { $to }
plan-written = Todos los números, y el nivel y los colores de cada pieza, están en { $file }.
plan-saved = Estos números ya están en { $file }.
plan-not-saved = Estos números valen solo por esta vez. Agregue --save para guardarlos.

## crowd: what an event comes to, in the plan and in the guide

crowd-up = Al final { $up ->
    [one] cuelga más o menos 1 cuadro
   *[other] cuelgan unos { $up } cuadros
} de { $pieces }.
crowd-up-range = Nueve de cada diez veces son de { $low } a { $high }.
crowd-fits = Esta cuadrícula es adecuada. El mural se completa el { $chance } de las veces; por lo general ya está completo a esta hora: { $when }.
crowd-too-large-for-visitors = La cuadrícula es grande para sus visitantes. Invite a más personas, elija una cuadrícula más pequeña o pida a muchos que dibujen dos.
crowd-too-large-for-helpers = La cuadrícula es grande para tan pocos ayudantes. Busque más ayudantes o elija una cuadrícula más pequeña.
crowd-too-large-for-suggested = Con los ayudantes que sugerimos se cuelga la mayoría de los cuadros, pero quizá no todos. Con más ayudantes se logra más.
crowd-too-large-for-seats = La cuadrícula es grande para tan pocos asientos. Agregue asientos o elija una cuadrícula más pequeña.
crowd-too-large-for-time = La cuadrícula es grande para el tiempo. Agregue minutos, elija una cuadrícula más pequeña o deje que los ayudantes dibujen antes y después.
crowd-too-small = La cuadrícula es pequeña para sus visitantes. Unos { $without } se quedan sin pieza. Pida que compartan una o elija una cuadrícula más grande.
crowd-too-small-always = La cuadrícula es pequeña para sus visitantes. Aunque solo lleguen { $least }, unos { $without } se quedan sin pieza. Pida que compartan una o elija una cuadrícula más grande.
crowd-chance = Probabilidad de que el mural se complete: { $chance }.
crowd-without = { $without ->
    [one] Más o menos 1 visitante se va
   *[other] Unos { $without } visitantes se van
} sin pieza.
crowd-border = El borde de reserva tiene { $pieces } piezas más, por si vienen más visitantes.
crowd-border-helps = Cuando vienen más visitantes, { $without } se quedan sin pieza. Con las { $pieces } piezas del borde de reserva son { $with }.
crowd-if-many = Si llegan { $most }, unos { $without } se quedan sin pieza. Pida que compartan una.
crowd-wait = Quien más espera una pieza espera { $wait ->
    [one] más o menos 1 minuto
   *[other] unos { $wait } minutos
}.
crowd-from = desde
crowd-giving-out = entregan
crowd-hanging = cuelgan
crowd-minute = minuto { $minute }
crowd-one-fewer-giving-out = Con un ayudante menos para entregar, se espera hasta { $wait ->
    [one] 1 minuto
   *[other] { $wait } minutos
}, y al final { $fewer ->
    [0] cuelgan los mismos cuadros
    [one] cuelga 1 cuadro menos
   *[other] cuelgan unos { $fewer } cuadros menos
}.
crowd-one-fewer-hanging = Con un ayudante menos para colgar, los cuadros esperan hasta { $wait ->
    [one] 1 minuto
   *[other] { $wait } minutos
}, y al final { $fewer ->
    [0] cuelgan los mismos
    [one] cuelga 1 menos
   *[other] cuelgan unos { $fewer } menos
}.
crowd-assumptions = La computadora ensayó este evento { $evenings } veces. Se supuso que entregar una pieza toma { $giving-out } segundos y colgar un cuadro { $hanging }, y que los visitantes se van después de esperar unos { $patience } minutos. Mida sus propios tiempos y cambie event.toml.
forecast-pace = A este ritmo cuelgan { $usual } de { $all } cuadros a las { $end } (de { $low } a { $high }).
forecast-whole = A este ritmo el mural se completa antes de las { $end }.
forecast-second = Dé una segunda pieza a quienes están en las mesas y deje de entregar a las { $last }.
forecast-late = Ya es tarde para entregar más. Llene los lugares vacíos con sus piezas pequeñas.

## report

report-language = es
report-title = Revisión de la pared: { $name }
report-kind = Revisión de la pared
report-made = Esta es una imagen de práctica que hizo el programa, no una foto real.
report-taken = { $photos ->
    [one] A partir de 1 foto, tomada el { $taken }.
   *[other] A partir de { $photos } fotos, la primera tomada el { $taken }.
}
report-photos = { $photos ->
    [one] A partir de 1 foto.
   *[other] A partir de { $photos } fotos.
}
report-photo = Foto { $number }: { $width } × { $height } píxeles, { $codes ->
    [one] 1 código leído
   *[other] { $codes } códigos leídos
}
report-all-right = { $cells ->
    [one] ¡El cuadro está en su lugar!
   *[other] ¡Los { $cells } cuadros están en su lugar!
}
report-white = { $count ->
    [one] 1 está todavía en blanco: { $squares }.
   *[other] { $count } están todavía en blanco: { $squares }.
}
report-begun = { $count ->
    [one] 1 parece apenas empezado: { $squares }.
   *[other] { $count } parecen apenas empezados: { $squares }.
}
report-to-do = { $steps ->
    [one] Hay 1 cosa por corregir.
   *[other] Hay { $steps } cosas por corregir.
}
report-cannot-tell = No se encontró ningún error, pero { $unknown ->
    [one] 1 de { $cells } lugares no se pudo revisar.
   *[other] { $unknown } de { $cells } lugares no se pudieron revisar.
}
report-count-right = { $count } de { $cells } en su lugar
report-count-wrong = { $count } en otro lugar
report-count-turned = { $count ->
    [one] 1 girado
   *[other] { $count } girados
}
report-count-empty = { $count ->
    [one] 1 lugar vacío
   *[other] { $count } lugares vacíos
}
report-count-unread = { $count } que no se { $count ->
    [one] pudo
   *[other] pudieron
} leer
report-count-unseen = { $count } fuera de la foto
report-heading-to-do = Qué corregir, en este orden
report-heading-wall = La pared
report-heading-marked = Su foto, con marcas
report-heading-straight = La pared, enderezada
report-heading-advice = Para la próxima foto
report-heading-facts = Medidas
report-missing = No se vieron en ninguna parte: { $squares }
report-missing-untold = { $count ->
    [one] Tampoco se vio otro cuadro, pero en su lugar no se pudo leer nada.
   *[other] Tampoco se vieron otros { $count } cuadros, pero en sus lugares no se pudo leer nada.
}
report-twice = Se vieron más de una vez: { $squares }
report-border = Borde de reserva: colgados { $up } de { $squares } cuadros.
report-stranger = De otro evento: “{ $text }” en { $cell }
report-rows = Fila
report-scale = Factor de escala { $factor }: cada longitud en un cuadro mide { $factor } veces lo que mide en su pieza.
report-size = El mural mide { $width } de ancho y { $height } de alto.
report-shift = El cuadro que más se aparta de su lugar está a { $by }.
report-modules = Nitidez: { $px } píxeles de la foto por cada bloque pequeño de un código.
report-picture-marked = Su foto con todo lo que hay que corregir, marcado y con su etiqueta. Lo que está fuera de la pared y de sus tarjetas de borde quedó en blanco.
report-picture-straight = La pared, enderezada como si usted estuviera justo enfrente.
report-private = Su foto no se guarda. Esta página muestra solo la pared y sus tarjetas. Se tapan los lugares que no se pudieron leer y a quien encontramos delante de la pared. Puede escaparse alguien, en parte o del todo: mire antes de compartir. No carga nada de internet.
report-turned-top-right = la parte de arriba quedó a la derecha
report-turned-top-down = de cabeza
report-turned-top-left = la parte de arriba quedó a la izquierda
report-more = { $squares } y { $count } más
legend-right = en su lugar
legend-wrong = aquí está otro cuadro; esta es su etiqueta
legend-wrong-short = aquí está otro cuadro; vea la lista
legend-turned = el cuadro correcto, girado; la flecha indica hacia dónde apunta la parte de arriba
legend-wrong-turned = otro cuadro, y además girado; la flecha indica hacia dónde apunta la parte de arriba
legend-stranger = un cuadro de otro evento
legend-empty = aquí no hay nada
legend-unread = hay algo colgado, pero no se puede leer su código
legend-unseen = fuera de la foto
legend-reserve = borde de reserva: aquí no tiene que colgar nada
legend-free = queda libre: aquí no va nada
cell-right = { $cell }: en su lugar
cell-wrong = { $cell }: no es el lugar de { $square }, que está aquí
cell-wrong-turned = { $cell }: no es el lugar de { $square }, que está aquí y girado ({ $how })
cell-not-free = { $cell }: hay un cuadro, pero este lugar queda libre
cell-stranger = { $cell }: aquí está un cuadro de otro evento
cell-turned = { $cell }: girado, { $how }
cell-empty = { $cell }: vacío
cell-unread = { $cell }: no se pudo leer su código
cell-unseen = { $cell }: fuera de la foto
cell-reserve = { $cell }: borde de reserva, aquí no tiene que colgar nada
cell-free = { $cell }: queda libre
mark-empty = vacío
mark-turned = { $degrees ->
    [90] ↻ 90°
    [180] ↻ 180°
   *[270] ↺ 90°
}
mark-wrong = → { $square }
mark-wrong-turned = → { $square } ↻
mark-stranger = ✕ otro evento
mark-spare = ✕ de más
mark-unread = ?

## fixes

fix-turn = { $by ->
    [quarter] Gire el cuadro de { $cell } un cuarto de vuelta a la derecha (en el sentido de las manecillas del reloj).
    [half] Ponga derecho el cuadro de { $cell }. Está de cabeza.
   *[three-quarters] Gire el cuadro de { $cell } un cuarto de vuelta a la izquierda (en sentido contrario a las manecillas del reloj).
}
fix-swap = Intercambie los cuadros que están en { $a } y { $b }.
fix-swap-upright-one = Intercambie los cuadros que están en { $a } y { $b }. Cuelgue derecho el que va en { $cell }.
fix-swap-upright-both = Intercambie los cuadros que están en { $a } y { $b }. Cuelgue los dos derechos.
fix-move = Pase el cuadro que está en { $from } a { $to }.
fix-move-upright = Pase el cuadro que está en { $from } a { $to }. Cuélguelo derecho.
fix-remove-copy = Quite el cuadro que está en { $cell }. Es una copia de más de { $square }.
fix-remove-stranger = Quite el cuadro que está en { $cell }. Es de otro evento.
fix-remove-free = Quite { $square }, que está en { $cell }. Su lugar en la pared queda libre.
fix-look = { $count ->
    [one] Revise usted { $cells }. No se puede leer su código.
   *[other] Revise usted { $cells }. No se pueden leer sus códigos.
}
fix-look-guess = { $count ->
    [one] Revise usted { $cells }. No se puede leer su código. Aún no se ven: { $squares }.
   *[other] Revise usted { $cells }. No se pueden leer sus códigos. Aún no se ven: { $squares }.
}
fix-look-moved = Revise usted { $cells }. Las fotos no coinciden, así que algo se movió entre una y otra.
fix-look-beyond = Revise { $cell }, que no sale en ninguna foto. Ahí va el cuadro que está en { $from }.
fix-fetch = Busque el cuadro { $square } y cuélguelo en su lugar.
fix-fetch-perhaps = Busque el cuadro { $square } y cuélguelo en su lugar. Tal vez ya está colgado donde no se pudo leer nada.
fix-fetch-listed = Busque los { $count } cuadros de la lista de abajo y cuelgue cada uno en su lugar.
fix-fetch-many = Busque estos cuadros y cuelgue cada uno en su lugar: { $squares }.

## advice

advice-step-back = { $part ->
    [edge] Aléjese o tome una foto más. El borde { $side ->
        [left] izquierdo
        [right] derecho
        [upper] superior
       *[lower] inferior
    } de la pared quedó cortado.
    [most] Aléjese o tome más fotos. La mayor parte de la pared quedó fuera, { $side ->
        [left] a la izquierda
        [right] a la derecha
        [upper] arriba
       *[lower] abajo
    }.
   *[other] Aléjese o tome una foto más. { $part ->
        [quarter] Un cuarto
        [third] Un tercio
        [half] La mitad
       *[two-thirds] Dos tercios
    } de la pared { $part ->
        [two-thirds] quedaron
       *[other] quedó
    } fuera, { $side ->
        [left] a la izquierda
        [right] a la derecha
        [upper] arriba
       *[lower] abajo
    }.
}
advice-step-aside = Parece que hay alguien delante de la pared. Pida a todos que se aparten y tome otra foto.
advice-apart = Una parte del mural está aparte: { $squares }. Tome una foto de cada parte y revise todas las fotos juntas.
advice-other-part = Aún no se ve: { $squares }. Tome también una foto de esa parte de la pared.
advice-apart-few = { $count ->
    [one] { $squares } está en la foto, pero no en la pared con los demás.
   *[other] { $squares } están en la foto, pero no en la pared con los demás.
}
advice-apart-columns = columnas { $first } a { $last }
advice-apart-columns-one = columna { $first }
advice-apart-rows = filas { $first } a { $last }
advice-apart-rows-one = fila { $first }
advice-hidden = { $count ->
    [one] Tome una foto más. { $cells } está tapado o fuera de la foto.
   *[other] Tome una foto más. { $cells } están tapados o fuera de la foto.
}
advice-go-closer = Acérquese, o tome dos fotos, una de cada mitad. En la foto { $photo } los códigos son muy pequeños ({ $px } píxeles por cada bloque pequeño), y { $unread ->
    [one] 1 lugar no se pudo leer.
   *[other] { $unread } lugares no se pudieron leer.
}
advice-too-small = La foto es muy pequeña: no se pudieron leer { $unread } de { $cells } lugares. Acérquese, o tome una foto de cada mitad. Si llegó por un chat, use la original.
advice-uncover = { $unread ->
    [one] La foto es nítida, pero 1 código no se pudo leer. Vea si lo tapa cinta, un reflejo, un doblez o el dibujo.
   *[other] La foto es nítida, pero { $unread } códigos no se pudieron leer. Vea si los tapa cinta, un reflejo, un doblez o el dibujo.
}
advice-mirrored = La foto { $photo } está invertida como en un espejo, como la guardan las cámaras para selfis. Se leyó de todos modos.
advice-contradiction = { $count ->
    [one] Las fotos no coinciden en { $cells }: algo se movió entre una y otra. Tome otra vez todas las fotos, una tras otra.
   *[other] Las fotos no coinciden en { $cells }: algo se movió entre una y otra. Tome otra vez todas las fotos, una tras otra.
}
advice-shifted = Todos los cuadros que se leyeron están desplazados por igual ({ $across }{ $down }). Tal vez se empezó en otro lugar. En ese caso, deje los cuadros y mueva las tarjetas de borde.
advice-shift-right = { $cells ->
    [one] 1 columna de más a la derecha
   *[other] { $cells } columnas de más a la derecha
}
advice-shift-left = { $cells ->
    [one] 1 columna de más a la izquierda
   *[other] { $cells } columnas de más a la izquierda
}
advice-shift-down = { $cells ->
    [one] 1 fila más abajo
   *[other] { $cells } filas más abajo
}
advice-shift-up = { $cells ->
    [one] 1 fila más arriba
   *[other] { $cells } filas más arriba
}
advice-all-turned = Todos los cuadros que se leyeron están girados igual ({ $how }). ¿La foto está girada?
advice-all-wrong = Ningún cuadro está en su lugar. ¿Es esta la carpeta correcta? ¿La fila 1 está en el extremo correcto, abajo o arriba?
advice-on-spare = { $count ->
    [one] { $cells } se dibujó en un cuadro sin código, que no podemos leer. Mire usted ahí.
   *[other] { $cells } se dibujaron en cuadros sin código, que no podemos leer. Mire usted ahí.
}
advice-may-hang-unseen = { $missing ->
    [one] 1 cuadro no se vio. Tal vez está en { $unknown ->
        [one] el lugar que no se pudo revisar.
       *[other] uno de los { $unknown } lugares que no se pudieron revisar.
    }
   *[other] { $missing } cuadros no se vieron. { $unknown ->
        [one] Uno de ellos puede estar en el lugar que no se pudo revisar.
       *[other] Hasta { $unknown } de ellos pueden estar en los lugares que no se pudieron revisar.
    }
}

## rehearse

help-rehearse = Crea una foto de práctica de su pared, con errores por encontrar, antes del evento
help-rehearse-folder = La carpeta del evento, con el material ya impreso
help-rehearse-seed = Un número que fija lo que se deja al azar: con el mismo número sale la misma foto (si se omite, al azar)
help-rehearse-swaps = Cuántos pares de cuadros están intercambiados
help-rehearse-cycles = Cuántos grupos de tres cuadros cambian de lugar en círculo
help-rehearse-turns = Cuántos cuadros están girados
help-rehearse-missing = Cuántos lugares están vacíos
help-rehearse-scribbled = Cuántos códigos tienen dibujo encima
help-rehearse-covered = Cuántos códigos tienen cinta sobre la mitad
help-rehearse-torn = Cuántos cuadros tienen una esquina rota
help-rehearse-duplicates = Cuántos lugares tienen una copia de más de otro cuadro
help-rehearse-strangers = Lugares donde cuelga un cuadro de otro evento
help-rehearse-misdrawn = Cuántos cuadros están en su lugar pero muestran el dibujo de otra pieza
help-rehearse-drawn-turned = Cuántos dibujos están girados en su papel
help-rehearse-undrawn = Cuántos cuadros están todavía en blanco
help-rehearse-begun = Cuántos cuadros están apenas empezados
help-rehearse-stubs = Dejar puestos tantos talones (para tiras); cuelgan sobre el cuadro de al lado
help-rehearse-permute-all = Colgar cada cuadro en un lugar que no es el suyo
help-rehearse-border = Colgar también el borde de reserva
help-rehearse-cards = Qué tarjetas de borde hay: all (todas), corners (las de las esquinas) o none (ninguna)
help-rehearse-printer = Cómo se imprimieron los códigos: good (bien), pale (con poco tóner), streaks (con rayas), draft (en borrador) o runny (con tinta corrida)
help-rehearse-width = Ancho de la foto en píxeles
help-rehearse-height = Altura de la foto en píxeles
help-rehearse-min-px-per-module = Hacer la foto lo bastante grande para que cada módulo (el bloque más pequeño de un código) tenga al menos estos píxeles
help-rehearse-fill = Qué parte de la foto ocupa la pared, de 0.05 a 4; con más de 1, una parte queda fuera
help-rehearse-yaw = Cuántos grados a la derecha del centro está la cámara
help-rehearse-pitch = Cuántos grados arriba del centro está la cámara
help-rehearse-roll = Cuántos grados se inclina la cámara en el sentido de las manecillas del reloj
help-rehearse-orientation = Cómo se sostuvo el teléfono: la orientación EXIF, de 1 a 8
help-rehearse-mirrored = Guardar la foto invertida, como lo hace una cámara para selfis
help-rehearse-people = Cuántas personas hay frente a la pared, de 0 a 4
help-rehearse-ladder = Poner una escalera frente a la pared
help-rehearse-board-angle = Girar cada tablero de una pared en partes hasta este ángulo (predeterminado: 0)

rehearse-working = Creando la foto de práctica
rehearse-made = Se creó { $photo }: una foto de práctica de una pared con { $cells ->
        [one] 1 lugar.
       *[other] { $cells } lugares.
    } La hizo el programa; no es una foto real.
rehearse-states = Respuestas: en su lugar: { $right }; en otro lugar: { $wrong }; girados: { $turned }; lugares vacíos: { $empty }; ilegibles: { $unread }; fuera de la foto: { $unseen }.
rehearse-truth = Todas las respuestas están en { $truth }.
rehearse-next = Ahora: mire la imagen y decida qué corregiría. Después escriba: everysquare check { $folder } { $photo }

## print

print-squares = Cuadros
print-edge-cards = Tarjetas de borde
print-pieces = Piezas
print-strips = Tiras
print-working = preparando las páginas
print-about-squares = El frente de los cuadros { $labels }: papel en blanco con líneas de corte, marcas, la etiqueta y el código.
print-about-pieces = Las piezas { $labels } de la imagen, con líneas de corte, marcas y sus etiquetas.
print-about-strips = Las tiras { $labels }: cada cuadro con sus marcas, su etiqueta y su código, y al lado un talón con su pieza, su lugar en una pared pequeña, su nivel y sus lápices.
print-about-backs = El reverso de { $labels }: la etiqueta de cada uno y cuál lado va hacia arriba.
print-about-piece-backs = El reverso de las piezas { $labels }: la etiqueta de cada una, cuál lado va hacia arriba, su nivel y sus lápices.
print-fill = Rellenos
print-helped = Cuadros con ayuda
print-large = Piezas grandes
print-spare = Cuadros en blanco
print-home = Páginas para dibujar en casa
print-from-home = Cuadros de casa
print-test-page = Página de prueba
print-about-fill = Rellenos para { $labels }: cada pieza ampliada, con su etiqueta y su código.
print-about-fill-papers = Qué papeles cortar, y los códigos para pegar en { $labels }.
print-about-helped = Los cuadros { $labels } con algo de la pieza para ayudar: líneas tenues, contornos de puntos o contornos con los nombres de los colores.
print-about-large = Las piezas { $labels }, más grandes: contornos oscuros, una letra en cada área y el lápiz de cada letra.
print-about-spare = { $count ->
    [one] 1 cuadro en blanco
   *[other] { $count } cuadros en blanco
} con marcas y un recuadro para la etiqueta.
print-about-home = Una página para dibujar { $label } en casa: la pieza, sus lápices, su cuadro y cómo devolverlo.
print-about-from-home = Los cuadros { $labels } como se dibujaron en casa, cada uno con su etiqueta y su código.
print-about-test-page = La página que se imprime primero: cuatro marcas negras, un código, barras cerca de los bordes y parches de color.
fill-kept = reservado para quien dibuje { $label }
spare-label = Etiqueta
home-title = Dibuja esto en casa
home-1 = Esta es una pieza de una imagen grande. Dibújala, en grande, en el cuadro de abajo.
home-2 = ¿Dónde toca una línea el borde de la pieza? Las marcas pequeñas te muestran el mismo lugar en el cuadro.
home-3 = Deja en blanco el recuadro del código pequeño, y las cuatro marcas negras como están.
home-4 = ¿Terminaste? Recorta el cuadro por la línea y tráenoslo. O pon esta página plana con buena luz, toma una foto con las cuatro marcas negras y mándanos la foto.
test-page-title = Imprima primero esta página
test-page-1 = Imprímala como va a imprimir lo demás: al 100 % (tamaño real), en la misma impresora y el mismo papel.
test-page-2 = Póngala plana sobre algo oscuro. Tome una foto desde arriba con los cuatro bordes del papel a la vista.
test-page-3 = Escriba: everysquare test-page CARPETA FOTO. Le dice qué cambiar antes de imprimir lo demás.
test-page-4 = También hay un reverso. Dé vuelta a la página como a la de un libro, tome otra foto de la misma manera y dé las dos fotos.
test-page-back-title = El reverso de la página de prueba
test-page-back = Dio vuelta a la página como a la de un libro. ¿La flecha apunta hacia arriba? Entonces su impresora da vuelta al papel como debe.
fill-papers = Corte estos papeles, de { $side } por lado. Después recorte cada código y péguelo a { $gap } de los dos bordes, en la esquina { $corner ->
    [top-left] superior izquierda
    [top-right] superior derecha
    [bottom-left] inferior izquierda
   *[bottom-right] inferior derecha
}, de modo que se pueda leer su etiqueta.
fill-paper-row = { $count } { $colour }: { $labels }
print-about-cards = Las tarjetas de borde { $names }, cada una con su nombre y su código.
print-levels = Bolsas por nivel
print-pencils = Lápices
print-checklist = Lista de control
print-wall-map = Mapa de la pared
print-about-levels = Etiquetas para las bolsas de los niveles { $levels }: el nombre y las marcas del nivel, cuántas piezas y cuáles.
print-level-count = { $pieces ->
    [one] 1 pieza
   *[other] { $pieces } piezas
}
print-border = borde
unit-mm = mm
unit-inch = in
# which word of a pencil’s name says most: last as in “light green”, or first as in “verde claro”
print-main-word = first
print-pencils-more = + { $count }
level-plain = de un color
level-easy = fácil
level-medium = media
level-hard = difícil
print-row = Fila { $row }
print-title = { $document } – { $event }
print-actual-size = Imprima al 100 % (“Tamaño real”). Nunca “Ajustar”.
print-credit = La imagen: { $credit }
print-page = { $document } · página { $page } de { $pages }
print-page-single = { $document } · página { $page } de { $pages } · una cara
print-page-front-long = { $document } · página { $page } de { $pages } · dos caras, voltear por el borde largo
print-page-front-short = { $document } · página { $page } de { $pages } · dos caras, voltear por el borde corto
print-part = parte { $part } de { $parts }
print-page-folded = { $document } · página { $page } de { $pages } · recortar, doblar en la línea punteada, pegar
print-page-glued = { $document } · página { $page } de { $pages } · recortar, pegar detrás de la página { $front }
print-page-back = { $document } · página { $page } de { $pages } · reverso de la página { $front }
print-event = { $tag } · { $event }
print-event-labels = { $labels } · { $tag } · { $event }
print-ruler-mm = { $length } mm
print-ruler-inch = { $length } in
print-this-way-up = este lado hacia arriba
print-card-column = columna { $name } · va debajo de su columna
print-card-row = fila { $name } · va a la izquierda de su fila
print-card-corner-1 = esquina 1 de 4 · por fuera, arriba a la izquierda
print-card-corner-2 = esquina 2 de 4 · por fuera, arriba a la derecha
print-card-corner-3 = esquina 3 de 4 · por fuera, abajo a la derecha
print-card-corner-4 = esquina 4 de 4 · por fuera, abajo a la izquierda

help-print = Crea el material en PDF y el registro de lo que se imprimió
help-print-folder = La carpeta del evento
help-print-documents = Solo estos documentos, como squares (cuadros) o pieces (piezas); si se omite, todo el material. Solo si se piden: fill (cuadros para los huecos de la última revisión), helped (cuadros con contornos para ayudar), large (piezas para quien ve poco), home (páginas para dibujar en casa), from-home (cuadros que llegaron), test-page (la página que se imprime primero), signs (letreros para la puerta, las mesas y la pared), spare (cuadros en blanco), lesson (una lección con esta imagen) y groups (lo que va con el comando “groups”)
help-print-soft = Con fill: en colores suaves, para colgarlos así; si se omite, con contornos para colorear
help-print-help-with = Con helped: names (contornos con los nombres de los colores), dots (contornos de puntos) o lines (líneas tenues entre las marcas; de fábrica: names)
help-print-only = Solo estos lugares, como D7,E4: otra vez sus cuadros y piezas o, con fill, helped, large o home, esos
help-print-in-language = Estos documentos también en otro idioma, junto a los demás: en, en-GB o es
help-print-templates = Guardar también los diseños de página y los textos del programa, para cambiar copias de ellos

print-made = Se creó { $folder }:
print-made-two-sided = { $name }: { $pages } páginas en { $sheets ->
        [one] 1 hoja
       *[other] { $sheets } hojas
    }, dos caras
print-made-one-sided = { $name }: { $pages ->
        [one] 1 página en 1 hoja
       *[other] { $pages } páginas en { $sheets } hojas
    }, una cara
print-made-cuts = cuts: las líneas de { $sheets ->
        [one] 1 hoja
       *[other] { $sheets } hojas
    } en mm como SVG, para una máquina de corte
print-made-manifest = manifest.json: el registro de lo que se imprimió. Consérvelo: “check” lo necesita
print-made-in-all = Son { $sheets } hojas en total, y unos { $minutes } minutos para cortar: { $cuts } cortes, { $stack } hojas a la vez.
print-made-templates = Los diseños de página y los textos están en { $made }. Copie lo que quiera cambiar en { $own } y cámbielo allí. En words.ftl, deje solo las líneas que cambie.
print-paper-letter = carta
print-paper-tabloid = tabloide (11 × 17 in)
print-paper-a4 = A4
print-paper-a3 = A3
print-choose-one-sided = Al imprimir, elija papel { $paper }, “Tamaño real” o 100 %, una cara.
print-choose-long-edge = Al imprimir, elija papel { $paper } y “Tamaño real” o 100 %. Para { $documents }, elija dos caras, voltear por el borde largo.
print-choose-short-edge = Al imprimir, elija papel { $paper } y “Tamaño real” o 100 %. Para { $documents }, elija dos caras, voltear por el borde corto.
print-ruler-check = Imprima primero una sola hoja. Su regla debe medir exactamente { $length }, y cada reverso debe quedar detrás de su frente.
print-ruler-check-one-sided = Imprima primero una sola hoja. Su regla debe medir exactamente { $length }.
print-codes-changed = Los códigos o las medidas cambiaron desde que se imprimió este material. Los cuadros de esa impresión no se reconocerán: no los use.
print-again = { $count ->
    [one] 1 lugar se imprime otra vez. Su cuadro tiene
   *[other] { $count } lugares se imprimen otra vez. Sus cuadros tienen
} el mismo código que antes: solo uno de los dos va en la pared.
print-fill-lacks = En la última revisión ({ $when }) { $count ->
    [one] falta 1 cuadro
   *[other] faltan { $count } cuadros
}.
print-fill-whole = En la última revisión ({ $when }) no falta ningún cuadro: no hay huecos que rellenar.
print-fill-white = { $white ->
    [one] 1 cuadro cuelga en blanco. Quítelo
   *[other] { $white } cuadros cuelgan en blanco. Quítelos
} al colgar el relleno.
print-fill-unknown = { $unknown ->
    [one] 1 lugar no se vio o no se pudo leer. No se rellena
   *[other] { $unknown } lugares no se vieron o no se pudieron leer. No se rellenan
}, porque puede haber un cuadro colgado.
print-fill-colour = { $count ->
    [one] 1 cuadro tiene
   *[other] { $count } cuadros tienen
} contornos y los nombres de los colores. Corte por las líneas. Cualquiera puede colorear uno en dos minutos.
print-fill-hang = { $count ->
    [one] 1 cuadro está en colores suaves: recórtelo y cuélguelo.
   *[other] { $count } cuadros están en colores suaves: recórtelos y cuélguelos.
}
print-fill-papers = { $count ->
    [one] 1 cuadro es de un solo color. Córtelo en papel de ese color y péguele su código, que está en la última página:
   *[other] { $count } cuadros son de un solo color. Córtelos en papel de ese color y pégueles sus códigos, que están en las últimas páginas:
}
print-fill-kept = La revisión cuenta un relleno como su cuadro. El lugar sigue reservado: cuando alguien traiga el cuadro que dibujó, cuelgue ese.
print-helped-next = Un cuadro con ayuda lleva el código de su propio cuadro: cuelgue solo uno de los dos.
print-spare-next = Copie la etiqueta, grande, en el recuadro. La revisión no puede leer un cuadro en blanco: vea usted ese lugar.
print-spare-known = { $count ->
    [one] La revisión sabe que { $labels } ya no tiene código. Le pedirá que mire ese lugar usted.
   *[other] La revisión sabe que { $labels } ya no tienen código. Le pedirá que mire esos lugares usted.
}
print-home-next = Un cuadro recortado de su página se cuelga como cualquier otro. Cuando llegue una foto o un escaneo, escriba: everysquare receive { $folder } FOTO
print-test-page-next = Imprímala, tome una foto de cada lado y escriba: everysquare test-page { $folder } FOTO
print-test-first = ¿No conoce bien la impresora? Pruébela primero con una página: everysquare print { $folder } test-page
print-next = Ahora: corte por las líneas y practique con “everysquare rehearse { $folder }”. Cuando haya cuadros en la pared: “everysquare check { $folder } FOTO”.

error-print-too-large = { $what } de { $side } mm no cabe en papel { $paper } junto a la regla. Lo más grande que cabe son { $largest } mm ({ $inches } in). Redúzcalo en event.toml o imprima en papel más grande ({ $papers })
error-print-fill-no-check = todavía no se ha revisado esta pared (las prácticas no cuentan), así que no se sabe qué falta. Tome una foto de la pared y escriba: everysquare check { $folder } FOTO. O indique los lugares: --only D7,E4
error-print-only-label = este evento no tiene el lugar “{ $read }”. Sus lugares van de { $first } a { $last }
error-print-soft = --soft va con el documento fill
error-print-in = --in va con documentos para leer, como table-card, helpers o questions, sin --only
error-print-with = --with va con el documento helped
error-print-none-from-home = todavía no llegó ningún cuadro de casa. Cuando llegue una foto de uno, escriba: everysquare receive { $folder } FOTO
error-print-needs-only = helped, large y home necesitan --only y los lugares, por ejemplo --only D7,E4
error-print-only = --only va con squares, pieces, strips, fill, helped, large, home, from-home y spare
error-print-square = un cuadro
error-print-piece = una pieza
error-print-card = una tarjeta
error-print-strip = un cuadro con su pieza al lado
error-print-unknown = no existe el documento “{ $read }”. Los documentos son { $known }. Si el nombre de una carpeta tiene espacios, escríbalo entre comillas
error-print-unknown-near = no existe el documento “{ $read }”. ¿Quiso decir { $near }? Los documentos son { $known }
error-print-typeset = no se pudo preparar una página ({ $said }). Es una falla del programa; por favor repórtela

## groups

help-groups = Reparte la pared entre grupos, como clases, y dice cuánto lleva cada uno
help-groups-folder = La carpeta del evento
help-groups-groups = Los grupos y cuántas personas dibujan en cada uno, como "3A 26, 3B 24, club 12"; si se omite, dice cuánto llevan
help-groups-spread = Cómo quedan las piezas de un grupo: scattered (por toda la pared, para que dure el secreto) o blocks (juntas, para que cada grupo vea crecer su parte); si se omite, scattered
help-value-groups = GRUPOS
groups-number = N.º
groups-name = Grupo
groups-people = personas
groups-pieces = piezas
groups-minutes = minutos por persona
groups-next = Ahora: prepare un sobre para cada grupo. Más tarde, “everysquare groups { $folder }” dice cuánto lleva cada uno.
groups-no-check = Todavía no se ha revisado esta pared (las prácticas no cuentan), así que no se sabe cuánto llevan los grupos. Tome una foto de la pared y escriba: everysquare check { $folder } FOTO
groups-as-of = Según la última revisión ({ $when }):
groups-all-up = { $name }: { $up } de { $pieces } en la pared.
groups-to-come = { $name }: { $up } de { $pieces } en la pared. Faltan: { $labels }

print-groups = Grupos
groups-envelope = { $name }
groups-share = { $pieces ->
    [one] 1 pieza
   *[other] { $pieces } piezas
} para { $people ->
    [one] 1 persona.
   *[other] { $people } personas.
} { $share ->
    [shared] Hasta { $each } personas dibujan juntas un cuadro.
    [same] { $each ->
        [one] Cada persona dibuja una.
       *[other] Cada persona dibuja { $each }.
    }
   *[more] { $each ->
        [one] Cada persona dibuja una, y { $more } de ellas dibujan otra más.
       *[other] Cada persona dibuja { $each }, y { $more } de ellas dibujan una más.
    }
}
groups-level = Nivel
groups-count = Cuántas
groups-labels = Piezas y cuadros, en el orden de entrega
groups-pencils = Lápices: { $pencils }
groups-where = Dónde van
groups-where-about = La pared en pequeño. Los lugares de { $name } están oscuros.
groups-do = Qué hacer
groups-do-1 = Ponga en el sobre estas piezas y los cuadros con las mismas etiquetas, con esta página por fuera.
groups-do-2 = Cada visitante recibe una pieza y el cuadro con la misma etiqueta, y dibuja la pieza más grande.
groups-do-3 = Revise que cada cuadro regrese dibujado. Anote en la lista quién tiene cuál.
groups-do-4 = Lleve los cuadros a la pared. La etiqueta dice el lugar.
groups-absent = ¿Alguien falta hoy?
groups-absent-1 = Guarde su pieza y su cuadro en el sobre. Puede dibujarlo después, aquí o en casa.
groups-absent-2 = ¿No habrá un después? Alguien que termine pronto puede dibujar otro.
groups-absent-3 = Diga a quien organiza cuáles etiquetas faltan.
groups-list = { $name }: quién dibuja cuál
groups-list-intro = Esta lista se queda en su salón. Anote los nombres solo aquí: no en los cuadros ni en la pared.
groups-label = Etiqueta
groups-who = Quién
groups-up = colgado

error-groups-nobody = indique al menos un grupo, como "3A 26, 3B 24"
error-groups-unreadable = no se puede leer “{ $read }” como grupo. Escriba su nombre (hasta { $letters } caracteres) y después cuántas personas dibujan, de 1 a { $most }: "3A 26, 3B 24"
error-groups-twice = hay dos grupos que se llaman “{ $name }”. Dé a cada uno su propio nombre
error-groups-many = { $groups } grupos son demasiados. Esta pared se puede repartir entre { $most } como máximo
error-groups-file = groups.json no corresponde a esta pared. Repártala de nuevo: everysquare groups CARPETA "3A 26, 3B 24"
error-groups-none = la pared todavía no está repartida. Escriba los grupos y cuántas personas dibujan en cada uno: everysquare groups { $folder } "3A 26, 3B 24"

## rehang

help-rehang = Lleva el mural a otro lugar: imprime cómo se baja en pilas y cómo se vuelve a colgar
help-rehang-folder = La carpeta del evento
help-rehang-wall = El lugar nuevo, como 8x6ft o 2.4x1.8m; para varios tableros, uno al lado de otro, "4x6ft, door, 5x6ft"
help-rehang-hang = Altura del borde inferior sobre el piso de allí, en mm (si se omite, la de event.toml; si no tiene ninguna, se propone una)
help-rehang-save = Guarda el lugar nuevo en event.toml, para que las revisiones y las impresiones lo sigan
print-rehang = Mudanza del mural
rehang-intro = { $squares ->
    [one] Se muda 1 cuadro
   *[other] Se mudan { $squares } cuadros
} en { $piles ->
    [one] 1 pila
   *[other] { $piles } pilas
}. Cada pila queda en el orden de colgar: el cuadro de arriba se cuelga primero. Así nadie tiene que ordenar nada.
rehang-about = La pared como está hoy y, debajo, la pared como va a quedar. Las pilas están marcadas y numeradas en las dos.
rehang-today = Hoy
rehang-there = En el lugar nuevo
rehang-before = Antes de empezar
rehang-before-1 = Tome una foto de la pared y revísela, para saber cómo estaba colgada.
rehang-before-2 = Pregunte a quien dirige el lugar nuevo qué cinta se puede usar y cuánto papel puede colgar. Deje libres las salidas, las alarmas y los extintores. Las reglas de la casa y de los bomberos van primero.
rehang-before-3 = Marque el lugar nuevo. El mapa del final tiene las líneas y las alturas.
rehang-before-4 = Tenga a mano: una hoja de papel por pila, una pluma, cajas planas, cinta.
rehang-down = Cómo bajarlo
rehang-caution = Solo los adultos usan el banquito, con otro adulto al lado. Hágalo cuando no haya visitantes cerca.
rehang-down-1 = Vaya de pila en pila, como dice la tabla. Las filas de arriba se bajan primero.
rehang-down-2 = En cada pila, empiece por el cuadro que dice “primero”. Vaya de derecha a izquierda y luego a la fila de abajo.
rehang-down-3 = Despegue la cinta de la pared despacio. Doble lo que quede hacia el reverso del cuadro.
rehang-down-4 = Ponga cada cuadro boca arriba sobre el anterior. Deje todos en el mismo sentido.
rehang-down-5 = Escriba el número de la pila en una hoja y póngala encima.
rehang-up = Cómo colgarlo
rehang-up-1 = Empiece por la pila 1. Su cuadro de arriba es { $first }; va abajo a la izquierda de su parte.
rehang-up-2 = Cuelgue la fila de abajo de izquierda a derecha y luego la de arriba.
rehang-up-3 = Si el cuadro que sigue no es la etiqueta que sigue, pare y mire. Puede haber dos pegados.
rehang-up-4 = La etiqueta queda derecha en cada cuadro. Sin huecos y sin encimar.
rehang-up-5 = Cuando todo esté colgado, tome una foto y revísela.
rehang-pile = Pila
rehang-squares = Cuadros
rehang-from = De
rehang-to = A
rehang-first = Primero
rehang-last = Último
rehang-whole = toda la pared
rehang-map = El lugar nuevo
rehang-saved = event.toml ya tiene el lugar nuevo. Cuando el mural esté colgado allí, tome una foto y escriba: everysquare check { $folder } FOTO
rehang-not-saved = event.toml todavía tiene el lugar anterior. Cuando el mural se haya mudado, escriba lo mismo con --save, para que las revisiones lo sigan.

## lesson

print-lesson = Lección
lesson-title = Una lección con esta imagen
lesson-intro = { $event }. La imagen está cortada en { $squares } piezas de { $piece } por lado. Cada estudiante dibuja una en un cuadro de { $square } por lado. El factor de escala es { $scale }.
lesson-aims = Objetivos
lesson-aims-1 = Los estudiantes usan una cuadrícula para dibujar más grande una parte de una imagen.
lesson-aims-2 = Dicen qué es un factor de escala y lo usan en los dos sentidos: por { $scale } y entre { $scale }.
lesson-aims-3 = Descubren que las longitudes miden { $scale } veces lo que medían, y las áreas { $area-scale } veces.
lesson-aims-4 = Encuentran un lugar por su columna y su fila.
lesson-standard = Estándar
lesson-standard-write = (complételo usted)
lesson-minutes = Minutos
lesson-what = Qué se hace
lesson-one = Una lección de 40 minutos
lesson-one-1 = Miren juntos una pieza. ¿De qué podría ser parte? (No muestre la imagen.)
lesson-one-2 = Muestre el método de la cuadrícula en el pizarrón: marcas, después líneas entre ellas, después color.
lesson-one-3 = Dibujen. Cada quien tiene una pieza y el cuadro con la misma etiqueta.
lesson-one-4 = Cuelguen los cuadros según sus etiquetas.
lesson-one-5 = Den un paso atrás y miren. Después, la pregunta de salida.
lesson-in-time = { $in-time ->
    [0] Todas las piezas de esta imagen toman más de { $drawing } minutos. Planee dos lecciones.
    [one] En { $drawing } minutos, los estudiantes terminan una pieza de estos niveles: { $levels }. Hay 1.
   *[other] En { $drawing } minutos, los estudiantes terminan una pieza de estos niveles: { $levels }. Hay { $in-time }.
}
lesson-two = Dos lecciones de 40 minutos
lesson-two-first = Primera lección:
lesson-two-first-1 = Miren juntos una pieza. ¿De qué podría ser parte?
lesson-two-first-2 = Muestre el método de la cuadrícula. Cada quien marca en el cuadro dónde cruzan las líneas el borde de la pieza.
lesson-two-first-3 = Dibujen las líneas.
lesson-two-first-4 = Guarden pieza y cuadro en el sobre. Conversen: ¿qué fue difícil?
lesson-two-second = Segunda lección:
lesson-two-second-1 = Digan otra vez el factor de escala. ¿Cómo se sabe?
lesson-two-second-2 = Coloreen. Quien termine dibuja otra pieza.
lesson-two-second-3 = Cuelguen los cuadros, revisen con el teléfono y corrijan.
lesson-two-second-4 = Den un paso atrás y miren. Después, la pregunta de salida.
lesson-words = Palabras y conversación
lesson-word = Palabra
lesson-means = Qué significa
lesson-here = En esta imagen
lesson-word-grid = método de la cuadrícula
lesson-word-grid-means = cortar una imagen en cuadrados y dibujarla cuadrado por cuadrado
lesson-word-grid-here = { $columns } columnas y { $rows } filas: { $squares } piezas
lesson-word-label = etiqueta
lesson-word-label-means = la letra de la columna y el número de la fila
lesson-word-label-here = en cada pieza y en cada cuadro
lesson-word-scale = factor de escala
lesson-word-scale-means = cuántas veces su longitud mide cada línea
lesson-word-scale-here = { $scale }: { $piece } se convierte en { $square }
lesson-word-similar = semejantes
lesson-word-similar-means = la misma forma en otro tamaño: los ángulos no cambian, las longitudes tienen un mismo factor de escala
lesson-word-similar-here = el mural y la imagen
lesson-word-perimeter = perímetro
lesson-word-perimeter-means = una vuelta por el borde
lesson-word-perimeter-here = pieza { $piece-around }, cuadro { $square-around }: { $scale } veces
lesson-word-area = área
lesson-word-area-means = cuánto papel hay dentro del borde
lesson-word-area-here = el área de un cuadro es { $area-scale } veces la de su pieza
lesson-word-fraction = fracción
lesson-word-fraction-means = una de varias partes iguales
lesson-word-fraction-here = un cuadro es 1/{ $squares } del mural
lesson-before = Antes de dibujar
lesson-before-1 = “¿Qué ves en tu pieza? ¿Qué podría ser?”
lesson-before-2 = “¿Dónde tocan las líneas el borde? Cuenta las marcas.”
lesson-before-3 = “¿Cuántas de tus piezas caben a lo largo de un lado de tu cuadro?” ({ $scale })
lesson-while = Mientras dibujan
lesson-while-1 = “¿Qué marca del cuadro corresponde a esta de la pieza?”
lesson-while-2 = “Esta línea mide lo que el ancho de tu pulgar. ¿Cuánto medirá en el cuadro?”
lesson-while-3 = “¿Qué color llena la mayor parte de tu pieza? ¿Y de tu cuadro?”
lesson-after = Cuando ya cuelga
lesson-after-1 = “¿Qué líneas se encuentran en los bordes? ¿Por qué?”
lesson-after-2 = “¿Y si fuera el doble de ancho? ¿Cuál sería el factor de escala?”
lesson-after-3 = “¿Qué hicieron entre todos que nadie habría podido hacer por su cuenta?”
lesson-everyone = Una entrada para cada quien
lesson-everyone-intro = El nivel es de la pieza, nunca del niño. Deje elegir: “¿Algo rápido o algo para pensar?”
lesson-way = Entrada
lesson-pieces = Piezas
lesson-do = Qué ayuda
lesson-support = Con apoyo
lesson-support-pieces = de un color y fáciles: { $support }
lesson-support-do = Doble el cuadro dos veces por la mitad: los dobleces forman cuatro partes. Doble igual una copia de la pieza. Dibujen parte por parte. “everysquare print CARPETA fill --only { $label }” imprime un cuadro con contornos para colorear.
lesson-core = Como está planeado
lesson-core-pieces = medias: { $core }
lesson-core-do = Primero las marcas en el borde, después las líneas entre ellas. Comparen con el cuadro de al lado: ¿se encuentran las líneas?
lesson-more = Más
lesson-more-pieces = difíciles: { $more }
lesson-more-do = Antes de dibujar, digan de tres puntos a qué distancia están del borde izquierdo y del de arriba, en la pieza y en el cuadro. O dibujen la misma pieza otra vez con el factor de escala { $other-scale }.
lesson-own = Preguntas sobre tu propia pieza
lesson-own-intro = Copie esto para sus estudiantes. Cada quien tiene otra pieza, así que las respuestas a 1 y 5 son distintas. Las demás son iguales para todos.
lesson-number = N.º
lesson-question = Pregunta
lesson-answer = Tu respuesta
lesson-own-1 = Busca una línea en tu pieza. ¿Cuánto mide? ¿Cuánto mide en tu cuadro?
lesson-own-2 = ¿Cuántas de tus piezas caben en tu cuadro?
lesson-own-3 = ¿Cuánto mide una vuelta por el borde de tu pieza? ¿Y de tu cuadro?
lesson-own-4 = ¿Qué fracción de todo el mural es tu cuadro?
lesson-own-5 = ¿Cuál es tu etiqueta? ¿Cuáles están a la izquierda, a la derecha, arriba y abajo?
lesson-own-6 = ¿Cuánto mide el mural de ancho y de alto?
lesson-exit = Pregunta de salida y respuestas
lesson-exit-question = Una línea mide { $line } en una pieza. ¿Cuánto mide en el cuadro? Otra línea mide { $line-on-square } en el cuadro. ¿Cuánto mide en la pieza? ¿Cómo lo sabes?
lesson-exit-answer = Respuesta: { $line-larger } en el cuadro, porque { $line } × { $scale }. { $line-smaller } en la pieza, porque { $line-on-square } ÷ { $scale }.
lesson-seen = Cómo ver que se entendió
lesson-seen-1 = El estudiante multiplica en un sentido y divide en el otro, y dice cuál es cuál.
lesson-seen-2 = El estudiante dice “{ $scale } veces lo que mide”, no “{ $scale } más”.
lesson-seen-3 = En el cuadro, las líneas salen del borde en las mismas marcas que en la pieza. No importa qué tan bonito sea el dibujo.
lesson-answers = Respuestas a las preguntas sobre la propia pieza
lesson-answers-1 = Cada longitud del cuadro mide { $scale } veces la de la pieza.
lesson-answers-2 = { $area-scale }, porque { $scale } × { $scale } = { $area-scale }.
lesson-answers-3 = { $piece-around } y { $square-around }.
lesson-answers-4 = 1/{ $squares }, porque hay { $squares } cuadros.
lesson-answers-5 = A los lados cambian las letras; arriba y abajo, los números. En el borde del mural faltan algunas.
lesson-answers-6 = { $mural-width } de ancho y { $mural-height } de alto.
lesson-follow = Qué puede seguir
lesson-follow-1 = Otro factor de escala: dibujen una pieza con el factor { $other-scale }. Su lado mide entonces { $other-side }, y su área es { $other-area } veces la de la pieza.
lesson-follow-2 = Perímetro y área: los dos crecen, pero no igual. ¿Por qué?
lesson-follow-3 = Dibujen una pieza como se ve en un espejo. ¿Qué sigue igual y qué cambia?

## checklist

checklist-intro = Cada lugar de la pared tiene tres casillas: la pieza se entregó, el cuadro está colgado, el cuadro se fue a casa. { $pieces ->
    [one] 1 pieza.
   *[other] { $pieces } piezas en total.
} Imprima esta lista dos veces: una copia para la mesa de piezas y otra para la pared.
checklist-border = “+” es el borde de reserva. Se reparte al final, y puede quedarse en su bolsa.
checklist-free = Los lugares grises quedan libres: ahí no se cuelga nada.
checklist-out = entregado
checklist-hung = colgado
checklist-back = en casa

## pencils

pencils-intro = Con { $seats ->
    [one] 1 asiento ocupado
   *[other] { $seats } asientos ocupados
} y estos lápices, el { $percent } % del tiempo nadie tiene que esperar un color.
pencils-name = Lápiz
pencils-pieces = Piezas que lo usan
pencils-shared = Total, si se comparten
pencils-a-table = Por mesa
pencils-all-tables = Total, si cada mesa tiene los suyos
pencils-sets = Todos pueden compartir los lápices en el centro del salón: { $shared-in-all } en total. O cada mesa puede tener los suyos: { $sets-in-all } en total, aquí para { $tables ->
    [one] 1 mesa
   *[other] { $tables } mesas
} con { $seats ->
    [one] 1 asiento
   *[other] { $seats } asientos
} cada una. Así hacen falta más lápices, pero se camina menos.
pencils-pieces-title = Dónde hace falta cada lápiz
pencils-pieces-intro = Cada pared pequeña muestra un lápiz. Un lugar lleno es una pieza casi toda de ese color; un cuadrito es una pieza que lleva un poco.
pencils-wall-alt = Piezas que necesitan { $name }: { $labels }.

## wall-map

wall-map-squares = Todos los cuadros juntos miden { $width } de ancho y { $height } de alto.
wall-map-label = Una etiqueta como { $label } es una letra de columna y un número de fila: columna { $column }, fila { $row }. La fila 1 está { $from ->
    [top] arriba
   *[bottom] abajo
}.
wall-map-with-cards = Con las tarjetas de borde alrededor: { $width } de ancho y { $height } de alto.
wall-map-hang = El borde inferior de los cuadros queda a { $height } del piso.
wall-map-hang-proposed = El borde inferior de los cuadros queda a { $height } del piso. Es una sugerencia; para cambiarla, escriba hang_mm en event.toml.
wall-map-fits = En el espacio de { $width } por { $height } caben los cuadros y las tarjetas de borde.
wall-map-border = Los lugares grises son el borde de reserva. Déjelos libres y ponga las tarjetas del borde alrededor.
wall-map-free = { $count ->
    [one] El lugar tachado queda libre: { $spots }.
   *[other] Los lugares tachados quedan libres: { $spots }.
}
wall-map-boards = El papel cubre { $boards }. Las normas contra incendios lo limitan: pregunte antes de colgarlo.
wall-map-fits-without-cards = En el espacio de { $width } por { $height } caben los cuadros, pero no las tarjetas de borde.
wall-map-does-not-fit = En el espacio de { $width } por { $height } no caben estos cuadros.
wall-map-parts = La pared tiene { $count ->
    [one] 1 parte. Tiene su propia página.
   *[other] { $count } partes. Cada una tiene su propia página, con las distancias desde su propio borde izquierdo.
}
wall-map-part = Parte { $number }: lugares { $from } a { $to }
wall-map-part-at = Parte { $number }, { $place }: lugares { $from } a { $to }
wall-map-alt = La pared a escala: { $columns } columnas y { $rows } filas de cuadros con sus etiquetas, las tarjetas de borde alrededor, el piso abajo. Las alturas sobre el piso están a la derecha; las distancias desde la izquierda, abajo.
wall-map-floor = piso
wall-map-in-inches = Alturas desde el piso y distancias desde la izquierda, en pulgadas. c1 a c4 son las tarjetas de esquina.
wall-map-in-mm = Alturas desde el piso y distancias desde la izquierda, en mm. c1 a c4 son las tarjetas de esquina.
wall-map-how-title = Cómo marcar la pared
wall-map-columns-title = Líneas verticales
wall-map-columns-intro = Cuelgue una plomada (un hilo con un peso), o trace una línea tenue a lápiz, a las distancias que se ven debajo de las columnas. Se cuentan desde el borde izquierdo de los cuadros. Quite los hilos antes de que lleguen los visitantes.
wall-map-column = Línea
wall-map-from-left = Desde la izquierda, { $unit }
wall-map-left-of = a la izquierda de { $column }
wall-map-right-of = a la derecha de { $column }
wall-map-rows-title = Líneas horizontales
wall-map-rows-intro = Tense un hilo pegado a la pared, o trace una línea tenue a lápiz, a las alturas que se ven junto a las filas. Se cuentan desde el piso. Use un nivel de burbuja: los pisos no siempre son parejos.
wall-map-row = Fila
wall-map-lower = Borde inferior, { $unit }
wall-map-upper = Borde superior, { $unit }
wall-map-column-cards = Las tarjetas de columna, de { $side } de ancho, van debajo de sus columnas; su borde superior toca los cuadros.
wall-map-row-cards = Las tarjetas de fila, de { $side } de alto, van a la izquierda de sus filas; su borde derecho toca los cuadros.
wall-map-corner-cards = Las tarjetas de esquina (de { $ring } por lado, sin contar la tira de texto) van por fuera de las cuatro esquinas y tocan los cuadros en un punto. La tira apunta hacia afuera.

## comparison prints

print-side-by-side = Lado a lado
print-true-scale = Tamaño real
print-pairs = Pieza y cuadro
print-take-home = Para llevar a casa
print-about-take-home = Papeles para llevar a casa de { $labels }: el mural con un lugar resaltado, el cuadro y la pieza de la que salió.
take-home-one = Cuadro { $label }, 1 de { $count }: columna { $column }, fila { $row }
take-home-thanks = ¡Gracias por dibujar con nosotros!
print-giving-back = Para devolver
print-about-giving-back = Cuadros para devolver, { $labels }: cada uno en pequeño, con su etiqueta y una casilla para marcar cuando se haya recogido.
giving-back-words = ¿Cuál es el tuyo? Señálalo. Marca su casilla cuando lo hayas recogido.
print-making-of = Cómo se llenó el mural
print-math-page = Las matemáticas de nuestro mural
print-poster = Cartel
comparison-cm2 = { $area } cm²
comparison-m2 = { $area } m²
comparison-in2 = { $area } pulg²
comparison-ft2 = { $area } pies²
comparison-original = La imagen
comparison-wall = Nuestro mural
comparison-both-alt = La imagen original y el mural que los visitantes dibujaron a partir de ella, al mismo tamaño, cada uno con una barra de escala.
comparison-all-right = { $squares ->
        [one] Un cuadro, y está
       *[other] { $squares } cuadros en { $columns ->
            [one] 1 columna
           *[other] { $columns } columnas
        } y { $rows ->
            [one] 1 fila
           *[other] { $rows } filas
        }, y todos están
    } en su lugar.
comparison-right = { $squares ->
        [one] Un cuadro.
       *[other] { $squares } cuadros en { $columns ->
            [one] 1 columna
           *[other] { $columns } columnas
        } y { $rows ->
            [one] 1 fila
           *[other] { $rows } filas
        }.
    } { $right ->
        [0] En esta foto todavía no se vio ninguno en su lugar.
        [one] En esta foto se vio uno en su lugar.
       *[other] En esta foto se vieron { $right } en su lugar.
    }
comparison-planned = Previsto: cada longitud en el mural mide { $scale } veces lo que mide en la imagen ({ $piece } se convierte en { $square }).
comparison-measured = Medido en la foto, con { $squares ->
        [one] 1 cuadro
       *[other] { $squares } cuadros
    }: { $scale } veces la longitud.
comparison-not-measured = En la foto se leyeron muy pocos cuadros para medir el factor de escala.
comparison-original-size = La imagen mide { $width } de ancho y { $height } de alto. Su área es de { $area }.
comparison-wall-size = El mural previsto mide { $width } de ancho y { $height } de alto. Su área es de { $area }.
comparison-thanks = ¡Gracias a todas las personas que dibujaron un cuadro!
comparison-true-intro = Ponga la mano o una regla sobre esta página: las piezas y los cuadros tienen aquí su tamaño real. El marco en la imagen muestra la parte que se ve ampliada.
comparison-true-pieces-all = La imagen completa a 1:1
comparison-true-pieces = La imagen a 1:1: { $count ->
        [one] pieza
       *[other] { $count } piezas,
    } { $labels }; el resto no cabe en esta página
comparison-true-piece-part = Una parte de la pieza { $labels } a 1:1; la pieza completa, de { $side } por lado, no cabe en esta página
comparison-true-squares = Nuestro mural a 1:1: { $count ->
        [one] cuadro
       *[other] { $count } cuadros,
    } { $labels }
comparison-true-square-part = Una parte del cuadro { $labels } a 1:1; el cuadro completo, de { $side } por lado, no cabe en esta página
comparison-from-to = de { $first } a { $last }
comparison-true-nested-alt = El contorno del mural con la imagen en su esquina inferior izquierda, los dos a la misma escala: el mural mide { $scale } veces el ancho y { $scale } veces el alto de la imagen.
comparison-true-copies = { $scale } imágenes lado a lado tienen el ancho del mural, y { $scale } apiladas, su altura. { $scale } × { $scale } = { $copies } copias lo cubren.
comparison-true-about-copies = El mural mide { $scale } veces el ancho y { $scale } veces el alto de la imagen. Así que su área es { $scale } × { $scale }, o unas { $copies }, veces la de la imagen.
comparison-true-drawing = Este dibujo está a 1:{ $drawing }, y la imagen dentro de él también.
comparison-pairs-intro = A la izquierda está la pieza que alguien recibió. A la derecha está el cuadro que hizo con ella. Los dos se muestran al mismo tamaño.
comparison-pair-alt = La pieza { $label } de la imagen y, a su lado, el cuadro { $label } tal como se dibujó.
comparison-making-intro = { $checks ->
        [one] En este evento se revisó una foto de la pared.
       *[other] En este evento se revisaron { $checks } fotos de la pared. Aquí están en orden.
    }
comparison-making-some = { $shown } de las { $checks } fotos del evento, repartidas de la primera a la última.
comparison-making-counts = { $right } de { $cells } en su lugar, lugares vacíos: { $empty }
comparison-making-alt = El mural a las { $when }: { $counts }.
comparison-curve = Cuadros en su lugar, con el paso del tiempo
comparison-curve-alt = Una curva de los cuadros en su lugar, de las { $first } a las { $last }; los números están debajo de las imágenes.
comparison-counting-1 = Cuente los cuadros de la fila de abajo: { $columns ->
        [one] 1 cuadro.
       *[other] { $columns } cuadros.
    } Cuente las filas desde el piso hacia arriba: { $rows ->
        [one] 1 fila.
       *[other] { $rows } filas.
    }
comparison-counting-2 = Cada cuadro se dibujó a partir de una pieza, así que hay tantos cuadros como piezas: { $squares }.
comparison-multiplying-1 = { $columns } columnas × { $rows } filas = { $squares } cuadros.
comparison-multiplying-row = Una línea de { $squares ->
        [one] 1 cuadro
       *[other] { $squares } cuadros
    }: 1 × { $squares } = { $squares }.
comparison-multiplying-2 = El lado de una pieza mide { $piece }. El lado de un cuadro mide { $square }: { $scale } veces el de una pieza.
comparison-multiplying-3 = { $scale } × { $scale } = { $copies } piezas caben en un cuadro.
comparison-ratio-1 = Factor de escala: { $scale }. La imagen mide { $width } por { $height }; el mural, { $wall-width } por { $wall-height }.
comparison-ratio-2 = Perímetro de la imagen: { $around }. Perímetro del mural: { $wall-around }, también { $scale } veces el de la imagen.
comparison-ratio-3 = Área: { $scale } × { $scale } = { $copies } veces la de la imagen. La imagen tiene { $area }; el mural, { $wall-area }.
comparison-ratio-4 = Los ángulos no cambian y todas las longitudes crecen por el mismo factor de escala. Esas figuras se llaman semejantes. Hacer una es una ampliación (una dilatación).
comparison-pattern = Un patrón: longitudes × { $scale }, áreas × { $copies }
comparison-pattern-intro = Tome bloques de piezas: 1 × 1, 2 × 2 y así. Por grande que sea el bloque, en el mural sus lados miden { $scale } veces lo que medían y su área es { $copies } veces la que era.
comparison-block = Bloque
comparison-side-picture = Lado, imagen
comparison-side-wall = Lado, mural
comparison-area-picture = Área, imagen
comparison-area-wall = Área, mural
comparison-measuring = Previsto y medido
comparison-measuring-intro = Medido en la foto, con { $count ->
        [one] 1 cuadro
       *[other] { $count } cuadros
    }. El número que sigue a ± es el margen de error: 95 de cada 100 veces, el valor verdadero está dentro de él.
comparison-what = Qué
comparison-plan = Previsto
comparison-found = Medido
comparison-scale-factor = Factor de escala
comparison-pitch = Del centro de un cuadro al siguiente
comparison-width = Ancho del mural
comparison-height = Alto del mural
comparison-straight = Qué tan derecho quedó
comparison-column = Columna { $column }
comparison-lower = { $name } está { $by } más abajo de lo previsto.
comparison-higher = { $name } está { $by } más arriba de lo previsto.
comparison-right-of = { $name } está { $by } más a la derecha de lo previsto.
comparison-left-of = { $name } está { $by } más a la izquierda de lo previsto.
comparison-sinks = { $name } baja { $by } de izquierda a derecha.
comparison-rises = { $name } sube { $by } de izquierda a derecha.
comparison-leans-right = { $name } se inclina { $by } a la derecha, de arriba abajo.
comparison-leans-left = { $name } se inclina { $by } a la izquierda, de arriba abajo.
comparison-all-straight = Hasta donde muestra esta foto, las filas y las columnas están derechas.
comparison-gap = El hueco más ancho mide { $by }, entre { $first } y { $second }.
comparison-overlap = La mayor superposición mide { $by }, entre { $first } y { $second }.
comparison-straight-kind = Con papel, cinta y muchas manos, algo torcido siempre queda. A un paso de distancia, nadie lo nota.
comparison-outlines = Línea por línea
comparison-edges = Abajo, los contornos de la imagen se ven encima del mural. Donde una línea dibujada sigue uno, el ojo y la regla coincidieron.
comparison-edges-alt = El mural con los contornos de la imagen dibujados encima.
comparison-poster-page = { $what }: fila { $row }, columna { $column } de { $rows } × { $columns } · página { $page } de { $pages }
comparison-poster-size = { $width } de ancho y { $height } de alto, en { $pages ->
        [one] 1 página.
       *[other] { $pages } páginas: { $rows ->
            [one] 1 fila
           *[other] { $rows } filas
        } de { $columns }.
    }
comparison-poster-about = Cómo se arma el cartel. { $size } { $steps } { $caution }
comparison-poster-1 = Imprima todas las páginas al 100 %. Las palabras junto a la regla dicen la fila y la columna de cada página.
comparison-poster-2 = Recorte cada página por las marcas de sus esquinas.
comparison-poster-3 = Las páginas vecinas se superponen { $shared }. Una línea punteada muestra adónde va el borde de la siguiente: péguela sobre esa franja para que la imagen continúe.
comparison-poster-4 = Empiece arriba a la izquierda. Una cada fila de izquierda a derecha y luego una las filas de arriba abajo.
comparison-poster-fire-m2 = El cartel es de { $area } m² ({ $feet } pies²) de papel, además de los cuadros. Las normas contra incendios limitan el papel en las paredes, sobre todo en pasillos y cerca de las salidas. Pregunte a quien esté a cargo del edificio o a los bomberos antes de colgarlo.
comparison-poster-fire-ft2 = El cartel es de { $feet } pies² ({ $area } m²) de papel, además de los cuadros. Las normas contra incendios limitan el papel en las paredes, sobre todo en pasillos y cerca de las salidas. Pregunte a quien esté a cargo del edificio o a los bomberos antes de colgarlo.
filling-label = { $when } · { $right } / { $cells }
error-print-no-wall = la imagen enderezada de la pared está vacía: tome otra foto de toda la pared, desde más lejos
error-print-no-pairs = no hay ningún cuadro que mostrar junto a su pieza, porque ninguno se leyó bastante bien: tome otra foto, más cerca de la pared
error-print-no-checks = este evento todavía no tiene ninguna revisión: tome una foto de la pared y revísela primero
error-print-poster = no se puede imprimir un cartel de { $read } mm de ancho: en este papel puede tener de { $least } a { $most } mm
error-filling-nothing = todavía no hay con qué hacer la animación: tome una foto de la pared y revísela primero
error-filling-large = la animación no se puede hacer tan pequeña como para enviarla por correo
error-filling-gif = la animación no se puede escribir: { $said }

## check

help-check = Lee fotos de la pared y dice qué intercambiar, girar y buscar
help-check-folder = La carpeta del evento
help-check-uncovered = Deja las imágenes como las muestra la foto: no se tapan los lugares que no se pueden leer ni a quien esté delante de la pared
help-check-begun = Dice también qué cuadros parecen apenas empezados
help-check-photos = Fotos de la pared: una, o varias que la muestran por partes
check-working = Leyendo la pared
check-written = Se guardó en { $folder }: report.html para verlo, marked.jpg para llevarlo a la pared, wall.jpg enderezada y report.json para otros programas.
check-open = Abra esta página en un navegador:
    { $page }
check-uncovered = Usó --uncovered: en estas imágenes se ve a quien esté delante de la pared. Mírelas antes de compartirlas.

## test page

help-test-page = Ver, por fotos de la página de prueba, si lo demás se va a imprimir bien
help-test-page-folder = La carpeta del evento
help-test-page-photos = Fotos de la página de prueba: el frente y, si lo tiene, el reverso
test-page-size = El tamaño está bien ({ $percent } %).
test-page-scale = Se imprimió al { $percent } %. En la ventana de impresión elija “tamaño real” o 100 %, no “ajustar a la página”.
test-page-uneven = Se imprimió al { $across } % de ancho, pero al { $down } % de alto. Ponga una regla de verdad sobre la impresa. Si no coinciden, pruebe con otra impresora.
test-page-other-paper = Este papel es { $paper }, pero su material es para { $meant }. Ponga el papel correcto, o cambie paper en event.toml.
test-page-shift = Lo impreso está a { $length } del centro del papel. Acerque las guías de la bandeja hasta tocar el papel.
test-page-askew = Lo impreso está torcido { $degrees }°. Acerque las guías de la bandeja hasta tocar el papel.
test-page-cut = Su impresora omite lo que está más cerca del borde ({ $edges }). Busque una opción como “márgenes mínimos”, o use otra impresora.
test-page-inks = Falta tinta o se está acabando: { $inks }.
test-page-black = Se imprimió solo en negro. En la ventana de impresión elija color.
test-page-alike = Estos colores se ven iguales en esta impresión: { $pairs }. Diga a los ayudantes que se guíen por los nombres en las piezas.
test-page-back-right = El reverso está del lado correcto y en su sitio.
test-page-slip = El reverso está a { $length } de su frente. Acerque las guías de la bandeja hasta tocar el papel.
test-page-upside-down = El reverso está al revés. En la ventana de impresión elija “voltear por el { $flip ->
    [short-edge] lado corto
   *[long-edge] lado largo
}”. Si eso eligió, cambie flip en event.toml por el otro.
test-page-sideways = No sabemos hacia dónde apunta el reverso. Dé vuelta a la página como a la de un libro, sostenga el teléfono como antes y tome esa foto otra vez.
test-page-front-too = Dé también una foto del frente: dice cómo salieron los colores y si el reverso está del lado correcto.
test-page-back-too = Ahora dé vuelta a la página como a la de un libro, tome otra foto de la misma manera y dé las dos fotos.
test-page-print-again = Cambie eso, imprima otra vez la página de prueba y revísela antes de imprimir lo demás.
test-page-right = Puede imprimir lo demás.
test-page-cyan = azul claro
test-page-magenta = magenta (rosa)
test-page-yellow = amarillo
test-page-black-ink = negro
test-page-top = arriba
test-page-right-edge = derecha
test-page-bottom = abajo
test-page-left = izquierda
error-test-page-code = no encontramos el código de una página de prueba en esta foto. Tome la página entera, plana y con buena luz, y pruebe otra vez
error-test-page-foreign = esta es la página de prueba de otro evento (sus códigos empiezan con { $tag }). Imprima la de este evento
error-test-page-marks = no se ven las cuatro marcas negras. Tome la página entera, sin nada encima, y pruebe otra vez
error-test-page-edges = no se ve el borde del papel todo alrededor. Ponga la página plana sobre algo oscuro, deje ver algo de eso en la foto por cada lado, y pruebe otra vez

## find

help-find = Ver en fotos qué cuadros están sobre una mesa o en el suelo, en cualquier posición
help-find-folder = La carpeta del evento
help-find-photos = Fotos de cuadros: una, o varias de distintas partes de la mesa
find-all = Aquí están los { $all } cuadros.
find-here = Aquí están { $count } de { $all } cuadros.
find-list = Aquí: { $labels }.
find-lacking = { $count ->
    [one] No está aquí, o no se puede leer: { $labels }.
   *[other] No están aquí, o no se pueden leer ({ $count }): { $labels }.
}
find-twice = De estos hay más de uno: { $labels }.
find-waiting = { $count ->
    [one] Por colgar, según la revisión de { $when }: { $labels }.
   *[other] Por colgar, según la revisión de { $when } ({ $count }): { $labels }.
}
find-none-waiting = Según la revisión de { $when }, todos estos estaban colgados.
find-group = { $name } ({ $count }): { $labels }
find-closer = Los cuadros se ven pequeños en la foto y puede que falten algunos. Acérquese, o tome varias fotos y úselas juntas.
find-written = Los cuadros, cada uno con su etiqueta, están en { $folder }.

## receive

help-receive = Recibir cuadros que se dibujaron en casa, por fotos de sus páginas
help-receive-folder = La carpeta del evento
help-receive-photos = Fotos o imágenes escaneadas de páginas que se dibujaron en casa
receive-came = { $label } llegó.
receive-again = { $label } llegó otra vez. La nueva imagen reemplaza a la anterior.
receive-coarse = { $label } se ve pequeño en su foto y no saldrá muy nítido. Si puede, pida la foto en su tamaño original.
receive-next = Recórtelos y cuélguelos como cualquier otro cuadro. Mientras tanto, los recuerdos los muestran en su lugar.
error-receive-code = no podemos leer el código de un cuadro en esta foto. ¿Hay un dedo encima, o una sombra? Tome la página entera, plana y con buena luz, y pruebe otra vez
error-receive-marks = no se ven las cuatro marcas negras alrededor de { $labels }. Tome la página entera, plana, sin nada sobre las marcas, y pruebe otra vez

## display

help-display = Crea los recuerdos del evento: el mural junto a la imagen, sus medidas y láminas para colgar
help-display-folder = La carpeta del evento
help-display-uncovered = Deja las imágenes como las muestra la foto: no se tapan los lugares que no se pueden leer ni a quien esté delante de la pared
help-display-photos = Fotos de la pared: una, o varias que la muestran por partes
help-display-view = Cómo se muestra el mural: as-hung (como está), straight (enderezado, con huecos), closed (enderezado, sin huecos) o in-order (cada cuadro en su lugar)
help-display-codes = Qué hacer con los códigos: keep los deja; fill los rellena con los colores que los rodean
help-display-missing = Qué se muestra en los lugares vacíos: ghost (una copia tenue de la imagen) u open (nada)
help-display-only = Solo esta lámina, por ejemplo side-by-side; se puede repetir. Solo si se pide: take-home (un papel por cada cuadro, con el mural y su lugar) y giving-back (todos los cuadros por etiqueta, para señalarlos)
help-display-pair = La etiqueta de un cuadro para mostrarlo junto a su pieza, o para llevarlo a casa; se puede repetir
help-display-poster-width = Ancho del cartel en mm (si se omite, tres páginas de ancho)
help-display-poster-original = Hacer también un cartel de la imagen
display-working = Mirando la pared
display-squares = { $squares ->
    [one] Se leyó 1 de { $cells } cuadros.
   *[other] Se leyeron { $squares } de { $cells } cuadros.
}
display-scale = Factor de escala, medido: { $factor } ± { $within } (previsto: { $planned }).
display-someone = Parece que hay alguien delante de la pared, y esa parte está tapada. Una foto sin personas da mejores recuerdos.
display-from-home = Dibujados en casa y mostrados en su lugar: { $labels }.
display-size = El mural mide { $width } de ancho y { $height } de alto.
display-straight = Las filas y las columnas están derechas: nada se desvía { $length } o más.
display-written = Se guardó en { $folder }: las láminas, wall.jpg con el mural y display.json con las medidas.
display-suggestions = { $squares ->
    [one] Conviene revisar 1 dibujo que podría estar en el papel de otro cuadro. (Es solo una pista.)
   *[other] Conviene revisar { $squares } dibujos que podrían estar en el papel de otros cuadros. (Es solo una pista.)
}
display-print = { $name }: { $pages ->
    [one] 1 página
   *[other] { $pages } páginas
}
display-mixed = { $squares ->
    [one] 1 cuadro está en otro lugar o girado
   *[other] { $squares } cuadros están en otro lugar o girados
}. Agregue “--view in-order” para mostrar cada cuadro donde va.
retape-row-sinks-right = La fila { $line } baja { $length } hacia la derecha.
retape-row-sinks-left = La fila { $line } baja { $length } hacia la izquierda.
retape-column-leans-right = La columna { $line } se inclina { $length } hacia la derecha al bajar.
retape-column-leans-left = La columna { $line } se inclina { $length } hacia la izquierda al bajar.
retape-gap = Entre { $one } y { $other } hay un hueco de { $length }.
retape-overlap = { $one } y { $other } se traslapan { $length }.
error-display-no-squares = en las fotos no se leyó ningún cuadro de este evento, solo tarjetas de borde. Acérquese, llene el encuadre con la pared y tome la foto otra vez
error-display-pair = { $read } no es un cuadro de esta pared que se haya leído

## serve

help-serve = Abre la página para ayudantes: se toma una foto de la pared con el teléfono y la página dice qué intercambiar, girar y buscar
help-serve-folder = La carpeta del evento
help-serve-lan = Permite que se conecten los teléfonos de la misma red Wi-Fi (si no se indica: solo esta computadora)
help-serve-address = La dirección para los teléfonos, si esta computadora tiene varias; permite que se conecten, igual que --lan
help-serve-port = El puerto
help-serve-keep-photos = Guarda todas las fotos, sin los datos de la cámara como la hora y el lugar (si no se indica: no se guarda ninguna)
help-serve-fresh = Empieza con la pared vacía en vez de la última revisión
help-serve-new-link = Crea un enlace nuevo; los teléfonos que tengan el anterior ya no se conectan
help-serve-no-browser = No abre la página del salón en el navegador de esta computadora

serve-cli-several = Esta computadora tiene varias direcciones. ¿Cuál está en la misma red que los teléfonos?
serve-cli-which = Escriba un número del 1 al { $count } (Enter para 1):
serve-cli-continues = Continúa desde la revisión { $check }. Para empezar con la pared vacía, agregue --fresh.
serve-cli-set-aside = La lista de lo que marcaron los ayudantes estaba dañada. La apartamos y empezamos otra. No se perdió nada más.
serve-cli-link = Ayudantes: escaneen el código QR con la cámara del teléfono o escriban { $link }
serve-cli-network = El teléfono debe estar en la misma red Wi-Fi que esta computadora ({ $network }).
serve-cli-secret = Quien tenga este enlace puede ver la pared y enviar fotos: muestre el código QR solo a los ayudantes.
serve-cli-here = La página para ayudantes, solo en esta computadora: { $link }
serve-cli-lan = Así no se pueden conectar los teléfonos. Agregue --lan al final del comando.
serve-cli-room = La página del salón, para el proyector: { $link }
serve-cli-end = No cierre esta ventana ni la tapa de la computadora. Para terminar, presione Ctrl+C.
serve-cli-quiet =
    Todavía no se ha conectado ningún teléfono. Si uno se queda esperando:
      1. ¿Está en la misma red Wi-Fi, con los datos móviles y la VPN apagados?
      2. ¿Esta computadora preguntó por su firewall? Elija Permitir, para redes privadas.
      3. Muchas redes escolares separan los aparatos. En ese caso, active el punto de acceso de un teléfono, conecte a él esta computadora y empiece de nuevo.
serve-cli-photo = Foto { $photo }: { $right } de { $cells } en su lugar, { $wrong } por corregir.
serve-cli-ended = Terminado. Todas las revisiones están guardadas. El mismo comando continúa desde la última.

serve-take = Tomar foto de la pared
serve-again = Tomar otra foto
serve-check-again = ¿Listo? Revisar de nuevo
serve-choose = Elegir fotos
serve-bar = Fotos
serve-title = Ayudante de la pared
serve-nowhere = Este enlace no funciona. Escanee de nuevo el código QR de la computadora.
serve-tabs = Tres tareas
serve-tab-wall = Pared
serve-tab-pieces = Piezas
serve-tab-find = Buscar
serve-headline-start = Todavía no hay foto
serve-start-advice = Aléjese hasta que se vea toda la pared. No mueva el teléfono y tome la foto. También puede tomarla por partes.
serve-headline-fix = { $count ->
    [one] 1 cosa por arreglar
   *[other] { $count } cosas por arreglar
}
serve-headline-to-come = { $count ->
    [one] Nada que arreglar. Falta 1 cuadro
   *[other] Nada que arreglar. Faltan { $count } cuadros
}
serve-headline-unknown = { $count ->
    [one] Sin errores, pero 1 lugar no se pudo leer
   *[other] Sin errores, pero { $count } lugares no se pudieron leer
}
serve-photo-alt = La última foto. Cada lugar por arreglar tiene una marca.
serve-photo-how = Acerque la foto con dos dedos.
serve-sending = Enviando su foto…
serve-sending-of = Enviando la foto { $at } de { $of }…
serve-reading = Leyendo la pared…
serve-reading-of = Leyendo la foto { $at } de { $of }…
serve-queue = Esperando a que terminen otras fotos…
serve-cancel = Cancelar
serve-dismiss = Aceptar
serve-last-photo = Última foto: { $time }
serve-new-photo = Foto nueva, { $time }: { $done } resueltas, { $left } pendientes
serve-done = Hecho
serve-mine = Yo voy
serve-mine-on = Usted va
serve-theirs = Va otro teléfono
serve-after = Primero haga el número { $at }.
serve-show-spot = Ver en el mapa
serve-show-step = Ver en la lista
serve-show-where = Ver dónde va
serve-round = { $count } cuadros cambian de lugar: { $way }.
serve-round-upright = { $count } cuadros cambian de lugar: { $way }. Póngalos todos derechos.
serve-fallen = { $count ->
    [one] Busque el cuadro { $squares }. Antes estaba en la pared. Mire en el piso.
   *[other] Busque { $count } cuadros: { $squares }. Antes estaban en la pared. Mire en el piso.
}
serve-where-row = { $edge ->
    [top] { $at ->
        [1] fila de arriba
       *[other] { $nth } fila desde arriba
    }
   *[bottom] { $at ->
        [1] fila de abajo
       *[other] { $nth } fila desde abajo
    }
}
serve-where-column = { $edge ->
    [left] { $at ->
        [1] primera a la izquierda
       *[other] { $nth } desde la izquierda
    }
   *[right] { $at ->
        [1] primera a la derecha
       *[other] { $nth } desde la derecha
    }
}
serve-nth = { $at ->
    [1] primera
    [2] segunda
    [3] tercera
    [4] cuarta
    [5] quinta
    [6] sexta
    [7] séptima
    [8] octava
    [9] novena
    [10] décima
    [21] vigésima primera
    [22] vigésima segunda
    [23] vigésima tercera
   *[other] { $at }.ª
}
serve-step-taken = Ya va otro teléfono. Elija lo siguiente.
serve-step-gone = La lista cambió. Mírela de nuevo.
serve-piece-taken = Otro teléfono acaba de entregar esta pieza. Tome la siguiente.
serve-piece-up = Este cuadro ya está en la pared.
serve-not-sent = No llegó a la computadora. Intente de nuevo.
serve-step-all-ticked = ¿Todo listo? Tome otra foto para estar seguros.
serve-heading-steps = Por arreglar, en este orden
serve-heading-wall = El mapa
serve-heading-next = Entregue ahora
serve-heading-advice = Para la próxima foto
serve-shaded = No se pudieron leer los lugares sombreados.
serve-heading-help = Si algo no funciona
serve-missing-count = { $count ->
    [0] Todos los cuadros están en la pared.
    [one] Falta 1 cuadro.
   *[other] Faltan { $count } cuadros.
}
serve-border = borde de reserva
serve-all-missing = Todas
serve-next-how = Toque una pieza cuando la entregue.
serve-next-none = Todas las piezas están entregadas. ¡Bien!
serve-give-out = por entregar
serve-given = entregada
serve-piece-out = { $label } entregada.
serve-piece-back = { $label } de vuelta.
serve-undo = Deshacer
serve-print = Imprimir…
serve-print-square = otra vez el cuadro
serve-print-piece = otra vez la pieza
serve-print-strip = otra vez la tira
serve-print-helped = un cuadro con contornos para ayudar
serve-print-large = la pieza, mucho más grande
serve-print-home = una página para dibujar en casa
serve-print-busy = La computadora está preparando otra página. Espere un momento y pruebe otra vez.
serve-heading-out = Se están dibujando
serve-out-since = desde { $time }, { $minutes } min
serve-back = Ya volvió
serve-heading-back = De vuelta, para colgar
serve-back-since = de vuelta: { $time }
serve-not-back = No ha vuelto
serve-heading-fallen = Estaban y ya no están
serve-fallen-how = Estos cuadros estaban en la pared. Mire en el piso.
serve-find-start = Cuadros sobre una mesa o en el piso
serve-find-how = Tome una foto de ellos, en cualquier posición. Verá la etiqueta de cada uno, cuáles no están y cuáles falta colgar. Varias fotos cuentan juntas.
serve-find-take = Tomar foto de los cuadros
serve-find-reading = Buscando cuadros…
serve-find-photo-alt = Los cuadros de la última foto, cada uno con su etiqueta
serve-find-photos = { $count ->
    [one] Vistos en una foto
   *[other] Vistos en { $count } fotos juntas
}
serve-find-waiting = Por colgar
serve-find-waiting-how = Toque una pieza para ver dónde va su cuadro.
serve-find-closer = Los cuadros se ven pequeños en la foto y puede que falten algunos. Acérquese y tome varias fotos.
serve-find-none-waiting = En la última foto de la pared están colgados todos estos.
serve-find-anew = Empezar de nuevo
serve-undo-photo = Deshacer la última foto
serve-undo-ask = ¿Deshacer la foto de { $time }? Todos los teléfonos vuelven a la lista anterior.
serve-undo-yes = Sí, deshacer
serve-undo-no = No, dejarla
serve-undo-changed = La lista cambió y no se deshizo nada. Mírela de nuevo.
serve-undo-nothing = No hay ninguna foto que deshacer.
serve-undo-unkept = No se pudo deshacer esta foto. Revise la pantalla de la computadora.
serve-add-helper = Agregar un ayudante
serve-add-helper-how = El siguiente ayudante escanea este código con su teléfono.
serve-map-how = Toque un lugar para ver qué hay y qué va ahí. Use dos dedos o los botones para acercar.
serve-larger = Más grande
serve-smaller = Más pequeño
serve-close = Cerrar
serve-retry = Intentar de nuevo
serve-cell-hangs = Lo que hay ahora
serve-cell-belongs = Lo que va ahí
serve-cell-nothing-seen = Todavía fuera de la foto
serve-legend-wrong = en otro lugar
serve-legend-turned = girado
serve-legend-empty = vacío
serve-legend-unread = no se pudo leer
serve-legend-unseen = fuera de la foto
serve-help-laptop = ¿No ocurre nada? Revise que la computadora esté encendida y que siga abierta su ventana con el código QR.
serve-help-wifi = ¿La página va lenta o se detiene? El teléfono y la computadora deben estar en la misma red Wi-Fi. Apague la VPN del teléfono.
serve-help-isolation = Muchas redes escolares separan los aparatos. Active el punto de acceso del teléfono y conecte a él la computadora. Inicie de nuevo el programa y escanee el código nuevo.
serve-help-private = Las fotos van solo a la computadora y no se guardan ahí. En sus imágenes de la pared se tapa a quien encontramos delante, pero puede escaparse alguien. Quien espíe en la misma red Wi-Fi podría ver una foto por el camino.
serve-help-private-kept = Las fotos van solo a la computadora y se guardan ahí, con quien salga en ellas. Quien espíe en la misma red Wi-Fi podría ver una foto por el camino.
serve-connection-lost = La computadora no responde. ¿Está encendida y conectada a la misma red Wi-Fi que el teléfono? Lo que ve es la última información recibida.
serve-link-old = Este enlace ya no funciona. Escanee de nuevo el código QR de la computadora.
serve-no-answer = La foto no llegó. ¿La computadora está encendida y conectada a la misma red Wi-Fi que el teléfono? La foto sigue aquí.
serve-no-script = Esta página necesita JavaScript. Actívelo en la configuración del navegador o use otro navegador.

serve-busy = Hay muchas fotos a la vez. La suya se envía de nuevo en unos segundos.
serve-photo-broke-off = El envío se interrumpió. Envíe la foto de nuevo.
serve-photo-slow = La foto tardó demasiado. Acérquese al router de la red Wi-Fi y envíela de nuevo.
serve-photo-too-heavy = El archivo pasa de { $most } MB y no se pudo recibir. Elija una foto del tamaño normal de la cámara.
serve-photo-too-heavy-here = El archivo es demasiado grande para una foto y no se envió. Elija una foto del tamaño normal de la cámara.
serve-photo-too-large = La foto tiene { $width } × { $height } píxeles. Podemos leer hasta { $most } millones. Ponga la cámara en su tamaño normal (12 megapíxeles bastan) y tome otra foto.
serve-photo-too-small = La foto tiene solo { $width } × { $height } píxeles. Envíe la original, no una copia pequeña.
serve-photo-copy = Es una copia pequeña de una foto ({ $width } × { $height } píxeles) y no se pueden leer sus códigos. Envíe la original o use el botón de esta página.
serve-photo-empty = El archivo está vacío. Tome otra foto.
serve-photo-heic = Este tipo de foto HEIC no se puede leer. Tómela con el botón de esta página, o elija Configuración > Cámara > Formatos > “Más compatible” en el iPhone.
serve-photo-video = Esto es un video. Tome una foto.
serve-photo-practice = Esta es una foto de práctica. La pared real ya se conoce, así que nada cambió.
serve-photo-unknown = No podemos leer este archivo como foto. Use JPEG, PNG, WebP o TIFF.
serve-photo-truncated = La foto está cortada, le falta el final. Envíela de nuevo.
serve-photo-damaged = No podemos abrir esta foto. Tome otra.
serve-photo-no-codes = No encontramos ningún código de este evento. ¿Es esta la pared? Acérquese, no mueva el teléfono y tome otra foto.
serve-photo-foreign = Los códigos de esta foto son de otro evento (clave { $tags }). Tome una foto de la pared de este evento. ¿Es la pared correcta? Pregunte a quien está en la computadora.
serve-find-none = No encontramos ningún cuadro de este evento. Acérquese, no mueva el teléfono y tome otra foto.
serve-find-foreign = Los cuadros de esta foto son de otro evento (clave { $tags }). ¿Es la mesa correcta? Pregunte a quien está en la computadora.
serve-photo-other = No podemos leer ningún cuadro de este evento, solo otros códigos ({ $texts }). Acérquese, no mueva el teléfono y tome otra foto. ¿Es esta la pared?
serve-photo-too-dark = La foto está demasiado oscura. Encienda más luces e intente de nuevo.
serve-photo-cannot-place = Se ven cuadros, pero no se sabe en qué parte de la pared están. Aléjese hasta que se vea toda la pared o ponga las tarjetas de las esquinas. ¿Están sobre una mesa? Use la pestaña Buscar.
serve-photo-codes-small = Se ven los cuadros, pero sus códigos son demasiado pequeños o borrosos para leerlos. Acérquese, o tome una foto de cada mitad, y sostenga firme el teléfono.
serve-photo-stumble = No se pudo procesar esta foto. Tome otra.
serve-photo-older = Esta foto es anterior a otras de los mismos lugares, por eso no cambió nada.
serve-unkept = El resultado es correcto, pero no se pudo guardar. Revise la pantalla de la computadora.
serve-unkept-full = El resultado es correcto, pero no se pudo guardar. El disco de la computadora está lleno. Libere espacio.

serve-room-title = Nuestro mural
serve-room-hang = { $count ->
    [one] { $count } de { $cells } cuadros colgado
   *[other] { $count } de { $cells } cuadros colgados
}
serve-room-to-come = { $count ->
    [0] ¡Ya están todos los cuadros!
    [one] Falta 1
   *[other] Faltan { $count }
}
serve-room-complete = ¡La imagen está completa!
serve-room-secret = Ocultar la imagen
serve-room-code = Código para ayudantes
serve-room-code-alt = Código QR con el enlace para los teléfonos de los ayudantes
serve-room-picture = La pared como se ve ahora
serve-room-covered = El mural cubierto: cada cuadro colgado tiene una marca
serve-room-lost = Sin conexión con la computadora.
serve-room-of = de { $cells } cuadros colgados
serve-room-reveal = Mostrar la imagen
serve-room-ask = ¿Mostrar la imagen a todos?
serve-room-ask-why = Entonces se acaba el secreto. Puede ocultarla otra vez, pero ya nadie la olvidará.
serve-room-ask-yes = Mostrarla
serve-room-ask-no = Todavía no
serve-room-mural = Nuestro mural
serve-room-original = La imagen
serve-room-original-alt = La imagen de la que cada persona dibujó una pieza
serve-room-beside = Con la imagen al lado
serve-room-full = Pantalla completa
serve-room-full-end = Salir de pantalla completa
serve-room-since = Esto es de las
serve-room-code-who = Muéstrelo solo a los ayudantes. Cualquiera que tenga este código puede enviar fotos.
serve-room-next-show = ¿Todo listo? ¡Muestre la imagen!
serve-room-next-keep = Den un paso atrás y miren. Después tomen una última foto con buena luz, para los recuerdos.
serve-error-unknown = no encontramos la dirección de red de esta computadora ({ $said }): indíquela con --address
serve-error-no-network = esta computadora no está en una red a la que lleguen los teléfonos: conéctela al Wi-Fi del salón, o active el punto de acceso de un teléfono y conéctela a él, e inténtelo de nuevo
serve-error-several = esta computadora tiene varias direcciones: elija una con --address: { $own }
serve-error-open = { $asked } no es una dirección de la red propia del salón (10.…, 172.16.… a 172.31.…, 192.168.…): las fotos de la pared no se muestran a nadie más
serve-error-foreign = { $asked } no es la dirección de esta computadora: tiene { $own }
serve-error-port-taken = el puerto { $port } está ocupado: ¿ya está abierta la página? Busque su ventana o elija otro puerto con --port
serve-error-refused = la página no puede abrirse en { $at }: { $said }

## tour

help-tour = Muestra un evento completo con una imagen de ejemplo, en unos segundos
help-tour-folder = Dónde poner el evento de ejemplo
tour-event-name = Noche en la biblioteca del puerto
tour-begins = Un evento completo en cinco pasos, en la carpeta { $folder }. Las líneas que empiezan con $ muestran comandos que usted puede escribir (sin el $).
tour-sample =
    1. El evento: event.toml tiene sus ajustes y picture.png es lo que estará en la pared.
       Para un evento propio: everysquare new CARPETA --picture ARCHIVO
tour-print =

    2. El material: piezas para repartir, cuadros en blanco para dibujar, tarjetas de borde para la pared.
tour-rehearse =

    3. La pared: una foto de práctica, porque todavía nadie ha dibujado. Algunos cuadros están en otro lugar; las respuestas se guardan al lado.
tour-check =

    4. La revisión: se lee la foto y se compara con el plan. Esto es lo que hay que corregir.
tour-display =

    5. Los recuerdos: el mural junto a la imagen, sus medidas y láminas para colgar.
tour-compared =

    El informe coincide con las respuestas en { $right } de { $cells } lugares.
tour-ends =

    Qué hay en { $folder }:
      event.toml   sus ajustes; ábralo con cualquier editor de texto
      print/       pieces.pdf, squares.pdf, edge-cards.pdf para imprimir al 100 %; manifest.json para la revisión
      rehearsals/  la foto de práctica y sus respuestas
      checks/      una carpeta por revisión; abra su report.html
      display/     una carpeta con los recuerdos; abra su side-by-side.pdf

    Qué probar después:
      everysquare rehearse { $folder } --seed 6 --permute-all     una pared con cada cuadro en otro lugar
      everysquare check { $folder } FOTO.jpg                      una foto propia, cuando los cuadros estén impresos
      everysquare new mi-evento --picture mi-imagen.png           un evento propio

## errors: the event's folder

error-folder-first = { $path } es un archivo. Primero va la carpeta del evento y después las fotos: everysquare { $command } CARPETA FOTO
error-folder-file = { $path } es un archivo, no la carpeta de un evento
error-folder-no-event = en { $path } todavía no hay ningún evento. Cree uno con: everysquare new { $typed } --picture ARCHIVO
error-folder-near = no hay ningún evento en { $path }. ¿Quiere decir { $near }?
error-folder-not-printed = el material de { $path } todavía no se ha impreso. Primero escriba: everysquare print { $typed }
error-folder-no-picture = no existe la imagen { $path }. Revise el nombre y la carpeta
error-folder-changed = event.toml ahora dice { $own }, pero el material impreso es { $kit }. Deje event.toml como estaba o vuelva a imprimir el material
error-folder-not-all-printed = event.toml pide { $squares }, pero eso no se imprimió, porque quedaba libre en la pared. Póngalo otra vez en keep_free, o imprima el juego de nuevo: everysquare print { $typed }
error-folder-described = { $tag }, { $columns } × { $rows } cuadros de { $side } mm
error-folder-not-text = { $path } no es texto sin formato. Guárdelo otra vez como texto sin formato (UTF-8)
error-folder-too-large = { $path } tiene más de { $most } MB, demasiado para { $file }
error-folder-an-event = un event.toml
error-folder-a-manifest = un registro de impresión
error-folder-a-template = una plantilla
error-folder-a-words-file = un archivo de frases
error-folder-a-picture = una imagen
error-folder-many-templates = en { $path } hay más de { $most } plantillas. Deje solo las que reemplazan una del programa
error-folder-other-words = { $path } no se usa. Ponga sus propias frases en templates/words.ftl, en el idioma del evento
error-folder-read = no se puede leer { $path }: { $why }
error-folder-full = no se puede guardar { $path } porque el disco está lleno. Libere espacio y repita el comando
error-folder-read-only = no se puede guardar { $path } porque su carpeta es de solo lectura. Copie la carpeta del evento a un lugar propio
error-folder-write = no se puede guardar { $path }: { $why }
error-folder-no-right = usted no tiene permiso; pídaselo a quien lo creó
error-folder-is-folder = es una carpeta
error-folder-file-in-the-way = hay un archivo donde debe haber una carpeta
error-folder-no-name = ese nombre no sirve para una carpeta

## errors: manifest and codes

error-manifest-format = print/manifest.json tiene el formato { $read } y este programa lee el formato { $known }. Vuelva a imprimir el material o use el programa que lo creó
error-manifest-json = no se puede leer print/manifest.json: { $said }
error-manifest-wall = print/manifest.json no describe un mural: { $what }
error-manifest-code = print/manifest.json, código { $name }: { $what }
error-manifest-code-outside = un código de { $side } mm en { $x }, { $y } mm no cabe dentro de su cuadro
error-manifest-module = el bloque más pequeño de un código mide { $module } mm; debe medir de { $low } a { $high } mm
error-manifest-cells = { $columns } columnas y { $rows } filas son demasiadas; use { $most } cuadros como máximo
error-manifest-sizes = cuadros de { $square } mm y piezas de { $piece } mm; ambos deben medir de { $low } a { $high } mm
error-manifest-listed = hay { $cells } lugares, pero en la lista { $listed ->
    [one] hay 1 cuadro
   *[other] hay { $listed } cuadros
}
error-manifest-twice = el cuadro { $square } está dos veces en la lista
error-manifest-same-code = los cuadros { $first } y { $second } llevan el mismo código
error-manifest-outside = el cuadro { $square } está en la columna { $column }, fila { $row }, fuera de la cuadrícula
error-manifest-label = el cuadro { $square } está donde event.toml tiene { $expected }. Deje rows_from como estaba cuando se imprimió el material o vuelva a imprimirlo
error-manifest-kind = la tarjeta “{ $name }” es de tipo “{ $kind }”; debe ser column, row o corner
error-manifest-card = la tarjeta { $name } de tipo { $kind } no tiene posición o no tiene tamaño
error-code-text = “{ $text }” no cabe en un código. Use como máximo { $most } caracteres: 0-9, A-Z, espacio y $%*+-./:
error-code-hex = “{ $text }” no es el patrón de un código, que tiene 111 dígitos hexadecimales

## errors: event.toml

error-settings-at = event.toml, línea { $line }: { $read }: { $what }
error-settings-at-empty = event.toml, línea { $line }, que está vacía: { $what }
error-settings-unknown = event.toml, línea { $line }: { $read } no es un ajuste. { $hint }
error-settings-unknown-in = event.toml, línea { $line }: { $read } no es un ajuste de [{ $section }]. { $hint }
error-settings-missing = en event.toml falta { $name }. Agregue { $example }
error-settings-no-such = { $name } no es un ajuste de event.toml
error-settings-twice = este nombre aparece dos veces. Deje solo uno
error-settings-quotes = las palabras van entre comillas, como "a4"
error-settings-no-toml = no se puede leer esta línea ({ $said }). Los números van sin comillas; las palabras, entre comillas

## errors: the organiser's own templates

error-template-unknown = templates/{ $name }.typ no reemplaza ninguna plantilla del programa. Las que hay son { $known }
error-template-unknown-near = templates/{ $name }.typ no reemplaza ninguna plantilla del programa. ¿Quiso decir { $near }.typ?
error-template-line = templates/{ $name }.typ, línea { $line }: { $said }. Corríjala, o quite el archivo para imprimir con la plantilla del programa
error-template = templates/{ $name }.typ: { $said }. Corríjala, o quite el archivo para imprimir con la plantilla del programa

## errors: the program

error-line = everysquare: { $what }
error-about = { $path }: { $what }
error-output = no se puede escribir la salida: { $why }
error-json = uno de los archivos del propio programa está dañado: { $said }
error-system = la computadora dice: { $said }
error-fault = algo falló dentro del programa y se detuvo. Ningún archivo quedó a medias. Por favor, repórtelo junto con lo que escribió: { $said }
error-tour-taken = { $folder } ya contiene otro evento, así que no se cambió nada. Dé otra carpeta para el recorrido: everysquare tour CARPETA
error-tour-no-check = no se guardó ninguna revisión

## what was mistyped

typed-wrong = everysquare: { $what } (escriba “everysquare --help” para ver qué se puede escribir)
typed-unknown = no existe la opción { $arg }
typed-unknown-near = no existe la opción { $arg }. ¿Quiso decir { $near }?
typed-one-too-many = “{ $arg }” está de más. Si el nombre de una carpeta tiene espacios, escríbalo entre comillas
typed-no-command = no existe el comando “{ $command }”
typed-no-command-near = no existe el comando “{ $command }”. ¿Quiso decir { $near }?
typed-no-value = después de { $arg } va un valor
typed-value = “{ $value }” no sirve para { $arg }: { $why }
typed-too-many = “{ $value }” está de más para { $arg }
typed-twice = { $arg } aparece dos veces
typed-conflict = use { $arg } o { $other }, no las dos a la vez
typed-missing = agregue { $args }
typed-not-text = lo que se escribió no es texto sin formato (UTF-8)
typed-choice = escriba { $choices }
typed-whole = debe ser un número entero
typed-number = debe ser un número

## help

help-heading-usage = Uso
help-heading-commands = Comandos
help-heading-arguments = Argumentos
help-heading-options = Opciones
help-default = { $help } [si se omite: { $values }]
help-possible = { $help } [valores: { $values }]
help-help = Muestra esta ayuda
help-version = Muestra la versión
help-language = El idioma de los mensajes, en (inglés), en-GB (inglés británico) o es (español), mientras no haya un evento; después cuenta lo que dice event.toml
help-value-command = COMANDO
help-value-options = OPCIONES
help-value-language = IDIOMA
help-value-folder = CARPETA
help-value-file = ARCHIVO
help-value-photo = FOTO
help-value-document = DOCUMENTO
help-value-n = N
help-value-name = NOMBRE
help-value-label = ETIQUETA
help-value-tag = CLAVE
help-value-mm = MM
help-value-address = DIRECCIÓN
help-value-port = PUERTO
help-value-minutes = MINUTOS
help-value-time = HORA
help-value-size = TAMAÑO
help-value-paper = PAPEL
help-value-how = CÓMO
help-value-unit = UNIDAD
help-value-which = CUÁLES
help-value-px = PX
help-value-part = PARTE
help-value-points = PUNTOS
help-value-text = TEXTO
help-value-degrees = GRADOS

## errors: a photo

error-photo-no-file = no existe ese archivo. Revise su nombre y su carpeta
error-photo-no-right = usted no tiene permiso para abrir este archivo
error-photo-is-folder = esto es una carpeta. Escriba los nombres de las fotos que contiene
error-photo-unreadable = no se puede leer este archivo ({ $why }). Cópielo a esta computadora e intente otra vez
error-photo-file-too-large = el archivo es más grande que cualquier foto. ¿Es el correcto?
error-photo-empty = el archivo está vacío. Vuelva a copiar la foto
error-photo-heic = este tipo de foto HEIC no se puede leer ({ $said }). Compártala como JPEG, o elija Configuración > Cámara > Formatos > “Más compatible” en el iPhone y tómela de nuevo
error-photo-avif = esta es una imagen AVIF, que no se puede leer. Compártala como JPEG
error-photo-video = esto es un video. Tome una foto
error-photo-unknown = esta no es una foto que se pueda leer. Guárdela como JPEG, PNG, WebP, TIFF o HEIC. ¿Es un PDF? Guarde su página como imagen o tome una foto de ella
error-photo-truncated = a esta foto le falta el final. Cópiela o envíela otra vez
error-photo-damaged = la foto está dañada o es de un tipo poco común ({ $why }). Cópiela otra vez o guárdela como JPEG con otro programa
error-photo-gave-up = no se pudo abrir
error-photo-no-size = sin tamaño
error-photo-wrong-pixels = número de píxeles equivocado
error-photo-too-large = la foto tiene { $width } × { $height } píxeles, más de { $most } millones. Hágala más pequeña e intente otra vez
error-photo-too-small = la foto tiene solo { $width } × { $height } píxeles. Envíe la original, no una miniatura

## errors: reading the wall

error-read-no-codes = no se encontró ningún código de este evento. ¿Son cuadros de este evento? Acérquese, no mueva el teléfono e intente otra vez. Una copia pequeña de una foto no sirve: use la original
error-read-foreign = los códigos de esta foto son de otro evento (clave { $tags }). Revise la carpeta o tome una foto de la pared de este evento
error-read-other = no se puede leer ningún cuadro de este evento, solo otros códigos ({ $texts }). Acérquese, no mueva el teléfono e intente de nuevo. ¿Es esta la pared?
error-read-too-dark = la foto está demasiado oscura. Encienda más luces e intente otra vez
error-read-cannot-place = se ven cuadros, pero no se sabe en qué parte de la pared están. Aléjese hasta que toda la pared salga en la foto, o cuelgue las tarjetas de las esquinas. Si están sobre una mesa, use find en lugar de check
error-read-too-small = los cuadros están en la foto, pero sus códigos son demasiado pequeños o borrosos para leerlos. Acérquese, o tome una foto de cada mitad. Sostenga firme el teléfono y use la foto original, no una copia de un chat
error-jpeg-size = una imagen de { $width } × { $height } píxeles no puede ser un archivo JPEG. Cada lado debe tener de 1 a 65535 píxeles

## errors: a made photo

error-rehearse-many-faults = estos errores ocupan { $asked } lugares y la pared tiene { $cells }. Pida menos (un intercambio ocupa 2 lugares, un ciclo 3, los demás 1)
error-rehearse-nothing-twice = no queda ningún cuadro que pueda estar dos veces. Pida menos cuadros faltantes o de otros eventos
error-rehearse-permuted-and-swapped = todos los cuadros están ya en otro lugar, así que deje los intercambios y los ciclos en 0
error-rehearse-too-few = solo { $squares ->
    [one] queda 1 cuadro
   *[other] quedan { $squares } cuadros
} para poner en otro lugar. Se necesitan al menos 2
error-rehearse-option = { $name }: { $value }; debe ser { $allowed }
error-rehearse-lens = una lente con k1 = { $k1 }, k2 = { $k2 } dobla la imagen sobre sí misma. Use valores menores
error-rehearse-view = desde ahí la pared no puede ocupar el { $percent } % de la foto. Gire menos la cámara o pida que la pared ocupe menos
error-rehearse-many-pixels = { $px } px por módulo requieren una foto de { $width } x { $height } px; el máximo es 8000 x 6000. Pida menos, o que la pared ocupe más de la foto
error-rehearse-printed = print/manifest.json tiene { $squares } cuadros para una pared de { $cells } lugares. Vuelva a imprimir el material
error-rehearse-jpeg = no se puede guardar la foto de práctica como JPEG: { $said }
error-rehearse-range = de { $low } a { $high }
error-rehearse-range-px = de { $low } a { $high } px
error-rehearse-range-mm = de { $low } a { $high } mm
error-rehearse-range-degrees = de { $low } a { $high } grados
error-rehearse-option-width = el ancho de la foto
error-rehearse-option-height = la altura de la foto
error-rehearse-option-px-per-module = el mínimo de px por módulo
error-rehearse-option-misplacement = la distancia de los cuadros a sus lugares
error-rehearse-option-askew = la inclinación de los cuadros
error-rehearse-option-cut = la variación del lado cortado
error-rehearse-option-bend = la curva del papel
error-rehearse-option-drawn-into = la parte de códigos con dibujo encima
error-rehearse-option-fill = la parte que ocupa la pared
error-rehearse-option-yaw = el ángulo hacia la derecha
error-rehearse-option-pitch = el ángulo hacia arriba
error-rehearse-option-roll = la inclinación de la cámara
error-rehearse-option-view = el campo de visión
error-rehearse-option-shift-right = el desplazamiento a la derecha
error-rehearse-option-shift-down = el desplazamiento hacia abajo
error-rehearse-option-k1 = k1
error-rehearse-option-k2 = k2
error-rehearse-option-gradient = el cambio de luz
error-rehearse-option-shadow = la sombra
error-rehearse-option-vignetting = el oscurecimiento de las esquinas
error-rehearse-option-red = el rojo de la luz
error-rehearse-option-green = el verde de la luz
error-rehearse-option-blue = el azul de la luz
error-rehearse-option-exposure = la exposición
error-rehearse-option-blur = el desenfoque
error-rehearse-option-noise = el ruido
error-rehearse-option-sharpening = el enfoque artificial
error-rehearse-option-quality = la calidad del JPEG
error-rehearse-option-orientation = la orientación
error-rehearse-option-people = el número de personas
error-rehearse-option-gap = el espacio entre tableros
error-rehearse-option-board-angle = el ángulo de los tableros
error-rehearse-option-ink-runs = cuánto se corre la tinta
error-rehearse-option-density = qué tan oscura es la tinta
error-rehearse-option-streaks = cuánto tóner falta en las rayas
error-rehearse-option-draft = cuánta tinta falta entre las filas de puntos
error-rehearse-option-unsteady = qué tan temblorosos son los dibujos

## errors: printing

error-print-changed = event.toml cambió desde que se imprimió este material, así que las páginas nuevas no coincidirían con las otras. Vuelva a imprimirlo todo: everysquare print { $folder }

## questions

print-questions = Preguntas
print-answers = Respuestas
questions-about = Tarjetas para recortar, cada una con una pregunta: { $questions }
questions-about-key = La imagen completa, dividida en piezas por líneas, con letras para las columnas y números para las filas. { $piece } está en la columna { $column } y la fila { $row }. { $first ->
    [top] La fila 1 está arriba.
   *[bottom] La fila 1 está abajo.
}
questions-key = Guía de la imagen
questions-key-intro = Deje esta hoja boca abajo hasta que se descubra la imagen. La pieza { $piece } está en la columna { $column }, fila { $row }. { $first ->
    [top] La fila 1 está arriba.
   *[bottom] La fila 1 está abajo.
}
questions-answers = Respuestas a las preguntas
questions-rung-see = Ver
questions-rung-count = Contar
questions-rung-compare = Comparar
questions-rung-explain = Explicar
questions-ages-see = de 5 a 7 años
questions-ages-count = de 7 a 9 años
questions-ages-compare = de 9 a 12 años
questions-ages-explain = para todas las edades
questions-about-answers = Guarde estas respuestas lejos de las tarjetas. La mayoría de los números salen de esta imagen y de este mural. Las edades son aproximadas. Una pieza “tiene” un color si su reverso lo menciona.
questions-heading = { $rung }: { $ages }
questions-aloud = Léeme en voz alta
questions-number = N.º
questions-question = Pregunta
questions-answer = Respuesta
questions-guess = Yo creo que
questions-request = Di o dibuja cómo lo sabes.
questions-working = Cómo se encuentra
questions-inch = { $count ->
    [one] 1 pulgada
   *[other] { $count } pulgadas
}
questions-mm = { $count } mm
questions-inch2 = { $count ->
    [one] 1 pulgada cuadrada
   *[other] { $count } pulgadas cuadradas
}
questions-mm2 = { $count } mm²
questions-percent = { $count } %
questions-one-part = 1/{ $count }
questions-turned-back = { $letter }, un cuarto de vuelta a la { $way ->
    [right] derecha
   *[left] izquierda
}
questions-and = { $first } y { $last }
questions-sum = { $by ->
    [rows] Fila por fila, desde arriba: { $sum }
   *[columns] Columna por columna, desde la izquierda: { $sum }
}
questions-none = ninguno
questions-sum-total = { $terms } = { $total }

questions-ask-colours-of-piece = Mira esta pieza. ¿Cuántos colores ves?
questions-working-colours-of-piece = Pieza { $piece }: { $colours }
questions-ask-next-piece = ¿Qué pieza va en el hueco?
questions-working-next-piece = Las líneas solo continúan con { $answer }.
questions-ask-in-row-with = Mira las piezas de la { $first } a la { $last }. ¿Cuántas tienen el color { $colour }?
questions-working-in-row-with = { $cells }
questions-ask-turned-piece = Una pieza está de cabeza. ¿Cuál es?
questions-working-turned-piece = En { $answer } las líneas no continúan.
questions-ask-in-one-row = Mira el mural. Cuenta una fila completa. ¿Cuántos cuadros tiene?
questions-working-in-one-row = Uno en cada columna: { $columns }
questions-ask-pieces-with = Mira la guía de la imagen. ¿Cuántas piezas tienen el color { $colour }?
questions-working-pieces-with = { $counted }
questions-ask-left-in-row = Una fila tiene { $columns } lugares. { $hanging ->
    [one] Ya hay 1 cuadro.
   *[other] Ya hay { $hanging } cuadros.
} ¿Cuántos lugares quedan libres?
questions-working-left-in-row = { $columns } − { $hanging } = { $answer }
questions-ask-in-one-column = Mira el mural. Cuenta de abajo hacia arriba. ¿Cuántos cuadros hay en una columna?
questions-working-in-one-column = Uno en cada fila: { $rows }
questions-ask-one-colour = Mira la guía de la imagen. ¿Cuántas piezas tienen un solo color?
questions-working-one-colour = { $counted }
questions-ask-colours = Mira la tabla de lápices. ¿Cuántos colores tiene?
questions-working-colours = { $pencils }
questions-ask-one-more = La imagen tiene { $squares ->
    [one] 1 pieza
   *[other] { $squares } piezas
}. Agregas una más. ¿Cuántas hay ahora?
questions-working-one-more = { $squares } + 1 = { $answer }
questions-ask-corners = Un cuadro tiene 4 esquinas. { $squares } cuadros no se tocan. ¿Cuántas esquinas tienen entre todos?
questions-working-corners = 4 + 4 = { $answer }
questions-ask-boxes-across = Traza 3 líneas en un cuadro, de las marcas de arriba a las de abajo. ¿Cuántas tiras salen?
questions-working-boxes-across = 3 líneas forman { $answer } tiras.
questions-ask-sides = Un cuadro tiene 4 lados. { $squares } cuadros no se tocan. ¿Cuántos lados tienen entre todos?
questions-working-sides = 4 + 4 + 4 = { $answer }
questions-ask-tape = Cada cuadro lleva { $strips } tiras de cinta. Vas a colgar { $squares } cuadros. ¿Cuántas tiras necesitas?
questions-working-tape = { $strips } + { $strips } = { $answer }

questions-ask-guess = Mira la guía de la imagen. Adivina cuántas piezas tienen el color { $colour }. Luego cuéntalas. ¿Cuántas son?
questions-working-guess = { $counted }
questions-ask-all-squares = El mural tiene { $columns } columnas y { $rows } filas. ¿Cuántos cuadros hay en total?
questions-working-all-squares = { $columns } × { $rows } = { $answer }
questions-ask-left = El mural lleva { $count } cuadros. Ya hay { $hanging } colgados. ¿Cuántos faltan?
questions-working-left = { $count } − { $hanging } = { $answer }
questions-ask-half-up = El mural lleva { $count } cuadros. Ya está colgada la mitad. ¿Cuántos cuadros son?
questions-working-half-up = { $count } ÷ 2 = { $answer }
questions-ask-next-rows = 1 fila tiene { $columns } cuadros. 2 filas tienen { $two } cuadros. ¿Cuántos cuadros tienen 3 filas?
questions-working-next-rows = { $two } + { $columns } = { $answer }
questions-ask-not-with = { $having } de las { $count } piezas tienen el color { $colour }. ¿Cuántas no lo tienen?
questions-working-not-with = { $count } − { $having } = { $answer }
questions-ask-quarter-boxes = Un cuadro tiene 3 marcas en cada lado. Traza una línea de cada marca a la que está enfrente. ¿Cuántos cuadritos salen?
questions-working-quarter-boxes = 4 a lo ancho y 4 a lo alto: 4 × 4 = { $answer }
questions-ask-quarter-up = Ya está colgada la cuarta parte de los { $count } cuadros. ¿Cuántos cuadros son?
questions-working-quarter-up = { $count } ÷ 4 = { $answer }
questions-ask-half-row = Una fila tiene { $columns } cuadros. Ya está colgada la mitad. ¿Cuántos cuadros son?
questions-working-half-row = { $columns } ÷ 2 = { $answer }
questions-ask-visitors = El mural lleva { $count } cuadros. Tú y tus amigos dibujan { $each } cuadros cada uno. ¿Cuántos amigos hacen falta, contándote a ti?
questions-working-visitors = { $count } ÷ { $each } = { $answer }
questions-ask-full-rows = Ya hay { $rows } filas completas. Cada fila tiene { $columns } cuadros. ¿Cuántos cuadros son?
questions-working-full-rows = { $rows } × { $columns } = { $answer }
questions-ask-half-of-boxes = Un cuadro tiene 16 cuadritos. Coloreas la mitad. ¿Cuántos cuadritos coloreas?
questions-working-half-of-boxes = 16 ÷ 2 = { $answer }
questions-ask-sides-of-squares = Un cuadro tiene 4 lados. ¿Cuántos lados tienen { $squares } cuadros, si no se tocan?
questions-working-sides-of-squares = { $squares } × 4 = { $answer }
questions-ask-tables = En cada una de { $tables } mesas hay { $pencils } lápices. ¿Cuántos lápices son?
questions-working-tables = { $tables } × { $pencils } = { $answer }
questions-ask-folded = Dobla una hoja por la mitad { $times } veces, sin abrirla. Luego ábrela. ¿Cuántas partes forman los dobleces?
questions-working-folded = Con cada doblez hay el doble: 2 × 2 × 2 = { $answer }
questions-ask-boxes-of-two = Un cuadro tiene 16 cuadritos. ¿Cuántos cuadritos tienen 2 cuadros?
questions-working-boxes-of-two = 16 + 16 = { $answer }
questions-ask-minutes = Dibujar un cuadro toma { $each } minutos. ¿Cuántos cuadros puedes dibujar en { $minutes } minutos?
questions-working-minutes = { $minutes } ÷ { $each } = { $answer }

questions-ask-scale = Una pieza mide { $piece } de ancho. Un cuadro mide { $square } de ancho. ¿Cuántas veces cabe el ancho de la pieza en el ancho del cuadro?
questions-working-scale = { $square } ÷ { $piece } = { $answer }. Es el factor de escala.
questions-ask-pieces-on-square = El ancho de un cuadro es { $scale } veces el de una pieza. Su altura también es { $scale } veces la de la pieza. ¿Cuántas piezas cubren un cuadro?
questions-working-pieces-on-square = { $scale } × { $scale } = { $answer }
questions-ask-mural-width = { $squares } cuadros están uno al lado del otro. Cada uno mide { $square } de ancho. { $unit ->
    [inch] ¿Cuántas pulgadas
   *[mm] ¿Cuántos milímetros
} mide el mural de ancho?
questions-working-mural-width = { $squares } × { $square } = { $answer }
questions-ask-mural-height = { $squares } cuadros están uno encima del otro. Cada uno mide { $square } de alto. { $unit ->
    [inch] ¿Cuántas pulgadas
   *[mm] ¿Cuántos milímetros
} mide el mural de alto?
questions-working-mural-height = { $squares } × { $square } = { $answer }
questions-ask-fraction-with = { $part }/{ $of } de las { $count } piezas tienen el color { $colour }. ¿Cuántas piezas son?
questions-working-fraction-with = { $count } ÷ { $of } = { $one }, luego { $one } × { $part } = { $answer }
questions-ask-larger = En la pieza, una línea mide { $length } mm. El ancho del cuadro es { $scale } veces el de la pieza. ¿Cuántos milímetros mide la línea en el cuadro?
questions-working-larger = { $length } mm × { $scale } = { $answer }
questions-ask-around = Una cinta da una vuelta por el borde del mural. El mural tiene { $columns } cuadros de ancho y { $rows } de alto. Cada cuadro mide { $square } de ancho. { $unit ->
    [inch] ¿Cuántas pulgadas
   *[mm] ¿Cuántos milímetros
} mide la cinta?
questions-working-around = Perímetro: 2 × ({ $columns } + { $rows }) × { $square } = { $answer }
questions-ask-fraction-up = Ya están colgados { $part }/{ $of } de los { $count } cuadros. ¿Cuántos cuadros son?
questions-working-fraction-up = { $count } ÷ { $of } = { $one }, luego { $one } × { $part } = { $answer }
questions-ask-which-part = { $having } de las { $count } piezas tienen el color { $colour }. ¿Qué número va en el recuadro? Lo tiene 1/☐ de las piezas.
questions-working-which-part = { $count } ÷ { $having } da { $answer }
questions-ask-smaller = En el cuadro, una línea mide { $length } mm. El ancho del cuadro es { $scale } veces el de la pieza. ¿Cuántos milímetros medía la línea en la pieza?
questions-working-smaller = { $length } mm ÷ { $scale } = { $answer }
questions-ask-inches-to-mm = Una pulgada mide 25.4 mm. ¿Cuántos milímetros hay en { $inches } pulgadas?
questions-working-inches-to-mm = { $inches } × 25.4 mm = { $answer }
questions-ask-boxes-of-squares = Las líneas entre las marcas dividen un cuadro en 16 cuadritos. ¿Cuántos cuadritos tienen { $squares } cuadros?
questions-working-boxes-of-squares = { $squares } × 16 = { $answer }
questions-ask-part-of-boxes = Un cuadro tiene 16 cuadritos. { $part }/{ $of } de ellos están coloreados. ¿Cuántos cuadritos son?
questions-working-part-of-boxes = 16 ÷ { $of } × { $part } = { $answer }
questions-ask-millimetres = Un hilo mide { $metres } metros. ¿Cuántos milímetros son?
questions-working-millimetres = { $metres } × 1000 mm = { $answer }

questions-ask-next-square = Un bloque de { $a } × { $a } tiene { $aa } cuadros. Uno de { $b } × { $b } tiene { $bb }. Uno de { $c } × { $c } tiene { $cc }. ¿Cuántos cuadros tiene el bloque que sigue?
questions-working-next-square = { $side } × { $side } = { $answer }
questions-ask-turn-back = ¿Qué pieza está girada y hacia qué lado hay que girarla para arreglarla?
questions-working-turn-back = Las líneas vuelven a coincidir en los dos lados.
questions-ask-edge = El mural tiene { $columns } columnas y { $rows } filas. ¿Cuántos cuadros hay en su borde?
questions-working-edge = 2 × { $columns } + 2 × { $rows } − 4 = { $answer }. Las cuatro esquinas se habían contado dos veces.
questions-ask-both = Mira la guía de la imagen. ¿Cuántas piezas tienen el color { $first } y también el color { $second }?
questions-working-both = { $counted }
questions-ask-larger-patch = En la pieza, una mancha de color cubre { $length } mm². En el cuadro, cada longitud mide { $scale } veces lo que mide en la pieza. ¿Cuántos mm² cubre ahí la mancha?
questions-working-larger-patch = { $length } mm² × { $scale } × { $scale } = { $answer }
questions-ask-blocks = El mural tiene { $columns } columnas y { $rows } filas. ¿En cuántos lugares hay un bloque de 2 × 2 cuadros? Los bloques se pueden traslapar.
questions-working-blocks = ({ $columns } − 1) × ({ $rows } − 1) = { $answer }
questions-ask-columns-to-rows = El mural tiene { $columns } columnas y { $rows } filas. ¿Qué número va en el recuadro? { $columns } : { $rows } = { $first } : ☐
questions-working-columns-to-rows = Divide los dos entre { $divisor }: { $rows } ÷ { $divisor } = { $answer }
questions-ask-percent-with = { $having } de las { $count } piezas tienen el color { $colour }. ¿Qué porcentaje es?
questions-working-percent-with = { $having } ÷ { $count } = { $answer }
questions-ask-chessboard = Los { $count } cuadros se colorean como un tablero de ajedrez. La esquina de arriba a la izquierda es negra. ¿Cuántos cuadros son negros?
questions-working-chessboard = { $odd ->
    [yes] La mitad de { $count }, redondeada hacia arriba: { $answer }
   *[no] La mitad de { $count }: { $answer }
}
questions-ask-most-colours = Mira la guía de la imagen. Ninguna pieza tiene más de { $colours } colores. ¿Cuántas piezas tienen { $colours }?
questions-working-most-colours = { $counted }
questions-ask-seams = El mural tiene { $columns } columnas y { $rows } filas. Una tira de cinta une cada cuadro con cada vecino de al lado, de arriba y de abajo. ¿Cuántas tiras son?
questions-working-seams = { $rows } × ({ $columns } − 1) + { $columns } × ({ $rows } − 1) = { $answer }
questions-ask-square-step = Un bloque de cuadros es de { $to } × { $to }. Otro es de { $from } × { $from }. ¿Cuántos cuadros más tiene el bloque grande?
questions-working-square-step = { $to } × { $to } − { $from } × { $from } = { $answer }
questions-ask-all-blocks = El mural tiene { $columns } columnas y { $rows } filas. ¿Cuántos bloques cuadrados hay en total? Cuenta todos los tamaños: 1 × 1, 2 × 2, 3 × 3, etc.
questions-working-all-blocks = Tamaño por tamaño: { $sum }
questions-ask-area-step = Una pieza mide { $piece } de ancho. Un cuadro mide { $square } de ancho. ¿Cuántas pulgadas cuadradas más tiene el cuadro?
questions-working-area-step = { $to } × { $to } − { $from } × { $from } = { $answer }
questions-ask-piece-to-square = Una pieza mide { $piece } de ancho. Un cuadro mide { $square } de ancho. ¿Qué número va en el recuadro? Pieza : cuadro = { $first } : ☐
questions-working-piece-to-square = Divide los dos entre { $divisor }: { $square } ÷ { $divisor } da { $answer }
questions-ask-percent-up = Ya está colgado el { $percent } % de los { $count } cuadros. ¿Cuántos cuadros son?
questions-working-percent-up = { $count } × { $percent } ÷ 100 = { $answer }
questions-ask-odd-numbers = 1 + 3 = 4 y 1 + 3 + 5 = 9. ¿Cuánto suman los números impares del 1 al { $last }?
questions-working-odd-numbers = { $terms } números: { $terms } × { $terms } = { $answer }
questions-ask-hellos = { $people } visitantes se saludan todos entre sí, cada pareja una sola vez. ¿Cuántos saludos son?
questions-working-hellos = { $sum }
questions-ask-longer-sides = Haces un cuadro con lados que miden { $times } veces lo que medían. ¿Cuántas veces la cantidad de papel necesitas?
questions-working-longer-sides = { $times } × { $times } = { $answer }
questions-ask-box-edge = Las líneas entre las marcas forman 4 × 4 cuadritos. ¿Cuántos de ellos tocan el borde del cuadro?
questions-working-box-edge = 16 cuadritos − 4 del centro = { $answer }
questions-ask-box-blocks = Las líneas entre las marcas forman 4 × 4 cuadritos. ¿Cuántos cuadrados de todos los tamaños encuentras? Cuenta también el grande.
questions-working-box-blocks = 16 + 9 + 4 + 1 = { $answer }
questions-ask-percent-of-boxes = Un cuadro tiene 16 cuadritos. El { $percent } % está coloreado. ¿Cuántos cuadritos son?
questions-working-percent-of-boxes = 16 × { $percent } ÷ 100 = { $answer }
questions-ask-boxes-ratio = De 16 cuadritos, 4 están coloreados y 12 son blancos. ¿Qué número va en el recuadro? Coloreados : blancos = 1 : ☐
questions-working-boxes-ratio = 12 ÷ 4 = { $answer }

## steps

print-table-card = Tarjeta de mesa
steps-title = Dibuja un cuadro de nuestra gran imagen
steps-about = Una tarjeta para doblar y parar en la mesa, con los mismos seis pasos dibujados en los dos lados. { $steps }
steps-1 = Toma una pieza y el cuadro con la misma etiqueta.
steps-2 = Gíralos hasta que puedas leer la etiqueta.
steps-3 = ¿Qué líneas tocan el borde? Usa las marcas.
steps-4 = Dibújalas más grandes en tu cuadro.
steps-5 = Coloréalo. Deja en blanco el cuadrito del código.
steps-6 = Llévalo a la pared. Quédate con tu pieza.
steps-fold = doblar hacia atrás
steps-ridge = doblar hacia atrás: esta es la parte de arriba
steps-overlap = Pegue aquí el otro extremo, hasta esta línea
strips-fold = doblar aquí hacia atrás
strips-slip = Tu cuadro está en la columna { $column }, fila { $row }. Trae este papel cuando vengas por él.
steps-1-strip = Toma una tira: tu pieza y tu cuadro.
steps-6-strip = Lleva la tira entera a la pared.

## signs

print-signs = Letreros
sign-times = De { $start } a { $end }
sign-photos = Tomamos fotos de la pared. Si no quieres salir en ellas, solo dilo.
sign-door = ¡Pasa a dibujar!
sign-door-more = Cada quien dibuja un cuadro. Juntos forman una gran imagen.
sign-pieces = Aquí te damos tu pieza
sign-pieces-more = ¿Algo rápido o algo para pensar? Tú eliges.
sign-tables = Dibuja aquí
sign-tables-more = Siéntate donde quieras. Comparte los lápices y tómate tu tiempo.
sign-wall = Trae aquí tu cuadro
sign-wall-more = Lo colgamos contigo. Por favor, mantén los dos pies en el suelo.
sign-mural = Lo dibujamos entre todos
sign-mural-more = { $count } cuadros, cada uno dibujado a partir de una pieza pequeña de la imagen.

## who reaches what

about-feet = { $feet } pies ({ $metres } m)
about-metres = { $metres } m ({ $feet } pies)
paper-feet = { $feet } pies² ({ $metres } m²)
paper-metres = { $metres } m² ({ $feet } pies²)
reach-inches = { $inches } pulg ({ $metres } m)
reach-metres = { $metres } m ({ $inches } pulg)
people-children-from-5 = Niños de 5 años o más: { $reach }
people-children-from-9 = Niños de 9 años o más: { $reach }
people-seated = Adultos sentados: { $reach }
people-adults = Adultos: { $reach }
reach-adult-hangs = Un adulto cuelga: { $rows }
reach-other-hangs = Otra persona cuelga: { $rows }
reach-step-stool = Banquito: { $rows }
reach-stepladder = Escalera: { $rows }
span = filas { $first } a { $last }
span-one = fila { $row }
span-none = –

## helpers

print-helpers = Ayudantes
helpers-level = Nivel
helpers-pieces = Piezas
helpers-minutes = Minutos por pieza
helpers-last = Entregar hasta (minutos desde el comienzo)
helpers-last-clock = Entregar hasta
helpers-label = Una etiqueta como { $label } significa columna { $label-column }, fila { $label-row }. Las columnas van de izquierda a derecha. La fila 1 está { $rows-from ->
    [top] arriba
   *[bottom] abajo
}.

helpers-hand-out = Estación 1: La entrega
helpers-hand-out-intro = Usted entrega a cada visitante una pieza (una parte pequeña de la imagen) y el cuadro de papel con la misma etiqueta. Todos dibujan, también los adultos. Tenga a la mano: las bolsas, los cuadros en orden, la lista de control, un bolígrafo.
helpers-hand-out-intro-strip = Usted entrega a cada visitante una tira: una parte pequeña de la imagen, la pieza, y a su lado el cuadro donde se dibuja. Todos dibujan, también los adultos. Tenga a la mano: las tiras, un montón por nivel, boca abajo.
helpers-sort = Ordene
helpers-sort-1 = Ordene las piezas en una bolsa por nivel. En el reverso, arriba a la derecha, hay un número pequeño del 1 al 3. En cada bolsa, los 1 arriba, luego los 2 y luego los 3. Coloque los cuadros fila por fila para encontrar rápido cada etiqueta.
helpers-sort-1-strip = Haga un montón de tiras por nivel. Ya salen impresas en orden, con la primera que se entrega arriba. El nivel y un número están en el talón.
helpers-sort-2 = La última columna dice cuándo parar. Una pieza entregada después no se terminaría a tiempo.
helpers-say = Diga
helpers-say-words = “Esta es una parte pequeña de una imagen grande. Dibújala en este cuadro, que mide { $scale } veces lo que mide la pieza. ¿Qué es la imagen? ¡Es un secreto hasta que esté en la pared!”
helpers-each = Con cada visitante
helpers-each-1 = Pregunte: “¿Algo rápido o algo para pensar?” Dele la pieza de arriba de esa bolsa. El nivel es de la pieza, nunca del niño o la niña.
helpers-each-1-strip = Pregunte: “¿Algo rápido o algo para pensar?” Dele la tira de arriba de ese montón. El nivel es de la pieza, nunca del niño o la niña.
helpers-each-2 = Busque el cuadro con la misma etiqueta. Lean juntos las dos etiquetas en voz alta.
helpers-each-2-strip = Lean juntos la etiqueta en voz alta. Está en el talón y en el cuadro.
helpers-each-3 = Marque “entregado” junto a esa etiqueta en la lista de control. No anote el nombre de nadie.
helpers-each-3-strip = No hay nada que anotar. Las tiras que quedan son las que no se han entregado.
helpers-each-4 = Muestre la tarjeta de mesa. Seis dibujos dicen qué hacer.
helpers-each-5 = Diga: “Cuando termines, lleva tu cuadro a la pared. Quédate con la pieza. Muestra cuál cuadro es tuyo.”
helpers-each-5-strip = Diga: “Cuando termines, lleva la tira entera a la pared. Te quedas con el talón. Muestra cuál cuadro es tuyo.”
helpers-order = ¿Qué pieza sigue?
helpers-order-1 = El número del reverso dice cuándo: 1 primero, 2 a la mitad, 3 al final. Deje que los visitantes elijan el nivel y tome el número más bajo.
helpers-order-1-strip = El número del talón dice cuándo: 1 primero, 2 a la mitad, 3 al final. Deje que los visitantes elijan el nivel y tome la tira de arriba.
helpers-order-2 = Los 1 llevan mucho de la imagen: así la pared parece algo desde temprano. Entre los 2 están los que la revelarían demasiado pronto. Los 3 son los que menos se extrañan si quedan lugares vacíos.
helpers-order-3 = La página del teléfono muestra lo que queda del mismo modo, nivel por nivel.
helpers-order-border = Un + al dorso es el borde de reserva: { $border } piezas. Repártalas solo cuando todas las demás estén repartidas y aún espere gente. Cuélguelas desde la fila de abajo hacia arriba.
helpers-order-border-strip = Un + en el talón es el borde de reserva: { $border } tiras. Repártalas solo cuando todas las demás estén repartidas y aún espere gente. Cuélguelas desde la fila de abajo hacia arriba.
helpers-secret = Guarde el secreto
helpers-secret-1 = Deje boca abajo la imagen y las tarjetas de preguntas hasta la sorpresa.
helpers-secret-2 = Si preguntan “¿Qué es?”, diga: “¡Tu cuadro es una de las pistas!”
helpers-if = Si …
helpers-if-1 = ¿Alguien tiene que irse? Ponga la pieza y el cuadro en la caja “por terminar”. Quien quiera puede terminarlos.
helpers-if-1-strip = ¿Alguien tiene que irse? Ponga la tira en la caja “por terminar”. Quien quiera puede terminarla.
helpers-if-2 = ¿Alguien termina pronto? Ofrezca otra pieza. Después de la sorpresa, ofrezca una tarjeta de preguntas.
helpers-if-3 = ¿Alguien quiere empezar de nuevo? ¡Está bien! Pida a quien organiza que imprima otra vez esa hoja. Si no hay tiempo, use un cuadro sin imprimir del mismo tamaño. Copie la etiqueta, grande, en la misma esquina. El teléfono no puede leerlo: revise usted ese lugar.
helpers-if-4 = ¿Un cuadro tiene dos círculos en la lista de control, o su visitante ya se fue? Pida a quien organiza que imprima otra vez las dos hojas y dé esa pieza a otra persona. ¿Regresan los dos? El primero va a la pared. Cuelgue el otro justo al lado del mural, con una nota adhesiva sobre su código.
helpers-if-4-strip = ¿Un cuadro tiene dos círculos en la lista de control, o su visitante ya se fue? Pida a quien organiza que imprima otra vez su tira y désela a otra persona. ¿Regresan los dos? El primero va a la pared. Cuelgue el otro justo al lado del mural, con una nota adhesiva sobre su código.
helpers-if-5 = ¿Un niño o una niña de menos de 5 años? Comparta una pieza con un adulto, o elija una de un color.
helpers-if-6 = ¿Quedan piezas? Las dibujan los ayudantes, o una clase las dibuja mañana.

helpers-tables = Estación 2: Las mesas de dibujo
helpers-tables-intro = Usted cuida que en los { $seats } asientos haya lo necesario y que a nadie le dé miedo un cuadro en blanco.
helpers-set = Prepare las mesas
helpers-set-1 = { $step-cards ->
    [one] 1 tarjeta de mesa. Dóblela, pegue sus extremos con cinta y párela.
   *[other] { $step-cards } tarjetas de mesa, más o menos una por cada cuatro asientos. Doble cada una, pegue sus extremos con cinta y párela.
}
helpers-set-2 = { $sets ->
    [one] Ponga los { $pencils-in-all } lápices de color donde todos los alcancen.
   *[other] Comparta { $pencils-in-all } lápices de color en el centro del salón. O dé a cada mesa los suyos: { $pencils-in-sets } en total. La hoja de lápices dice cuáles. Pregunte a quien organiza cuál de las dos formas es.
}
helpers-set-3 = { $sharpeners ->
    [one] 1 sacapuntas
   *[other] { $sharpeners } sacapuntas
} y { $erasers ->
    [one] 1 goma de borrar
   *[other] { $erasers } gomas de borrar
}, repartidos, y un recipiente para la viruta. Mantenga lo pequeño lejos de los menores de 3 años.
helpers-set-4 = Solo lápices de color. Los marcadores traspasan y la pintura ondula el papel. Los dos tapan el código.
helpers-help = Ayude
helpers-help-rule = Señale y pregunte; nunca dibuje en lugar de alguien. Cada cuadro debe ser todo de quien lo dibuja.
helpers-help-1 = “¿Qué líneas llegan al borde? ¿Cerca de cuál marca?”
helpers-help-2 = “Primero marca ese lugar en el cuadro. Luego une las marcas.”
helpers-help-3 = “¿De qué forma grande son estas marcas? Dibújala suave, y luego las pequeñas.”
helpers-help-4 = “Colorea hasta el borde. El cuadro vecino sigue justo ahí.”
helpers-help-5 = “¿Parece blanco? Mira los colores del reverso de la pieza. Si ninguno es ese, déjalo en blanco.”
helpers-help-scale = “El cuadro mide { $scale } veces lo que mide la pieza. ¿Cuánto medirá entonces esta línea?”
helpers-look = Fíjese
helpers-look-1 = ¿Puede leer la etiqueta en la pieza y en el cuadro? Entonces los dos están derechos.
helpers-look-2 = El recuadro del código se queda en blanco. Si alguien dibujó encima, déjelo. No borre ni recorte. Quien ayuda en la pared sabe qué hacer.
helpers-look-3 = Después de cada color, los lápices vuelven a donde todos los alcanzan.
helpers-look-4 = Nadie debe esperar un color más de un minuto. Sugiera empezar con otro color.
helpers-wait = Mientras esperan
helpers-wait-1 = Pueden sacar punta a los lápices o dibujar en papel reciclado.
helpers-wait-2 = Después de la sorpresa pueden probar una tarjeta de preguntas. Un cuadrito es ver, dos son contar, tres son comparar, y la estrella es para quien quiera explicar. Lea en voz alta las tarjetas con una oreja. Guarde la guía de la imagen con las tarjetas.

helpers-wall = Estación 3: La pared y el teléfono
helpers-wall-intro = Usted cuelga { $squares ->
    [one] 1 cuadro
   *[other] { $squares } cuadros
} en { $columns ->
    [one] 1 columna
   *[other] { $columns } columnas
} y { $rows ->
    [one] 1 fila
   *[other] { $rows } filas
}: { $width } de ancho, { $height } de alto, con el borde inferior a { $hang } del piso.
helpers-wall-free = No cuelgue nada en { $spots }. Lo que hay ahí en la pared debe quedar a la vista y al alcance.
helpers-hang = Cuelgue
helpers-hang-1 = Antes de empezar, revise las marcas del borde inferior y de una de cada dos filas. ¿Todavía no hay marcas? Las medidas están en el mapa de la pared; use un nivel y una línea tenue a lápiz.
helpers-hang-2 = ¿Ya están puestas las { $cards } tarjetas de borde? Si no: primero las esquinas, luego las columnas, luego las filas.
helpers-hang-3 = Los visitantes le traen sus cuadros. Cuelgue cada uno donde se cruzan su columna y su fila, con la etiqueta derecha, borde con borde: sin huecos, sin superponer.
helpers-hang-3-strip = Los visitantes le traen sus tiras. Doble el talón hacia atrás, córtelo (las tijeras son para los ayudantes) y entrégueselo. Cuelgue el cuadro donde se cruzan su columna y su fila, con la etiqueta derecha, borde con borde: sin huecos, sin superponer.
helpers-hang-4 = Enrolle un pedazo pequeño de cinta detrás de cada esquina. O ponga cinta solo en las tres esquinas sin código.
helpers-hang-5 = Marque “colgado” en su copia de la lista de control. Muestre a los visitantes cómo encontrar su lugar. Si los cuadros tienen reverso, ahí lo muestra una pared pequeña.
helpers-hang-5-strip = ¿No hay tiempo para cortar? Doble el talón detrás del cuadro y cuélguelo así. Muestre a los visitantes cómo encontrar su lugar.
helpers-who = Quién, y hasta dónde alcanza
helpers-floor = Desde el piso
helpers-help-needed = Filas más altas
helpers-photo = Tome la foto
helpers-photo-1 = Párese a unos { $distance } de la pared, frente { $photos ->
    [one] a su centro
   *[other] a la parte que va a tomar
}, con el teléfono a unos { $phone-height } del piso. Pida que se aparten las personas y quite los banquitos. Luces encendidas, flash apagado.
helpers-photo-2 = Sostenga el teléfono en { $held ->
    [sideways] horizontal
   *[upright] vertical
}, nivelado. Use la cámara principal, sin zoom. Limpie la lente. Toque la pared en la pantalla y espere a que se vea nítida.
helpers-photo-3 = { $photos ->
    [one] Tome toda la pared en una sola foto, con un poco de espacio alrededor. Tómela dos veces.
   *[other] Esta pared es grande. Tome { $photos } fotos a lo largo, cada una con dos columnas o filas de la anterior. Tome cada foto dos veces.
}
helpers-photo-4 = ¿Hay brillos en el papel? Dé un paso al lado y tómela otra vez.
helpers-photo-5 = Solo la pared en la imagen: ninguna cara, ningún nombre.
helpers-photo-6 = Con la página para ayudantes abierta (escanee el código QR de la computadora), toque el botón de la foto. ¿No hay página? Copie la foto a la computadora y ejecute “everysquare check”.
helpers-check = Qué dice la revisión y qué hacer
helpers-check-intro = Siga su lista desde arriba, una línea a la vez; después tome otra foto.
helpers-check-says = Dice
helpers-check-do = Haga esto
helpers-check-right = Nada. Déjelo como está.
helpers-check-wrong = Aquí está otro cuadro. Siga la lista: usa la menor cantidad de cambios.
helpers-check-turned = Gírelo como dice la lista. La etiqueta debe quedar derecha.
helpers-check-empty = Busque el cuadro: en las mesas, en el piso, en la caja “por terminar”. La lista de control muestra si se entregó.
helpers-check-empty-strip = Busque el cuadro: en las mesas, en el piso, en la caja “por terminar”. ¿Su tira sigue en un montón? Entonces todavía no se entregó.
helpers-check-unread = Véalo usted. ¿Tiene la etiqueta correcta? Entonces todo está bien. Si no, mueva la cinta, evite el brillo y tome una foto más de cerca.
helpers-check-unseen = Está fuera de la foto o tapado. Aléjese o tome una más.

helpers-cautions = Seguridad, para todos los ayudantes
helpers-cautions-intro = Primero están las reglas del edificio, de la escuela y de la ciudad. Si son más estrictas que esta página, siga esas reglas.
helpers-stools = Banquitos y escaleras
helpers-stools-1 = Use un banquito de escalón ancho, sobre piso firme, junto a la pared. Nunca una silla, una mesa ni cosas apiladas.
helpers-stools-2 = Al banquito se suben únicamente los adultos, con otro adulto al lado. Los niños cuelgan lo que alcanzan desde el piso.
helpers-stools-3 = Bájese antes de moverlo. No se estire hacia un lado.
helpers-stools-4 = Filas demasiado altas para un banquito: un adulto las cuelga desde una escalera de tijera, cuando no haya visitantes cerca. No se suba mientras el salón esté lleno y haya empujones.
helpers-cutters = Cortar
helpers-cutters-1 = Los adultos cortan los cuadros y las piezas antes del evento. Use una guillotina de papel, o una regla de metal y un cúter. Cierre o asegure la hoja siempre que los deje.
helpers-cutters-2 = En las mesas, use solo tijeras infantiles de punta redonda. Cuéntelas al final. Deje guillotinas y cúteres fuera del salón.
helpers-cutters-3 = Los sacapuntas se quedan en la mesa, con la navaja bien atornillada.
helpers-tape = La cinta y las paredes
helpers-tape-1 = Pruebe la cinta un día antes en un lugar escondido. La cinta de pintor se despega de casi todas las paredes, pero cualquier cinta puede levantar pintura vieja o papel tapiz. En bloque pintado tal vez no pegue: cuelgue los cuadros sobre papel kraft.
helpers-tape-2 = Quite la cinta despacio, pegada a la pared.
helpers-fire = Incendios y multitudes
helpers-fire-1 = Aquí colgarán unos { $paper-area } de papel. Las normas contra incendios limitan eso. No agregue más sin preguntar a quien organiza.
helpers-fire-2 = No ponga nada sobre puertas, alarmas de incendio, extintores, letreros, calentadores y lámparas, ni junto a ellos.
helpers-fire-3 = Deje libres las salidas en todo su ancho: sin bolsas, sin mesas, sin filas de personas. Sepa por dónde llevaría a todos.
helpers-fire-4 = No deje entrar a más personas de las que permite el letrero de la puerta. ¿Está demasiado lleno? Pida a los visitantes que esperen afuera.
helpers-pictures = Niños en las fotos
helpers-pictures-1 = Tome fotos solo de la pared. Primero pida a todos que se hagan a un lado.
helpers-pictures-2 = Las reglas de la escuela o la biblioteca sobre fotos y teléfonos valen también para ayudantes y familias. Si no se permiten los teléfonos personales, use uno de la escuela o la biblioteca.
helpers-pictures-3 = La revisión guarda solo la pared y sus tarjetas, y tapa a quien encuentra delante. Puede escaparse alguien: mire antes de compartir. Después borre la foto del teléfono.
helpers-pictures-4 = Nunca ponga nombres en la lista de control ni en la pared, y en los cuadros, nombres de niños solo con permiso de la familia. (Las etiquetas sí se quedan.)
helpers-room = En el salón
helpers-room-1 = Fije los cables con cinta. Deje las bolsas debajo de las mesas. Seque enseguida lo que se derrame.
helpers-room-2 = Deje un pasillo bastante ancho para una silla de ruedas, y quite una silla de una mesa para que quepa una.
helpers-room-3 = Sepa quién da primeros auxilios y dónde está el botiquín.

## guide

print-guide = Guía
guide-title = Su evento
guide-intro = { $event }: cada quien dibuja en grande una parte pequeña de una imagen. Juntas, las partes forman toda la imagen en la pared. Esta guía es para usted, que organiza el evento. Todos los números salen de su imagen y de sus ajustes.
guide-numbers = En números
guide-what = Dato
guide-how-much = Número
guide-assumed = { $value } (se supone)
guide-crowd = Visitantes
guide-crowd-value = { $visitors }
guide-time = Tiempo de dibujo
guide-time-value = { $minutes } minutos
guide-time-clock = de { $start } a { $end } ({ $minutes } minutos)
guide-seats = Asientos
guide-seats-value = { $seats ->
    [one] 1 asiento en 1 mesa
   *[other] { $seats } asientos en { $tables ->
        [one] 1 mesa
       *[other] { $tables } mesas
    } de seis
}
guide-picture = Imagen
guide-picture-value = { $columns ->
    [one] 1 columna
   *[other] { $columns } columnas
}, { $rows ->
    [one] 1 fila
   *[other] { $rows } filas
}: { $squares ->
    [one] 1 cuadro
   *[other] { $squares } cuadros
} en { $colours ->
    [one] 1 color
   *[other] { $colours } colores
}
guide-border = Borde de reserva
guide-border-value = { $border } cuadros alrededor de la imagen. Deje libres sus lugares.
guide-free = Lugares que quedan libres
guide-free-value = { $spots }
guide-square = Pieza y cuadro
guide-square-value = { $piece } se convierte en { $square }: factor de escala { $scale }
guide-wall = El mural
guide-wall-value = { $width } de ancho y { $height } de alto; con las tarjetas de borde, { $width-with-cards } por { $height-with-cards }
guide-hang = Altura
guide-hang-value = de { $hang } a { $top } sobre el piso
guide-helpers = Ayudantes
guide-helpers-value = { $giving-out } para entregar, { $hanging } para colgar y algunos en las mesas
guide-up = Colgados al final
guide-up-value = { $up } de { $squares ->
    [one] 1 cuadro
   *[other] { $squares } cuadros
}
guide-assumed-note = “Se supone” significa que usted todavía no ha dado ese dato. Delo con “everysquare plan CARPETA --visitors { $visitors } --minutes { $minutes } --seats { $seats } --save” y sus propios números, y vuelva a imprimir. Para los ayudantes y la altura, escriba giving_out, hanging y hang_mm en event.toml.
guide-shifts = Ayudantes por hora
guide-levels = Niveles, y cuándo dejar de entregar
guide-heights = A qué altura cuelga
guide-reach-source = Los banquitos y las escaleras son únicamente para adultos. Los adultos sentados alcanzan 48 pulgadas (“2010 ADA Standards”, 308.2.1). Los niños sentados alcanzan menos: 40 pulgadas de 5 a 8 años, 44 de 9 a 12 (las mismas normas, tabla de recomendaciones en 308.1). Niños de pie: los más bajos de esa edad (“CDC Growth Charts 2000”) con un brazo levantado. El largo del brazo, el alcance de los adultos y la altura del banquito ({ $stool }) son aproximados.

guide-timeline = Antes del evento
guide-week = Una semana antes
guide-week-1 = Use una imagen que pueda usar: propia, de dominio público o con licencia. Pida permiso antes de publicar el mural en internet.
guide-week-2 = Pregunte por la pared: papel, cinta, altura, salidas y cuántas personas pueden estar en el salón. Vale lo que digan quien esté a cargo del edificio o los bomberos.
guide-week-3 = Imprima una hoja de cuadros. Mida su regla: debe ser exacta. Cada reverso debe quedar detrás de su frente.
guide-week-3-strip = Imprima una hoja de tiras. Mida su regla: debe ser exacta.
guide-week-4 = Imprima también unas piezas, dibuje usted una de cada nivel y mida el tiempo. ¿Tarda más de lo que dice la página 1? Cambie minutes_a_piece en event.toml.
guide-week-5 = Imprima todo, y la lista de control dos veces. Vea la hoja de lápices: ¿coinciden estos colores con los de sus lápices? Si no, cámbielos en [[pencils]] de event.toml y vuelva a imprimir.
guide-week-5-strip = Imprima todo; las tiras, en color. Vea la hoja de lápices: ¿coinciden estos colores con los de sus lápices? Si no, cámbielos en [[pencils]] de event.toml y vuelva a imprimir.
guide-week-6 = Recorte los cuadros, las piezas, las tarjetas de borde, las tarjetas de preguntas y las etiquetas de las bolsas; ponga una etiqueta en cada bolsa. Si corta las hojas apiladas, ponga los montones uno sobre otro, de izquierda a derecha y de arriba abajo, y todo queda en orden. Ponga las piezas en sus bolsas. Corte también unos cuadros sin imprimir del mismo tamaño, para quien quiera empezar de nuevo. Calcule una tarde para dos personas.
guide-week-6-strip = Recorte las tiras; deje cada talón unido a su cuadro. Si corta las hojas apiladas, ponga los montones uno sobre otro, de izquierda a derecha y de arriba abajo, y todo queda en el orden de entrega. Haga un montón por nivel. Corte también unos cuadros sin imprimir del mismo tamaño, para quien quiera empezar de nuevo.
guide-week-7 = Busque ayudantes: { $giving-out } para la entrega, { $hanging } para la pared y uno por cada tres mesas más o menos. La tabla de la página 1 dice cuándo.
guide-week-8 = Practique: “everysquare rehearse CARPETA” crea una foto de práctica con errores por encontrar.
guide-day = Un día antes
guide-day-1 = Dé a cada ayudante su página y diez minutos de explicación.
guide-day-2 = Pruebe la cinta en la pared, en un lugar escondido.
guide-day-3 = Con el mapa de la pared, marque el borde inferior y una de cada dos filas con líneas tenues a lápiz, o con un hilo que se quita antes de que lleguen los visitantes.
guide-day-4 = Saque punta a los lápices y arme los juegos, si cada mesa tiene los suyos.
guide-day-5 = Doble las tarjetas de mesa.
guide-day-6 = Tome una foto de prueba de la pared vacía para ver la luz y la distancia. En un iPhone, elija antes Configuración > Cámara > Formatos > “Más compatible”.
guide-day-7 = Copie toda la carpeta del evento a la computadora que va a llevar y a una memoria USB. Sin print/manifest.json no se puede leer ninguna foto.
guide-day-8 = Pruebe la página para ayudantes en la red Wi-Fi del salón: “everysquare serve CARPETA --lan”. Deje la computadora enchufada y encendida.
guide-hours = Dos horas antes
guide-hours-1 = Ponga las mesas como en el plano del salón. Deje libres los pasillos y las salidas.
guide-hours-2 = Ponga las tarjetas de borde alrededor del espacio del mural.
guide-hours-3 = Mesa de piezas: las bolsas, los cuadros en orden y una lista de control. Pared: la otra lista de control.
guide-hours-3-strip = Saque los montones de tiras en la mesa de piezas, boca abajo.
guide-hours-4 = Cargue el teléfono, enchufe la computadora y una impresora con papel de sobra, abra la página para ayudantes y pruebe una foto. Un adulto recorta en otro salón lo que se imprima de nuevo.
guide-hours-5 = Esconda todas las copias de la imagen.
guide-event = El evento
guide-running = Mientras dura
guide-running-1 = Entregue por el número del reverso: los 1, luego los 2 y luego los 3. Los visitantes eligen el nivel. Cerca del final, entregue solo las rápidas.
guide-running-1-strip = Entregue desde arriba de cada montón. Los visitantes eligen el nivel. Cerca del final, entregue solo las rápidas.
guide-running-2 = Revise la pared cada media hora, mientras haya poco que corregir.
guide-running-3 = Cada media hora, compare las dos listas de control y encierre en un círculo lo entregado que todavía no está en la pared. ¿Ya tenía un círculo? Pregunte con amabilidad en las mesas cómo va.
guide-running-3-strip = Cada media hora, mire la lista de control de la pared y encierre en un círculo lo que no está en los montones ni en la pared. ¿Ya tenía un círculo? Pregunte con amabilidad en las mesas cómo va.
guide-running-4 = ¿Ya se fue su visitante? Imprima otra vez ese cuadro y esa pieza (“everysquare print CARPETA --only { $label }”), y delos a otra persona.
guide-running-4-strip = ¿Ya se fue su visitante? Imprima otra vez esa tira (“everysquare print CARPETA --only { $label }”), y dela a otra persona.
guide-running-5 = Tómese un momento para beber agua.
guide-end = Los últimos veinte minutos
guide-end-1 = Entregue solo piezas rápidas. Los ayudantes toman lo que queda.
guide-end-2 = Cuelgue lo que se alcance, revise, corrija, revise otra vez. Si una fila necesita un banquito, la cuelga un adulto cuando el salón esté tranquilo.
guide-end-3 = Rellene los huecos: revise la pared, escriba “everysquare print CARPETA fill” y coloree lo que imprima, o agregue --soft para colgarlo tal cual. El lugar sigue reservado para su propio cuadro.
guide-end-4 = La sorpresa: reúna a todos, cuenten de diez a cero y muestre la imagen junto al mural. Si un proyector oculta el mural en su pantalla, muéstrelo ahora.
guide-end-5 = Aléjense juntos y miren. Todo fue para este momento.
guide-clearing = Al recoger
guide-clearing-1 = Cuente las tijeras infantiles; guarde los banquitos.
guide-clearing-2 = Deje el mural en la pared, si el edificio lo permite. Pregunte cuánto tiempo puede quedarse.
guide-clearing-3 = Borre las fotos de los teléfonos, también de “Eliminado” y de las copias en la nube.
guide-clearing-4 = Escriba en event.toml sus minutos reales de cada nivel, para que el próximo plan le quede mejor.

guide-materials = Qué necesita
guide-thing = Material
guide-amount = Cantidad
guide-paper = Papel
guide-paper-amount = { $paper }: { $sheets ->
    [one] 1 hoja
   *[other] { $sheets } hojas
} solo para los cuadros, más un 10 % de reserva. Es mejor un papel grueso: de 120 a 160 g/m². “everysquare print” dice cuántas hojas ocupa lo demás.
guide-paper-amount-strip = { $paper }: { $sheets ->
    [one] 1 hoja
   *[other] { $sheets } hojas
} solo para las tiras, más un 10 % de reserva. Es mejor un papel grueso: de 120 a 160 g/m². “everysquare print” dice cuántas hojas ocupa lo demás.
guide-printer = Impresora
guide-printer-amount = Cualquier impresora. Las piezas, la hoja de lápices y las tarjetas de preguntas necesitan color; para lo demás basta en blanco y negro.
guide-printer-amount-strip = Cualquier impresora en color. Las tiras, la hoja de lápices y las tarjetas de preguntas lo necesitan; para lo demás basta en blanco y negro.
guide-pencils = Lápices de color
guide-pencils-amount = { $sets ->
    [one] { $pencils-in-all } en total.
   *[other] { $pencils-in-all } si todos los comparten, { $pencils-in-sets } si cada mesa tiene los suyos.
} Están en la lista de abajo. Busque “no tóxico” en la caja.
guide-sharpeners = Útiles pequeños
guide-sharpeners-amount = { $sharpeners ->
    [one] 1 sacapuntas
   *[other] { $sharpeners } sacapuntas
}, { $erasers ->
    [one] 1 goma de borrar
   *[other] { $erasers } gomas de borrar
}, papel reciclado, bolígrafos para las listas de control
guide-tape = Cinta de pintor
guide-tape-amount = unos { $tape }: { $rolls ->
    [one] 1 rollo
   *[other] { $rolls } rollos
} de { $roll } o más
guide-string = Para las líneas
guide-string-amount = nivel de burbuja, cinta métrica, lápiz blando, o hilo con un peso
guide-bags = Bolsas y cajas
guide-bags-amount = una bolsa por nivel, una caja “por terminar”
guide-stool = Banquito
guide-stool-amount = 1 de escalón ancho, de unos { $stool } de alto, únicamente para adultos
guide-cutting = Para cortar
guide-cutting-amount = guillotina de papel, o cúter, regla de metal y tabla de corte, antes del evento y únicamente para adultos; tijeras infantiles para las tarjetas de preguntas
guide-phone = Teléfono y computadora portátil
guide-phone-amount = 1 teléfono con cámara de 12 megapíxeles o mejor, cargado, y 1 computadora portátil con este programa y la carpeta del evento. Para la página para ayudantes comparten una red Wi-Fi o un punto de acceso; no hace falta internet.
guide-signs = Tarjetas de mesa
guide-signs-amount = { $step-cards }: una por cada cuatro asientos más o menos
guide-bin = Para recoger
guide-bin-amount = bote de basura para la viruta y los recortes, trapo, caja para los cuadros terminados
guide-pencil-list = Lápices por color
guide-pencil-list-intro = Con estos lápices y todos los asientos ocupados, el 95 % del tiempo nadie tiene que esperar un color. Elija una forma: compartir todos los lápices, o dar a cada mesa los suyos.
guide-print = Qué imprimir en qué papel
guide-print-files = Archivos
guide-print-paper = Papel
guide-print-ink = Tinta
guide-print-thick = papel más grueso, bueno para lápices
guide-print-white = papel blanco
guide-print-card = cartulina, o papel pegado en cartón
guide-print-any = cualquier papel
guide-print-in-color = en color
guide-print-black = basta el negro
guide-colour = Color
guide-pencil-count = Si se comparten
pencils-paper = papel
guide-pencil-sets = Por mesas

guide-room = El salón
guide-room-intro = Un salón de ejemplo, a escala, donde cabe su evento: { $seats } asientos, la pared, el teléfono. El suyo será distinto; respete las distancias.
guide-room-about = Plano de un salón: la pared de un lado, el teléfono frente a su centro, luego mesas con asientos en los dos lados, luego la mesa de piezas; una salida y una entrada a la derecha, con pasos libres hasta las dos.
guide-plan-wall = mural y tarjetas de borde, { $length }
guide-plan-phone = teléfono, a unos { $length }
guide-plan-hand-out = mesa de piezas
guide-plan-exit = salida: dejar libre el paso
guide-plan-entrance = entrada: dejar libre
guide-plan-bar = { $length }
guide-plan-size = el salón mide unos { $length } de ancho
guide-room-1 = Ponga la mesa de piezas junto a la entrada y el mural en el otro extremo: así, quien entra ve a otras personas dibujar antes de ver la imagen.
guide-room-2 = Deje 1.2 m (4 pies) entre { $seats ->
    [one] la mesa y las paredes
   *[other] las mesas
} para pasar. Deje un espacio libre de 1.5 m (5 pies) de diámetro donde pueda girar una silla de ruedas, por ejemplo frente al mural.
guide-room-3 = Deje libre el espacio entre el mural y las mesas: es para el teléfono y, al final, para todos.
guide-room-4 = La luz debe venir de arriba o de lado. Una ventana frente a la pared causa reflejos: cierre la cortina.
guide-cautions = Seguridad
guide-fire = En la pared colgarán { $paper-area } de papel. Las normas contra incendios limitan la parte de una pared que el papel puede cubrir, algunas a solo una décima parte. Son más estrictas en pasillos y cerca de las salidas. Pregunte a quien esté a cargo del edificio o a los bomberos antes de imprimir.
guide-cautions-1 = Banquitos y escaleras: únicamente adultos, con otro adulto al lado. Nunca sillas ni mesas.
guide-cautions-2 = Guillotinas y cúteres: antes del evento, únicamente adultos, contados al final y fuera del salón.
guide-cautions-3 = Multitudes: no más personas de las que permite el letrero de la puerta, y todas las salidas libres.
guide-cautions-4 = Cinta: pruébela primero en un lugar escondido.
guide-cautions-5 = Fotos: la pared, no los niños. Quien esté frente a la pared puede quedar en las imágenes: mírelas antes de compartirlas. Primero están las reglas de la escuela.
guide-cautions-6 = Lo demás está en la última página de los ayudantes. Las reglas locales más estrictas van primero.
guide-pieces = Piezas, cuadros y etiquetas
guide-pieces-1 = Los visitantes se quedan con su pieza. Muestra cuál cuadro es suyo, porque no se anotan nombres.
guide-pieces-1-strip = Los visitantes se quedan con su talón. Muestra cuál cuadro es suyo, porque no se anotan nombres, y lo traen cuando vienen por él.
guide-pieces-2 = Piezas que nadie tomó: las dibujan los ayudantes, una clase las dibuja mañana, o se cuelga el cuadro en blanco.
guide-pieces-2-strip = Tiras que nadie tomó: las dibujan los ayudantes, una clase las dibuja mañana, o se cuelga el cuadro en blanco.
guide-pieces-3 = Un cuadro con dos círculos, o cuyo visitante se fue: imprima otra vez ese cuadro y esa pieza, y delos a otra persona. Si regresan los dos, cuelgue el segundo al lado del mural.
guide-pieces-3-strip = Una tira con dos círculos, o cuyo visitante se fue: imprima otra vez esa tira, y dela a otra persona. Si regresan las dos, cuelgue la segunda al lado del mural.
guide-pieces-4 = Empezar de nuevo está bien: imprima otra vez la hoja de ese cuadro. En un cuadro sin imprimir, copie la etiqueta en la misma esquina. La revisión no puede leerlo: véalo usted.
guide-pieces-4-strip = Empezar de nuevo está bien: imprima otra vez esa tira. En un cuadro sin imprimir, copie la etiqueta en la misma esquina. La revisión no puede leerlo: véalo usted.
guide-pieces-5 = El material tiene un solo idioma. ¿Los visitantes leen otro? Imprima también una página en ese idioma: “everysquare print CARPETA table-card --in en”.

guide-wrong = Cuando algo sale mal
guide-wrong-what = Qué pasa
guide-wrong-do = Qué hacer
guide-wrong-short = Hay muy pocas piezas
guide-wrong-short-do = Deje que dos personas compartan un cuadro, o imprima otra vez las hojas y dé esa pieza a dos personas. El primer cuadro que regrese va en el mural. Cuelgue el otro junto al mural, con una nota adhesiva sobre el código.
guide-wrong-many = Llegan demasiados visitantes a la vez
guide-wrong-many-do = Reparta tablas con clip para dibujar de pie, e invite a algunos a volver en la segunda mitad. Nunca pase del número del letrero de la puerta.
guide-wrong-few = Llegan muy pocos visitantes
guide-wrong-few-do = Ofrezca una segunda y una tercera pieza, las difíciles a quien quiera una. Usted y los ayudantes también dibujan. Los lugares vacíos se pueden llenar durante la semana.
guide-wrong-scale = La regla de la hoja sale más corta o más larga
guide-wrong-scale-do = La impresora cambió el tamaño de la página. Elija “Tamaño real” o 100 %, nunca “Ajustar”, y vuelva a imprimir esa hoja. No mezcle tamaños: los cuadros no coincidirían.
guide-wrong-backs = Los reversos no quedan detrás de sus frentes
guide-wrong-backs-do = Hasta 2 mm está bien. Si es más, el papel se volteó por el otro borde: cambie flip en event.toml, o imprima por una cara con flip = "none".
guide-wrong-painted = Alguien dibujó sobre un código
guide-wrong-painted-do = Cuélguelo de todos modos, por su etiqueta. La revisión dirá que no puede leerlo; véalo usted. No borre ni recorte.
guide-wrong-lost = Se perdió un cuadro
guide-wrong-lost-do = Imprímalo otra vez (“everysquare print CARPETA squares --only { $label }”): la misma etiqueta, el mismo código. Ofrézcalo primero a su visitante, con la pieza.
guide-wrong-turned = Muchos cuadros están girados
guide-wrong-turned-do = Muestre a quienes ayudan en la pared la etiqueta junto al código: debe quedar derecha. La revisión dice cuáles cuadros girar.
guide-wrong-unread = La revisión puede leer muy poco
guide-wrong-unread-do = Acérquese, agregue luz, no se mueva. Sin flash, sin sol en la pared. Tome una foto de cada mitad. Si todo falla, o se apaga la computadora, guíese por las etiquetas: cada cuadro tiene una.
guide-wrong-pencils = Se acaba un color
guide-wrong-pencils-do = Cambien lápices entre las mesas. Es mejor un color parecido que esperar; en ese caso, úselo en toda la zona.
guide-wrong-late = Se acabó el tiempo y faltan cuadros
guide-wrong-late-do = Imprima rellenos para los huecos (“everysquare print CARPETA fill --soft”) o cuelgue los cuadros en blanco. Deje puesta una mesa: los visitantes de mañana pueden terminar la imagen.
guide-after = Después
guide-after-1 = Deje el mural en la pared con la imagen original al lado. “everysquare display CARPETA FOTO” crea los recuerdos: impresiones, un cartel, una página de matemáticas. Agregue un letrero: “Lo dibujaron todos los que vinieron.”
guide-after-2 = Ponga debajo del mural las tarjetas de preguntas y la hoja de lápices; guarde usted las respuestas.
guide-after-3 = Dé las gracias a todos con una foto del mural sin gente. Cubra cualquier nombre que un niño haya escrito antes de compartirla.
guide-after-4 = Descuelgue fila por fila y conserve el orden: así se podrá colgar de nuevo en otro salón.
guide-after-5 = Los cuadros son de quienes los dibujaron. Diga cuándo se pueden recoger: la pieza que guardaron muestra cuál es el suyo.
guide-after-6 = Las fotos de la carpeta del evento muestran el trabajo de los niños. Guarde una copia de la carpeta y decida cuándo borrar las dos.

## errors: the picture

error-picture-empty = el archivo está vacío. Elija un archivo PNG, JPEG, WebP, TIFF o SVG
error-picture-format = esto no es una imagen en un formato que se lea aquí: guárdela como PNG, JPEG, HEIC, WebP, TIFF o SVG
error-picture-heic = este tipo de archivo no se puede leer. Primero exporte la imagen como JPEG o PNG
error-picture-large = la imagen tiene { $width } × { $height } píxeles. Hágala más pequeña, como máximo { $most } por lado y 100 millones en total
error-picture-short = al archivo de la imagen le falta el final. Vuelva a copiarlo o descargarlo
error-picture-damaged = el archivo de la imagen está dañado ({ $why }). Cópielo otra vez, o ábralo en otro programa y guárdelo como PNG
error-picture-no-pixels = no tiene píxeles
error-picture-svg = no se puede usar este dibujo SVG ({ $why }). Guárdelo otra vez como SVG simple o como PNG
error-picture-outside = el dibujo SVG muestra algo que está fuera de su propio archivo, { $named }, y eso nunca se carga. Insértelo en el dibujo o guárdelo como PNG
error-picture-letter = el dibujo SVG tiene texto con la letra “{ $letter }”, que no está en ninguna fuente de aquí. Convierta su texto en trazos o guárdelo como PNG
error-picture-kind = este tipo de imagen no se puede usar ({ $said }). Ábrala en otro programa y guárdela como PNG
error-picture-save = la imagen no se puede guardar como PNG: { $said }
error-svg-gave-up = no se pudo abrir
error-svg-text = tiene más de { $most } MB de texto
error-svg-no-text = no es texto sin formato (UTF-8)
error-svg-no-size = no tiene un tamaño que se pueda dibujar
error-svg-costly = { $what }, y dibujarlo tardaría demasiado
error-svg-deep = tiene elementos dentro de elementos, a más de { $most } niveles
error-svg-filter = uno de sus filtros tiene { $name } = { $value }
error-svg-filters = tiene { $count } pasos de filtros
error-reduce-one-colour = la imagen es toda de un solo color, así que no hay nada que dibujar. Elija otra
error-reduce-one-pencil = con estos lápices toda la imagen queda de un solo color ({ $pencil }). Elija más lápices, u otros que se parezcan menos
error-grid-columns = { $read } columnas no sirven. Use de { $least } a { $most }
error-grid-rows = { $read } filas no sirven. Use de { $least } a { $most }
error-grid-squares = { $read } cuadros no sirven. Use de { $least } a { $most }
error-grid-cells = { $columns } columnas y { $rows } filas dan { $squares } cuadros. Use { $most } como máximo

## errors: a new event

error-new-file = { $path } es un archivo. Dé el nombre de una carpeta
error-new-taken = { $path } ya contiene un evento, así que no se cambió nada. Modifique su event.toml o elija otra carpeta
error-new-piece = una pieza de { $piece } de ancho es más grande que su cuadro de { $square }. Elija un --piece-mm menor o un --square-mm mayor
error-new-border = con borde la pared tiene { $columns } × { $rows }. Use como máximo 702 columnas o filas, y { $squares } cuadros en total
error-new-one-picture = --area y --corners van con una sola imagen. Compare primero las imágenes y úselas después con la que elija
error-paper-not-found = no se ve ninguna hoja con sus cuatro bordes claros. Ponga el dibujo plano sobre algo más oscuro, con los cuatro bordes dentro de la foto, o indique las esquinas con --corners
error-paper-corners = esas no son las esquinas de una hoja. Dé cuatro puntos dentro de la foto, en píxeles, como --corners "120,80 1900,95 1880,1420 140,1400"
new-less-than-one = menos de 1
typed-name = use de 1 a { $most } caracteres en una sola línea
typed-tag = use 3 caracteres de { $letters }
typed-whole-from = debe ser un número entero de { $least } a { $most }
typed-number-from = debe ser un número de { $least } a { $most }
typed-millimetres-from = debe ser un número de milímetros de { $least } a { $most }
typed-area = dé cuatro números en porcentaje: borde izquierdo, borde superior, ancho y alto, como 10,20,60,60. Ancho y alto son { $least } o más, y todo queda dentro de la imagen
typed-corners = dé las cuatro esquinas de la hoja en píxeles, entre comillas: "x,y x,y x,y x,y"
error-plan-save = --save necesita números que guardar. Agregue --visitors, --minutes, --seats, --wall u otra de estas opciones
error-plan-end-alone = --end necesita un comienzo. Agregue --start
error-plan-end = --end debe ser al menos 5 minutos después del comienzo
error-plan-end-long = el fin queda más de 16 horas después del inicio: ¿están al revés?

error-settings-table = debe ser una tabla: [{ $name }], con sus ajustes debajo, cada uno en su línea
error-settings-list = debe ser una lista, con un [[{ $name }]] para cada elemento
error-settings-whole = debe ser un número entero de { $least } a { $most }
error-settings-millimetres = debe ser un número de { $least } a { $most }, en milímetros
error-settings-minutes = debe ser un número de { $least } a { $most }, en minutos
error-settings-number = debe ser un número de { $least } a { $most }
error-settings-visitors = use un número entero como 80, o un intervalo como "60-120" con el número menor primero, de { $least } a { $most }
error-settings-clock = use una hora como "18:30" o "6:30 pm"
error-settings-end = debe ser al menos 5 minutos después de start
error-settings-end-long = Son más de 16 horas después de start. ¿Están al revés?
error-settings-end-alone = Indique también start, o indique minutes en su lugar
error-settings-end-and-minutes = Indique end o minutes, no los dos
error-settings-yes-or-no = use true (sí) o false (no), sin comillas
error-settings-choice = use { $choices }, entre comillas
error-settings-second-language = use un idioma distinto del primero
error-settings-belongs-top = Va al principio del archivo, antes de la primera [tabla]
error-settings-belongs = Va debajo de [{ $section }]
error-settings-near = ¿Quiso decir { $near }?
error-settings-known = Puede usar { $known }
error-settings-name = debe ser un texto entre comillas, en una sola línea, de 1 a { $most } caracteres
error-settings-tag = use 3 caracteres de { $letters }, entre comillas
error-settings-file = use el nombre de un archivo de la carpeta del evento, entre comillas, como "picture.png"
error-settings-colours = hay { $count } [[pencils]] en la lista; use { $count }, o quite { $name }
error-settings-pencils = en la lista hay { $count }; use de { $least } a { $most }
error-settings-colour = escriba un color como "#3a8f4d": dos dígitos hexadecimales para el rojo, dos para el verde y dos para el azul
error-settings-of-pencil = { $name } en el número { $number } de los [[pencils]]
error-settings-pencil-example = name = "verde hoja" y srgb = "#3a8f4d" debajo de cada [[pencils]]
error-settings-pencils-example = uno por lápiz, y debajo name = "verde hoja" y srgb = "#3a8f4d"
error-settings-top-example = una línea como { $line } al principio
error-settings-wall-example = { $line } debajo de [wall]
error-settings-piece = debe ser como máximo square_mm, que es { $square }
error-settings-border = necesita al menos { $least } columnas y { $least } filas, para que haya algo dentro del borde
error-settings-keep-free = use una lista de hasta { $most } etiquetas, como ["A1", "{ $last }"]
error-settings-module = el código y el margen blanco que lo rodea medirían 29 bloques de ancho, demasiado para square_mm = { $square }. Use un número menor
error-settings-room = escríbalo como "8x6ft" o "2.4x1.8m" (m, cm, mm, ft o in), cada lado de 0.2 a 50 m
error-settings-minutes-a-piece = use cuatro números de { $least } a { $most }, en minutos, para una pieza de un color, una fácil, una media y una difícil, ninguno menor que el anterior
error-settings-level-names = use cuatro nombres distintos entre comillas, primero el más fácil, cada uno de 1 a { $most } caracteres (plain, easy, medium y hard solo para su propio nivel)
error-settings-bounds = use tres números de menor a mayor, de { $least } a { $most }: los puntajes en que empiezan fácil, media y difícil
error-settings-piece-twice = esta pieza está dos veces en la lista. Deje solo una
error-settings-of-piece = { $name } en el número { $number } de las [[pieces]]
error-settings-piece-example = label = "D7" y level = "hard" debajo de cada [[pieces]]
error-settings-label = use la etiqueta de una pieza, columnas A a { $column } y filas 1 a { $row }, como "A1"
error-typed-wall = escriba el tamaño como "8x6ft" o "2.4x1.8m" (m, cm, mm, ft o in), y varios tableros con comas, como "4x6ft, door, 5x6ft"
error-rehang-wall = Diga cómo es el lugar nuevo con --wall, por ejemplo --wall "4x6ft, door, 5x6ft"
error-plan-boards = La pared tiene { $columns } columnas y { $rows } filas. De izquierda a derecha, estos tableros admiten este número de columnas: { $taken } (0 si un tablero es demasiado bajo). Use más tableros o más grandes, o elija una cuadrícula o cuadros más pequeños.
error-settings-spot = use la etiqueta de un lugar, como "A1" o "{ $last }"
error-settings-of-part = { $name } en el número { $number } de las [[parts]]
error-settings-part-example = “from = "A1"” y “to = "D8"”, dos esquinas opuestas, debajo de cada [[parts]]
error-settings-place = use de 1 a { $most } caracteres
error-settings-board = los cuadros de esta parte miden { $needs }: dé un tablero de al menos ese tamaño
error-settings-parts-share = otra parte ya tiene { $label }. Cada lugar pertenece a una sola parte
error-settings-parts-lack = ninguna parte tiene { $label }. Entre todas, las partes necesitan todos los lugares
error-settings-rows = con { $columns ->
    [one] 1 columna
   *[other] { $columns } columnas
} use { $most } filas como máximo, { $squares } cuadros en total

## event.toml: what its comments say

event-head = Los ajustes de su evento. Cambie lo que quiera y repita el comando. Lo que va después de un # es solo una nota.
event-tag = va en cada código de este evento; no la cambie cuando los cuadros ya estén impresos
event-language = de todo lo que se imprime y se muestra: { $choices }
event-second-language = debajo, en lo que las visitas leen y se llevan
event-file = en esta carpeta
event-colours = cuántos lápices de color se usan
event-credit = de quién es la imagen; lo dicen los impresos que la muestran
event-pencils = Para usar sus propios lápices, quite colors y ponga cada lápiz al final de este archivo, así:
event-pencils-name = verde hoja
event-columns = cuadros a lo ancho, con letras desde la izquierda
event-rows = cuadros a lo alto
event-piece-mm = lado de cada pieza, la parte pequeña de la imagen que recibe un visitante
event-square-mm = lado de cada cuadro de papel
event-rows-from = dónde está la fila 1: { $choices } (abajo, arriba)
event-border = el anillo exterior es un borde de reserva, que solo se cuelga si viene más gente; la imagen ya lo lleva
event-keep-free = lugares donde no puede colgar nada, como sobre un interruptor o una alarma; nadie dibuja sus piezas
event-module-mm-usual = si se omite, los códigos son lo más pequeños que un teléfono pueda leer en una pared de este tamaño
event-module-mm = si se omite, los códigos son lo más pequeños que un teléfono pueda leer en una pared de este tamaño
event-inset-mm = distancia del borde cortado al código; la cinta y los cuadros vecinos suelen tapar los bordes
event-flip = por qué borde voltea el papel la impresora: { $choices } (el largo, el corto, una sola cara)
event-units = lo que leen las personas: { $choices }; este archivo siempre va en mm
event-join = si las piezas y los cuadros se imprimen aparte o cada pieza junto a su cuadro en una tira: { $choices }
event-visitors = cuántos espera: 80, o un intervalo
event-arrivals = cómo llegan, todos juntos, poco a poco o por clases: { $choices }
event-pieces-each = piezas que dibuja cada visitante; menos de 1 si las familias comparten una
event-start = a qué hora empiezan
event-minutes = cuánto tiempo se va a dibujar; o indique end = "20:00"
event-seats = cuántas personas pueden dibujar a la vez
event-giving-out = ayudantes que entregan piezas
event-hanging = ayudantes que cuelgan cuadros
event-giving-out-seconds = cuánto se tarda en entregar una pieza
event-hanging-seconds = cuánto se tarda en colgar un cuadro
event-room = el espacio para los cuadros y las tarjetas de borde, como "8x6ft" o "2.4x1.8m"
event-hang-mm = altura del borde inferior sobre el piso; si se omite, se propone una según lo que alcanzan las personas
event-minutes-a-piece = minutos para una pieza de un color, una fácil, una media y una difícil
event-level-names = primero el más fácil
event-own-level-names = sus propios nombres para los niveles, primero el más fácil
event-bounds = los puntajes en que empiezan fácil, media y difícil; “everysquare plan” muestra el nivel de cada pieza
event-balanced = true: tantas piezas fáciles como medias y como difíciles, sin importar sus puntajes
event-parts = Si la pared está en partes (varios tableros, una puerta en medio), ponga cada parte en una lista, así:
event-part-to = junto con from, dos esquinas opuestas; entre todas, las partes tienen todos los lugares
event-part-place = cómo se llama el sitio donde cuelga
event-part-bottom = altura de su borde inferior sobre el piso
event-part-board = tamaño del tablero donde cuelga, como "4x6ft"
event-pieces = Si no está de acuerdo con un nivel, ponga esa pieza al final de este archivo, así:
event-pieces-level = plain (de un color), easy (fácil), medium (media) o hard (difícil), o su propio nombre

## likeness

likeness-elsewhere = El dibujo del cuadro { $square } se parece a la pieza { $other }. Revíselo.
likeness-elsewhere-turned = El dibujo del cuadro { $square } se parece a la pieza { $other }, girada { $degrees }° en el sentido de las manecillas del reloj. Revíselo.
likeness-turned = El dibujo del cuadro { $square } parece girado { $degrees }° en el sentido de las manecillas del reloj en su papel. Revíselo.
likeness-unread = No se puede leer el cuadro de { $cell }. Su dibujo se parece a la pieza { $other }. Revíselo.
