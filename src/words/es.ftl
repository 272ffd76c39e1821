### Español, el de la América hispana, sin modismos de un solo país. De «usted» a las personas adultas; a las niñas y los niños, frases cortas.
### Los números llevan punto decimal, como en México y en los Estados Unidos.

## lists

words-one-of = { $before } o { $last }

## words of an event

error-words-at = templates/words.ftl, línea { $line }: { $read }: { $what }
error-words-too-large = templates/words.ftl tiene más de { $most } MB: un archivo de palabras contiene solo frases sueltas
error-words-unknown = no hay ninguna palabra con ese nombre; un comentario que empiece con # puede ir en cualquier línea
error-words-unknown-near = no hay ninguna palabra con ese nombre; ¿quiso decir { $near }?
error-words-twice = esta palabra aparece dos veces: deje solo una
error-words-variable-near = en { $word } no hay ningún dato con ese nombre; ¿quiso decir { $near }?
error-words-variable-known = en { $word } no hay ningún dato con ese nombre; los que hay son { $known }
error-words-variable-none = en { $word } no hay ningún dato que poner: quite las llaves
error-words-syntax = esto no se puede leer: se espera una línea como “print-squares = Cuadros”, y las demás líneas de la misma frase empiezan con espacios
error-words-braces = falta una llave: cada { "{" } necesita su { "}" }
error-words-default = entre varias opciones, una y solo una debe llevar * delante, como *[other]
error-words-quotes = falta una comilla: cada " necesita otra en la misma línea
error-words-empty = falta la frase: va después del signo =
error-words-placeable = entre { "{" } y { "}" } solo puede ir un dato que pone el programa, como { "{ $name }" }
error-words-term = esto empieza con -, que aquí no significa nada: escriba el nombre de la palabra igual que el programa
error-words-attribute = aquí solo puede ir una frase después del signo =, sin líneas que empiecen con un punto
error-words-reference = entre llaves solo puede ir un dato que pone el programa, como { "{ $name }" }: ni otra palabra, ni una función, ni \\u
error-words-control = esta línea contiene un carácter de control: bórrela y vuelva a escribirla
error-words-depth = aquí hay demasiadas llaves, unas dentro de otras

## lengths

length-both = { $first } ({ $second })
length-mm = { $length } mm
length-m = { $length } m
length-in = { $length } in
length-ft = { $feet } ft { $inches } in

## states of a cell

state-right = bien
state-wrong = equivocado
state-turned = girado
state-empty = vacía
state-unread = sin leer
state-unseen = fuera de la foto

## program

help = Planea una velada en la que muchas personas dibujan juntas una sola imagen, imprime el material y lee una foto de la pared

## new

help-new = Crea la carpeta de un evento a partir de una imagen y propone una cuadrícula
help-new-folder = La carpeta que se va a crear; su nombre será el de la velada, a menos que --name diga otro
help-new-picture = La imagen que se va a dibujar: PNG, JPEG, WebP, TIFF o SVG. El archivo original no se toca
help-new-columns = Cuadros de lado a lado
help-new-rows = Cuadros de arriba abajo
help-new-squares = Cuántos cuadros debe haber más o menos, en lugar de columnas y filas
help-new-name = Cómo se llama la velada
help-new-tag = Tres caracteres que lleva cada código de este evento, de entre 23456789ABCDEFGHJKLMNPQRSTUVWXYZ; si se omite, se sortean
help-new-colours = Con cuántos lápices de color se dibuja la imagen
help-new-pencils = Un archivo con sus propios lápices: [[pencils]] con name y srgb, como en un event.toml, cuyos lápices también se pueden tomar así
help-new-black-and-white = Dibujar solo con grises, tantos como diga --colours
help-new-fit = Qué pasa con una imagen de otra forma que la pared: crop la recorta, pad le agrega bordes
help-new-square-mm = Lado de los cuadros de papel
help-new-piece-mm = Lado de las piezas de la imagen que se reparten a los visitantes
help-new-paper = El papel de la impresora: letter (carta), tabloid (tabloide), a4 o a3
help-new-flip = Cómo da vuelta al papel la impresora: long-edge (por el borde largo), short-edge (por el borde corto) o none (no lo voltea)
help-new-units = Las unidades que lee la gente, inch (pulgadas) o mm; si se omite, pulgadas con letter y tabloid, mm con a4 y a3

new-usual-name = Velada abierta
new-made = Se creó { $folder } para “{ $name }”, clave { $tag }: event.toml, { $file } y picture-preview.png para verla.
new-squares = { $count ->
    [one] 1 cuadro
   *[other] { $count } cuadros
}
new-grid-given = La pared es de { $columns } × { $rows }, { $squares }, como usted pidió.
new-grid-rows-follow = La pared es de { $columns } × { $rows }, { $squares }: de todas las cuadrículas con el ancho que usted pidió, es la que menos recorta la imagen.
new-grid-columns-follow = La pared es de { $columns } × { $rows }, { $squares }: de todas las cuadrículas con la altura que usted pidió, es la que menos recorta la imagen.
new-grid-near-count = La pared es de { $columns } × { $rows }, { $squares }: cerca de los { $wished } que usted pidió, y la imagen se recorta poco.
new-grid-fits-best = La pared es de { $columns } × { $rows }, { $squares }: alcanza para una velada (de 60 a 120), y la forma es la de la imagen o casi. Para otra, use --columns, --rows o --squares.
new-nothing-lost = Se dibuja la imagen completa.
new-lost-sides = Se recorta el { $percent } % de la imagen, la mitad a la izquierda y la mitad a la derecha.
new-lost-top-and-bottom = Se recorta el { $percent } % de la imagen, la mitad arriba y la mitad abajo.
new-wall = Medirá { $width } de ancho y { $height } de alto, y 60 mm (2.4 in) más a cada lado para las tarjetas.
new-added-sides = Se dibuja la imagen completa; para que tenga la forma de la pared, se agregó el { $percent } % de la pared a la izquierda y a la derecha.
new-added-top-and-bottom = Se dibuja la imagen completa; para que tenga la forma de la pared, se agregó el { $percent } % de la pared arriba y abajo.
new-pencils = Se dibuja con { $count } lápices: { $names }. Si quiere, cambie sus nombres en event.toml.
new-text = El texto del dibujo se compone con la letra del propio programa: véalo en picture-preview.png, o convierta el texto en trazos en su programa de dibujo.
new-coarse = Una pieza tenía solo { $pixels } píxeles de ancho y se amplió: una imagen más grande muestra más detalle.
new-warn-alike = Cuidado: { $one } y { $other } se parecen tanto que se van a confundir. Ayuda usar menos colores (--colours) o lápices propios (--pencils).
new-warn-rare = Cuidado: { $pieces ->
    [0] ninguna pieza necesita { $pencil }
    [one] solo 1 pieza necesita { $pencil }
   *[other] solo { $pieces } piezas necesitan { $pencil }
}, así que puede prescindir de ese lápiz.
new-warn-plain = Cuidado: { $plain } piezas son de un solo color y solo { $drawn } tienen algo que dibujar. Es más divertido con una imagen que tenga más detalle o con menos cuadros.
new-next = Ahora: revise { $folder }/picture-preview.png y event.toml, cambie lo que quiera y escriba “everysquare print { $folder }”.

## colours of pencils, in words that a child knows

colour-red = rojo
colour-orange = naranja
colour-yellow = amarillo
colour-olive = verde olivo
colour-green = verde
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

help-plan = Dice qué significan las personas, el tiempo y el lugar para la imagen, y qué hace falta tener
help-plan-folder = La carpeta del evento
help-plan-visitors = Cuántos visitantes se esperan
help-plan-minutes = Cuántos minutos dibujan
help-plan-seats = Cuántos pueden sentarse a dibujar a la vez
help-plan-wall = El lugar que hay para la pared, como 2.4x1.8m u 8x6ft
help-plan-hang = Altura del borde inferior de la pared sobre el piso, en mm; si se omite, se propone
help-plan-save = Además escribe en event.toml los números que se dan aquí

plan-title = Plan para “{ $name }”
plan-levels = Piezas por nivel: cuántas hay y cuántas se terminan a tiempo.
plan-head-level = nivel
plan-head-mark = marca
plan-head-pieces = piezas
plan-head-minutes = minutos c/u
plan-head-finished = listas
plan-decided = { $count ->
    [one] 1 pieza tiene el nivel que le da event.toml.
   *[other] { $count } piezas tienen el nivel que les da event.toml.
}
plan-balanced = Los niveles están equilibrados, como pide event.toml: las piezas con dibujo se reparten en tres partes iguales.
plan-crowd = La gente
plan-finish = { $visitors ->
    [one] 1 visitante
   *[other] { $visitors } visitantes
}, { $seats ->
    [one] 1 asiento
   *[other] { $seats } asientos
}, { $minutes } minutos. En cada asiento se empieza una pieza nueva cada { $pace } minutos, contando la entrega, así que a tiempo se { $finish ->
    [one] termina más o menos 1 pieza
   *[other] terminan más o menos { $finish } piezas
}.
plan-assumed = Se supone, porque nadie lo dijo: { $numbers }. Escriba --visitors, --minutes y --seats con sus propios números.
plan-seats-free = { $free ->
    [one] Queda libre 1 asiento.
   *[other] Quedan libres { $free } asientos.
}
plan-fits = Las { $pieces } piezas de la imagen convienen a esta gente: { $each } por visitante, todas listas en unos { $left } minutos.
plan-too-big-for-time = Las { $pieces } piezas de la imagen son demasiadas: { $by ->
    [one] 1 queda
   *[other] { $by } quedan
} sin terminar. Todas juntas tardan unos { $needed } minutos.
plan-more-seats = Con { $seats } asientos se terminan todas a tiempo.
plan-too-big-for-crowd = Las { $pieces } piezas de la imagen son demasiadas: con { $most } por visitante, { $by ->
    [one] sobra 1
   *[other] sobran { $by }
}.
plan-too-small = Las { $pieces } piezas de la imagen son muy pocas: { $by ->
    [one] 1 visitante se queda
   *[other] { $by } visitantes se quedan
} sin pieza.
plan-without = { $without ->
    [one] 1 visitante no termina
   *[other] { $without } visitantes no terminan
} ninguna pieza, sea cual sea la cuadrícula: estos asientos y minutos alcanzan para { $finish }. Ayudan más asientos o más tiempo, y también piezas más fáciles.
plan-others = Cuadrículas que convienen a esta gente, al lugar y a la forma de la imagen:
plan-others-as-well = Otras cuadrículas que también convienen a esta gente, al lugar y a la forma de la imagen:
plan-head-grid = cuadrícula
plan-head-each = por visitante
plan-head-size = pared
plan-head-lost = imagen recortada
plan-others-why = A esta gente le convienen de { $least } a { $most } piezas. Para tomar una de estas, cambie columns y rows en event.toml antes de imprimir.
plan-no-others = Ninguna otra cuadrícula de cuadros así conviene a esta gente, al lugar y a la forma de la imagen.
plan-wall = La pared
plan-wall-size = Los cuadros miden { $width } de ancho y { $height } de alto; con las tarjetas alrededor, { $around_width } de ancho y { $around_height } de alto.
plan-room-fits = Cabe en el lugar de { $width } × { $height }.
plan-room-without-cards = En el lugar de { $width } × { $height } caben los cuadros, pero no todas las tarjetas alrededor. Las tarjetas ayudan, pero nada depende de ellas; con cuadros de { $square } cabría todo.
plan-room-too-small = No cabe en el lugar de { $width } × { $height }. Cabrían cuadros de cuando mucho { $square }: cambie square_mm en event.toml o tome otra cuadrícula.
plan-hang = El borde inferior queda a { $hang } del piso.
plan-hang-proposed = Propuesta: cuelgue el borde inferior a { $hang } del piso, para que los adultos alcancen lo más posible. Con --hang se elige otra altura.
plan-head-row = fila
plan-head-upper = borde superior
plan-head-from-5 = desde 5
plan-head-from-9 = desde 9
plan-head-seated = sentados
plan-head-adults = adultos
plan-means-floor = piso
plan-means-stool = banquito
plan-means-ladder = escalera
plan-means-helper = ayudante
plan-reach = Quién cuelga un cuadro y desde dónde. Casi todos los niños desde los 5 años alcanzan { $five }, desde los 9 años { $nine }, alguien sentado { $seated }, los adultos { $adults }. Un banquito tiene un escalón de { $stool }; los niños se suben solo con un adulto al lado, y a una escalera solo los adultos. “ayudante”: lo cuelga otra persona.
plan-pencils = Lápices
plan-head-pencil = lápiz
plan-head-drawing = del tiempo
plan-head-pencils = lápices
plan-pencils-why = { $count } lápices en total: con { $seats ->
    [one] 1 asiento ocupado
   *[other] { $seats } asientos ocupados
}, nadie espera ningún color en el { $sure } % de los momentos.
plan-supplies = Qué más hace falta
plan-sheets = { $count } hojas de papel { $paper }: { $documents }.
plan-no-sheets = No se pueden contar las hojas de papel: { $why }.
plan-things = { $tape } de cinta, para los cuadros y { $cards } tarjetas; sacapuntas: { $sharpeners }; gomas de borrar: { $erasers }.
plan-fire = En la pared cuelgan { $area } m² ({ $feet } sq ft) de papel. Muchas normas contra incendios lo limitan, algunas a la quinta parte de una pared: pregunte a quien esté a cargo del edificio o a los bomberos.
plan-fire-part = En la pared cuelgan { $area } m² ({ $feet } sq ft) de papel, { $percent } del lugar previsto. Muchas normas contra incendios lo limitan, algunas a la quinta parte de una pared: pregunte a quien esté a cargo del edificio o a los bomberos.
plan-written = Todos los números, y el nivel y los colores de cada pieza, están en { $file }.
plan-saved = Los números que se dieron aquí ya están en { $file }.
plan-not-saved = Los números que se dieron aquí valen solo por esta vez; --save los guarda.

## report

report-language = es
report-title = Revisión de la pared: { $name }
report-kind = Revisión de la pared
report-made = Esta es una imagen simulada de una pared, no una foto.
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
report-all-right = Los { $cells } cuadros están en su lugar.
report-to-do = { $steps ->
    [one] Hay 1 cosa por hacer.
   *[other] Hay { $steps } cosas por hacer.
}
report-cannot-tell = No se encontró nada mal, pero de { $cells } casillas { $unknown ->
    [one] 1 no se pudo distinguir.
   *[other] { $unknown } no se pudieron distinguir.
}
report-count-right = { $count } de { $cells } bien
report-count-wrong = { $count ->
    [one] 1 equivocado
   *[other] { $count } equivocados
}
report-count-turned = { $count ->
    [one] 1 girado
   *[other] { $count } girados
}
report-count-empty = { $count ->
    [one] 1 casilla vacía
   *[other] { $count } casillas vacías
}
report-count-unread = { $count } sin leer
report-count-unseen = { $count } fuera de la foto
report-heading-to-do = Qué hacer, en este orden
report-heading-wall = La pared
report-heading-marked = La foto, con marcas
report-heading-straight = La pared, enderezada
report-heading-advice = Para la próxima foto
report-heading-facts = Cifras
report-missing = No se vieron en ningún lado: { $squares }
report-missing-untold = { $count ->
    [one] Falta ver 1 cuadro más, pero su propia casilla tampoco se pudo distinguir.
   *[other] Falta ver { $count } cuadros más, pero sus propias casillas tampoco se pudieron distinguir.
}
report-twice = Se vieron más de una vez: { $squares }
report-stranger = No es de este evento: “{ $text }” en { $cell }
report-rows = Fila
report-scale = Factor de escala { $factor }: cada cuadro muestra su pieza { $factor } veces más ancha y más alta.
report-size = La pared mide { $width } × { $height } mm.
report-shift = El cuadro más alejado del centro de su casilla está corrido { $mm } mm.
report-modules = Píxeles de la foto por cada módulo del código de un cuadro: { $px }.
report-picture-marked = La foto con cada casilla que tiene un error marcada y con su nombre; todo lo que queda fuera de la pared y sus tarjetas está en blanco.
report-picture-straight = La pared vista de frente.
report-private = La foto no se guarda. Esta página contiene solo la pared y sus tarjetas, y no carga nada de ningún otro lugar.
report-turned-top-right = lo de arriba apunta a la derecha
report-turned-top-down = de cabeza
report-turned-top-left = lo de arriba apunta a la izquierda
report-more = { $squares } y { $count } más
legend-right = bien
legend-wrong = otro cuadro, el de ese nombre
legend-wrong-short = otro cuadro, vea la lista
legend-turned = su propio cuadro, girado; lo de arriba apunta hacia allá
legend-wrong-turned = otro cuadro, y además girado; lo de arriba apunta hacia allá
legend-stranger = un cuadro de otro evento
legend-empty = vacía
legend-unread = hay algo colgado, su código no se puede leer
legend-unseen = fuera de la foto
cell-right = { $cell }: bien
cell-wrong = { $cell }: equivocado, aquí está { $square }
cell-wrong-turned = { $cell }: equivocado, aquí está { $square } y está girado ({ $how })
cell-stranger = { $cell }: equivocado, aquí está un cuadro de otro evento
cell-turned = { $cell }: girado, { $how }
cell-empty = { $cell }: vacía
cell-unread = { $cell }: no se pudo leer
cell-unseen = { $cell }: fuera de la foto
mark-empty = vacía
mark-turned = { $degrees ->
    [90] ↻ 90°
    [180] ↻ 180°
   *[270] ↺ 90°
}
mark-wrong = → { $square }
mark-wrong-turned = → { $square } ↻
mark-stranger = ✕ ajeno
mark-spare = ✕ sobra
mark-unread = ?

## fixes

fix-turn = { $by ->
    [quarter] Gire { $cell } un cuarto de vuelta a la derecha (como las agujas del reloj).
    [half] Dé media vuelta a { $cell }: está de cabeza.
   *[three-quarters] Gire { $cell } un cuarto de vuelta a la izquierda (al revés de las agujas del reloj).
}
fix-swap = Intercambie { $a } y { $b }.
fix-swap-upright-one = Intercambie { $a } y { $b }; cuelgue derecho el que queda en { $cell }.
fix-swap-upright-both = Intercambie { $a } y { $b }; cuelgue derechos los dos.
fix-move = Pase el cuadro que está en { $from } a { $to }.
fix-move-upright = Pase el cuadro que está en { $from } a { $to } y cuélguelo derecho.
fix-remove-copy = Quite el cuadro que está en { $cell }: es una copia de más de { $square }.
fix-remove-stranger = Quite el cuadro que está en { $cell }: no es de este evento.
fix-look = { $count ->
    [one] Vea qué hay en { $cells }: su código no se puede leer.
   *[other] Vea qué hay en { $cells }: sus códigos no se pueden leer.
}
fix-look-guess = { $count ->
    [one] Vea qué hay en { $cells }: su código no se puede leer. Todavía no se ven en ningún lado: { $squares }.
   *[other] Vea qué hay en { $cells }: sus códigos no se pueden leer. Todavía no se ven en ningún lado: { $squares }.
}
fix-look-moved = Vea qué hay en { $cells }: las fotos muestran ahí cuadros distintos, así que algo se movió entre una y otra.
fix-look-beyond = Vea qué hay en { $cell }, que no sale en ninguna foto: ahí va el cuadro que está en { $from }.
fix-fetch = Busque el cuadro { $square } y cuélguelo en su lugar.
fix-fetch-perhaps = Busque el cuadro { $square } (quizás esté en la pared, donde no se pudo leer nada) y cuélguelo en su lugar.
fix-fetch-listed = Busque los { $count } cuadros que no se vieron en ningún lado (están en la lista de abajo) y cuelgue cada uno en su lugar.
fix-fetch-many = Busque estos cuadros y cuelgue cada uno en su lugar: { $squares }.

## advice

advice-step-back = { $part ->
    [edge] Aléjese o tome una foto más: el borde { $side ->
        [left] izquierdo
        [right] derecho
        [upper] superior
       *[lower] inferior
    } de la pared queda fuera de la foto.
    [most] Aléjese o tome más fotos: la mayor parte de la pared, { $side ->
        [left] a la izquierda
        [right] a la derecha
        [upper] arriba
       *[lower] abajo
    }, queda fuera de la foto.
   *[other] Aléjese o tome una foto más: { $part ->
        [quarter] un cuarto
        [third] un tercio
        [half] la mitad
       *[two-thirds] dos tercios
    } de la pared, { $side ->
        [left] a la izquierda
        [right] a la derecha
        [upper] arriba
       *[lower] abajo
    }, { $part ->
        [two-thirds] quedan
       *[other] queda
    } fuera de la foto.
}
advice-hidden = { $count ->
    [one] Tome una foto más: { $cells } está tapada o fuera de la foto.
   *[other] Tome una foto más: { $cells } están tapadas o fuera de la foto.
}
advice-go-closer = Acérquese, o tome dos fotos, cada una de media pared: en la foto { $photo } un módulo de los códigos tiene solo { $px } píxeles, y { $unread ->
    [one] 1 casilla no se pudo leer.
   *[other] { $unread } casillas no se pudieron leer.
}
advice-uncover = { $unread ->
    [one] 1 código no se pudo leer aunque la foto es bastante nítida: vea si lo tapa cinta, un reflejo, un doblez o pintura.
   *[other] { $unread } códigos no se pudieron leer aunque la foto es bastante nítida: vea si los tapa cinta, un reflejo, un doblez o pintura.
}
advice-mirrored = La foto { $photo } está invertida como en un espejo, así las guardan las cámaras frontales. De todos modos se leyó.
advice-contradiction = { $count ->
    [one] En { $cells } las fotos muestran cuadros distintos: algo se movió entre una y otra. Tome otra vez todas las fotos, una tras otra.
   *[other] En { $cells } las fotos muestran cuadros distintos: algo se movió entre una y otra. Tome otra vez todas las fotos, una tras otra.
}
advice-shifted = Todos los cuadros que se leyeron están corridos lo mismo ({ $across }{ $down }). Quizás se empezó la pared en otro lugar: entonces deje los cuadros y mueva las tarjetas.
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
advice-all-turned = Todos los cuadros que se leyeron están girados igual ({ $how }). ¿Se giró la foto?
advice-all-wrong = Ningún cuadro está en su lugar. ¿Es esta la carpeta del evento, y se cuentan las filas desde el lado correcto?
advice-may-hang-unseen = { $missing ->
    [one] 1 cuadro no se vio en ningún lado; puede estar
   *[other] { $missing } cuadros no se vieron en ningún lado; pueden estar
} en { $unknown ->
    [one] la casilla que no se pudo distinguir.
   *[other] las { $unknown } casillas que no se pudieron distinguir.
}

## rehearse

help-rehearse = Crea la foto de una pared que nunca existió, con errores por encontrar: para practicar antes de la velada
help-rehearse-folder = La carpeta del evento, con el material ya impreso
help-rehearse-seed = El número del que depende todo lo que se deja al azar; si se omite, se sortea
help-rehearse-swaps = Pares de cuadros, cada uno en el lugar del otro
help-rehearse-cycles = Grupos de tres cuadros, cada uno en el lugar del siguiente
help-rehearse-turns = Cuadros colgados con un giro
help-rehearse-missing = Lugares donde no cuelga nada
help-rehearse-scribbled = Cuadros con el código cubierto de pintura
help-rehearse-covered = Cuadros con cinta sobre la mitad del código
help-rehearse-torn = Cuadros con una esquina arrancada
help-rehearse-duplicates = Lugares donde cuelga una segunda copia de otro cuadro
help-rehearse-strangers = Lugares donde cuelga un cuadro de otro evento
help-rehearse-misdrawn = Cuadros con el dibujo de otra pieza, en un papel bien colgado
help-rehearse-drawn-turned = Cuadros con el dibujo girado respecto al papel
help-rehearse-permute-all = Colgar todos los cuadros en un lugar equivocado
help-rehearse-cards = Qué tarjetas cuelgan alrededor de la pared: all (todas), corners (las de las esquinas) o none (ninguna)
help-rehearse-width = Ancho de la foto en píxeles
help-rehearse-height = Altura de la foto en píxeles
help-rehearse-min-px-per-module = Hacer la foto tan grande que cada módulo tenga estos píxeles
help-rehearse-fill = Qué parte de la foto ocupa la pared, de 0.05 a 4; con más de 1, una parte queda fuera
help-rehearse-yaw = Cuánto a la derecha del centro de la pared está la cámara, en grados
help-rehearse-pitch = Cuánto arriba del centro de la pared está la cámara, en grados
help-rehearse-roll = Cuánto se inclina la cámara como las agujas del reloj, en grados
help-rehearse-orientation = Cómo se sostuvo el teléfono: la orientación EXIF, de 1 a 8
help-rehearse-mirrored = Guardar una imagen invertida, como lo hace una cámara frontal
help-rehearse-people = Personas frente a la pared, de 0 a 4
help-rehearse-ladder = Poner una escalera frente a la pared

rehearse-working = creando la foto
rehearse-made = Se creó { $photo }: una imagen simulada, no una foto, de { $cells ->
        [one] 1 lugar
       *[other] { $cells } lugares
    } en una pared que nunca existió.
rehearse-states = La verdad: { $right } bien, { $wrong } equivocados, { $turned } girados, { $empty } vacíos, { $unread } que no se pueden leer, { $unseen } fuera de la vista.
rehearse-truth = Qué hay en cada lugar está escrito en { $truth }.
rehearse-next = Ahora: mírela, decida qué cambiaría y escriba “everysquare check { $folder } { $photo }”.

## print

print-squares = Cuadros
print-cards = Tarjetas
print-pieces = Piezas
print-working = componiendo las páginas
print-about-squares = El frente de los cuadros { $labels }: papel en blanco con líneas de corte, marcas, la etiqueta y el código.
print-about-pieces = Las piezas { $labels } de la imagen, con líneas de corte, marcas y sus etiquetas.
print-about-backs = El reverso de { $labels }: cómo se llama cada uno y cuál lado va arriba.
print-about-piece-backs = El reverso de las piezas { $labels }: cómo se llama cada una, cuál lado va arriba, su nivel y sus lápices.
print-about-cards = Las tarjetas { $names }, cada una con su nombre y su código.
print-levels = Niveles
print-pencils = Lápices
print-checklist = Control
print-wall-map = Mapa de la pared
print-about-levels = Etiquetas para las bolsas de los niveles { $levels }: el nombre y las marcas del nivel, cuántas piezas y cuáles.
print-level-count = { $pieces ->
    [one] 1 pieza
   *[other] { $pieces } piezas
}
print-level-more = y { $count } más
unit-mm = mm
unit-inch = in
# which word of a pencil’s name says most: last as in “light green”, or first as in “verde claro”
print-main-word = first
print-pencils-more = + { $count }
level-plain = liso
level-easy = fácil
level-medium = medio
level-hard = difícil
print-row = Fila { $row }
print-title = { $document } – { $event }
print-actual-size = Imprima al 100 %, tamaño real; no “ajustar a página”
print-page-single = { $document } · página { $page } de { $pages } · una cara
print-page-front-long = { $document } · página { $page } de { $pages } · dos caras, voltear por el borde largo
print-page-front-short = { $document } · página { $page } de { $pages } · dos caras, voltear por el borde corto
print-part = parte { $part } de { $parts }
print-page-folded = { $document } · página { $page } de { $pages } · recortar, doblar en los puntos, pegar
print-page-glued = { $document } · página { $page } de { $pages } · recortar, pegar detrás de la página { $front }
print-page-back = { $document } · página { $page } de { $pages } · reverso de la página { $front }
print-event = { $tag } · { $event }
print-ruler-mm = { $length } mm
print-ruler-inch = { $length } in
print-this-way-up = este lado arriba
print-card-column = columna { $name } · va debajo de su columna
print-card-row = fila { $name } · va a la izquierda de su fila
print-card-corner-1 = esquina 1 de 4 · afuera, arriba a la izquierda
print-card-corner-2 = esquina 2 de 4 · afuera, arriba a la derecha
print-card-corner-3 = esquina 3 de 4 · afuera, abajo a la derecha
print-card-corner-4 = esquina 4 de 4 · afuera, abajo a la izquierda

help-print = Escribe el material en PDF y el registro de lo que se imprimió
help-print-folder = La carpeta del evento
help-print-documents = Solo estos documentos, como squares (cuadros) o pieces (piezas); si se omite, todos
help-print-templates = Escribir también las plantillas y las palabras del programa, para partir de ellas

print-made = Se escribió en { $folder }:
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
print-made-manifest = manifest.json: qué se imprimió y dónde; “check” lo necesita
print-made-templates = Las plantillas y las palabras del programa están en { $made }. Copie la que quiera cambiar en { $own } y cámbiela allí; de words.ftl conserve solo las líneas que cambie.
print-paper-letter = carta
print-paper-tabloid = tabloide (11 × 17 in)
print-paper-a4 = A4
print-paper-a3 = A3
print-choose-one-sided = Al imprimir elija papel { $paper }, “tamaño real” o 100 %, una cara.
print-choose-long-edge = Al imprimir elija papel { $paper }, “tamaño real” o 100 %, y para { $documents } dos caras, voltear por el borde largo.
print-choose-short-edge = Al imprimir elija papel { $paper }, “tamaño real” o 100 %, y para { $documents } dos caras, voltear por el borde corto.
print-ruler-check = Imprima primero una sola hoja: su regla debe medir exactamente { $length }, y cada reverso debe quedar detrás de su frente.
print-ruler-check-one-sided = Imprima primero una sola hoja: su regla debe medir exactamente { $length }.
print-codes-changed = Los códigos o las medidas cambiaron desde la última vez que se imprimió este material: los cuadros de esa impresión no se reconocerán, así que no use ninguno.
print-next = Ahora: corte por las líneas y ensaye la velada con “everysquare rehearse { $folder }”. Cuando haya cuadros colgados: “everysquare check { $folder } FOTO”.

error-print-too-large = { $what } de { $side } mm no cabe en papel { $paper } junto a la regla: lo más grande que cabe son { $largest } mm ({ $inches } in); redúzcalo en event.toml o imprima en papel más grande ({ $papers })
error-print-square = un cuadro
error-print-piece = una pieza
error-print-card = una tarjeta
error-print-unknown = no existe el documento “{ $read }”: los documentos son { $known }
error-print-unknown-near = no existe el documento “{ $read }”, ¿quiso decir { $near }? Los documentos son { $known }
error-print-typeset = no se pudo componer una página ({ $said }): es una falla del programa, por favor repórtela

## checklist

checklist-intro = Marque una casilla cuando se entrega una pieza, cuando regresa su cuadro y cuando ese cuadro cuelga en la pared: { $pieces ->
    [one] 1 pieza.
   *[other] { $pieces } piezas en total.
}
checklist-piece = Pieza
checklist-out = salió
checklist-back = volvió
checklist-hung = colgó

## pencils

pencils-intro = Con { $seats ->
    [one] 1 asiento ocupado
   *[other] { $seats } asientos ocupados
}, con estos lápices nadie espera un color en { $percent } de cada 100 momentos.
pencils-number = N.º
pencils-name = Lápiz
pencils-pieces = Piezas con él
pencils-shared = Total, compartidos
pencils-a-table = Por mesa
pencils-all-tables = Total, si cada mesa tiene los suyos
pencils-sets = Hay dos formas: todos comparten los lápices en el centro del salón, o cada mesa tiene los suyos: aquí { $tables ->
    [one] una mesa
   *[other] { $tables } mesas
} con { $seats ->
    [one] 1 asiento
   *[other] { $seats } asientos
}. Con los propios hacen falta más lápices y se camina menos.
pencils-pieces-title = Qué lápices necesita cada pieza
pencils-pieces-intro = Los números son los de la lista de arriba; en negrita, el lápiz que cubre la mayor parte de la pieza.

## wall-map

wall-map-squares = Todos los cuadros juntos miden { $width } de ancho y { $height } de alto.
wall-map-with-cards = Con las tarjetas alrededor: { $width } de ancho y { $height } de alto.
wall-map-hang = El borde inferior de los cuadros queda a { $height } del piso.
wall-map-hang-proposed = El borde inferior de los cuadros queda a { $height } del piso. Es una propuesta; con hang_mm en event.toml se elige otra altura.
wall-map-fits = El lugar de { $width } por { $height } alcanza para los cuadros y las tarjetas.
wall-map-fits-without-cards = El lugar de { $width } por { $height } alcanza para los cuadros, pero no para las tarjetas.
wall-map-does-not-fit = El lugar de { $width } por { $height } no alcanza para estos cuadros.
wall-map-alt = La pared a escala: { $columns } columnas y { $rows } filas de cuadros con sus etiquetas, las tarjetas alrededor, el piso abajo. Las tablas que siguen contienen todas sus medidas.
wall-map-floor = piso
wall-map-in-inches = Alturas desde el piso y distancias desde la izquierda en pulgadas.
wall-map-in-mm = Alturas desde el piso y distancias desde la izquierda en mm.
wall-map-columns-title = Líneas verticales
wall-map-columns-intro = Cuelgue un hilo con un peso, o trace una línea tenue a lápiz, a estas distancias del borde izquierdo de los cuadros.
wall-map-column = Línea
wall-map-from-left = Desde la izquierda, { $unit }
wall-map-left-of = a la izquierda de { $column }
wall-map-right-of = a la derecha de { $column }
wall-map-rows-title = Líneas horizontales
wall-map-rows-intro = Tense un hilo, o trace una línea tenue a lápiz, a estas alturas del piso. Use un nivel de burbuja: los pisos tienen desnivel.
wall-map-row = Fila
wall-map-lower = Borde inferior, { $unit }
wall-map-upper = Borde superior, { $unit }
wall-map-column-cards = Las tarjetas de columna, de { $side } de ancho, van debajo de sus columnas; su borde superior toca los cuadros.
wall-map-row-cards = Las tarjetas de fila, de { $side } de alto, van a la izquierda de sus filas; su borde derecho toca los cuadros.
wall-map-corner-cards = Las tarjetas de esquina, de { $ring } de ancho y de alto sin la tira de texto, van más allá de las cuatro esquinas de los cuadros y los tocan con una esquina; la tira apunta hacia afuera.

## comparison prints

print-side-by-side = Lado a lado
print-true-scale = En tamaño real
print-pairs = Pieza y cuadro
print-making-of = Cómo se llenó la pared
print-maths-page = Las matemáticas de nuestra pared
print-poster = Cartel
comparison-cm2 = { $area } cm²
comparison-m2 = { $area } m²
comparison-in2 = { $area } in²
comparison-ft2 = { $area } ft²
comparison-original = El original
comparison-wall = Nuestra pared
comparison-both-alt = La imagen original y la pared que los visitantes dibujaron a partir de ella, al mismo tamaño, cada una con una barra que dice cuánto mide algo en realidad.
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
comparison-planned = Previsto: toda longitud en la pared es { $scale } veces la del original ({ $square } por { $piece }).
comparison-measured = Medido en la foto, con { $squares ->
        [one] 1 cuadro
       *[other] { $squares } cuadros
    }: { $scale } veces.
comparison-not-measured = En la foto se leyeron muy pocos cuadros para medir cuántas veces más larga es de verdad la pared.
comparison-original-size = El original tiene { $width } de ancho y { $height } de alto; su área es de { $area }.
comparison-wall-size = La pared prevista tiene { $width } de ancho y { $height } de alto; su área es de { $area }.
comparison-thanks = ¡Gracias a quienes dibujaron un cuadro!
comparison-true-intro = Ponga la mano o una regla sobre esta página: piezas y cuadros tienen aquí su tamaño real. Lo enmarcado en el original es lo que se ve, ampliado, de la pared.
comparison-true-pieces-all = El original completo, a 1 : 1
comparison-true-pieces = El original a 1 : 1: { $count ->
        [one] pieza
       *[other] { $count } piezas,
    } { $labels }; completo no cabe en esta página
comparison-true-piece-part = Una parte de la pieza { $labels } a 1 : 1; la pieza completa, de { $side } por lado, no cabe en esta página
comparison-true-squares = Nuestra pared a 1 : 1: { $count ->
        [one] cuadro
       *[other] { $count } cuadros,
    } { $labels }
comparison-true-square-part = Una parte del cuadro { $labels } a 1 : 1; el cuadro completo, de { $side } por lado, no cabe en esta página
comparison-from-to = de { $first } a { $last }
comparison-true-nested-alt = El contorno de la pared con el original en su esquina inferior izquierda, los dos a una misma escala: la pared es { $scale } veces más larga y { $scale } veces más alta.
comparison-true-copies = { $scale } originales uno junto a otro son tan largos como la pared, { $scale } uno sobre otro tan altos: { $scale } × { $scale } = { $copies } copias la cubren.
comparison-true-about-copies = La pared mide { $scale } veces lo largo y { $scale } veces lo alto, así que su área es { $scale } × { $scale }, unas { $copies } veces mayor.
comparison-true-drawing = Este dibujo está a 1 : { $drawing }, y el original dentro de él también.
comparison-pairs-intro = A la izquierda, la pieza que alguien recibió; a la derecha, el cuadro que salió de ella. Los dos se muestran al mismo tamaño.
comparison-pair-alt = La pieza { $label } del original y, a su lado, el cuadro { $label } tal como se dibujó.
comparison-making-intro = { $checks ->
        [one] Esta velada se revisó una foto de la pared.
       *[other] Esta velada se revisaron { $checks } fotos de la pared. Aquí están en orden.
    }
comparison-making-some = { $shown } de { $checks } revisiones de la velada, elegidas por igual, con la primera y la última entre ellas.
comparison-making-counts = { $right } de { $cells } en su lugar, { $empty } vacíos
comparison-making-alt = La pared a las { $when }: { $counts }.
comparison-curve = Cuadros en su lugar, con el paso del tiempo
comparison-curve-alt = Una curva de los cuadros en su lugar, de las { $first } a las { $last }; los números están debajo de las imágenes.
comparison-counting-1 = Cuente a lo largo de la fila de abajo: { $columns ->
        [one] 1 cuadro.
       *[other] { $columns } cuadros.
    } Cuente desde el piso hacia arriba: { $rows ->
        [one] 1 fila.
       *[other] { $rows } filas.
    }
comparison-counting-2 = Cada cuadro se dibujó a partir de una pieza, así que hay tantos cuadros como piezas: { $squares }.
comparison-multiplying-1 = { $columns } columnas × { $rows } filas = { $squares } cuadros.
comparison-multiplying-row = Una línea de { $squares ->
        [one] 1 cuadro
       *[other] { $squares } cuadros
    }: 1 × { $squares } = { $squares }.
comparison-multiplying-2 = El lado de una pieza mide { $piece }, el de un cuadro { $square }: { $scale } veces más.
comparison-multiplying-3 = En un cuadro caben { $scale } × { $scale } = { $copies } piezas.
comparison-ratio-1 = Longitudes, imagen y pared: 1 a { $scale }. La imagen mide { $width } por { $height }, la pared { $wall-width } por { $wall-height }.
comparison-ratio-2 = Una vuelta a la imagen: { $around }. Una vuelta a la pared: { $wall-around }, otra vez { $scale } veces más.
comparison-ratio-3 = Áreas, imagen y pared: 1 a { $scale } × { $scale } = { $copies }. La imagen tiene { $area }, la pared { $wall-area }.
comparison-ratio-4 = Todos los ángulos siguen igual: por eso se sigue viendo lo mismo.
comparison-pattern = Un patrón: longitudes × { $scale }, áreas × { $copies }
comparison-pattern-intro = Tome bloques de piezas, de 1 × 1, de 2 × 2 y así. Por grande que sea el bloque, su lado crece { $scale } veces y su área { $copies } veces.
comparison-block = Bloque
comparison-side-picture = Lado, imagen
comparison-side-wall = Lado, pared
comparison-area-picture = Área, imagen
comparison-area-wall = Área, pared
comparison-measuring = Previsto y medido
comparison-measuring-intro = Medido en la foto, con { $count ->
        [one] 1 cuadro
       *[other] { $count } cuadros
    }. Lo que sigue a ± dice cuánto puede desviarse un número: en 95 de 100 casos, no más.
comparison-what = Qué
comparison-plan = Previsto
comparison-found = Medido
comparison-scale-factor = Factor de escala
comparison-pitch = De un cuadro al siguiente
comparison-width = Ancho de la pared
comparison-height = Alto de la pared
comparison-straight = Cómo cuelga
comparison-column = Columna { $column }
comparison-lower = { $name } cuelga { $by } más abajo de lo previsto.
comparison-higher = { $name } cuelga { $by } más arriba de lo previsto.
comparison-right-of = { $name } cuelga { $by } más a la derecha de lo previsto.
comparison-left-of = { $name } cuelga { $by } más a la izquierda de lo previsto.
comparison-sinks = { $name } baja { $by } de su extremo izquierdo al derecho.
comparison-rises = { $name } sube { $by } de su extremo izquierdo al derecho.
comparison-leans-right = { $name } se inclina { $by } a la derecha hacia abajo.
comparison-leans-left = { $name } se inclina { $by } a la izquierda hacia abajo.
comparison-all-straight = Filas y columnas cuelgan tan derechas como esta foto permite saber.
comparison-gap = El hueco más ancho mide { $by }, entre { $first } y { $second }.
comparison-overlap = Lo que más se encima mide { $by }, entre { $first } y { $second }.
comparison-straight-kind = Papel, cinta y muchas manos: unos milímetros son parte de esto, y a un paso nadie los ve.
comparison-alike = Para adultos: ¿qué tanto se parecen las dos?
comparison-alike-how = El índice de similitud estructural (SSIM; Wang, Bovik, Sheikh y Simoncelli 2004) recorre las dos imágenes por partes y compara qué tan claras son, qué tan fuertes son sus contrastes y cómo corren sus líneas; 1 sería exactamente la misma imagen.
comparison-alike-number = Para toda la pared su promedio es { $likeness }: un número para la pared y no una nota para nadie, pues cada mano dibuja a su manera.
comparison-alike-unknown = Para esta pared no se calculó; sería un número para la pared y no una nota para nadie, pues cada mano dibuja a su manera.
comparison-edges = Abajo, los bordes del original están sobre la pared. Donde una línea dibujada sigue un borde, la regla y el ojo coincidieron.
comparison-edges-alt = La pared con los bordes del original dibujados encima.
comparison-poster-page = { $what }: fila { $row }, columna { $column } de { $rows } × { $columns } · página { $page } de { $pages }
comparison-poster-size = { $width } de ancho y { $height } de alto, en { $pages ->
        [one] 1 página.
       *[other] { $pages } páginas: { $rows ->
            [one] 1 fila
           *[other] { $rows } filas
        } de { $columns }.
    }
comparison-poster-about = Cómo se arma el cartel. { $size } { $steps } { $caution }
comparison-poster-1 = Imprima todas las páginas al 100 %. Cada una dice junto a su regla qué fila y qué columna es.
comparison-poster-2 = Corte cada página por las líneas de sus esquinas.
comparison-poster-3 = Las páginas vecinas comparten { $shared }. Las líneas punteadas muestran adónde llega el borde de la siguiente: péguela sobre esa franja para que la imagen continúe.
comparison-poster-4 = Empiece arriba a la izquierda: primero cada fila de izquierda a derecha, luego las filas una debajo de otra.
comparison-poster-fire-m2 = El cartel es de { $area } m² ({ $feet } ft²) de papel, además de los cuadros. Muchas normas contra incendios limitan el papel en las paredes, sobre todo en pasillos y cerca de las salidas: pregunte a quien esté a cargo del edificio o a los bomberos antes de colgarlo.
comparison-poster-fire-ft2 = El cartel es de { $feet } ft² ({ $area } m²) de papel, además de los cuadros. Muchas normas contra incendios limitan el papel en las paredes, sobre todo en pasillos y cerca de las salidas: pregunte a quien esté a cargo del edificio o a los bomberos antes de colgarlo.
filling-label = { $when } · { $right } / { $cells }
error-print-no-wall = la pared enderezada no tiene píxeles: fotografíe otra vez toda la pared, desde más lejos
error-print-no-pairs = no hay ningún cuadro que mostrar junto a su pieza: ninguno se leyó bien; fotografíe la pared desde más cerca
error-print-no-checks = todavía no hay ninguna revisión de esta velada: primero fotografíe la pared y revísela
error-print-poster = no se puede imprimir un cartel de { $read } mm de ancho: en este papel puede tener de { $least } a { $most } mm
error-filling-nothing = no hay ninguna imagen de la pared que mover: primero fotografíe la pared y revísela
error-filling-large = la imagen en movimiento no se puede hacer tan pequeña como para enviarla por correo
error-filling-gif = la imagen en movimiento no se puede escribir: { $said }

## check

help-check = Lee fotos de la pared y dice qué intercambiar, girar y buscar
help-check-folder = La carpeta del evento
help-check-photos = Fotos de la pared: una, o varias que la muestren por partes
check-working = Leyendo la pared
check-written = Se escribió en { $folder }: report.html para verlo, marked.jpg para llevarlo a la pared, wall.jpg enderezada, report.json para otros programas.
check-open = Abra { $page } en un navegador.

## display

help-display = Hace lo que queda: la pared de frente junto al original, sus medidas y láminas para guardar
help-display-folder = La carpeta del evento
help-display-photos = Fotos de la pared: una, o varias que la muestran por partes
help-display-view = Cómo se muestra la pared: as-hung (como está), straight (nada torcido, con los huecos), closed (también sin huecos) o in-order (cada cuadro en su casilla)
help-display-codes = Si los códigos se quedan: keep; o fill, para taparlos con lo que los rodea
help-display-missing = Qué hay donde no cuelga ningún cuadro: ghost (el original a lápiz suave) u open (nada)
help-display-only = Solo esta lámina, por ejemplo side-by-side; se puede repetir
help-display-pair = La etiqueta de un cuadro para mostrarlo junto a su pieza; se puede repetir
help-display-poster-width = Ancho del cartel en mm; si falta, tres páginas de ancho
help-display-poster-original = También el original como cartel
display-working = Mirando la pared
display-squares = { $squares ->
    [one] Se leyó 1 cuadro de { $cells }.
   *[other] Se leyeron { $squares } cuadros de { $cells }.
}
display-scale = Factor de escala, medido: { $factor } ± { $within } (previsto: { $planned }).
display-size = Los cuadros cubren { $width } × { $height }.
display-straight = Las filas y las columnas cuelgan rectas: nada se desvía { $length } o más.
display-likeness = Parecido de toda la pared con el original: { $likeness } de 1. Es de todos juntos.
display-written = Escrito en { $folder }: display.json tiene las cifras, wall.jpg la pared.
display-suggestions = { $squares ->
    [one] Un dibujo podría estar en el papel de otro cuadro. Es una pista para mirar, nada más:
   *[other] { $squares } dibujos podrían estar en el papel de otros cuadros. Es una pista para mirar, nada más:
}
display-print = { $name }: { $pages ->
    [one] 1 página
   *[other] { $pages } páginas
}
display-mixed = { $squares ->
    [one] 1 cuadro cuelga en otra casilla o girado
   *[other] { $squares } cuadros cuelgan en otra casilla o girados
}: «--view in-order» muestra cada cuadro en su sitio.
retape-row-sinks-right = La fila { $line } baja { $length } hacia la derecha.
retape-row-sinks-left = La fila { $line } baja { $length } hacia la izquierda.
retape-column-leans-right = La columna { $line } se inclina { $length } hacia la derecha al bajar.
retape-column-leans-left = La columna { $line } se inclina { $length } hacia la izquierda al bajar.
retape-gap = Entre { $one } y { $other } hay un hueco de { $length }.
retape-overlap = { $one } y { $other } se enciman { $length }.
error-display-no-squares = en las fotos no se leyó ningún cuadro de este evento, solo tarjetas: acérquese, llene el encuadre con la pared y tome la foto otra vez
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

serve-title = Ayudante de la pared
serve-nowhere = Este enlace no funciona. Escanee de nuevo el código QR de la computadora.
serve-tabs = Dos tareas
serve-tab-wall = Pared
serve-tab-pieces = Piezas
serve-take = Tomar foto de la pared
serve-again = Tomar otra foto
serve-check-again = ¿Listo? Revisar de nuevo
serve-choose = Elegir fotos
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
serve-all-missing = Todas
serve-next-how = Toque una pieza cuando la entregue.
serve-next-none = Todas las piezas están entregadas. ¡Bien!
serve-give-out = por entregar
serve-given = entregada
serve-piece-out = { $label } entregada.
serve-piece-back = { $label } de vuelta.
serve-undo = Deshacer
serve-heading-out = Se están dibujando
serve-out-since = desde { $time }, { $minutes } min
serve-back = Ya volvió
serve-heading-back = De vuelta, para colgar
serve-back-since = de vuelta: { $time }
serve-not-back = No ha vuelto
serve-heading-fallen = Estaban y ya no están
serve-fallen-how = Estos cuadros estaban en la pared. Mire en el piso.
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
serve-help-private = Las fotos van solo a la computadora y no se guardan. Quien escuche en la misma red Wi-Fi puede verlas por el camino.
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
serve-photo-heic = No podemos leer fotos HEIC. En un iPhone, abra Configuración > Cámara > Formatos y elija “Más compatible”. O use el botón de esta página.
serve-photo-unknown = No podemos leer este archivo como foto. Use JPEG, PNG, WebP o TIFF.
serve-photo-truncated = La foto está cortada, le falta el final. Envíela de nuevo.
serve-photo-damaged = No podemos abrir esta foto. Tome otra.
serve-photo-no-codes = No encontramos ningún código de este evento. ¿Es esta la pared? Acérquese, no mueva el teléfono y tome otra foto.
serve-photo-foreign = Los códigos de esta foto son de otro evento (clave { $tags }). Tome una foto de la pared de este evento. ¿Es la pared correcta? Pregunte a quien está en la computadora.
serve-photo-other = Solo encontramos códigos de otro tipo ({ $texts }). ¿Es esta la pared? Tome una foto de los cuadros.
serve-photo-too-dark = La foto está demasiado oscura. Encienda más luces e intente de nuevo.
serve-photo-cannot-place = Se ven cuadros, pero no se sabe en qué parte de la pared están. Aléjese hasta que se vea toda la pared o ponga las tarjetas de las esquinas.
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
serve-room-lost = La computadora no responde
serve-error-unknown = no encontramos la dirección de red de esta computadora ({ $said }): indíquela con --address
serve-error-no-network = esta computadora no está en una red a la que lleguen los teléfonos: conéctela al Wi-Fi del salón, o active el punto de acceso de un teléfono y conéctela a él, e inténtelo de nuevo
serve-error-several = esta computadora tiene varias direcciones: elija una con --address: { $own }
serve-error-open = { $asked } no es una dirección de la red propia del salón (10.…, 172.16.… a 172.31.…, 192.168.…): las fotos de la pared no se muestran a nadie más
serve-error-foreign = { $asked } no es la dirección de esta computadora: tiene { $own }
serve-error-port-taken = el puerto { $port } está ocupado: ¿ya está abierta la página? Busque su ventana o elija otro puerto con --port
serve-error-refused = la página no puede abrirse en { $at }: { $said }

## tour

help-tour = Muestra una velada completa con un evento de ejemplo, en unos segundos
help-tour-folder = Dónde se pone el evento de ejemplo
tour-event-name = Velada en la biblioteca del puerto
tour-begins = Una velada completa en cinco pasos, en la carpeta { $folder }. Cada línea con un $ es un comando que usted mismo puede escribir.
tour-sample =
    1. El evento: event.toml dice lo que decidió quien organiza, picture.png es lo que colgará en la pared.
       Para un evento propio: everysquare new CARPETA --picture ARCHIVO
tour-print =

    2. El material: piezas para repartir, cuadros en blanco para dibujar, tarjetas para la pared.
tour-rehearse =

    3. La pared: una foto simulada, porque todavía nadie ha dibujado. Algunos cuadros están mal colgados; la verdad se escribe al lado.
tour-check =

    4. La revisión: se lee la foto, se compara con el plan, y esto es lo que hay que hacer.
tour-display =

    5. Lo que queda: la pared de frente junto al original, sus medidas y láminas para guardar.
tour-compared =

    La verdad y el informe coinciden en { $right } de { $cells } casillas.
tour-ends =

    Qué hay en { $folder }:
      event.toml   los ajustes, hechos para cambiarse a mano
      print/       pieces.pdf, squares.pdf, cards.pdf para imprimir al 100 %, manifest.json para la revisión
      rehearsals/  la foto simulada y la verdad sobre ella
      checks/      una carpeta por revisión; abra su report.html
      display/     una carpeta con lo que queda; abra su side-by-side.pdf

    Qué probar después:
      everysquare rehearse { $folder } --seed 6 --permute-all     una pared con cada cuadro en una casilla equivocada
      everysquare check { $folder } FOTO.jpg                      una foto propia, cuando los cuadros estén impresos
      everysquare new mi-velada --picture mi-imagen.png           una velada propia

## errors: the event's folder

error-folder-no-event = { $path } no contiene event.toml: cree ahí un evento con “everysquare new { $path } --picture ARCHIVO”
error-folder-not-printed = { $path } no contiene print/manifest.json: primero imprima el material con “everysquare print { $path }”
error-folder-no-picture = no existe la imagen { $path }: dé el nombre de un archivo PNG, JPEG, WebP o TIFF
error-folder-changed = event.toml dice { $own }, pero el material se imprimió para { $kit }: deje event.toml como estaba o vuelva a imprimir el material
error-folder-described = { $tag }, { $columns } × { $rows } cuadros de { $side } mm
error-folder-not-text = { $path } no es texto en UTF-8: guárdelo otra vez como texto sin formato
error-folder-too-large = { $path } tiene más de { $most } MB: un archivo así no es { $file }
error-folder-an-event = un event.toml
error-folder-a-manifest = un registro de impresión
error-folder-a-template = una plantilla
error-folder-a-words-file = un archivo de palabras
error-folder-a-picture = una imagen
error-folder-many-templates = { $path } contiene más de { $most } plantillas: deje solo las que reemplazan una del programa
error-folder-other-words = { $path } no se lee: las palabras propias van en templates/words.ftl, en el idioma de event.toml
error-folder-read = { $path } no se puede leer: { $why }
error-folder-full = { $path } no se puede escribir porque el disco está lleno: libere espacio y repita el comando
error-folder-read-only = { $path } no se puede escribir porque su carpeta es de solo lectura: copie la carpeta del evento a un lugar propio
error-folder-write = { $path } no se puede escribir: { $why }
error-folder-no-right = usted no tiene permiso; pídaselo a quien lo creó
error-folder-is-folder = es una carpeta
error-folder-file-in-the-way = hay un archivo donde debe haber una carpeta
error-folder-no-name = este nombre no sirve para una carpeta

## errors: manifest and codes

error-manifest-format = el registro de impresión tiene el formato { $read } y este programa lee el formato { $known }: vuelva a imprimir el material o use el programa que lo escribió
error-manifest-json = el registro de impresión no se puede leer: { $said }
error-manifest-wall = el registro de impresión no describe una pared: { $what }
error-manifest-code = el código { $name } del registro de impresión: { $what }
error-manifest-code-outside = un código de { $side } mm en { $x }, { $y } mm no cabe dentro de su cuadro
error-manifest-module = módulos de { $module } mm; se permiten de { $low } a { $high } mm
error-manifest-cells = { $columns } columnas y { $rows } filas; se permiten cuando mucho { $most } cuadros
error-manifest-sizes = cuadros de { $square } mm y piezas de { $piece } mm; se permiten de { $low } a { $high } mm
error-manifest-listed = { $cells } casillas, pero en la lista { $listed ->
    [one] hay 1 cuadro
   *[other] hay { $listed } cuadros
}
error-manifest-twice = el cuadro { $square } está dos veces en la lista
error-manifest-same-code = los cuadros { $first } y { $second } llevan el mismo código
error-manifest-outside = el cuadro { $square } está en la columna { $column }, fila { $row }, fuera de la cuadrícula
error-manifest-label = el cuadro { $square } está donde event.toml tiene { $expected }: deje rows_from como estaba cuando se imprimió el material o vuelva a imprimirlo
error-manifest-kind = una tarjeta “{ $name }” de tipo “{ $kind }”: se esperaba column, row o corner
error-manifest-card = la tarjeta { $name } de tipo { $kind } no tiene lugar o no tiene tamaño
error-code-text = “{ $text }” no cabe en un código: se permiten cuando mucho { $most } caracteres de 0-9, A-Z, espacio y $%*+-./:
error-code-hex = “{ $text }” no son los módulos de un código: se esperaban 111 dígitos hexadecimales

## errors: event.toml

error-settings-at = event.toml, línea { $line }: { $read }: { $what }
error-settings-at-empty = event.toml, línea { $line }: una línea vacía: { $what }
error-settings-unknown = event.toml, línea { $line }: { $read } no es un ajuste: { $hint }
error-settings-unknown-in = event.toml, línea { $line }: { $read } no es un ajuste de [{ $section }]: { $hint }
error-settings-missing = en event.toml falta { $name }: agregue { $example }
error-settings-no-such = { $name } no es un ajuste de event.toml
error-settings-twice = este nombre aparece aquí dos veces: deje solo uno
error-settings-quotes = un texto debe ir entre comillas, como "a4"
error-settings-no-toml = esto no es TOML: { $said }

## errors: the organiser's own templates

error-template-unknown = templates/{ $name }.typ no reemplaza ninguna plantilla del programa: las que hay son { $known }
error-template-unknown-near = templates/{ $name }.typ no reemplaza ninguna plantilla del programa: ¿quiso decir { $near }.typ?
error-template-line = templates/{ $name }.typ, línea { $line }: { $said }: corríjala, o quite el archivo para imprimir con la plantilla del programa
error-template = templates/{ $name }.typ: { $said }: corríjala, o quite el archivo para imprimir con la plantilla del programa

## errors: the program

error-line = everysquare: { $what }
error-about = { $path }: { $what }
error-output = no se puede escribir la salida: { $why }
error-json = un archivo del propio programa no está como debe: { $said }
error-system = el sistema dice: { $said }
error-fault = el programa tuvo una falla propia y se detuvo; ningún archivo quedó a medias. Por favor repórtela junto con lo que escribió: { $said }
error-tour-taken = { $folder } contiene otro evento y se deja como está: dé otra carpeta para el recorrido, “everysquare tour CARPETA”
error-tour-no-check = no se escribió ninguna revisión

## what was mistyped

typed-wrong = everysquare: { $what } (everysquare --help muestra qué se puede escribir)
typed-unknown = no existe la opción { $arg }
typed-unknown-near = no existe la opción { $arg }; ¿quiso decir { $near }?
typed-one-too-many = “{ $arg }” está de más
typed-no-command = no existe el comando “{ $command }”
typed-no-command-near = no existe el comando “{ $command }”; ¿quiso decir { $near }?
typed-no-value = después de { $arg } va un valor
typed-value = “{ $value }” no sirve para { $arg }: { $why }
typed-too-many = “{ $value }” está de más para { $arg }
typed-twice = { $arg } aparece dos veces
typed-conflict = { $arg } y { $other } no pueden ir juntas
typed-missing = también hay que escribir { $args }
typed-not-text = lo que se escribió no es texto en UTF-8
typed-choice = se permite { $choices }
typed-whole = se espera un número entero
typed-number = se espera un número

## help

help-heading-usage = Uso
help-heading-commands = Comandos
help-heading-arguments = Argumentos
help-heading-options = Opciones
help-default = { $help } [si se omite: { $values }]
help-possible = { $help } [valores: { $values }]
help-help = Muestra esta ayuda
help-version = Muestra la versión
help-language = El idioma mientras no haya un evento, en (inglés) o es (español); después manda event.toml
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
help-value-size = TAMAÑO
help-value-paper = PAPEL
help-value-how = CÓMO
help-value-unit = UNIDAD
help-value-which = CUÁLES
help-value-px = PX
help-value-part = PARTE
help-value-degrees = GRADOS

## errors: a photo

error-photo-no-file = no existe ese archivo: revise su nombre y su carpeta
error-photo-no-right = no se permite leer este archivo: revise sus permisos
error-photo-is-folder = esto es una carpeta: escriba los nombres de las fotos que contiene
error-photo-unreadable = el archivo no se puede leer ({ $why }): cópielo a esta computadora e intente otra vez
error-photo-file-too-large = el archivo es más grande que cualquier foto: ¿es el correcto?
error-photo-empty = el archivo está vacío: vuelva a copiar la foto
error-photo-heic = esta es una foto HEIC, que solo algunos programas leen: en el teléfono elija Ajustes, Cámara, Formatos, “Más compatible”, o comparta la foto como JPEG, e intente otra vez
error-photo-unknown = esta no es una foto que se pueda leer: se leen archivos JPEG, PNG, WebP y TIFF
error-photo-truncated = la foto está cortada, le falta el final: cópiela o envíela otra vez, completa
error-photo-damaged = la foto está dañada o es de un tipo poco común ({ $why }): cópiela otra vez o guárdela como JPEG con otro programa
error-photo-gave-up = el decodificador se rindió
error-photo-no-size = sin tamaño
error-photo-wrong-pixels = número de píxeles equivocado
error-photo-too-large = la foto tiene { $width } × { $height } píxeles, más de { $most } millones: hágala más chica e intente otra vez
error-photo-too-small = la foto tiene solo { $width } × { $height } píxeles: envíe la original, no una miniatura

## errors: reading the wall

error-read-no-codes = no se ve ningún código de este evento: ¿es esta la pared? Acérquese, no mueva el teléfono e intente otra vez
error-read-foreign = los códigos de esta foto son de otro evento (clave { $tags }): revise la carpeta o tome la foto de la pared de este evento
error-read-other = solo se ven códigos de otro tipo ({ $texts }): ¿es esta la pared? Tome la foto de los cuadros
error-read-too-dark = la foto está demasiado oscura para leerla: encienda más luces, o use el flash un poco de lado
error-read-cannot-place = se ven cuadros, pero no en qué parte de la pared están: aléjese hasta que toda la pared salga en la foto, o cuelgue las tarjetas de las esquinas
error-jpeg-size = una imagen de { $width } × { $height } píxeles no puede ser un archivo JPEG: cada lado puede tener de 1 a 65535

## errors: a made photo

error-rehearse-many-faults = los errores pedidos ocupan { $asked } casillas y la pared tiene { $cells }: pida menos (un intercambio ocupa 2 casillas, un ciclo 3, los demás 1)
error-rehearse-nothing-twice = no queda ningún cuadro que pueda colgar dos veces: pida menos cuadros faltantes o ajenos
error-rehearse-permuted-and-swapped = con todos los cuadros en una casilla equivocada no se pueden pedir además intercambios ni ciclos: déjelos en 0
error-rehearse-too-few = solo { $squares ->
    [one] queda 1 cuadro
   *[other] quedan { $squares } cuadros
} para poner en una casilla equivocada: se necesitan al menos 2
error-rehearse-option = { $name }: { $value }; se permite { $allowed }
error-rehearse-lens = una lente con k1 = { $k1 }, k2 = { $k2 } dobla la imagen dentro del encuadre: use valores menores
error-rehearse-view = desde ahí la pared no puede ocupar el { $percent } % de la foto: gire menos la cámara o pida ocupar menos
error-rehearse-many-pixels = { $px } px por módulo requieren una foto de { $width } x { $height } px y se puede llegar a 8000 x 6000: pida menos, o que la pared ocupe más de la foto
error-rehearse-printed = el registro de impresión tiene { $squares } cuadros para una pared de { $cells } casillas: vuelva a imprimir el material
error-rehearse-jpeg = la foto simulada no se puede escribir como JPEG: { $said }
error-rehearse-range = de { $low } a { $high }
error-rehearse-range-px = de { $low } a { $high } px
error-rehearse-range-mm = de { $low } a { $high } mm
error-rehearse-range-degrees = de { $low } a { $high } grados
error-rehearse-option-width = el ancho de la foto
error-rehearse-option-height = la altura de la foto
error-rehearse-option-px-per-module = el mínimo de px por módulo
error-rehearse-option-misplacement = el desplazamiento
error-rehearse-option-askew = la inclinación de los cuadros
error-rehearse-option-cut = la variación del lado cortado
error-rehearse-option-bend = la curva del papel
error-rehearse-option-drawn-into = la parte de códigos con dibujo encima
error-rehearse-option-fill = la parte que ocupa la pared
error-rehearse-option-yaw = el ángulo hacia la derecha
error-rehearse-option-pitch = el ángulo hacia arriba
error-rehearse-option-roll = la inclinación de la cámara
error-rehearse-option-view = el campo de visión
error-rehearse-option-shift-right = el corrimiento a la derecha
error-rehearse-option-shift-down = el corrimiento hacia abajo
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
error-rehearse-option-unsteady = factor de lo poco fieles que son los dibujos

## errors: printing

error-print-changed = event.toml cambió desde que se imprimió este material, y sus partes no coincidirían: vuelva a imprimirlo todo con “everysquare print { $folder }”

## questions

print-questions = Preguntas
print-answers = Respuestas
questions-about = Tarjetas para recortar, cada una con una pregunta: { $questions }
questions-answers = Respuestas a las preguntas
questions-learners-counting = Contar
questions-learners-multiplying = Multiplicar y fracciones
questions-learners-ratio = Razones y áreas
questions-learners-challenge = Reto
questions-ages-counting = de unos 5 a 7 años
questions-ages-multiplying = de unos 8 a 10 años
questions-ages-ratio = de unos 11 a 13 años
questions-ages-challenge = para cualquiera
questions-about-answers = Guarde esta parte lejos de las tarjetas. Todos los números salen de esta imagen y de esta pared. Las edades son aproximadas. “Necesita un color” es lo que dice el reverso de una pieza.
questions-heading = { $learners }: { $ages }
questions-number = N.º
questions-question = Pregunta
questions-answer = Respuesta
questions-working = Cómo se encuentra
questions-inch = { $count } in
questions-mm = { $count } mm
questions-and = { $first } y { $last }
questions-sum = { $by ->
    [rows] Fila por fila, desde arriba: { $sum }
   *[columns] Columna por columna, desde la izquierda: { $sum }
}
questions-none = ninguno
questions-sum-total = { $terms } = { $total }

questions-ask-pieces-needing = ¿Cuántas piezas necesitan el color { $colour }?
questions-working-pieces-needing = { $counted }
questions-ask-colours-of-piece = ¿Cuántos colores necesita la pieza { $piece }?
questions-working-colours-of-piece = { $colours }
questions-ask-in-one-row = ¿Cuántos cuadros cuelgan en una fila completa?
questions-working-in-one-row = Uno en cada columna: { $columns }
questions-ask-in-one-column = ¿Cuántos cuadros cuelgan en una columna completa?
questions-working-in-one-column = Uno en cada fila: { $rows }
questions-ask-in-row-needing = Mira la fila { $row } de la imagen. ¿Cuántas de sus piezas necesitan el color { $colour }?
questions-working-in-row-needing = { $cells }
questions-ask-left-in-row = Una fila tiene { $columns } lugares. { $hanging ->
        [one] 1 está ocupado
       *[other] { $hanging } están ocupados
    }. ¿Cuántos están vacíos?
questions-working-left-in-row = { $columns } − { $hanging } = { $answer }
questions-ask-colours = ¿Cuántos colores necesita toda la imagen?
questions-working-colours = Cuenta los lápices en la hoja de lápices: { $pencils }
questions-ask-one-colour = ¿Cuántas piezas necesitan un solo color?
questions-working-one-colour = { $counted }
questions-ask-corners = Un cuadro de papel tiene 4 esquinas. ¿Cuántas esquinas tienen { $squares } cuadros?
questions-working-corners = 4 + 4 = { $answer }
questions-ask-sides = Un cuadro de papel tiene 4 lados. ¿Cuántos lados tienen { $squares } cuadros?
questions-working-sides = 4 + 4 + 4 = { $answer }
questions-ask-one-more = La imagen tiene { $squares ->
    [one] 1 pieza
   *[other] { $squares } piezas
}. Si tuviera una más, ¿cuántas tendría?
questions-working-one-more = { $squares } + 1 = { $answer }
questions-ask-hands = { $helpers } ayudantes cuelgan juntos un cuadro. ¿Cuántas manos tienen?
questions-working-hands = { $hands } + { $hands } = { $answer }
questions-ask-boxes-across = Une las marcas de un cuadro de arriba abajo. ¿Cuántas tiras salen?
questions-working-boxes-across = 3 líneas forman { $answer } tiras

questions-ask-all-squares = La pared tiene { $columns } columnas y { $rows } filas. ¿Cuántos cuadros son?
questions-working-all-squares = { $columns } × { $rows } = { $answer }
questions-ask-fraction-needing = Exactamente { $part }/{ $of } de las { $count } piezas necesitan el color { $colour }. ¿Cuántas piezas son?
questions-working-fraction-needing = { $count } ÷ { $of } = { $one }, luego { $one } × { $part } = { $answer }
questions-ask-left = En la pared van { $count } cuadros. Ya hay { $hanging } colgados. ¿Cuántos faltan?
questions-working-left = { $count } − { $hanging } = { $answer }
questions-ask-which-part = { $needing } de las { $count } piezas necesitan el color { $colour }. Eso es 1/? de ellas. ¿Qué número va en lugar del signo de pregunta?
questions-working-which-part = { $count } ÷ { $needing } = { $answer }
questions-ask-fraction-hanging = Ya cuelgan { $part }/{ $of } de los { $count } cuadros. ¿Cuántos cuadros son?
questions-working-fraction-hanging = { $count } ÷ { $of } = { $one }, luego { $one } × { $part } = { $answer }
questions-ask-not-needing = { $needing } de las { $count } piezas necesitan el color { $colour }. ¿Cuántas no lo necesitan?
questions-working-not-needing = { $count } − { $needing } = { $answer }
questions-ask-full-rows = Están completas { $rows } filas de { $columns } cuadros. ¿Cuántos cuadros cuelgan ahí?
questions-working-full-rows = { $rows } × { $columns } = { $answer }
questions-ask-visitors = Cada visitante dibuja { $each } de los { $count } cuadros. ¿Cuántos visitantes hacen falta?
questions-working-visitors = { $count } ÷ { $each } = { $answer }
questions-ask-quarter-boxes = Une con líneas rectas todas las marcas que quedan frente a frente en un cuadro. ¿Cuántas casillas pequeñas salen?
questions-working-quarter-boxes = 4 a lo ancho y 4 a lo alto: 4 × 4 = { $answer }
questions-ask-sides-of-squares = Un cuadro tiene 4 lados. ¿Cuántos lados tienen { $squares } cuadros?
questions-working-sides-of-squares = { $squares } × 4 = { $answer }
questions-ask-half-of-boxes = Las marcas dividen un cuadro en 16 casillas pequeñas. La mitad están coloreadas. ¿Cuántas casillas son?
questions-working-half-of-boxes = 16 ÷ 2 = { $answer }
questions-ask-folded = Dobla una hoja por la mitad { $times } veces y ábrela. ¿En cuántas partes la dividen los dobleces?
questions-working-folded = Cada doblez las duplica: 2 × 2 × 2 = { $answer }
questions-ask-tables = { $tables } mesas tienen { $pencils } lápices cada una. ¿Cuántos lápices son?
questions-working-tables = { $tables } × { $pencils } = { $answer }
questions-ask-boxes-of-squares = Las marcas dividen un cuadro en 16 casillas pequeñas. ¿Cuántas casillas tienen { $squares } cuadros?
questions-working-boxes-of-squares = { $squares } × 16 = { $answer }
questions-ask-minutes = Un cuadro tarda { $each } minutos. ¿Cuántos puedes dibujar en { $minutes } minutos?
questions-working-minutes = { $minutes } ÷ { $each } = { $answer }
questions-ask-sheets = En una hoja de papel caben { $each } cuadros. ¿Cuántas hojas se necesitan para { $squares } cuadros?
questions-working-sheets = { $squares } ÷ { $each } = { $answer }

questions-ask-scale = Una pieza mide { $piece } de ancho y un cuadro { $square }. ¿Cuántas veces el ancho de la pieza mide el cuadro?
questions-working-scale = { $square } ÷ { $piece } = { $answer }
questions-ask-pieces-on-square = Un cuadro mide { $scale } veces el ancho y { $scale } veces la altura de una pieza. ¿Cuántas piezas cubren un cuadro?
questions-working-pieces-on-square = { $scale } × { $scale } = { $answer }
questions-ask-larger = Una línea en la pieza mide { $length } mm de largo. ¿Cuántos milímetros mide en el cuadro, que es { $scale } veces el ancho de la pieza?
questions-working-larger = { $length } mm × { $scale } = { $answer } mm
questions-ask-smaller = Una línea en el cuadro mide { $length } mm de largo. ¿Cuántos milímetros medía en la pieza, si el cuadro es { $scale } veces el ancho de la pieza?
questions-working-smaller = { $length } mm ÷ { $scale } = { $answer } mm
questions-ask-larger-patch = Una mancha de color en la pieza cubre { $length } mm². ¿Cuántos mm² cubre en el cuadro, que es { $scale } veces el ancho de la pieza?
questions-working-larger-patch = { $length } mm² × { $scale } × { $scale } = { $answer } mm²
questions-ask-wall-width = { $squares } cuadros de { $square } cuelgan lado a lado. ¿Cuánto mide la pared de ancho, en { $unit ->
    [inch] pulgadas
   *[mm] milímetros
}?
questions-working-wall-width = { $squares } × { $square } = { $whole }
questions-ask-wall-height = { $squares } cuadros de { $square } cuelgan uno encima de otro. ¿Cuánto mide la pared de alto, en { $unit ->
    [inch] pulgadas
   *[mm] milímetros
}?
questions-working-wall-height = { $squares } × { $square } = { $whole }
questions-ask-percent-needing = { $needing } de las { $count } piezas necesitan el color { $colour }. ¿Qué porcentaje es?
questions-working-percent-needing = { $needing } ÷ { $count } × 100 = { $answer }
questions-ask-columns-to-rows = Columnas y filas: { $columns } : { $rows } = { $first } : ?. ¿Qué número va en lugar del signo de pregunta?
questions-working-columns-to-rows = Divide los dos entre { $divisor }: { $rows } ÷ { $divisor } = { $answer }
questions-ask-piece-to-square = Pieza y cuadro: { $piece } : { $square } = { $first } : ?. ¿Qué número va en lugar del signo de pregunta?
questions-working-piece-to-square = Divide los dos entre { $divisor }: { $square } ÷ { $divisor } da { $answer }
questions-ask-around = Una cinta de papel da una vuelta a la pared, que mide { $columns } cuadros de ancho y { $rows } de alto. Un cuadro mide { $square } de ancho. ¿Cuánto mide la cinta, en { $unit ->
    [inch] pulgadas
   *[mm] milímetros
}?
questions-working-around = 2 × ({ $columns } + { $rows }) × { $square } = { $whole }
questions-ask-percent-hanging = Ya cuelga el { $percent } % de los { $count } cuadros. ¿Cuántos cuadros son?
questions-working-percent-hanging = { $count } × { $percent } ÷ 100 = { $answer }
questions-ask-inches-to-mm = Una pulgada son 25.4 mm. ¿Cuántos milímetros son { $inches } pulgadas?
questions-working-inches-to-mm = { $inches } × 25.4 = { $answer }
questions-ask-longer-sides = Los lados de un cuadro se hacen { $times } veces más largos. ¿Cuántas veces más papel se necesita?
questions-working-longer-sides = { $times } × { $times } = { $answer }
questions-ask-percent-of-boxes = Las marcas dividen un cuadro en 16 casillas pequeñas. El { $percent } % están coloreadas. ¿Cuántas casillas son?
questions-working-percent-of-boxes = 16 × { $percent } ÷ 100 = { $answer }
questions-ask-boxes-ratio = En un cuadro de 16 casillas pequeñas, 4 están coloreadas y 12 son blancas. Coloreadas y blancas están en razón 1 : ?. ¿Qué número va en lugar del signo de pregunta?
questions-working-boxes-ratio = 12 ÷ 4 = { $answer }
questions-ask-millimetres = Un hilo mide { $metres } m de largo. ¿Cuántos milímetros son?
questions-working-millimetres = { $metres } × 1000 = { $answer }

questions-ask-next-square = Las paredes de 2 × 2, 3 × 3, 4 × 4 y 5 × 5 cuadros tienen 4, 9, 16 y 25 cuadros. ¿Qué número sigue?
questions-working-next-square = { $side } × { $side } = { $answer }
questions-ask-square-step = 4, 9, 16, 25 … ¿Cuántos cuadros más tiene una pared de { $to } × { $to } que una de { $from } × { $from }?
questions-working-square-step = { $to } × { $to } − { $from } × { $from } = { $answer }
questions-ask-edge = La pared tiene { $columns } columnas y { $rows } filas. ¿Cuántos cuadros tocan su borde exterior?
questions-working-edge = 2 × { $columns } + 2 × { $rows } − 4, porque las esquinas se contaron dos veces: { $answer }
questions-ask-blocks = La pared tiene { $columns } columnas y { $rows } filas. ¿En cuántos lugares hay un bloque de 2 × 2 cuadros? Los bloques pueden encimarse.
questions-working-blocks = ({ $columns } − 1) × ({ $rows } − 1) = { $answer }
questions-ask-all-blocks = La pared tiene { $columns } columnas y { $rows } filas. ¿Cuántos bloques cuadrados de todos los tamaños hay: 1 × 1, 2 × 2 y así sucesivamente?
questions-working-all-blocks = Tamaño por tamaño: { $sum }
questions-ask-seams = La pared tiene { $columns } columnas y { $rows } filas. Una tira de cinta une cada par de vecinos, lado a lado o uno encima de otro. ¿Cuántas tiras son?
questions-working-seams = { $rows } × ({ $columns } − 1) + { $columns } × ({ $rows } − 1) = { $answer }
questions-ask-chessboard = Los { $count } cuadros se pintan de negro y blanco como un tablero de ajedrez, el primero de negro. ¿Cuántos son negros?
questions-working-chessboard = { $odd ->
    [yes] La mitad de { $count }, y el que sobra: { $answer }
   *[no] La mitad de { $count }: { $answer }
}
questions-ask-both = ¿Cuántas piezas necesitan el color { $first } y también el color { $second }?
questions-working-both = { $counted }
questions-ask-most-colours = Ninguna pieza necesita más de { $colours } colores. ¿Cuántas piezas necesitan esa cantidad?
questions-working-most-colours = { $counted }
questions-ask-odd-numbers = 1 + 3 = 4 y 1 + 3 + 5 = 9. ¿Cuánto suman los números impares del 1 al { $last }?
questions-working-odd-numbers = { $terms } números: { $terms } × { $terms } = { $answer }
questions-ask-box-edge = Las marcas dividen un cuadro en 4 × 4 casillas pequeñas. ¿Cuántas de ellas tocan el borde del cuadro?
questions-working-box-edge = 16 − 2 × 2 en el centro = { $answer }
questions-ask-box-blocks = Las marcas dividen un cuadro en 4 × 4 casillas pequeñas. ¿Cuántos cuadrados de todos los tamaños hay en él?
questions-working-box-blocks = 16 + 9 + 4 + 1 = { $answer }
questions-ask-handshakes = { $people } visitantes se dan la mano, cada uno una vez con cada uno de los demás. ¿Cuántos saludos son?
questions-working-handshakes = 5 + 4 + 3 + 2 + 1 = { $answer }
questions-ask-area-step = Los lados de una pieza crecen de { $from } cm a { $to } cm. ¿Cuántos cm² crece?
questions-working-area-step = { $to } × { $to } − { $from } × { $from } = { $answer }
questions-ask-folded-lines = Dobla una tira de papel por la mitad { $times } veces, siempre en el mismo sentido, y ábrela. ¿Cuántos dobleces tiene?
questions-working-folded-lines = { $times } veces por la mitad da 16 partes: 16 − 1 = { $answer }

## steps

print-steps = Pasos
steps-title = Dibuja un cuadro de nuestra gran imagen
steps-about = Una tarjeta para doblar y parar en la mesa, con los mismos seis pasos dibujados en los dos lados. { $steps }
steps-1 = Toma una pieza y su cuadro.
steps-2 = Ponlos de modo que se lea el nombre.
steps-3 = Busca qué cruza por las marcas.
steps-4 = Dibújalo ahí, pero grande.
steps-5 = Coloréalo. Deja en blanco el recuadro del código.
steps-6 = Llévalo a la pared.
steps-fold = doblar hacia atrás
steps-ridge = doblar hacia atrás: este es el lomo
steps-overlap = la otra base llega hasta esta línea: péguela aquí

## who reaches what

about-feet = { $feet } ft ({ $metres } m)
about-metres = { $metres } m ({ $feet } ft)
reach-inches = { $inches } in ({ $metres } m)
reach-metres = { $metres } m ({ $inches } in)
people-children-from-5 = Niños desde los 5 años: { $reach }
people-children-from-9 = Niños desde los 9 años: { $reach }
people-seated = Alguien sentado: { $reach }
people-adults = Adultos: { $reach }
span = filas { $first } a { $last }
span-one = fila { $row }
span-none = –

## helpers

print-helpers = Ayudantes
helpers-level = Nivel
helpers-pieces = Piezas
helpers-minutes = Minutos por pieza
helpers-last = Entregar hasta el minuto

helpers-hand-out = Estación 1: la entrega
helpers-hand-out-intro = Usted entrega a cada visitante una pieza (una parte pequeña de la imagen) y el cuadro de papel que lleva el mismo nombre. Tenga a la mano: las bolsas, los cuadros en el orden de sus nombres, la hoja de control, una pluma.
helpers-sort = Ordene
helpers-sort-1 = Ponga las piezas en una bolsa por nivel; el nivel está en el reverso de la pieza. Acomode los cuadros fila por fila, para encontrar un nombre enseguida.
helpers-sort-2 = Desde el minuto de la última columna, contado desde el comienzo, ninguna pieza de ese nivel se terminaría a tiempo.
helpers-say = Diga
helpers-say-words = “Esta es una parte pequeña de una imagen grande. Dibújala en este cuadro, { $scale } veces más ancha. Nadie sabe qué es la imagen hasta que esté colgada.”
helpers-each = Con cada visitante
helpers-each-1 = Pregunte: “¿Algo rápido o algo para pensar?” Luego deje que saque una pieza de esa bolsa. El nivel es de la pieza, nunca del niño o la niña.
helpers-each-2 = Busque el cuadro con el mismo nombre. Lean juntos los dos nombres en voz alta.
helpers-each-3 = Marque “salió” en la hoja de control, con el nombre de la pieza. No se anota el nombre de nadie.
helpers-each-4 = Muestre la tarjeta de la mesa: los seis dibujos dicen qué hacer.
helpers-each-5 = Cuando un cuadro regresa: marque “volvió”, vea que el recuadro del código esté en blanco y mándelo a la pared.
helpers-secret = Guarde el secreto
helpers-secret-1 = La imagen, el mapa de la pared y las tarjetas de preguntas quedan boca abajo hasta que la pared hable por sí sola.
helpers-secret-2 = Si preguntan “¿Qué es?”, diga: “Tu cuadro sabe una parte.”
helpers-if = Si …
helpers-if-1 = alguien tiene que irse: la pieza y el cuadro van a la caja “por terminar”. Quien quiera puede seguirlos.
helpers-if-2 = alguien termina pronto: ofrezca otra pieza, o una tarjeta de preguntas cuando ya se sepa la imagen.
helpers-if-3 = un cuadro se echa a perder: dé uno en blanco de repuesto y escriba el nombre de la pieza en grande, en la misma esquina.

helpers-tables = Estación 2: las mesas de dibujo
helpers-tables-intro = Usted cuida que en { $seats } asientos haya lo necesario y que nadie le tema a un cuadro en blanco.
helpers-set = Prepare las mesas
helpers-set-1 = { $step-cards ->
    [one] 1 tarjeta con los pasos: dóblela, pegue sus bases con cinta y párela.
   *[other] { $step-cards } tarjetas con los pasos, una por cada cuatro asientos más o menos: doble cada una, pegue sus bases con cinta y párela.
}
helpers-set-2 = Lápices de color en el centro de cada mesa: { $pencils-in-all } en total, con cada color repartido por igual.
helpers-set-3 = { $sharpeners ->
    [one] 1 sacapuntas
   *[other] { $sharpeners } sacapuntas
} y { $erasers ->
    [one] 1 goma de borrar
   *[other] { $erasers } gomas de borrar
}, repartidos; un bote para la viruta.
helpers-set-4 = Solo lápices. Los marcadores traspasan y la pintura ondula el papel; los dos tapan el código.
helpers-help = Ayude
helpers-help-rule = Señale y pregunte; nunca dibuje en lugar de alguien. El cuadro correcto es el que cada quien hizo.
helpers-help-1 = “¿Qué líneas llegan al borde? ¿En cuál marca?”
helpers-help-2 = “Primero señala ese lugar en el cuadro. Luego une los puntos.”
helpers-help-3 = “¿Cuál es la forma más grande? Dibuja primero esa, suave.”
helpers-help-4 = “El cuadro es { $scale } veces más ancho. ¿Cuánto mide ahí esta línea?”
helpers-help-5 = “Colorea hasta los bordes: ahí siguen los cuadros de tus vecinos.”
helpers-look = Fíjese
helpers-look-1 = El nombre se debe poder leer en la pieza y en el cuadro: así los dos están derechos.
helpers-look-2 = El recuadro del código se queda en blanco. Si ya tiene dibujo encima, déjelo: no borre ni recorte. Quien ayuda en la pared sabe qué hacer.
helpers-look-3 = Los lápices vuelven al centro después de cada color.
helpers-look-4 = Una pieza, un cuadro: nadie espera “su” color más de un minuto. Mándelos primero por otro color.
helpers-wait = Quien espera
helpers-wait-1 = puede sacar punta a los lápices o dibujar en papel reciclado.
helpers-wait-2 = puede tomar una tarjeta de preguntas, cuando ya se sepa la imagen. Un signo es contar, dos son multiplicar, tres son razones, y una estrella es para cualquiera.

helpers-wall = Estación 3: la pared y el teléfono
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
helpers-hang = Cuelgue
helpers-hang-1 = Antes de empezar: tense un hilo nivelado o trace una línea tenue para el borde inferior y para una de cada dos filas; las medidas están en el mapa de la pared.
helpers-hang-2 = Ponga las { $cards } tarjetas: primero las esquinas, luego las columnas, luego las filas.
helpers-hang-3 = Cuelgue cada cuadro donde se cruzan su columna y su fila, con el nombre derecho. Borde con borde, sin huecos, sin encimar.
helpers-hang-4 = Un pedazo pequeño de cinta en cada esquina, lejos del código.
helpers-hang-5 = Marque “colgó” en la hoja de control.
helpers-who = Quién, y hasta dónde alcanza
helpers-floor = Desde el piso
helpers-stool = En un banquito
helpers-help-needed = Con ayuda
helpers-photo = Tome la foto
helpers-photo-1 = Párese a unos { $distance } de la pared, frente { $photos ->
    [one] a su centro
   *[other] a la parte que fotografía
}, con el teléfono a unos { $phone-height } del piso. Sin gente ni banquitos enfrente, con las luces encendidas y sin flash.
helpers-photo-2 = Sostenga el teléfono { $held ->
    [sideways] acostado
   *[upright] parado
}, nivelado, con la cámara principal y sin zoom. Limpie la lente. Toque la pared en la pantalla y espere a que se vea nítida.
helpers-photo-3 = { $photos ->
    [one] Toda la pared con un poco de espacio alrededor, en una sola foto.
   *[other] Esta pared es grande: tome { $photos } fotos a lo largo, cada una con dos columnas o filas de la anterior.
} Tome todo dos veces.
helpers-photo-4 = ¿Hay brillos en el papel? Dé un paso al lado y tómela otra vez.
helpers-photo-5 = Solo la pared: ninguna cara, ningún nombre.
helpers-photo-6 = Lleve la foto a la computadora portátil: “everysquare check” con la carpeta del evento y la foto.
helpers-check = Qué dice la revisión y qué hacer
helpers-check-intro = Siga su lista desde arriba, una línea a la vez; después tome otra foto.
helpers-check-says = Dice
helpers-check-do = Haga esto
helpers-check-right = Nada. Déjelo como está.
helpers-check-wrong = Aquí cuelga otro cuadro. Siga la lista: da la menor cantidad de cambios.
helpers-check-turned = Gírelo como dice la lista: el nombre debe quedar derecho.
helpers-check-empty = Busque el cuadro: en las mesas, en el piso, en la caja “por terminar”. La hoja de control dice si salió.
helpers-check-unread = Véalo usted: ¿tiene su propio nombre? Entonces está bien. Si no, levante la cinta, evite el brillo, tome una foto más de cerca.
helpers-check-unseen = Está fuera de la foto o tapado. Aléjese o tome una más.

helpers-cautions = Para todos los ayudantes: cuidado
helpers-cautions-intro = Primero están las reglas de la casa, de la escuela y de la ciudad. Donde esta página dice menos, siga esas.
helpers-stools = Banquitos y escaleras
helpers-stools-1 = Un banquito de escalón ancho, sobre piso firme, junto a la pared. Nunca una silla, una mesa ni cosas apiladas.
helpers-stools-2 = Solo se suben los adultos; otro adulto se queda al lado. Los niños cuelgan lo que alcanzan desde el piso.
helpers-stools-3 = Bájese para moverlo. Nadie se estira hacia un lado.
helpers-stools-4 = Una fila que necesita más que un banquito se cuelga con una escalera de tijera, antes o después de la velada.
helpers-cutters = Cortar
helpers-cutters-1 = Los cuadros y las piezas los cortan los adultos antes de la velada, con una guillotina, o con una regla de acero y un cúter que se cierra al dejarlo.
helpers-cutters-2 = En las mesas solo hay tijeras de punta redonda. Cuéntelas al final.
helpers-cutters-3 = Los sacapuntas se quedan en la mesa, con la navaja bien atornillada.
helpers-tape = La cinta y las paredes
helpers-tape-1 = Pruebe la cinta un día antes en un lugar escondido. La cinta de pintor se despega de casi todas las paredes; la pintura vieja y el papel tapiz se pueden levantar con cualquiera.
helpers-tape-2 = Quite la cinta despacio, pegada a la pared.
helpers-fire = Papel en las paredes, salidas
helpers-fire-1 = Colgarán unos { $area } m² ({ $area-feet } sq ft) de papel. Muchas normas limitan cuánto de una pared se puede cubrir, sobre todo en pasillos y cerca de las salidas: pregunte a quien esté a cargo del edificio o a los bomberos.
helpers-fire-2 = Nada sobre puertas, alarmas de incendio, extintores, letreros, calentadores y lámparas, ni junto a ellos.
helpers-fire-3 = Las salidas quedan libres en todo su ancho: sin bolsas, sin mesas, sin fila de espera. Sepa por dónde llevaría a todos.
helpers-pictures = Niños en las fotos
helpers-pictures-1 = Fotografíe solo la pared. Primero pida a todos que se hagan a un lado.
helpers-pictures-2 = Valen las reglas de la escuela o la biblioteca sobre fotos y teléfonos, también para ayudantes y familias. Use el teléfono de la casa donde no se permitan los particulares.
helpers-pictures-3 = La revisión guarda solo la pared y sus tarjetas, y nada sobre dónde ni con qué se tomó la foto. Después borre la foto del teléfono.
helpers-pictures-4 = Ningún nombre en los cuadros, en la hoja de control ni en la pared, a menos que la familia lo quiera.
helpers-room = En el salón
helpers-room-1 = Cables fijados con cinta, bolsas debajo de las mesas, lo que se derrame se seca enseguida.
helpers-room-2 = Un paso entre las mesas es bastante ancho para una silla de ruedas; un lugar en la punta de una mesa no tiene silla.
helpers-room-3 = Sepa quién da primeros auxilios y dónde está el botiquín.

## guide

print-guide = Guía
guide-title = Su velada
guide-intro = { $event }: cada quien dibuja en grande una parte pequeña de una imagen; juntas, las partes forman la imagen en la pared. Estas páginas son para usted, que lleva los hilos. Todos los números salen de su imagen y de sus ajustes.
guide-numbers = En números
guide-what = Qué
guide-how-much = Cuánto
guide-assumed = { $value } (se supone)
guide-crowd = Visitantes
guide-crowd-value = { $visitors }
guide-time = Tiempo de dibujo
guide-time-value = { $minutes } minutos
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
guide-square = Pieza y cuadro
guide-square-value = { $piece } se vuelven { $square }: { $scale } veces más ancho
guide-wall = En la pared
guide-wall-value = { $width } de ancho, { $height } de alto; con sus tarjetas, { $width-with-cards } por { $height-with-cards }
guide-hang = Altura
guide-hang-value = de { $hang } a { $top } sobre el piso
guide-finish = Alcanza para
guide-finish-value = unos { $finish ->
    [one] 1 cuadro
   *[other] { $finish } cuadros
}; los { $squares } tardan { $minutes-for-all } minutos
guide-verdict-fits = La cuadrícula le conviene a su gente: a cada quien le toca una pieza y todas se terminan.
guide-verdict-too-big-for-time = La cuadrícula es grande para el tiempo: al final { $difference ->
    [one] quedará en blanco más o menos 1 cuadro
   *[other] quedarán en blanco unos { $difference } cuadros
}. Agregue minutos o asientos, use una cuadrícula más chica, o deje que los ayudantes dibujen antes y después.
guide-verdict-too-big-for-crowd = La cuadrícula es grande para la gente: cuando cada quien haya dibujado dos, { $difference ->
    [one] sobra más o menos 1 pieza
   *[other] sobran unas { $difference } piezas
}. Invite a más visitantes, use una cuadrícula más chica, o deje que los ayudantes dibujen antes y después.
guide-verdict-too-small = La cuadrícula es chica para la gente: { $difference ->
    [one] más o menos 1 visitante se queda
   *[other] unos { $difference } visitantes se quedan
} sin pieza. Deje que dos compartan una, imprima algunas piezas dos veces o use una cuadrícula más grande.
guide-assumed-note = Lo que “se supone” todavía no lo dijo nadie. Dígalo con “everysquare plan CARPETA --visitors { $visitors } --minutes { $minutes } --seats { $seats } --save” y sus propios números, y vuelva a imprimir.
guide-heights = A qué altura cuelga
guide-row = Fila
guide-lower = Borde inferior
guide-upper = Borde superior
guide-reach-source = Alcance: sentado, 48 pulgadas (“2010 ADA Standards for Accessible Design”, 308.2.1); niños, según los más bajos de esa edad (“CDC Growth Charts 2000”) con un brazo levantado; adultos, el agarre de un adulto bajo; un banquito suma 230 mm. La parte del brazo, los adultos y el banquito son aproximados.

guide-timeline = Qué hacer y cuándo
guide-week = Una semana antes
guide-week-1 = Pregunte por la pared: papel, cinta, altura, salidas. Vale lo que digan quien esté a cargo del edificio o los bomberos.
guide-week-2 = Imprima una hoja de cuadros. Su regla debe medir exactamente, y cada reverso debe quedar detrás de su frente.
guide-week-3 = Imprima todo y vea la hoja de lápices: ¿tienen esos colores sus lápices de verdad?
guide-week-4 = Corte los cuadros y las piezas, ordene las piezas por nivel en bolsas. Dos personas tardan una tarde.
guide-week-5 = Dibuje usted una pieza de cada nivel, con reloj: así conoce sus propios minutos.
guide-week-6 = Busque ayudantes: uno para la entrega, uno por cada tres mesas más o menos, dos para la pared.
guide-week-7 = Ensaye la revisión: “everysquare rehearse CARPETA” crea una foto con errores por encontrar.
guide-day = Un día antes
guide-day-1 = Dé a cada ayudante su página y diez minutos de explicación.
guide-day-2 = Pruebe la cinta en la pared, en un lugar escondido.
guide-day-3 = Marque el borde inferior y las filas con hilo o líneas tenues.
guide-day-4 = Saque punta a todos los lápices y arme los juegos.
guide-day-5 = Doble las tarjetas de mesa.
guide-day-6 = Tome una foto de la pared como está, para ver si la luz y la distancia sirven.
guide-hours = Dos horas antes
guide-hours-1 = Ponga las mesas como en el plano del salón; deje libres los pasos y las salidas.
guide-hours-2 = Ponga las tarjetas alrededor de la pared.
guide-hours-3 = Saque las bolsas, los cuadros en orden y la hoja de control.
guide-hours-4 = Cargue el teléfono; abra la computadora portátil; haga una revisión de prueba.
guide-hours-5 = Esconda todas las copias de la imagen.
guide-running = Durante la velada
guide-running-1 = Empiece por las esquinas y los bordes de la imagen, para que la pared encuentre su marco.
guide-running-2 = Revise la pared cada media hora, mientras haya poco que corregir.
guide-running-3 = Vea la hoja de control: ¿algo salió y no ha vuelto en mucho rato? Pregunte con amabilidad.
guide-running-4 = A la mitad: ¿ya salieron las piezas difíciles? Son las que más tardan.
guide-running-5 = Tome agua.
guide-end = Los últimos veinte minutos
guide-end-1 = Entregue solo piezas fáciles; los ayudantes toman lo que queda.
guide-end-2 = Cuelgue todo, revise, corrija, revise otra vez.
guide-end-3 = Llene un lugar vacío con su pieza o con un cuadro en blanco: se puede dibujar mañana.
guide-end-4 = Aléjense juntos y miren. Todo fue para este momento.
guide-clearing = Al recoger
guide-clearing-1 = Cuente las tijeras y los cúteres; guarde los banquitos.
guide-clearing-2 = Quite el hilo, deje la pared puesta.
guide-clearing-3 = Borre las fotos de los teléfonos.
guide-clearing-4 = Escriba en event.toml sus propios minutos de cada nivel: la próxima vez el plan los conoce.

guide-materials = Qué necesita
guide-thing = Cosa
guide-amount = Cantidad
guide-paper = Papel
guide-paper-amount = { $paper }: { $sheets ->
    [one] 1 hoja
   *[other] { $sheets } hojas
} solo para los cuadros, de preferencia de 120 a 160 g/m² (32 a 42 lb), y una décima parte de repuesto; “everysquare print” dice cuántas ocupan los demás documentos
guide-printer = Impresora
guide-printer-amount = cualquiera; a color para las piezas y la hoja de lápices, y para lo demás basta en blanco y negro
guide-pencils = Lápices de color
guide-pencils-amount = { $pencils-in-all } en total, según la lista de abajo
guide-sharpeners = Cosas pequeñas
guide-sharpeners-amount = { $sharpeners ->
    [one] 1 sacapuntas
   *[other] { $sharpeners } sacapuntas
}, { $erasers ->
    [one] 1 goma de borrar
   *[other] { $erasers } gomas de borrar
}, papel reciclado, plumas para la hoja de control
guide-tape = Cinta de pintor
guide-tape-amount = { $tape }: { $rolls ->
    [one] 1 rollo
   *[other] { $rolls } rollos
} de 25 m (82 ft)
guide-string = Para las líneas
guide-string-amount = hilo, nivel de burbuja, cinta métrica, lápiz blando
guide-bags = Bolsas y cajas
guide-bags-amount = una bolsa por nivel, una caja “por terminar”
guide-stool = Banquito
guide-stool-amount = 1 de escalón ancho, de 230 mm (9 in) de alto, para las filas que nadie alcanza desde el piso
guide-cutting = Para cortar
guide-cutting-amount = guillotina, o cúter, regla de acero y tabla de corte, antes de la velada; tijeras de punta redonda para las tarjetas
guide-phone = Teléfono y computadora portátil
guide-phone-amount = 1 teléfono con cámara principal de 12 megapíxeles o más, cargado; 1 computadora portátil con este programa y la carpeta del evento; no hace falta red
guide-signs = Tarjetas de mesa
guide-signs-amount = { $step-cards }: una por cada cuatro asientos más o menos
guide-bin = Para recoger
guide-bin-amount = bote para la viruta y los recortes, trapo, caja para los cuadros terminados
guide-pencil-list = Lápices por color
guide-pencil-list-intro = Los necesarios para que nadie espere en 95 de cada 100 momentos con todos los asientos ocupados (binomial: cada visitante usa un lápiz a la vez, cada uno el tiempo que su color requiere).
guide-colour = Color
guide-pencil-count = Lápices

guide-room = El salón
guide-room-intro = Un salón a escala donde cabe su velada: { $seats } asientos, la pared, el teléfono. El suyo es otro: conserve las distancias.
guide-room-about = Plano de un salón: la pared de un lado, el teléfono frente a su centro, luego mesas con asientos en los dos lados, luego la mesa de la entrega; una salida y una entrada a la derecha, con pasos que quedan libres.
guide-plan-wall = pared y sus tarjetas, { $length }
guide-plan-phone = teléfono, a unos { $length }
guide-plan-hand-out = entrega
guide-plan-exit = salida: dejar libre el paso
guide-plan-entrance = entrada: dejar libre
guide-plan-bar = { $length }
guide-plan-size = el salón mide unos { $length } de ancho
guide-room-1 = La entrega está en la entrada y la pared en el otro extremo: quien entra ve a la gente dibujar antes de ver la imagen.
guide-room-2 = Entre las mesas { $seats ->
    [one] y las paredes
   *[other] siempre
} hay 1.2 m (4 ft): pasan dos personas, gira una silla de ruedas.
guide-room-3 = Entre la pared y las mesas no se sienta nadie: ahí va el teléfono y, al final, todos.
guide-room-4 = Luz del techo o de lado. Una ventana frente a la pared brilla en la foto; cierre su cortina.
guide-cautions = Cuidados
guide-fire = En la pared colgarán { $area } m² ({ $area-feet } sq ft) de papel. Muchas normas contra incendios limitan la parte de una pared que el papel puede cubrir, sobre todo en pasillos y cerca de las salidas, y cambian según la edición. Pregunte a quien esté a cargo del edificio o a los bomberos antes de imprimir.
guide-cautions-1 = Banquitos: solo adultos, con otro al lado; nunca sillas ni mesas.
guide-cautions-2 = Cúteres: antes de la velada, solo adultos, y se cuentan al final.
guide-cautions-3 = Cinta: se prueba primero en un lugar escondido.
guide-cautions-4 = Fotos: de la pared, no de los niños; valen las reglas de la escuela.
guide-cautions-5 = Todo lo demás está en la última página de los ayudantes. Donde las reglas de la casa dicen más, valen ellas.

guide-wrong = Cuando algo sale mal
guide-wrong-what = Qué pasa
guide-wrong-do = Qué hacer
guide-wrong-short = Hay muy pocas piezas
guide-wrong-short-do = Dos dibujan juntos un cuadro. O imprima otra vez la hoja y entregue una pieza dos veces: el cuadro más bonito cuelga en el centro y el otro junto a la pared, sin su código.
guide-wrong-many = Llegan demasiados visitantes a la vez
guide-wrong-many-do = Entregue piezas con una tabla para dibujar de pie, mande a algunos a las tarjetas de preguntas, invite a otros a la segunda mitad.
guide-wrong-few = Llegan muy pocos visitantes
guide-wrong-few-do = Ofrezca una segunda y una tercera pieza, las difíciles a quien le gusten. Dibujan también los ayudantes y usted. Los lugares vacíos se pueden llenar durante la semana.
guide-wrong-scale = La regla de la hoja sale más corta o más larga
guide-wrong-scale-do = La impresora cambió el tamaño. Elija “tamaño real” o 100 %, nunca “ajustar”, y vuelva a imprimir esa hoja. No mezcle tamaños: los cuadros no coincidirían.
guide-wrong-backs = Los reversos no quedan detrás de sus frentes
guide-wrong-backs-do = Hasta 2 mm no importa. Si es más: el papel se volteó por el otro borde; cambie flip en event.toml, o imprima por una cara con flip = "none".
guide-wrong-painted = Un código tiene dibujo encima
guide-wrong-painted-do = Cuelgue el cuadro de todos modos, por su nombre. La revisión dice que no se puede leer; véalo usted. No borre ni recorte.
guide-wrong-lost = Se perdió un cuadro
guide-wrong-lost-do = Imprima otra vez su hoja: el mismo nombre, el mismo código. Mientras tanto, cuelgue la pieza en su lugar.
guide-wrong-turned = Muchos cuadros cuelgan girados
guide-wrong-turned-do = Muestre a quienes ayudan en la pared el nombre junto al código: debe quedar derecho. La revisión da la lista de giros.
guide-wrong-unread = La revisión lee poco
guide-wrong-unread-do = Más cerca, con más luz, más nítida; sin flash, sin sol en la pared; dos fotos, cada una de media pared. Como último recurso: guíese por los nombres, están en cada cuadro.
guide-wrong-pencils = Se acaba un color
guide-wrong-pencils-do = Cambien lápices entre las mesas. Es mejor un color parecido que esperar; entonces úselo en toda la mancha.
guide-wrong-late = Se acabó el tiempo y faltan cuadros
guide-wrong-late-do = Cuelgue las piezas en los huecos, así de pequeñas. Deje puesta la mesa: los visitantes de mañana terminan la imagen.
guide-after = Después
guide-after-1 = Deje la pared puesta y cuelgue al lado una impresión de la imagen. Diga que la dibujaron todos los que vinieron.
guide-after-2 = Ponga debajo de la pared las tarjetas de preguntas y la hoja de lápices; guarde usted las respuestas.
guide-after-3 = Dé las gracias a todos, con una foto de la pared sin gente.
guide-after-4 = Descuelgue fila por fila y conserve el orden: así puede colgar otra vez, en otro salón.
guide-after-5 = Los cuadros son de quienes los dibujaron. Diga cuándo se pueden recoger.

## errors: the picture

error-picture-empty = el archivo está vacío: elija un archivo PNG, JPEG, WebP, TIFF o SVG
error-picture-format = esto no es una imagen en un formato que se lea aquí: guárdela como PNG, JPEG, WebP, TIFF o SVG
error-picture-heic = esta es una imagen HEIC, que aquí no se lee: primero expórtela como JPEG o PNG
error-picture-large = la imagen tiene { $width } × { $height } píxeles: hágala más chica, cuando mucho { $most } por lado y 100 millones en total
error-picture-short = el archivo de la imagen está cortado: vuelva a copiarlo o descargarlo
error-picture-damaged = el archivo de la imagen está dañado ({ $why }): cópielo otra vez, o ábralo en otro programa y guárdelo como PNG
error-picture-no-pixels = no tiene píxeles
error-picture-svg = el dibujo SVG no se puede usar ({ $why }): guárdelo otra vez como SVG simple o como PNG
error-picture-outside = el dibujo SVG muestra algo que está fuera de su propio archivo, { $named }, y eso nunca se carga: insértelo en el dibujo o guárdelo como PNG
error-picture-letter = el dibujo SVG tiene texto con la letra “{ $letter }”, que ninguna fuente tiene aquí: convierta su texto en trazos o guárdelo como PNG
error-picture-kind = la imagen es de un tipo que aquí no se lee ({ $said }): ábrala en otro programa y guárdela como PNG
error-picture-save = la imagen no se puede guardar como PNG: { $said }
error-svg-gave-up = su lector se rindió
error-svg-text = tiene más de { $most } MB de texto
error-svg-no-text = no es texto en UTF-8
error-svg-no-size = no tiene un tamaño que se pueda dibujar
error-svg-costly = { $what }, y dibujarlo tardaría demasiado
error-svg-deep = tiene elementos dentro de elementos, a más de { $most } niveles
error-svg-filter = uno de sus filtros tiene { $name } = { $value }
error-svg-filters = tiene { $count } pasos de filtros
error-reduce-one-colour = la imagen es toda de un solo color, así que no hay nada que dibujar: elija otra
error-reduce-one-pencil = con estos lápices la imagen queda toda de un solo color ({ $pencil }): elija más lápices, u otros que se parezcan menos
error-grid-columns = { $read } columnas: puede haber de { $least } a { $most }
error-grid-rows = { $read } filas: puede haber de { $least } a { $most }
error-grid-squares = { $read } cuadros: puede haber de { $least } a { $most }
error-grid-cells = { $columns } columnas y { $rows } filas dan { $squares } cuadros: puede haber cuando mucho { $most }

## errors: a new event

error-new-file = { $path } es un archivo: dé el nombre de una carpeta
error-new-taken = { $path } ya contiene un evento y se deja como está: cambie su event.toml o elija otra carpeta
error-new-piece = una pieza de { $piece } mm es más grande que su cuadro de { $square } mm: elija un --piece-mm menor o un --square-mm mayor
new-less-than-one = menos de 1
typed-name = se permiten de 1 a { $most } caracteres en una línea
typed-tag = se permiten 3 caracteres de { $letters }
typed-whole-from = se permite un número entero de { $least } a { $most }
typed-number-from = se permite un número de { $least } a { $most }
typed-millimetres-from = se permite un número de milímetros de { $least } a { $most }
error-plan-save = --save guarda los números que se escriben con él: agregue --visitors, --minutes, --seats, --wall o --hang

error-settings-table = aquí se espera una tabla, [{ $name }], y sus ajustes en líneas aparte
error-settings-list = aquí se espera una lista, un [[{ $name }]] para cada uno
error-settings-whole = se permite un número entero de { $least } a { $most }
error-settings-millimetres = se permite un número de { $least } a { $most }, en milímetros
error-settings-minutes = se permite un número de { $least } a { $most }, en minutos
error-settings-yes-or-no = se permite true (sí) o false (no), sin comillas
error-settings-choice = se permite { $choices }, entre comillas
error-settings-belongs-top = va al principio del archivo, antes de la primera [tabla]
error-settings-belongs = va en [{ $section }]
error-settings-near = ¿quiso decir { $near }?
error-settings-known = los que hay son { $known }
error-settings-name = se permite un texto entre comillas, en una línea, de 1 a { $most } caracteres
error-settings-tag = se permiten 3 caracteres de { $letters }, entre comillas
error-settings-file = se permite el nombre de un archivo dentro de la carpeta del evento, como "picture.png"
error-settings-colours = hay { $count } [[pencils]] en la lista: se permite { $count }, o quite colours
error-settings-pencils = en la lista hay { $count } y se permiten de { $least } a { $most }
error-settings-colour = se permite un color como "#3a8f4d", con dos dígitos hexadecimales para el rojo, dos para el verde y dos para el azul
error-settings-of-pencil = { $name } en el número { $number } de los [[pencils]]
error-settings-pencil-example = name = "verde hoja" y srgb = "#3a8f4d" debajo de cada [[pencils]]
error-settings-pencils-example = uno por lápiz, y debajo name = "verde hoja" y srgb = "#3a8f4d"
error-settings-top-example = una línea como { $line } al principio
error-settings-wall-example = { $line } debajo de [wall]
error-settings-piece = se permite cuando mucho square_mm, que es { $square }
error-settings-module = el código y los 4 módulos blancos que lo rodean miden 29 módulos de ancho, más de lo que cabe en square_mm = { $square }: se permite un número menor
error-settings-room = se permite un ancho, una x, una altura y una unidad, como "2.4x1.8m" o "8x6ft" (m, cm, mm, ft o in), cada lado de 0.2 a 50 m
error-settings-minutes-a-piece = se permiten cuatro números de { $least } a { $most }, en minutos, para una pieza lisa, una fácil, una media y una difícil, ninguno menor que el anterior
error-settings-level-names = se permiten cuatro nombres distintos entre comillas, primero el más fácil, cada uno de 1 a { $most } caracteres (plain, easy, medium y hard solo para su propio nivel)
error-settings-bounds = se permiten tres números de menor a mayor, de { $least } a { $most }: los puntajes en que empiezan fácil, medio y difícil
error-settings-piece-twice = esta pieza está dos veces en la lista: deje solo una
error-settings-of-piece = { $name } en el número { $number } de las [[pieces]]
error-settings-piece-example = label = "D7" y level = "hard" debajo de cada [[pieces]]
error-settings-label = se permite una pieza de esta pared, columnas A a { $column } y filas 1 a { $row }, como "A1"
error-settings-rows = con { $columns ->
    [one] 1 columna
   *[other] { $columns } columnas
} se permiten cuando mucho { $most } filas, { $squares } cuadros en total

## event.toml: what its comments say

event-head = Cómo es la velada. Cambie lo que quiera y repita el comando; lo que va después de un # es para las personas.
event-tag = va en cada código de este evento; cuando los cuadros estén impresos, no la cambie
event-language = de todo lo que se imprime y se muestra: { $choices }
event-file = en esta carpeta
event-colours = cuántos lápices necesita cada mesa
event-pencils = Si prefiere sus propios lápices: quite colours y póngalos todos al final de este archivo, así:
event-pencils-name = verde hoja
event-columns = de lado a lado, con letras desde la izquierda
event-rows = de arriba abajo
event-piece-mm = lado de la pieza de la imagen que recibe cada visitante
event-square-mm = lado del papel en que se dibuja
event-rows-from = dónde está la fila 1: { $choices } (abajo, arriba)
event-module-mm-usual = si se omite: tan pequeño como un teléfono lo pueda leer en una pared de este tamaño
event-module-mm = si se quita: tan pequeño como un teléfono lo pueda leer en una pared de este tamaño
event-inset-mm = de los bordes cortados al código; los vecinos y la cinta tapan primero los bordes
event-flip = cómo da vuelta al papel la impresora: { $choices } (por el borde largo, por el corto, una sola cara)
event-units = lo que lee la gente: { $choices }; este archivo siempre va en mm
event-visitors = cuántos espera
event-minutes = cuánto tiempo dibujan
event-seats = cuántos pueden dibujar a la vez
event-room = el lugar que hay para los cuadros y las tarjetas; o "8x6ft"
event-hang-mm = el borde inferior de la pared sobre el piso; si se omite: se propone según lo que alcanza la gente
event-minutes-a-piece = para una pieza lisa, una fácil, una media y una difícil
event-level-names = primero el más fácil
event-own-level-names = sus propias palabras para los niveles, primero el más fácil
event-bounds = los puntajes en que empiezan fácil, medio y difícil; “everysquare plan” muestra el nivel de cada pieza
event-balanced = true: tantas piezas fáciles como medias y como difíciles, sin importar sus puntajes
event-pieces = Donde usted sepa más, ponga la pieza al final de este archivo, así:
event-pieces-level = plain (liso), easy (fácil), medium (medio) o hard (difícil), o su propia palabra

## likeness

likeness-elsewhere = { $square } se parece a { $other }, dibujado en el papel de { $square }: mire
likeness-elsewhere-turned = { $square } se parece a { $other }, girado { $degrees }° como las agujas del reloj y dibujado en el papel de { $square }: mire
likeness-turned = el dibujo de { $square } parece girado { $degrees }° como las agujas del reloj respecto a su papel: mire
likeness-unread = el cuadro de { $cell } no se puede leer; su dibujo se parece a { $other }: mire
