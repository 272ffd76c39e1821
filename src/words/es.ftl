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
help-new-tile-mm = Lado de las piezas de la imagen que se reparten a los visitantes
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
new-coarse = Una pieza tenía solo { $pixels } píxeles de ancho y se amplió: una imagen más grande muestra más detalle.
new-warn-alike = Cuidado: { $one } y { $other } se parecen tanto que se van a confundir. Ayuda usar menos colores (--colours) o lápices propios (--pencils).
new-warn-rare = Cuidado: { $tiles ->
    [0] ninguna pieza necesita { $pencil }
    [one] solo 1 pieza necesita { $pencil }
   *[other] solo { $tiles } piezas necesitan { $pencil }
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
print-tiles = Piezas
print-working = componiendo las páginas
print-about-squares = El frente de los cuadros { $labels }: papel en blanco con líneas de corte, marcas, la etiqueta y el código.
print-about-tiles = Las piezas { $labels } de la imagen, con líneas de corte, marcas y sus etiquetas.
print-about-backs = El reverso de { $labels }: cómo se llama cada uno y cuál lado va arriba.
print-about-tile-backs = El reverso de las piezas { $labels }: cómo se llama cada una, cuál lado va arriba, su nivel y sus lápices.
print-about-cards = Las tarjetas { $names }, cada una con su nombre y su código.
print-levels = Niveles
print-pencils = Lápices
print-ledger = Control
print-wall-map = Mapa de la pared
print-about-levels = Etiquetas para las bolsas de los niveles { $levels }: el nombre y las marcas del nivel, cuántas piezas y cuáles.
print-level-count = { $tiles ->
    [one] 1 pieza
   *[other] { $tiles } piezas
}
print-level-more = y { $count } más
length-both = { $first } ({ $second })
length-mm = { $length } mm
length-m = { $length } m
length-in = { $length } in
length-ft = { $feet } ft { $inches } in
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
print-actual-size = Imprima al 100 %, tamaño real; nunca “ajustar a la página”
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
help-print-documents = Solo estos documentos, como squares (cuadros) o tiles (piezas); si se omite, todos

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

## ledger

ledger-intro = Marque una casilla cuando se entrega una pieza, cuando regresa su cuadro y cuando ese cuadro cuelga en la pared: { $tiles ->
    [one] 1 pieza.
   *[other] { $tiles } piezas en total.
}
ledger-tile = Pieza
ledger-out = salió
ledger-back = volvió
ledger-hung = colgado

## pencils

pencils-intro = Con { $seats ->
    [one] 1 asiento ocupado
   *[other] { $seats } asientos ocupados
}, con estos lápices nadie espera un color en { $percent } de cada 100 momentos.
pencils-number = N.º
pencils-name = Lápiz
pencils-tiles = Piezas que lo necesitan
pencils-shared = Cuántos, si todos los comparten
pencils-a-table = En cada mesa
pencils-all-tables = Cuántos, si cada mesa tiene los suyos
pencils-sets = Hay dos formas: todos comparten los lápices en el centro del salón, o cada mesa tiene los suyos: aquí { $tables ->
    [one] una mesa
   *[other] { $tables } mesas
} con { $seats ->
    [one] 1 asiento
   *[other] { $seats } asientos
}. Con los propios hacen falta más lápices y se camina menos.
pencils-tiles-title = Qué lápices necesita cada pieza
pencils-tiles-intro = Los números son los de la lista de arriba; en negrita, el lápiz que cubre la mayor parte de la pieza.

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
wall-map-in-inches = alturas desde el piso y distancias desde la izquierda en pulgadas
wall-map-in-mm = alturas desde el piso y distancias desde la izquierda en mm
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

## check

help-check = Lee fotos de la pared y dice qué intercambiar, girar y buscar
help-check-folder = La carpeta del evento
help-check-photos = Fotos de la pared: una, o varias que la muestren por partes
check-working = Leyendo la pared
check-written = Se escribió en { $folder }: report.html para verlo, marked.jpg para llevarlo a la pared, wall.jpg enderezada, report.json para otros programas.
check-open = Abra { $page } en un navegador.

## tour

help-tour = Muestra una velada completa con un evento de ejemplo, en unos segundos
help-tour-folder = Dónde se pone el evento de ejemplo
tour-event-name = Velada en la biblioteca del puerto
tour-begins = Una velada completa en cuatro pasos, en la carpeta { $folder }. Cada línea con un $ es un comando que usted mismo puede escribir.
tour-sample =
    1. El evento: event.toml dice lo que decidió quien organiza, picture.png es lo que colgará en la pared.
       Para un evento propio: everysquare new CARPETA --picture ARCHIVO
tour-print =

    2. El material: piezas para repartir, cuadros en blanco para dibujar, tarjetas para la pared.
tour-rehearse =

    3. La pared: una foto simulada, porque todavía nadie ha dibujado. Algunos cuadros están mal colgados; la verdad se escribe al lado.
tour-check =

    4. La revisión: se lee la foto, se compara con el plan, y esto es lo que hay que hacer.
tour-compared =

    La verdad y el informe coinciden en { $right } de { $cells } casillas.
tour-ends =

    Qué hay en { $folder }:
      event.toml   los ajustes, hechos para cambiarse a mano
      print/       tiles.pdf, squares.pdf, cards.pdf para imprimir al 100 %, manifest.json para la revisión
      rehearsals/  la foto simulada y la verdad sobre ella
      checks/      una carpeta por revisión; abra su report.html

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
error-manifest-cells = { $columns } columnas y { $rows } filas; se permiten cuando mucho { $most } cuadros
error-manifest-sizes = cuadros de { $square } mm y piezas de { $tile } mm
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
help-value-tag = CLAVE
help-value-mm = MM
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

## errors: printing

error-print-changed = event.toml cambió desde que se imprimió este material, y sus partes no coincidirían: vuelva a imprimirlo todo con “everysquare print { $folder }”
