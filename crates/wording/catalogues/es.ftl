### Español. Palabras sencillas para gente de obra. Los argumentos llegan como texto listo, en las unidades del lector.
###
### Se trata de usted. Comillas «». Una cosa tiene un solo nombre en todo el catálogo:
###
### telehandler: manipulador telescópico (en las frases, «máquina») · lift (work): izado; to lift: levantar
### lift height: altura de elevación · reach: alcance · extension: extensión · boom: pluma
### frame: bastidor · frame levelling: nivelar el bastidor · wheelbase: distancia entre ejes · track: vía
### slope along / across: pendiente longitudinal / transversal · out of level: desnivel longitudinal / transversal
### load chart: tabla de cargas · load centre: centro de carga · derating table: tabla de reducción
### capacity: capacidad · rated: nominal · plate: placa · manual: manual · datum: referencia
### attachment: accesorio · quick coupling: acople rápido · lock: bloqueo (abierto, cerrado)
### forks, blade: horquillas, horquilla · heel: talón · shank: parte vertical · fork face: cara de las horquillas
### fork extensions, sleeves: alargaderas · carriage: portahorquillas · side shift: desplazamiento lateral
### bucket: cuchara · clamp: pinza · jib: brazo con gancho
### stabilizers: estabilizadores · outriggers: estabilizadores de cuatro puntos · pad: plato · support: apoyo
### turning upper part: superestructura giratoria · head pin, foot pin: bulón de la cabeza, de la base
### serial number: número de serie · counterweight: contrapeso
### tipping: vuelco · tipping line: línea de vuelco · centre of gravity: centro de gravedad
### bearing pressure: presión sobre el terreno · mats: placas de reparto · gust: ráfaga
### stand: emplazamiento · landing, loading bay: lugar de descarga · pick-up: lugar de recogida
### set-back: distancia al borde · upstand: resalte · gate: portón · survey: levantamiento topográfico, medición
### pre-use inspection: revisión antes del uso · thorough examination or check: inspección periódica
### tagged out: fuera de servicio, con tarjeta · competent person: persona competente
### rigging: eslingado · sling: eslinga · leg: ramal · shackle: grillete · hook latch: pestillo del gancho
### vertical, choked, basket: en vertical, ahorcada, en cesta · tag line: cuerda guía
### working load limit: carga máxima de utilización (CMU, WLL) · hung load: carga suspendida
### pallet: palet · pack: bulto · bands: flejes · wrap: envoltura · layer: capa · depth of a load: fondo
### delivery ticket: nota de entrega · plasterboard: placa de yeso laminado · masonry: muro (de ladrillo, de bloque)
### verdict: dictamen · go, go with conditions, no-go: apto, apto con condiciones, no apto
### check met, not met: conforme, no conforme · stop: prohibido · condition: condición · reserve: reserva
### to drive: circular · operator: operador · signaller: señalista · spotter: vigía · hirer: empresa de alquiler

## Dictamen, estado, gravedad, certeza, fuente

ui-verdict-go = APTO
ui-verdict-conditions = APTO CON CONDICIONES
ui-verdict-no-go = NO APTO
ui-verdict-go-means = Todas las comprobaciones están dentro de su límite, con la reserva exigida.
ui-verdict-conditions-means = Permitido solo si se cumplen todas las condiciones indicadas.
ui-verdict-no-go-means = No haga este izado. Vea qué es lo que manda y qué hay que hacer.
ui-status-go = Conforme
ui-status-condition = Condición
ui-status-cannot-tell = No se puede saber
ui-status-no-go = No conforme
ui-status-stop = Prohibido
ui-severity-error = Error
ui-severity-warning = Aviso
ui-signal-danger = PELIGRO
ui-signal-warning = ADVERTENCIA
ui-signal-caution = PRECAUCIÓN
ui-signal-notice = AVISO
ui-certainty-plate = de la placa
ui-certainty-manual = del manual del fabricante
ui-certainty-chart = de la tabla de cargas de la cabina
ui-certainty-weighed = pesado
ui-certainty-ticket = de la nota de entrega
ui-certainty-measured = medido
ui-certainty-built-up = calculado a partir de sus partes
ui-certainty-estimated = estimado
ui-certainty-stated = declarado por una persona identificada
ui-certainty-invented = inventado
ui-source-published = { $citation }
ui-source-second-hand = { $citation } (leído de segunda mano)
ui-source-from-memory = { $citation } (de memoria, sin consultar)
ui-source-common-practice = práctica habitual
ui-source-mechanics = mecánica
ui-source-input = { $place }, { $certainty }
ui-source-person = { $name } declara: { $statement }
ui-source-person-only = declarado por { $name }

## Citas que son frases (el texto de la fuente en el código lleva a ellas)

ui-citation-tyre-patch = huella del neumático = fuerza de la rueda / presión de inflado, práctica de manuales técnicos
ui-citation-tilt-tests = ISO 22915-14, según su tipo de ensayo

## Lugares en los archivos de entrada

ui-place-file = { $file }
ui-place-line = { $file }, línea { $line }
ui-place-column = { $file }, línea { $line }, columna { $column }
ui-place-key = { $place }, en { $key }

## Valores que faltan o dudosos

ui-not-known = no se conoce
ui-assumed = supuesto
ui-invented-data = datos inventados
ui-invented-data-note = La máquina, las personas y la obra de este trabajo son inventadas. No se puede hacer ningún izado con estos datos.
ui-none = ninguno
ui-yes = Sí
ui-no = No

## Títulos

ui-governs = Lo que manda
ui-findings = Resultados
ui-check = Comprobación
ui-result = Resultado
ui-demand = Valor
ui-limit = Límite
ui-reserve = Reserva
ui-reserve-of = { $share } de reserva
ui-reserve-over = { $share } más allá del límite
ui-what-to-do = Qué hacer
ui-working = Cálculo
ui-formula = Fórmula
ui-values = Valores
ui-source = Fuente
ui-inputs = Datos de entrada
ui-assumed-inputs = Supuesto, no medido
ui-cautions = Precauciones
ui-emergency = En caso de emergencia
ui-steps = Pasos
ui-conditions = Condiciones
ui-ends = Este plan deja de valer cuando
ui-load-chart = Tabla de cargas
ui-side-view = Vista lateral
ui-plan-view = Vista desde arriba
ui-ground-profile = Perfil del terreno
ui-stand-field = Mapa de emplazamientos
ui-plan-sheet = Hoja del plan
ui-cab-card = Ficha de cabina
ui-job = Trabajo
ui-site = Obra
ui-lift = Izado
ui-lifts = Izados
ui-verdict = Dictamen
ui-machine = Máquina
ui-attachment = Accesorio
ui-support = Apoyo
ui-load = Carga
ui-stand = Emplazamiento
ui-stands = Emplazamientos
ui-best-stands = Mejores emplazamientos
ui-landing = Lugar de descarga
ui-pick-up = Lugar de recogida
ui-boom-movement = Movimiento de la pluma
ui-wheel-forces = Fuerzas en las ruedas
ui-tolerance = Cuánto puede desviarse
ui-tolerance-sentence = El dictamen vale si la máquina queda a menos de { $radius } de la marca y a menos de { $angle } del rumbo.
ui-date = Fecha
ui-prepared-by = Preparado por
ui-approved-by = Aprobado por
ui-briefed = Informado
ui-operator = Operador
ui-signaller = Señalista
ui-supervisor = Encargado del izado
ui-signature = Firma
ui-name = Nombre
ui-remarks = Observaciones

## Nombres de las medidas

ui-reach = Alcance
ui-lift-height = Altura de elevación
ui-boom-angle = Ángulo de la pluma
ui-extension = Extensión
ui-slope-along = Pendiente longitudinal
ui-slope-across = Pendiente transversal
ui-heading = Rumbo
ui-mass = Masa
ui-capacity = Capacidad
ui-load-centre = Centro de carga
ui-centre-of-gravity = Centro de gravedad
ui-tipping-line = Línea de vuelco
ui-distance = Distancia
ui-height = Altura
ui-width = Ancho
ui-length = Longitud
ui-depth = Profundidad
ui-slope = Pendiente
ui-force = Fuerza
ui-bearing-pressure = Presión sobre el terreno
ui-stop-gust = Parar con ráfagas de
ui-voltage = Tensión
ui-clearance = Distancia libre
ui-ground-accuracy = Precisión de las cotas del terreno

## Dibujos

ui-zone-capacity = { $zone }: { $capacity }
ui-zone = Zona { $zone }
ui-not-permitted = No permitido
ui-this-lift = Este izado
ui-point-box = Dónde puede estar el punto
ui-north = Norte
ui-scale = Escala { $scale }
ui-legend = Leyenda
ui-overhead-line = Línea aérea
ui-required-distance = Distancia exigida
ui-ground = Terreno
ui-exclusion-zone = Zona de exclusión
ui-side-view-alt = Vista lateral del izado { $lift }: la carga a un alcance de { $reach } y una altura de { $height }.
ui-load-chart-alt = Tabla de cargas del izado { $lift }: { $capacity } a un alcance de { $reach } y una altura de { $height }.
ui-plan-view-alt = Izado { $lift } visto desde arriba, con emplazamiento, lugar de descarga, líneas y obstáculos.

## Páginas, archivos, órdenes

ui-page-of = Página { $page } de { $pages }
ui-made-by = Counterpoise { $version }, plan { $digest }
ui-lifts-summary = { $lifts ->
    [one] { $lifts } izado
   *[other] { $lifts } izados
}: { $go ->
    [one] { $go } apto
   *[other] { $go } aptos
}, { $conditions ->
    [one] { $conditions } apto con condiciones
   *[other] { $conditions } aptos con condiciones
}, { $no_go ->
    [one] { $no_go } no apto
   *[other] { $no_go } no aptos
}
ui-faults-summary = { $errors ->
    [one] { $errors } error
   *[other] { $errors } errores
}, { $warnings ->
    [one] { $warnings } aviso
   *[other] { $warnings } avisos
}
ui-hint = Sugerencia: { $hint }
ui-language = Idioma
ui-units = Unidades
ui-units-si = Métricas (SI)
ui-units-us = De EE. UU.
ui-print = Imprimir
ui-download-pdf = Descargar PDF
ui-show-working = Mostrar el cálculo
ui-hide-working = Ocultar el cálculo
ui-back = Atrás
ui-computing = Calculando…
ui-no-connection = Sin conexión. Lo que ve es la última respuesta, no una nueva.
ui-check-again = Comprobar de nuevo
ui-changed-values = Cambiado respecto al archivo del trabajo

## Qué falla en una cantidad escrita (wording::entry)

entry-empty = aquí no hay nada escrito
entry-no-number = «{ $part }» no es un número
entry-bad-number = «{ $part }» no se puede leer como un solo número
entry-not-finite = «{ $part }» no es un número que se pueda medir
entry-ambiguous-separator = «{ $part }» se puede leer de dos maneras
entry-missing-unit = «{ $part }» no lleva unidad; se necesita { $wanted }
entry-unknown-unit = la unidad «{ $unit }» no se conoce; se necesita { $wanted }
entry-ambiguous-unit = «{ $unit }» no significa lo mismo para todos
entry-wrong-dimension = «{ $unit }» mide { $found }; se necesita { $wanted }
entry-ambiguous-ratio = «{ $part }» puede ser altura a base o base a altura
entry-too-steep = «{ $part }» es tan empinado como una pared
entry-bad-parts = «{ $part }» no puede ir detrás de la parte anterior
entry-trailing = «{ $part }» sobra aquí
entry-negative = «{ $part }» es menor que cero, y no puede serlo
entry-zero = «{ $part }» tiene que ser mayor que cero
entry-hint-number-first = Escriba primero el número y después la unidad.
entry-hint-plain-digits = Escriba cifras con un solo punto o una sola coma decimal como máximo.
entry-hint-either = Escriba { $first } o { $second }, según lo que quiera decir.
entry-hint-nearest = ¿Quiere decir { $nearest }?
entry-hint-units = Se puede escribir: { $units }.
entry-hint-ratio = Escriba 1:n (altura a base), un porcentaje, o marque las dos partes: 1V:2H.
entry-hint-parts = Escriba de mayor a menor, cada parte menor que una unidad de la anterior: 5 ft 6 in.
entry-hint-remove = Quítelo, o escríbalo como un valor aparte.
entry-dimension-length = una longitud
entry-dimension-area = un área
entry-dimension-volume = un volumen
entry-dimension-mass = una masa
entry-dimension-angle = un ángulo
entry-dimension-slope = una pendiente
entry-dimension-ratio = una proporción
entry-dimension-number = un número sin unidad
entry-dimension-force = una fuerza
entry-dimension-moment = un momento
entry-dimension-pressure = una presión
entry-dimension-speed = una velocidad
entry-dimension-voltage = una tensión eléctrica
entry-dimension-density = una densidad
entry-dimension-stiffness = una rigidez
entry-dimension-unit-weight = un peso específico
entry-dimension-second-moment = un momento de inercia

## Rótulos de los dibujos y hoja del plan

ui-not-posed = Sin dibujo: no se pudo colocar la máquina en este emplazamiento. Vea los resultados.
ui-no-chart = Sin dibujo: no hay tabla de cargas para esta máquina, accesorio y apoyo.
ui-line-number = Línea { $number }
ui-line-keep = guardar { $distance } de distancia
ui-line-no-required = tensión no conocida; por eso no se conoce la distancia exigida
ui-voltage-not-known = tensión no conocida
ui-line-nearest = menor distancia hallada { $distance }
ui-line-aside = a { $distance } a un lado de esta vista
ui-outside-picture = fuera de este dibujo
ui-ground-not-known = terreno no conocido
ui-slope-not-known = Pendiente del terreno no conocida.
ui-seen-from-right = Visto desde el lado derecho de la máquina.
ui-nose-up = Terreno a lo largo de la máquina { $slope }, delante más alto
ui-nose-down = Terreno a lo largo de la máquina { $slope }, delante más bajo
ui-left-low = transversal { $slope }, lado izquierdo más bajo
ui-right-low = transversal { $slope }, lado derecho más bajo
ui-load-gravity = Centro de gravedad de la carga
ui-chart-point = Punto leído en la tabla de cargas
ui-load-of-capacity = { $load } de { $capacity }
ui-load-up-to = Carga, como máximo
ui-no-zone = La tabla no muestra nada aquí: no permitido
ui-rated-load-centre = Centro de carga nominal { $distance }
ui-capacity-cap = Ninguna zona cuenta más de { $capacity }: el centro de carga supera el nominal
ui-shown-clear = Se muestra con la carga en el aire, aún sin apoyar o recién tomada.
ui-zone-carries = Admite esta carga; lo que sobra está escrito en la zona
ui-needs-has = exige { $required }, hay { $there }
ui-asks-may = { $demand }, se admite { $limit }
ui-figures = Cifras
ui-mass-counted = { $mass }, se cuenta { $counted }
ui-to-line = a la línea { $number }: { $distance }
ui-rear-view = Vista desde atrás
ui-leans-left = inclinada { $angle } a la izquierda, se cuenta { $most }
ui-leans-right = inclinada { $angle } a la derecha, se cuenta { $most }
ui-rear-sketch = La inclinación es la real; la máquina es un esquema.
ui-accepted = Aceptado por personas identificadas
ui-accepted-see = Aceptado por una persona identificada: declaración { $number }
ui-working-as = como en «{ $check }»
ui-zone-too-heavy = Carga demasiado pesada aquí
ui-outside-zones = Fuera de todas las zonas: no permitido
ui-share-left = sobra { $share }
ui-too-heavy = demasiado peso
ui-planned-by = Planificado por
ui-checked-by = Revisado por
ui-briefed-operator = Operador, informado
ui-sign-off = Firmas
ui-sign-off-note = Se firma solo después de comparar los datos con la máquina, la carga y el terreno de la obra.
ui-no-lifts = Este trabajo no tiene izados. No se comprobó nada; nada queda autorizado.
ui-certainty = Certeza
ui-place = Dónde figura
ui-value = Valor
ui-warnings = Avisos sobre los datos
ui-working-note = Cada paso con su fórmula, los valores y la fuente, tal como se calculó. Por dentro en unidades SI; se muestran las del lector.
ui-over-limit = más allá del límite
ui-in-reserve = de reserva
ui-no-number = sin cifra
ui-area = Área
ui-wheel = Rueda o plato
ui-position = Posición
ui-east-north = { $east } este, { $north } norte
ui-size = Tamaño (fondo × ancho × alto)
ui-from-to = { $value } (de { $low } a { $high })
ui-checks-of = { $met } de { $checks } comprobaciones cumplidas
ui-engine-version = Counterpoise { $version }
ui-digest = Huella
ui-lift-of = Izado { $number } de { $lifts }
ui-ground-file = Cotas del terreno según
ui-wheel-heights = Terreno bajo las ruedas
ui-printed = Impreso

## La pantalla

ui-all-lifts = Todos los izados
ui-light-choice = Pantalla
ui-light-auto = Como el dispositivo
ui-light-day = Clara, para el día
ui-light-night = Oscura, para la noche
ui-reading-choices = Idioma, unidades, pantalla
ui-loading = Obteniendo el plan…
ui-try-again = Preguntar otra vez
ui-server-gone = El servidor no responde.
ui-server-gone-old = Lo que se ve es antiguo y puede que ya no valga. Se pregunta de nuevo cada dos segundos.
ui-last-answer = Última respuesta a las
ui-old = Antiguo
ui-plan-changed = El plan ha cambiado. Este es el nuevo: léalo otra vez.
ui-no-drawing = Sin dibujo: los resultados dicen qué falta.
ui-drawing-larger = Ampliar
ui-drawing-fit = Ajustar a la pantalla
ui-drawings = Dibujos
ui-where = Dónde
ui-against = Lo que lo impide
ui-within = Dentro de sus límites
ui-no-working = Aquí no se calculó nada.
ui-no-steps = Sin pasos: este izado no debe hacerse como está planificado.
ui-paper-a4 = A4
ui-paper-letter = carta
ui-plain-page = Página sencilla
ui-to-content = Al contenido
ui-lift-unknown = No hay tal izado en este plan.
ui-needs = Necesita
ui-has = Tiene
ui-task-set-down = Dejar en
ui-task-pick-up = Recoger de
ui-front-tyres = Neumáticos delanteros
ui-from-landing = a { $distance } de su borde
ui-past-landing = { $distance } más allá de su borde
ui-aim = Apuntar
ui-aim-middle = a su centro
ui-aim-left = { $distance } a la izquierda de su centro
ui-aim-right = { $distance } a la derecha de su centro
ui-heading-compass = { $heading } ({ $compass })
ui-compass-north = norte
ui-compass-north-east = noreste
ui-compass-east = este
ui-compass-south-east = sureste
ui-compass-south = sur
ui-compass-south-west = suroeste
ui-compass-west = oeste
ui-compass-north-west = noroeste
ui-emergency-button = Emergencia
ui-being-made = se está haciendo…
ui-made = lista, ábrala
ui-not-made = no se pudo hacer, pida de nuevo
ui-goes-on-aside = El dibujo sigue hacia un lado.
ui-to-the-left = Hacia la izquierda
ui-to-the-right = Hacia la derecha

## Nombres de las comprobaciones (planning)

check-machine = Máquina apta para el trabajo
check-tyres = Neumáticos
check-axle = Eje trasero
check-stops = Prohibido siempre
check-load = Carga
check-attachment = Accesorio
check-forks = Horquillas
check-rigging = Eslingas y gancho
check-level = Nivelación
check-chart = Tabla de cargas
check-load-factor = Vuelco: factor de carga
check-tilt = Vuelco: cuánto puede inclinarse todavía
check-wind = Viento
check-line = Líneas aéreas
check-ground = Terreno bajo ruedas y platos
check-settlement = Asiento bajo ruedas y platos
check-rutting = Roderas bajo los neumáticos
check-landing = Resistencia del lugar de descarga
check-landing-edge = Borde del lugar de descarga
check-landing-room = Espacio en el lugar de descarga
check-sight = Visibilidad
check-approach = Aproximación al lugar de descarga
check-edges = Bordes, excavaciones y desniveles
check-buried = Servicios enterrados y huecos
check-obstacles = Obstáculos
check-people = Personas
check-route = Camino de entrada y salida

## Un izado incompleto

lift-unresolved = Este izado nombra una máquina, una carga o un lugar de descarga que el trabajo no tiene.

## Máquina

machine-inspected = { $machine }: revisada antes del uso y encontrada apta, por { $by }.
machine-not-inspected = Nadie ha revisado todavía { $machine } antes del uso.
machine-tagged-out = { $machine } está fuera de servicio, con tarjeta: { $reason }. No trabaja hasta que se autorice por escrito.
do-inspect = Haga la revisión antes del uso y anote en el trabajo el nombre de quien la hizo.
fitted-without = Hoy no está en la máquina: { $body }, { $mass }. El diagrama de cargas cuenta con ello.
fitted-added = Está en la máquina además de lo descrito: { $body }, { $mass }. El diagrama de cargas no lo conoce; el vuelco se calcula con ello y sin ello, el viento sobre ello no.
do-fit-again = Vuelva a montarlo antes de levantar nada.
do-ask-added = Pregunte al fabricante de la máquina si los diagramas valen con ello, o quítelo.
tyre-flat = { $wheel }: el neumático está desinflado.
tyre-soft = { $wheel }: { $measured } medidos, se piden { $asked }. Un neumático blando deja que la máquina se incline.
tyre-hard = { $wheel }: { $measured } medidos, se piden { $asked }. Un neumático duro transmite más presión al terreno y puede reventar.
front-tyres-touch = Los neumáticos delanteros tocan el suelo con los estabilizadores bajados: el diagrama con estabilizadores no vale.
front-tyres-not-seen = Nadie ha visto si los neumáticos delanteros están en el aire con los estabilizadores bajados.
do-mend-tyre = Repare o cambie el neumático antes de levantar nada.
do-inflate = Ponga el neumático a { $asked } antes de levantar nada.
do-let-out = Mantenga a la gente lejos y haga que lo pongan a { $asked } según el manual antes de levantar nada.
do-lift-front-tyres = Baje los estabilizadores según el manual hasta que los dos neumáticos delanteros queden en el aire.
do-see-front-tyres = Mire los dos neumáticos delanteros antes de subir la pluma y anótelo en el izado (front_tyres).
axle-locked = Se cuenta como bloqueado antes de subir la pluma; { $by } ha probado hoy el bloqueo.
axle-locked-by-pads = Se cuenta como bloqueado con los estabilizadores bajados; { $by } ha probado hoy el bloqueo.
axle-not-counted = El bloqueo se ha probado, pero no se sabe con qué ángulo de pluma bloquea o si era el que aquí cuenta: se calculan los dos estados, libre y bloqueado, y cuenta el peor.
axle-locks-itself = Se cuenta como bloqueado por encima de { $trigger } de ángulo de pluma y como libre por debajo; { $by } ha probado hoy el bloqueo.
axle-not-tried = El eje trasero se va a bloquear, pero hoy nadie ha probado el bloqueo: se calculan los dos estados, libre y bloqueado, y cuenta el peor.
do-try-lock = Pruebe el bloqueo según el manual y anote quién lo hizo (axle_lock_tried).
do-repair = Use otra máquina, o haga reparar esta y que se autorice por escrito.

## Prohibido siempre

stop-none = Este izado no incluye nada que esté prohibido siempre.
stop-people = Se elevarían personas. Eso nunca se planifica aquí, ni sobre las horquillas ni sobre nada que ellas lleven.
stop-shared = La carga se compartiría con otra máquina.
stop-drag = La pluma empujaría, tiraría o arrastraría.
stop-boom-up = La máquina circularía o nivelaría el bastidor con la pluma levantada.
stop-hand = Alguien sujetaría la carga con la mano.
stop-seat = El operador abandonaría el asiento con la carga levantada.
do-no-people = Eleve personas solo con una máquina que el fabricante haya hecho para personas.
do-one-machine = Que una sola máquina lleve toda la carga.
do-lift-clear = Levante la carga del todo antes de moverla. Nunca empuje, tire ni arrastre con la pluma.
do-boom-down = Baje y retraiga la pluma antes de circular o nivelar.
do-tag-lines = Guíe la carga con cuerdas guía y no la toque con las manos.
do-stay-seated = Deje la carga apoyada antes de abandonar el asiento.

## Carga

load-sound = La carga se revisó antes de levantarla y está en buen estado: palet, flejes y envoltura, o eslingas y puntos de enganche.
load-not-seen = Nadie ha mirado todavía el palet, los flejes y la envoltura.
load-unsound = El palet, los flejes o la envoltura no están en buen estado.
load-wrong-tool = { $attachment } no es para este tipo de carga: las cargas suspendidas van en gancho y las apoyadas, sobre horquillas.
do-look-at-load = Mire el palet, los flejes y la envoltura antes de levantar.
do-repack = Haga embalar de nuevo la carga antes de levantarla.
do-fitting-tool = Use el accesorio adecuado para esta carga.

## Accesorio

attachment-fit = { $attachment }: figura en la lista de esta máquina, bloqueo visto cerrado, lleva { $mass } de los { $capacity } que puede llevar.
attachment-unknown = { $attachment } no figura en la lista de { $machine }. Figuran: { $known }.
attachment-open = Se ha visto abierto el bloqueo de { $attachment }.
attachment-not-seen = Nadie ha mirado todavía el bloqueo de { $attachment }.
attachment-overloaded = { $mass } es más de lo que puede llevar { $attachment }: { $capacity }.
do-see-lock = Cierre el bloqueo y mírelo desde el suelo antes de levantar.
do-lighten = Levante como máximo { $mass } de una vez, según nota de entrega o báscula.
do-listed-attachment = Use un accesorio de la lista del fabricante para esta máquina.

## Horquillas

forks-within = Las horquillas llevan { $capacity } con el centro de carga a { $centre }; la carga es de { $mass }.
forks-overloaded = { $mass } es más de lo que llevan las horquillas con el centro de carga a { $centre }: { $capacity }.
forks-worn = La horquilla de { $side } tiene un desgaste del { $wear }. Al llegar al 10 % se retira de servicio.
forks-modified = La horquilla de { $side } se ha modificado.
forks-short = La carga tiene { $depth } de fondo y las horquillas { $length } de largo: sobresaldría más de un tercio de la carga.
forks-off-centre = El centro de la carga está a { $offset } del medio, así que no queda entre las horquillas, que están separadas { $spread }.
do-new-forks = Retire las horquillas de servicio y ponga unas en buen estado.
do-look-at-forks = Haga mirar y medir las horquillas, y anote los resultados en el archivo de la máquina.
do-longer-forks = Use horquillas más largas, o gire la carga.
do-centre-load = Centre la carga entre las horquillas.
side-left = la izquierda
side-right = la derecha
side-front = delante
side-rear = atrás

## Eslingas y gancho

rigging-within = El ramal de eslinga más cargado recibe { $force }, inclinado { $angle } de la vertical ({ $flat } de la horizontal); puede recibir { $limit }.
rigging-overloaded = El ramal de eslinga más cargado recibiría { $force }, inclinado { $angle } de la vertical ({ $flat } de la horizontal), más de lo que puede: { $limit }.
rigging-angle = Los ramales de la eslinga forman { $angle } con la vertical; se admite { $limit } como máximo.
rigging-none = La carga va suspendida y nadie ha indicado sus eslingas.
rigging-no-tag-lines = No hay cuerdas guía previstas para la carga suspendida.
do-stronger-slings = Use eslingas más resistentes o más largas, para que los ramales cuelguen más verticales.
do-state-rigging = Indique el número de ramales, su ángulo y su carga máxima de utilización (CMU, WLL).

## Nivelación

level-within = Nivel suficiente: { $across } transversal (se admite { $tolerance_across }) y { $along } longitudinal (se admite { $tolerance_along }), incluida la precisión de la medición.
level-sideways = Demasiado desnivel transversal: { $across }; se admite { $tolerance }.
level-frame = Bastante nivelado una vez nivelado el bastidor: el terreno cae hasta { $ground } hacia un lado, la nivelación corrige { $range }, pueden quedar { $across } (admitido { $tolerance_across }); { $along } a lo largo (admitido { $tolerance_along }), con la precisión del levantamiento y el error del indicador.
level-frame-still = Nivelado y aun así inclinado: el terreno cae hasta { $ground } hacia un lado, la nivelación llega a { $range }, así que pueden quedar { $across }, admitido { $tolerance }.
do-level-frame = Nivele el bastidor antes de subir la pluma y planifique así el izado (levelled = true), o busque un emplazamiento nivelado.
level-fore-aft = Demasiado desnivel longitudinal: { $along }; se admite { $tolerance }.
level-twist = El terreno está alabeado { $twist }; el eje trasero llega a su tope con { $limit }.
level-no-ground = Aquí no se conoce la cota del terreno: { $wheel }.
level-no-tolerance = No se puede saber si el nivel es suficiente: sin tabla de cargas no hay tolerancia con que compararlo.
do-level-stand = Busque un emplazamiento nivelado.
do-survey = Haga medir este emplazamiento, o tome sus cotas con cinta y nivel.

## Tabla de cargas

chart-within = { $mass } está dentro de la tabla: { $capacity } en la zona { $zone }, con alcance { $reach } y altura { $height }.
chart-exceeded = { $mass } aquí es más de lo que admite la tabla: { $capacity } en la zona { $zone }, con alcance { $reach } y altura { $height }.
chart-exceeded-on-the-way = { $mass } es más de lo que la tabla admite por el camino: { $capacity } en la zona { $zone }, con la pluma a un alcance de { $reach } y una altura de { $height }.
chart-outside = La tabla no muestra nada con alcance { $reach } y altura { $height }: ahí no se permite levantar.
chart-outside-on-the-way = Por el camino la pluma pasa por un alcance de { $reach } y una altura de { $height }, donde la tabla no muestra nada.
chart-none = No hay tabla de cargas para { $attachment } { $support }.
chart-out-of-reach = La pluma no llega a un alcance de { $reach } y una altura de { $height }.
chart-not-read = No se leyó la tabla de cargas: { $why }.
chart-high-load = El centro de esta carga está a { $height } sobre las horquillas, más alto que los { $tested } con que se ensayó la tabla. El vuelco se calculó para esta altura; la tabla misma no la muestra.
do-ask-maker-height = Haga que el fabricante o la empresa de alquiler confirme por escrito que la tabla vale para esta altura de carga, o embale la carga de modo que quede más baja.
do-nearer = Colóquese { $distance } más cerca. Allí cumplen la tabla, el nivel, el vuelco y la aproximación; revise de nuevo todo lo demás.
do-other-machine = Use una máquina, un accesorio o un tipo de apoyo que tenga tabla de cargas para esto.
support-tyres = sobre neumáticos
support-stabilizers = sobre estabilizadores
support-outriggers = sobre estabilizadores de cuatro puntos

## Vuelco

load-factor-enough = Empezaría a volcar con { $tipping }, { $factor } veces la carga; se exige al menos { $required } veces.
load-factor-short = Empezaría a volcar con { $tipping }, { $factor } veces la carga; se exige al menos { $required } veces.
load-factor-never = Con la máquina así, ninguna carga la vuelca; se exige al menos { $required } veces la carga.
statics-not-done = No se calculó el vuelco: { $why }.
do-less-reach = Lleve menos carga o use menos alcance.
tilt-enough = Puede inclinarse { $tilt } más hacia { $side } antes de volcar; se exige al menos { $required }.
tilt-short = Solo puede inclinarse { $tilt } más hacia { $side } antes de volcar; se exige al menos { $required }.
tilt-tips = Tal como está previsto, vuelca hacia { $side }.
why-no-ground = no se conoce la cota del terreno bajo todas las ruedas
why-no-reach = la pluma no llega al lugar de descarga desde este emplazamiento
why-no-attachment = el archivo de la máquina no tiene este accesorio

## Viento

wind-within = El trabajo se para con ráfagas de { $gust }, dentro del límite del fabricante: { $limit }.
wind-above = El trabajo no se pararía hasta ráfagas de { $gust }, por encima del límite del fabricante: { $limit }.
wind-not-stated = Nadie ha indicado con qué viento se para el trabajo.
wind-no-limit = El trabajo se para con ráfagas de { $gust }, pero no se conoce el límite de viento del fabricante.
do-lower-wind = Pare el trabajo a más tardar con ráfagas de { $limit }.
do-state-wind = Indique con qué ráfaga se para el trabajo.
do-ask-wind = Pregunte al fabricante el límite de viento y mida el viento a la altura de la pluma.

## Líneas aéreas

line-none = Todas las líneas aéreas al alcance están en este plan, según declara { $by }.
line-not-stated = Nadie ha declarado todavía que todas las líneas aéreas al alcance estén en este plan.
line-clear = { $line } queda al menos a { $distance } durante todo el movimiento; se exige { $required }.
line-near = Demasiado cerca de { $line }: { $distance }; se exige { $required }.
line-no-voltage = No se conoce la tensión de { $line }.
line-no-height = No se conoce la altura de { $line }.
line-voltage-above-table = { $line } lleva { $voltage }, más de lo que cubre la tabla de distancias. La distancia la tiene que indicar su propietario o un ingeniero habilitado.
line-far = { $line } está a { $distance }, más lejos de lo que pide cualquier norma hasta 1000 kV.
line-not-checked = No se comprobó la distancia a { $line }: { $why }.
line-dead = { $line } está sin tensión y puesta a tierra a la vista en el lugar de trabajo, según confirma { $owner } con el permiso { $permit }.
line-insulated = { $line } está cubierta, según declara { $by } con el permiso { $permit }. Cuenta como desnuda: la cubierta no acorta ninguna distancia.
line-planning-zone = { $line } está a { $distance } de la carga suspendida, más allá de los { $required } exigidos pero dentro de { $zone }: rigen las precauciones adicionales para cargas suspendidas cerca de líneas.
do-line-away = Aleje el trabajo { $distance } más de la línea, o haga que su propietario la deje sin tensión, la ponga a tierra donde se vea y lo confirme por escrito.
do-ground-line = Una línea que no está puesta a tierra a la vista en el lugar de trabajo cuenta como con tensión. Haga que su propietario la ponga a tierra y lo confirme por escrito.
do-ask-voltage = Pregunte la tensión al propietario de la línea.
do-measure-line = Haga medir las alturas con un medio que no se acerque a la línea.
do-look-up = Recorra todo el camino mirando hacia arriba, y que alguien declare con su nombre qué líneas hay.
do-planning-zone = Haga una reunión sobre la línea, avise a su propietario, marque el límite en el suelo, ponga un vigía y use cuerdas guía no conductoras.

## Terreno

ground-unknown = Nadie sabe cuánto soporta este terreno. { $wheel }: transmite { $force }, es decir, { $pressure }.
ground-carries = { $wheel }: transmite { $pressure }; el terreno soporta { $strength }, según declara { $by }.
ground-weak = { $wheel }: transmite { $pressure }, más de lo que soporta el terreno: { $strength }, según declara { $by }.
ground-no-patch = { $wheel }: transmite { $force }, pero no se conoce su superficie, así que no se puede saber la presión.
ground-no-strength = El terreno se ha aceptado sin indicar ninguna resistencia, por { $by }.
ground-not-checked = No se calcularon las fuerzas de las ruedas: { $why }.
do-state-ground = Que una persona competente declare con su nombre la resistencia del terreno; tiene que soportar { $pressure }.
do-mats = Ponga placas de reparto, o busque otro emplazamiento.
do-tyre-pressure = Indique la presión de los neumáticos o el tamaño de los platos.
wheel-front-left = Rueda delantera izquierda
wheel-front-right = Rueda delantera derecha
wheel-rear-left = Rueda trasera izquierda
wheel-rear-right = Rueda trasera derecha
pad-left = Plato del estabilizador izquierdo
pad-right = Plato del estabilizador derecho
pad-rear-left = Plato trasero izquierdo
pad-rear-right = Plato trasero derecho

## Lugar de descarga y aproximación

landing-carries = { $landing }: soporta { $rating }, según declara { $by }. Con lo que hay allí, las personas y esta carga al posarla cuentan { $mass }.
landing-overloaded = { $landing }: con lo que hay allí, las personas y esta carga al posarla cuentan { $mass }, más de lo que soporta: { $rating }, según declara { $by }.
landing-part-fits = { $landing }: { $part }: { $demand } de { $limit }, según declara { $by }.
landing-part-too-much = { $landing }: { $part }: { $demand }, más de { $limit }, según declara { $by }.
landing-part-unknown = { $landing }: { $part }: { $demand }, y nadie declara lo que soporta.
landing-class-only = { $landing }: solo se declara una clase de carga. Una clase de carga no dice nada de un palet.
landing-no-feet = { $landing }: decide lo que carga un solo pie, y nadie declara sobre qué se apoya la carga.
landing-not-judged = { $landing }: su resistencia no se puede juzgar: { $why }.
landing-push-fits = { $landing }: cuenta un empuje de las horquillas de { $push }; admite { $limit }, según declara { $by }.
landing-push-too-much = { $landing }: cuenta un empuje de las horquillas de { $push }, más de lo que admite: { $limit }, según declara { $by }.
landing-push-unknown = { $landing }: las horquillas pueden empujar con { $push }, y nadie declara qué empuje admite.
landing-edge-closed = { $landing }: su borde sigue cerrado mientras entra la carga.
landing-edge-no-drop = { $landing }: no hay desnivel en su borde.
landing-edge-opened = { $landing }: su borde se abre para la carga.
landing-edge-open = { $landing }: su borde está abierto y hay personas allí.
landing-edge-open-empty = { $landing }: su borde está abierto; no hay nadie allí mientras llega la carga.
landing-edge-not-stated = { $landing }: nadie declara cómo se cierra su borde mientras entra la carga.
landing-room = { $landing }: la carga tiene su sitio.
landing-room-people = { $landing }: la carga tiene su sitio, con espacio al lado para todos los que están allí ({ $people }).
landing-taken = { $landing }: { $what } está donde baja la carga.
landing-in-the-way = { $landing }: { $what } está en el camino de las horquillas.
landing-somewhere = { $landing }: { $what } está allí, nadie declara dónde.
landing-no-room = { $landing }: junto a la carga no hay espacio para todos los que están allí ({ $people }): cada uno necesita { $space } por { $space }.
sight-signaller = { $landing } queda { $height } por encima del techo de la cabina: el operador no lo ve. { $name } guía la carga allí; si se pierde el contacto, se para.
sight-hidden = { $landing } queda { $height } por encima del techo de la cabina: el operador no ve dónde baja la carga.
landing-no-rating = { $landing }: nadie sabe cuánto soporta. Con esta carga habrá allí { $mass }.
landing-relieved = { $landing }: ya soporta esta carga y quedará libre de ella.
do-ask-rating = Pregunte al proyectista cuánto soporta el lugar de descarga y anote su nombre en el trabajo.
do-clear-beside = Retire lo que hay allí, o que quien responde del tablero o el forjado cuente con esa carga junto al palet.
do-check-landing-numbers = Compruebe los números del lugar de descarga y de la carga en el trabajo.
landing-occupied-somewhere = { $landing }: ya hay allí { $mass }, nadie declara dónde.
do-state-feet = Declare sobre qué se apoya la carga: pies del palet, patines, base plana.
do-less-on-landing = Traiga como máximo { $mass } de ella a la vez, y retírela antes de que llegue la siguiente.
do-half-load = Con dos viajes bastaría, si la primera mitad se retira antes de que llegue la segunda.
do-other-landing = Use otro lugar de descarga, o que su proyectista lo refuerce.
do-ask-push = Pregunte al proyectista si admite un empuje de { $push }. Hasta entonces pose la carga sin empujar nada y saque las horquillas a nivel.
do-tie-at-edge = Quien esté en el borde abierto va atado o se queda a 2 m, y se cierra antes de que nadie se acerque.
do-guard-edge = Cierre el borde antes de que nadie pise el lugar de descarga.
do-nobody-on-landing = Nadie en el lugar de descarga hasta que la carga esté posada y las horquillas fuera.
do-state-edge = Declare cómo se cierra el borde mientras entra la carga.
do-clear-place = Despeje antes ese sitio.
do-see-place-clear = Compruebe que el sitio de la carga y el camino de las horquillas están despejados antes de subir la carga.
do-name-signaller = Nombre a un señalista que vea el lugar de descarga y al operador, con señales acordadas; si se pierde el contacto, se para.
do-clear-landing = Retire antes { $mass } del lugar de descarga, o traiga menos.
approach-square = La pluma apunta al lugar de descarga desde el lado permitido, como máximo a { $offset } de su centro contando el error del emplazamiento.
approach-past = La pluma apunta hasta { $offset } más allá del centro del lugar de descarga, contando el error del emplazamiento; se admite { $allowed }.
approach-too-small = La carga no cabe en el lugar de descarga: mide { $width } de ancho y { $depth } de fondo; el lugar, { $across } de ancho y { $along } de fondo.
approach-into = Entre la máquina y lo que sostiene el lugar de descarga quedarían { $room }, contando el error del emplazamiento; deben quedar { $asked }.
approach-no-withdrawal = La pluma sola puede sacar las horquillas { $room } en línea recta, pero están metidas { $length } bajo la carga.
approach-wrong-side = La aproximación se desvía { $angle } de la dirección permitida; se admite { $tolerance }.
approach-any = La pluma apunta al lugar de descarga, como máximo a { $offset } de su centro contando el error del emplazamiento. No se indica dirección de aproximación, así que se tomó cualquiera.
approach-not-checked = No se comprobó si la pluma apunta al lugar de descarga: { $why }.
approach-behind = El lugar de descarga queda detrás de la máquina.
do-turn = Gire la máquina hasta el rumbo { $heading }.
do-farther = Colóquese unos { $distance } más atrás, para que la pluma sola pueda sacar las horquillas. Nunca retroceda con la pluma levantada.
do-stand-clear = Colóquese unos { $distance } más atrás.
do-larger-landing = Use un lugar de descarga más grande o gire la carga.
do-state-approach = Indique desde qué dirección recibe cargas el lugar de descarga.

## Asuntos de los que tiene que responder una persona

matter-accepted = { $by } responde de «{ $matter }»: { $statement }
matter-open = Nadie responde todavía de «{ $matter }», y Counterpoise no lo calcula.
do-state-matter = Que una persona competente lo mire en la obra y declare el resultado con su nombre.

## Pasos para el operador

step-drive-in = Cinturón puesto, pluma bajada y retraída. Entre y pare con rumbo { $heading }. Freno de estacionamiento puesto, transmisión en punto muerto.
step-read-level = Antes de levantar, lea el indicador de nivel de la cabina: como máximo { $across } hacia cualquier lado y { $along } hacia delante o atrás. Manda sobre este plan: si indica más, no levante.
step-stabilizers = Baje los estabilizadores hasta que apoyen, según el manual, con la pluma todavía bajada.
step-level-frame = Con la pluma bajada y recogida, nivele el bastidor hasta que el indicador de nivel marque vertical. No nivele nunca con la pluma en alto.
step-lock-axle = Bloquee el eje trasero y compruebe que ha quedado bloqueado antes de subir la pluma.
step-unlock = Antes de marcharse, con la pluma bajada: desbloquee el eje trasero y devuelva el bastidor a su sitio según el manual. Lo bloqueado o nivelado en otro lugar no vale aquí.
step-outriggers = Baje todos los estabilizadores hasta que ningún neumático cargue y nivele la máquina sobre ellos según el manual, con la pluma todavía bajada.
step-hang-plumb = Levante solo con el gancho a plomo sobre la carga. Cuerdas guía sujetas desde un lado; nadie bajo la carga ni entre ella y una estructura.
step-trial-lift = Prueba: levante la carga { $system ->
    [us] de 4 a 8 in
   *[other] de 0,1 a 0,2 m
}. Observe el nivel, los neumáticos y la carga. Si algo no es como se espera, vuelva a dejarla.
step-raise = Suba la pluma, todavía retraída, hasta { $angle } en el indicador de ángulo.
step-extend = Extienda la pluma hasta { $extension }.
step-enter-forks = Introduzca las horquillas niveladas y por completo bajo la carga, con el portahorquillas contra ella. Nadie sobre la plataforma o la pila ni al otro lado.
step-hook-on = Haga eslingar y enganchar la carga, tense las eslingas y espere hasta que todos estén apartados.
step-take-away = Levante la carga hasta librar { $height }. Si no queda libre, vuelva a dejarla donde estaba. Retraiga hasta que la carga salga de la plataforma o la pila, bájela para transportarla y solo entonces circule.
step-set-down = Baje la carga en vertical unos { $height }: pluma abajo y adentro a la vez, hasta { $angle } y { $extension }. Déjela despacio.
step-withdraw = Retraiga la pluma para sacar las horquillas en línea recta, niveladas y sin rozar la carga, sin mover la máquina. Cuando estén fuera: retraiga del todo, baje y solo entonces circule.
step-unhook = Haga desenganchar solo cuando la carga se sostenga por sí misma y las eslingas estén flojas. Cuando todos estén apartados: retraiga, baje y solo entonces circule.
step-stop-when = En todo momento: pare si las ráfagas llegan a { $gust }, la máquina se inclina, el terreno cede, se acerca una persona o pierde de vista la carga o al señalista.

## Precauciones y emergencia

caution-manual = Mandan el manual del fabricante y la tabla de cargas de la cabina. Un resultado de Counterpoise nunca está por encima de ellos ni hace legal un izado.
caution-competent = Deciden la ley local, la persona competente de la obra y los ingenieros habilitados.
caution-inputs = Los resultados dependen de los datos de entrada. Mire cuáles de ellos se han supuesto.
caution-never = Nunca personas sobre las horquillas. Nunca un izado que la tabla no muestre. Nunca circule ni nivele el bastidor con la pluma levantada.
caution-not-computed = Aquí no se calculan: presiones de neumáticos que nadie ha medido, frenado y giros, el asiento del terreno cuya rigidez nadie declara y el que viene con el tiempo. Las reservas exigidas están para eso; no las gaste en otra cosa.
caution-trial = Pruebe antes cada carga: levántela { $system ->
    [us] de 4 a 8 in
   *[other] de 0,1 a 0,2 m
}, pare y mire.
emergency-tip = Si vuelca: quédese en el asiento con el cinturón puesto, agárrese e inclínese hacia el lado contrario al de la caída. No salte.
emergency-line = Si toca una línea o salta un arco: quédese en la cabina, llame al propietario de la línea y mantenga a todos al menos a { $system ->
    [us] 33 ft
   *[other] 10 m
} hasta que el propietario confirme que la línea está sin tensión. Solo si hay fuego: salte lejos con los pies juntos, sin tocar nunca la máquina y el suelo a la vez, y aléjese a pasos muy cortos con los pies juntos.

## Referencias de una tabla

datum-tyre-load-centre = desde la cara delantera de los neumáticos delanteros hasta el centro de carga
datum-tyre-heel = desde la cara delantera de los neumáticos delanteros hasta el talón de las horquillas
datum-tyre-hook = desde la cara delantera de los neumáticos delanteros hasta el gancho
datum-axle-load-centre = desde el eje delantero hasta el centro de carga
datum-axle-heel = desde el eje delantero hasta el talón de las horquillas
datum-axle-hook = desde el eje delantero hasta el gancho

## Avisos

warn-invented = Datos inventados: { $name }. No se puede hacer ningún izado con ellos.
warn-heavy-outside = { $load }: el lado más pesado no está contra el portahorquillas.

## Cálculo: tabla, horquillas, eslingas, carga (machine)

working-reach = Alcance y altura del punto que se lee
working-box = Recuadro que contiene el punto, con error de posición y flexión de la pluma
working-excess-reach = Exceso del centro de carga, sumado al alcance
working-capacity = Capacidad leída en el recuadro, zona { $zone }
working-moment-cap = Capacidad por momento en portahorquillas y horquillas
working-reserve = Reserva
working-blade-pair = Lo que lleva el par: dos veces la horquilla más débil
working-blade-moment = Lo que lleva el par con este centro de carga
working-blade-share = Parte de la horquilla más cargada
working-blade-wear = Desgaste de la horquilla
working-sling = Carga en un ramal de eslinga

## Cálculo: vuelco y viento (stability)

working-centre-of-gravity = Centro de gravedad, { $axis }
working-counted-mass = Masa que cuenta para esta línea de vuelco
working-through-pin = Lo que el eje trasero transmite al bastidor por su bulón
working-held-by-rear = Lo que el eje trasero transmite al bastidor por su bulón, cuando solo las ruedas traseras sujetan la máquina a lo largo
working-restoring = Momento que la sujeta, respecto a la línea de vuelco
working-wind-moment = Momento del viento respecto a la línea de vuelco
working-wind-pressure = Presión del viento
working-wind-force = Fuerza del viento: { $part }
working-arm = Distancia del centro de gravedad a la línea de vuelco
working-tilt = Cuánto puede inclinarse todavía antes de volcar, en la peor dirección
working-tipping-load = Carga con la que empieza a volcar
working-load-factor = Factor de carga
working-corner-loaded = Peor combinación de los datos inciertos, con carga: pluma, gravedad en los ejes de la máquina, masa total
working-stands-free = Giro de los ejes delantero y trasero bajo el bastidor, eje trasero libre
working-stands-locked = Giro de los ejes delantero y trasero bajo el bastidor, eje trasero bloqueado en ese ángulo
working-corner-unladen = Peor combinación de los datos inciertos, sin carga y con la pluma aún levantada: pluma, gravedad en los ejes de la máquina, masa total
part-load = carga
part-boom = pluma
part-frame = bastidor con ruedas
part-cab = cabina
part-carriage = portahorquillas con accesorio
axis-x = por delante del eje delantero
axis-y = a la izquierda del medio
axis-z = sobre el terreno

## Fallos en archivos de trabajo y de máquina (jobfile)

jobfile-syntax = el archivo no se puede leer: { $detail }
jobfile-duplicate-key = esta clave está dos veces en la misma tabla
jobfile-not-text = el archivo no es texto UTF-8
jobfile-too-large = el archivo ocupa más de { $limit } bytes
jobfile-missing-file = no hay ningún archivo { $file } en la carpeta del trabajo
jobfile-unreadable-file = no se ha podido leer el archivo { $file }: { $reason }
jobfile-bad-path = la ruta { $path } sale de la carpeta del trabajo
jobfile-hint-path = Ponga el archivo en la carpeta del trabajo e indique su ruta desde allí, con barras /.
jobfile-format-missing = el archivo no indica su formato
jobfile-format-unknown = esta versión no lee el formato «{ $format }»
jobfile-hint-format = Empiece el archivo con: format = "{ $known }"
jobfile-unknown-key = la clave { $key } no significa nada aquí
jobfile-hint-nearest = ¿Quiere decir { $nearest }?
jobfile-hint-known = Aquí se puede poner: { $known }.
jobfile-missing-key = falta la clave { $key }
jobfile-hint-example = Escriba, por ejemplo: { $example }
jobfile-wrong-type = { $key } debe ser { $expected } y es { $found }
jobfile-type-text = texto entre comillas
jobfile-type-number = un número
jobfile-type-whole = un número entero
jobfile-type-bool = true o false
jobfile-type-list = una lista entre corchetes
jobfile-type-table = una tabla
jobfile-type-date = una fecha sin comillas
jobfile-type-nothing = nada
jobfile-type-quantity = un valor con su unidad, entre comillas
jobfile-type-text-or-table = texto, o una tabla
jobfile-empty-text = { $key } está vacío
jobfile-hint-list-unit = Los números sin unidad de una lista toman la unidad que indica la misma tabla, por ejemplo unit = "m".
jobfile-dimension-length = una longitud
jobfile-dimension-area = un área
jobfile-dimension-volume = un volumen
jobfile-dimension-mass = una masa
jobfile-dimension-angle = un ángulo
jobfile-dimension-slope = una pendiente
jobfile-dimension-ratio = una proporción
jobfile-dimension-number = un número sin unidad
jobfile-dimension-force = una fuerza
jobfile-dimension-moment = un momento
jobfile-dimension-pressure = una presión
jobfile-dimension-speed = una velocidad
jobfile-dimension-voltage = una tensión eléctrica
jobfile-dimension-density = una densidad
jobfile-dimension-stiffness = una rigidez
jobfile-dimension-unit-weight = un peso específico
jobfile-dimension-second-moment = un momento de inercia
jobfile-negative = { $key } es { $value }, y no puede ser menor que cero
jobfile-not-positive = { $key } es { $value }, y tiene que ser mayor que cero
jobfile-out-of-range = { $key } es { $value }; puede ir de { $low } a { $high }
jobfile-too-much = { $key } es { $value }, y nada de ese tipo tiene más de { $high }
jobfile-hint-unit-slip = Compruebe el número y su unidad.
jobfile-policy-below-usual = { $key } es menos estricto que lo habitual, { $usual }, y nadie responde de ello
jobfile-bad-choice = «{ $value }» no es ninguna de las palabras posibles para { $key }
jobfile-list-length = { $key } tiene { $found ->
    [one] { $found } elemento
   *[other] { $found } elementos
}; hacen falta { $expected }
jobfile-list-too-short = { $key } tiene { $found ->
    [one] { $found } elemento
   *[other] { $found } elementos
}; { $least ->
    [one] hace falta al menos { $least }
   *[other] hacen falta al menos { $least }
}
jobfile-placeholder = { $key } está todavía sin rellenar
jobfile-hint-fill-in = Rellénelo; hasta entonces cuenta como no indicado.
jobfile-hint-fill-in-job = Rellénelo; hasta entonces no cuenta nada de lo que declaran personas en este trabajo, y ningún izado es apto.
jobfile-hint-fill-in-machine = Rellénelo; hasta entonces la máquina cuenta como no revisada, y ningún izado con ella es apto.
jobfile-ground-left-out = { $file } se deja fuera: todavía no es un levantamiento topográfico de esta obra
jobfile-no-source = nada indica de dónde sale { $key }
jobfile-hint-source = Ponga source = "…" en esta tabla o en una que la contenga. Se puede poner: { $known }.
jobfile-duplicate-id = el identificador «{ $id }» ya se dio en la línea { $line }
jobfile-unknown-reference = en este trabajo no hay { $kind } con el identificador «{ $id }»
jobfile-kind-machine = ninguna máquina
jobfile-kind-load = ninguna carga
jobfile-kind-landing = ningún lugar de descarga
jobfile-kind-attachment = ningún accesorio
jobfile-either-or = aquí solo puede estar una de las claves { $first } y { $second }
jobfile-one-of = aquí tiene que estar una de las claves { $first } y { $second }
jobfile-pin-too-high = el bulón del eje oscilante, a { $pin }, no está por debajo de la mitad de la vía trasera, { $half_track }: el eje no podría mantener derecho el bastidor
jobfile-centre-outside-wheelbase = con la pluma bajada y retraída, el centro de gravedad de la máquina está a { $centre } por delante del eje delantero, que no queda entre los ejes (distancia entre ejes { $wheelbase }): volcaría parada
jobfile-hint-centres = Revise las masas y los centros: por delante del eje delantero es positivo; por detrás, negativo.
jobfile-centre-outside-track = el centro de gravedad de la máquina está a { $left } a la izquierda del medio, fuera de la mitad de la vía, { $half_track }
jobfile-angle-order = el primer ángulo, { $low }, no es menor que el segundo, { $high }
jobfile-boom-too-long = la pluma con toda su extensión mide { $length }, y ninguna de ese tipo mide más de { $high }
jobfile-section-shares = un tramo de la pluma tiene que tomar toda la extensión (parte 1), y ninguno puede tomar más que uno posterior
jobfile-no-body = la máquina no tiene ninguna parte del tipo { $kind }
jobfile-order = el valor menor de { $key }, { $low }, no está por debajo del mayor, { $high }
jobfile-no-attachment = la máquina no tiene ningún accesorio
jobfile-blade-grew = la horquilla tiene ahora un espesor de { $now } y nueva tenía { $new }
jobfile-datum-mismatch = la referencia «{ $datum }» no corresponde a { $attachment }: con gancho se mide hasta el gancho; con horquillas, hasta el talón, la punta o el centro de carga; con ambos, también hasta el bulón de la cabeza
jobfile-chart-no-such-support = la tabla es para trabajar { $support }, y la máquina no tiene con qué
jobfile-chart-twice = hay dos tablas para { $attachment } { $support }, y nada las distingue
jobfile-no-charts = { $machine } no tiene tabla de cargas, así que no se puede aprobar ningún izado con ella
jobfile-line-nowhere = no se conoce ni el trazado de { $line }: faltan sus vanos
jobfile-span-no-length = los dos extremos de este vano son el mismo punto
jobfile-sag-too-large = la flecha { $sag } es mayor que la mitad de la longitud del vano, { $length }
jobfile-centre-outside-load = el centro de la carga está a { $centre } { $axis }, fuera de la carga; puede ir de { $low } a { $high }
jobfile-axis-ahead = por delante de la cara de las horquillas
jobfile-axis-left = a la izquierda del medio
jobfile-axis-up = sobre su cara inferior
jobfile-no-uncertainty = una masa «{ $certainty }» no tiene incertidumbre habitual; hay que indicarla
jobfile-ticket-incomplete = una carga con nota de entrega necesita { $key }: el número de la nota y lo que la nota no incluye
jobfile-landing-far = el emplazamiento en { $east } este, { $north } norte está a { $distance } de su lugar de descarga { $landing } en { $landing_east } este, { $landing_north } norte
jobfile-line-far = la línea { $line } está a { $distance } de todos los emplazamientos: no atañe a este trabajo, o sus coordenadas son de otro sistema
jobfile-hint-one-system = Indique emplazamientos, lugares de descarga, líneas y terreno en un mismo sistema de coordenadas.
jobfile-hint-either = Escriba "{ $first }" o "{ $second }", según lo que se quiera decir.
jobfile-stop-gust-zero = con una ráfaga de parada de cero, el trabajo no empieza nunca
jobfile-strength-misplaced = solo se puede indicar una resistencia para el asunto ground-strength
jobfile-wind-factor-assumed = no se ha indicado wind_factor, con cuánta fuerza toma el viento { $load }; se supone { $factor }, como para planchas planas (de memoria, sin consultar)
jobfile-no-ground = no hay archivo de terreno, así que no se conoce la pendiente en ningún emplazamiento
jobfile-bad-date = «{ $date }» no es una fecha escrita como año-mes-día
jobfile-value-empty = aquí no hay nada escrito; se necesita { $dimension }
jobfile-value-no-number = «{ $value }» no empieza con un número; se necesita { $dimension }
jobfile-value-bad-number = «{ $value }» no se puede leer como un solo número
jobfile-value-not-finite = «{ $value }» no es un número que se pueda medir
jobfile-value-ambiguous-separator = «{ $value }» se puede leer de dos maneras: { $first } o { $second }
jobfile-value-missing-unit = «{ $value }» no lleva unidad; se necesita { $dimension }
jobfile-value-unknown-unit = la unidad «{ $unit }» no se conoce; se necesita { $dimension }
jobfile-value-ambiguous-unit = «{ $unit }» no significa lo mismo para todos; escriba una de estas: { $choices }
jobfile-value-wrong-dimension = «{ $value }» es { $found }; se necesita { $expected }
jobfile-value-ambiguous-ratio = «{ $value }» puede ser altura a base o base a altura
jobfile-value-too-steep = «{ $value }» es tan empinado como una pared
jobfile-value-bad-parts = las partes de «{ $value }» no van de mayor a menor
jobfile-value-trailing = «{ $rest }» sobra detrás del valor en «{ $value }»
jobfile-chart-bad-outline = el contorno de la zona { $zone } no tiene área o se cruza a sí mismo
jobfile-chart-overlap = las zonas { $zone } y { $other } tienen capacidades distintas y comparten { $area }, cerca del alcance { $reach } y la altura { $height }
jobfile-hint-overlap = Quite la superficie común a la zona a la que no pertenece en la tabla.
jobfile-chart-above-plate = la zona { $zone } dice { $capacity }, más de los { $most } que la máquina o su accesorio llevan como máximo
jobfile-hint-above-plate = Compare la tabla con las placas de la máquina y del accesorio.
jobfile-chart-hole = las zonas dejan un hueco de { $area } cerca del alcance { $reach } y la altura { $height } que no está declarado «no permitido»
jobfile-hint-not-permitted = Dibuje el contorno del hueco en not_permitted, o asígnelo a una zona.
jobfile-chart-pieces = las zonas no se tocan: forman { $count } trozos
jobfile-chart-out-of-reach = la pluma no llega a ninguna parte de la zona { $zone }: su referencia, su unidad o su contorno no pueden ser correctos

## Cálculo: presión sobre el terreno (ground)

working-tyre-patch = Superficie de contacto del neumático, según la fuerza y la presión de inflado
working-tyre-pressure = Presión de contacto del neumático, tomada igual a su presión de inflado
working-pad-pressure = Presión bajo el plato

## Bordes, muros junto a cargas, cosas enterradas (ground)

working-stress-elastic = Tensión en el terreno bajo todos los apoyos, semiespacio elástico
working-stress-spread = Tensión en el terreno bajo todos los apoyos, reparto 2 hacia abajo por 1 hacia los lados
working-lateral-resultant = Fuerza lateral sobre el muro, solo de las cargas
working-lateral-height = Altura de esa fuerza sobre la base
working-planning-line = Distancia mínima a la coronación según la línea desde el pie
working-wedge = Coeficiente de seguridad de la peor cuña plana
working-slip-circle = Coeficiente de seguridad del peor círculo de deslizamiento
ground-fault-no-number = { $what } no es un número. Escriba un número con su unidad.
ground-fault-range = { $what } vale { $got }; se esperaba de { $least } a { $most }. Compruebe valor y unidad.
ground-fault-unit-weight = El peso específico es { $got }, que ningún suelo tiene; quizá se quiso decir { $meant }. Indíquelo con su unidad.
ground-fault-order = { $lesser } debe ser menor que { $greater }. Compruebe ambos.
ground-fault-missing = Falta { $what }. Indíquelo.
ground-fault-no-name = { $what } solo vale a nombre de una persona competente. Indique quién responde.
ground-name-edge-depth = profundidad del desnivel
ground-name-half-depth = mitad de la profundidad del desnivel
ground-name-edge-batter = distancia horizontal del pie a la coronación
ground-name-edge-ratio = pendiente de la línea de planificación
ground-name-layer = estrato
ground-name-layer-top = techo de un estrato
ground-name-layer-bottom = base de un estrato
ground-name-unit-weight = peso específico
ground-name-cohesion = cohesión
ground-name-friction = ángulo de rozamiento
ground-name-firm-base = profundidad de la base firme
ground-name-crack = profundidad de la grieta de tracción
ground-name-crack-water = profundidad del agua en la grieta
ground-name-pore-ratio = coeficiente de presión intersticial
ground-name-water-table = nivel freático
ground-name-ground-surface = superficie del terreno
ground-name-load-place = posición de una carga
ground-name-load-near = borde cercano de una carga
ground-name-load-far = borde lejano de una carga
ground-name-load-pressure = presión de una carga
ground-name-contact-size = tamaño de un apoyo
ground-name-contact-force = fuerza de un apoyo
ground-name-hours = horas que el talud lleva abierto
working-set-back = Distancia mínima a la coronación, por regla y por equilibrio
ground-name-outline-corner = vértice del contorno
ground-name-outline-edge = borde de un lado del contorno
ground-name-crown = posición de la clave
ground-name-half-breadth = mitad del ancho de lo enterrado
ground-name-cover = recubrimiento
ground-name-allowable = tensión que admite el propietario
ground-name-pipe-radius = radio del tubo
ground-name-pipe-wall = rigidez a flexión de la pared del tubo
ground-name-soil-modulus = módulo de reacción del suelo
ground-name-bedding = coeficiente de apoyo
ground-name-lag = coeficiente de deformación diferida
ground-name-deflection = deformación que admite el propietario
ground-name-heading = dirección de un apoyo
working-impact-cover = Impacto sobre lo enterrado, según su recubrimiento
working-crown-stress = Tensión en la clave, de ruedas y recubrimiento
working-iowa = Deformación del tubo flexible, como parte de su diámetro
## Lo que soporta un lugar de descarga (ground)
## Lo que soporta un lugar de descarga (ground)

landing-out-of-range = { $key }: { $got } está fuera de { $low } a { $high }
landing-unit-slip = Parece un error de unidad: { $meant } estaría dentro del intervalo.
landing-ends-before-it-begins = Empieza en { $from } y acaba en { $to }: debe acabar más allá de su comienzo
landing-beam-turns-over = La viga no tiene en qué apoyarse: indique un vano, o empotre el extremo del que sale el voladizo
landing-no-such-support = No existe ese apoyo: la viga tiene { $count }, contados desde 0 por la izquierda
working-timber-bending = Resistencia a flexión de la madera con sus coeficientes
working-member-moment = Momento flector que soporta la pieza
working-member-shear = Cortante que soporta la pieza
working-board-share = Lo que recibe un tablón del palet
working-joist-share = Lo que recibe una vigueta del palet
working-concrete-age = Edad del hormigón que cuenta a su temperatura, en días
working-concrete-beta = Parte de la resistencia a 28 días
working-concrete-strength = Resistencia del hormigón a su edad
working-slab-block = Profundidad de la zona comprimida del forjado
working-slab-moment = Momento flector que soporta un metro de forjado
working-slab-shear = Tensión tangencial que soporta el forjado sin armadura de cortante
working-slab-punching = Tensión tangencial alrededor de un apoyo del palet
working-bay-total = Lo que hay en el lugar de descarga, con la carga mientras se deposita
landing-rating-needs-name = Una capacidad solo cuenta con el nombre de quien la declara
landing-props-need-name = Los puntales solo cuentan con el nombre del técnico que los proyectó
landing-not-on-it = Queda al lado del lugar de descarga, no encima: las posiciones se cuentan desde el borde por el que entra la carga y desde la esquina derecha
landing-part-board-moment = flexión de un tablón
landing-part-board-shear = cortante de un tablón
landing-part-board-sag = flecha de un tablón
landing-part-joist-moment = flexión de una vigueta
landing-part-joist-shear = cortante de una vigueta
landing-part-joist-sag = flecha de una vigueta
landing-part-slab-sagging = flexión del forjado entre apoyos, por metro
landing-part-slab-hogging = flexión del forjado sobre apoyos, por metro
landing-part-slab-shear = cortante del forjado junto a un apoyo, por metro
landing-part-foot-punching = punzonamiento del forjado bajo un apoyo del palet
landing-part-pallet-punching = punzonamiento del forjado bajo el palet entero
landing-part-foot-crushing = hormigón en el borde de un apoyo del palet
landing-part-rated-total = carga total declarada, con lo que ya hay y las personas
landing-part-rated-pallet = carga declarada por palet
landing-part-rated-even = carga uniforme declarada, bajo el palet
landing-part-rated-even-total = carga uniforme declarada, en toda la superficie
landing-part-rated-point = carga puntual declarada, bajo un apoyo
landing-part-rated-push = empuje de las horquillas
landing-part-propped = carga que permite el técnico de los puntales
landing-part-feet = lo que carga un solo pie, sin que se declaren los pies de la carga
landing-part-beside = lo que hay allí y las personas, como la carga uniforme contada junto al palet
working-beside = Lo que hay allí y las personas como carga uniforme, frente a la contada junto al palet
working-slab-sagging = Flexión de un metro de forjado, palet en su peor posición
working-slab-hogging = Flexión de un metro de forjado sobre un apoyo, palet en su peor posición
working-slab-wide-shear = Cortante de un metro de forjado junto a un apoyo, todo el palet en su ancho
working-pallet-punching = Punzonamiento del palet entero
working-foot-crushing = Cortante en el borde de un pie
working-board-moment = Flexión de un tablón, carga en su peor posición
working-board-shear = Cortante de un tablón, carga en su peor posición
working-joist-moment = Flexión de una vigueta, carga en su peor posición
working-joist-shear = Cortante de una vigueta, carga en su peor posición

## Cálculo: líneas aéreas (planning)

working-line-legal = Distancia legal para la tensión
working-line-required = Distancia exigida: la legal o la propia de la obra, más error de medición, balanceo del conductor, flexión de la pluma, inclinación de la punta por el error de medición y el asiento bajo las ruedas, margen del operador y error del emplazamiento
working-line-nearest = Distancia menor de máquina, pluma y carga en todo el movimiento, como mínimo (demostrado)

## Fallos en archivos de levantamiento topográfico (survey)

survey-empty = el archivo está vacío
survey-not-the-kind = el nombre termina en { $extension }, pero el contenido es de otro tipo
survey-kind-unknown = el archivo no es de ningún tipo que se lea aquí (LAS, LAZ, GeoTIFF, LandXML, cotas en CSV)
survey-model = es un modelo de edificio o un dibujo en un formato que aquí no se lee (IFC, glTF, DWG)
survey-picture = es una imagen: nada en ella dice dónde está sobre el terreno
survey-no-ground-in-plan = el archivo contiene formas en planta y ninguna cota del terreno
survey-nothing-known = ningún lugar del archivo tiene una cota conocida
survey-replaces-another = ya había en el sitio un archivo llamado { $file } con otro contenido: se sustituyó, con lo que se había encontrado sobre él
survey-site-system-unknown = lo que ya está en el sitio no indica ningún sistema de coordenadas, así que no puede llamarse { $site }
survey-systems-differ = lo que está en el sitio está en { $first }, esto está en { $second }
survey-do-other-name = Si quiere los dos, deles nombres distintos y vuelva a traerlos.
survey-do-bring-in-together = Indique --site-crs con los primeros archivos que traiga: los demás se convierten entonces.
survey-accuracy-not-stated = nadie ha dicho la precisión de estas cotas
survey-stored-site = es un sitio guardado, con terreno, cosas y líneas juntos
survey-not-a-site = el archivo no es un sitio guardado
survey-site-version = el sitio se guardó en la forma { $found }; este programa lee la forma { $known }
survey-site-cut = el sitio guardado termina antes de tiempo
survey-site-damaged = el sitio guardado no está como se escribió
survey-not-a-cloud = aquí hace falta una nube de puntos (LAS o LAZ), y este archivo no lo es
survey-tiles-of-grids = varias mallas o superficies LandXML no se pueden unir en una sola
survey-header-cut = el archivo termina dentro de su cabecera
survey-truncated = el archivo está cortado: debería tener al menos { $needed } bytes y tiene { $found }
survey-too-few-bytes = el archivo declara { $points } puntos o celdas, más de lo que cabe en sus { $bytes } bytes: está cortado, o su cabecera es errónea
survey-header-absurd = la cabecera contiene valores imposibles
survey-record-count-absurd = la cabecera declara { $declared } registros descriptivos, pero solo hay sitio para { $room } bytes de ellos
survey-records-missing = la cabecera declara { $declared } registros descriptivos y hay { $found }; los puntos se han leído de todos modos, pero puede faltar el sistema de coordenadas
survey-point-format = el formato de punto { $format } con { $length } bytes por punto no es ninguno de los formatos 0 a 10
survey-compression-unknown = no se describe cómo están comprimidos los puntos, o se describe de un modo que aquí no se conoce
survey-no-chunk-table = los puntos comprimidos no tienen la tabla de sus bloques: los escribió un compresor antiguo, o se interrumpió la escritura
survey-chunks-wrong = la tabla de bloques comprimidos no concuerda con el archivo
survey-chunk-points-wrong = la cabecera declara { $declared } puntos y los bloques comprimidos { $found }
survey-decode-failed = el contenido no se puede descodificar: { $detail }
survey-bounds-differ = hay puntos a { $by } fuera del recuadro que declara la cabecera: el contenido está dañado, o la cabecera es errónea
survey-not-on-earth = coordenadas como { $east }, { $north } no están en ningún mapa de la Tierra
survey-no-points = el archivo no contiene puntos
survey-too-many-points = { $points } puntos son más de los { $most } que se admiten de una vez
survey-too-few-points = { $points ->
    [one] hay { $points } punto, o todos están en una recta: una superficie necesita tres que no lo estén
   *[other] hay { $points } puntos, o todos están en una recta: una superficie necesita tres que no lo estén
}
survey-unclassified = ninguno de los { $points } puntos está clasificado como terreno (clase 2); clases encontradas: { $classes }
survey-window-empty = no hay terreno en la ventana; el archivo abarca este de { $west } a { $east } y norte de { $south } a { $north }
survey-cloud-thin = solo hay { $density } puntos de terreno por metro cuadrado; entre ellos no se sabe nada, así que mucho terreno queda sin conocer, y puede faltar algo delgado por encima: demasiado pocos para comprobar distancias libres
survey-ground-filtered = nadie ha clasificado este terreno: un filtro ha tomado por terreno { $ground } de { $points } puntos ({ $share } %); puede haber entre ellos muretes, acopios y matorral denso, y puede faltar terreno empinado
survey-filter-absurd = un parámetro del filtro de terreno no es un número o está fuera de su intervalo
survey-ground-doubtful = { $points ->
    [one] { $points } punto de terreno
   *[other] al menos { $points } puntos de terreno
 } cerca de este { $east }, norte { $north }, con cotas de { $low } a { $high } (unos { $area } m²), { $points ->
    [one] sobresale
   *[other] sobresalen
 } con un escalón por encima de todo lo que { $points ->
    [one] lo
   *[other] los
 } rodea, como una cubierta, un acopio o un vehículo; ahí no se da por conocido ningún terreno
survey-ground-doubtful-more = { $count ->
    [one] { $count } zona más
   *[other] { $count } zonas más
 } de puntos de terreno { $count ->
    [one] sobresale
   *[other] sobresalen
 } por encima de todo lo que hay alrededor; ahí no se da por conocido ningún terreno
survey-too-many-cells = celdas de { $cell } sobre { $east } por { $north } dan { $cells } celdas, más de las { $most } que se hacen de una vez
survey-cell-size = no se puede hacer una celda de { $cell } m
survey-no-ground-under = el terreno indicado no tiene cota en ningún lugar cerca de estos puntos
survey-lone-points = { $count ->
    [one] { $count } punto está solo
   *[other] { $count } puntos están solos
 } por encima del terreno y no { $count ->
    [one] pertenece
   *[other] pertenecen
 } a nada; se han dejado fuera
survey-conductors-likely = { $count ->
    [one] en { $count } lugar hay puntos que cuelgan
   *[other] en { $count } lugares hay puntos que cuelgan
 } como el conductor de una línea aérea; es una sugerencia, y puede haber una línea que no se sugiere
survey-option-absurd = una opción no es un número o está fuera de su intervalo
survey-outline-absurd = el contorno tiene menos de tres vértices, o un vértice que no es un número
survey-heights-implausible = { $count ->
    [one] { $count } punto de terreno tiene una cota que ningún terreno puede tener, y se ha dejado fuera
   *[other] { $count } puntos de terreno tienen cotas que ningún terreno puede tener, y se han dejado fuera
}
survey-units-unknown = ni el archivo ni el trabajo dicen en qué unidad de longitud están los números
survey-units-unknown-crs = el archivo nombra el sistema de coordenadas { $crs } pero no su unidad de longitud, y el trabajo no indica ninguna
survey-units-contradict = el archivo se contradice sobre su unidad de longitud: { $found }
survey-units-differ = el archivo da este y norte en { $plan } y cotas en { $heights }; a menudo una de las dos es errónea
survey-unit-not-known = la unidad de longitud { $found } no es ninguna de las que se leen: metro, centímetro, milímetro, pie, pie topográfico de EE. UU., pulgada
survey-units-overridden = el archivo dice que sus coordenadas este y norte están en { $found }; se han tomado como { $stated }, según indica el trabajo
survey-height-units-overridden = el archivo dice que sus cotas están en { $found }; se han tomado como { $stated }, según indica el trabajo
survey-height-units-assumed = el archivo no dice en qué unidad están sus cotas; se han tomado como { $unit }, igual que sus coordenadas este
survey-degrees = las coordenadas son longitud y latitud ({ $crs }, indicado en { $place }), no longitudes medidas
survey-looks-like-degrees = nada nombra un sistema de coordenadas, y números como { $east }, { $north } son longitud y latitud geográficas, no medidas
survey-crs-impossible = el archivo dice ({ $crs }, en { $place }) que sus números son longitud y latitud, pero llegan a { $east }, { $north }, y eso no puede ser
survey-crs-replaced = el archivo dice que está en { $found }; se tomó como { $stated }, como indica el trabajo
survey-site-crs-unknown = el trabajo dice que este archivo está en { $crs }, pero no en qué sistema de coordenadas está la obra
survey-file-crs-unknown = la obra está en { $site }, y ni el archivo ni el trabajo dicen en qué sistema de coordenadas está el archivo
survey-file-crs-not-known = la obra está en { $site }; el archivo llama a su sistema de coordenadas «{ $crs }», y no se puede saber con certeza cuál es
survey-crs-contradicts = el archivo nombra dos sistemas de coordenadas: { $first } y { $second }
survey-site-in-degrees = la obra no puede estar en { $crs }: longitud y latitud no son medidas de longitud
survey-crs-not-converted = { $crs } no es ninguno de los sistemas de coordenadas que se pueden convertir aquí
survey-no-datum-shift = { $from } y { $to } están en datums distintos, y no se conoce ninguna transformación entre ellos sin un archivo de rejilla
survey-no-conversion = { $from } no se puede convertir a { $to }
survey-datums-differ = los datums son distintos ({ $from }, { $to }): el plano se desplazó con transformaciones publicadas, válidas a unos { $accuracy }, y las alturas no se transformaron
survey-datums-differ-unknown = los datums son distintos ({ $from }, { $to }): el plano se desplazó con transformaciones publicadas cuya exactitud no se conoce, y las alturas no se transformaron
survey-datums-taken-as-one = los datums tienen dos nombres ({ $from }, { $to }) y la misma transformación publicada: nada se desplazó de uno a otro, lo que es válido a unos { $accuracy }, y las alturas no se transformaron
survey-datums-taken-as-one-unknown = los datums tienen dos nombres ({ $from }, { $to }) y la misma transformación publicada: nada se desplazó de uno a otro, no se conoce la exactitud de esto, y las alturas no se transformaron
survey-latitude-second = en { $crs } la longitud va primero y la latitud después, pero { $first }, { $second } parecen latitud y longitud
survey-not-degrees = el archivo está en { $crs }, pero sus números llegan a { $first }, { $second }, que no son longitud y latitud
survey-axes-swapped = { $first }, { $second } quedan fuera de la zona de { $file } o { $site }, y dentro si se intercambian: el norte está antes que el este
survey-outside-area = { $first }, { $second } quedan muy lejos de la zona en que se usa { $file } o { $site }
survey-height-units-unknown = ni el archivo ni el trabajo dicen en qué unidad están las alturas; longitud y latitud no dan ninguna pista
survey-local-grid = el giro, la escala o el desplazamiento de la cuadrícula de la obra no es un número utilizable
survey-tiles-differ = las partes están en sistemas de coordenadas distintos: { $first } y { $second }
survey-points-without-place = { $count } puntos no tienen lugar en el sistema de coordenadas del sitio y se omitieron
survey-grid-to-triangles = la malla está en otro sistema de coordenadas: los centros de sus celdas pasaron a ser puntos unidos en triángulos; no se remuestreó nada
survey-do-state-site-crs = Indique en el trabajo el sistema de coordenadas del sitio (un código EPSG), o ninguno para el archivo.
survey-do-state-file-crs = Indique en el trabajo el sistema de coordenadas de este archivo (un código EPSG), tras preguntar a quien lo hizo.
survey-do-plane-site-crs = Indique un sistema plano para la obra, como UTM o la cuadrícula nacional.
survey-do-convert-outside = Haga convertir el archivo en un programa de topografía y compruebe un punto conocido en el resultado.
survey-do-check-datum = Compruebe un punto conocido en el resultado; si importan los decímetros, haga convertir el archivo con el archivo de rejilla del país.
survey-do-east-first = Expórtelo con el este (longitud) primero y el norte (latitud) después.
survey-do-check-systems = Compruebe los sistemas de coordenadas de archivo y obra, y las unidades.
survey-do-local-grid = Calcule de nuevo la cuadrícula de la obra a partir de puntos conocidos.
survey-do-one-site-crs = Indique en el trabajo el sistema de coordenadas del sitio, para que todas las partes se lleven a él.
survey-shape-without-place = elemento { $place }: un vértice no tiene lugar en el sistema de coordenadas del sitio
survey-shape-unreadable = elemento { $place }: no es de ningún tipo conocido, o sus coordenadas no son números
survey-line-without-length = elemento { $place }: una línea sin longitud; se omitió
survey-ring-too-short = elemento { $place }: un contorno de menos de tres vértices; se omitió
survey-hole-too-short = elemento { $place }: un hueco de menos de tres vértices; se omitió
survey-area-of-nothing = elemento { $place }: un contorno que no encierra nada; se omitió
survey-area-crosses-itself = elemento { $place }: el contorno se cruza o se toca a sí mismo; se tomó todo lo que encierra
survey-points-repeated = { $count } puntos estaban repetidos seguidos y se tomaron una vez
survey-rings-unclosed = { $count } contornos no estaban cerrados; se cerraron del último vértice al primero
survey-more-bad-shapes = otros { $count } elementos se repararon, se omitieron o no se pudieron leer
survey-without-shape = { $count } elementos no tienen ninguna geometría y se omitieron
survey-multipatch-left-out = { $count } superficies en el espacio (MultiPatch) se omitieron; no se leen
survey-no-shapes = no hay ningún elemento utilizable en el archivo
survey-too-many-bytes = { $found } bytes son más de los { $most } que se admiten
survey-json-broken = el texto no es JSON ({ $detail })
survey-not-geojson = es JSON, pero no contiene elementos ni una geometría
survey-not-a-plan = aquí hacen falta elementos en planta, y este archivo no contiene ninguno
survey-record-absurd = el registro { $place } declara { $length } bytes, y quedan { $room }
survey-table-missing = no hay tabla (.dbf) junto a los elementos, así que faltan nombres y atributos
survey-table-differs = hay { $shapes } elementos, pero { $rows } filas en la tabla; no se sabe cuál corresponde a cuál
survey-table-cut = la tabla (.dbf) termina dentro de su cabecera
survey-table-absurd = la cabecera de la tabla (.dbf) contiene tamaños imposibles
survey-table-words = { $count } textos de la tabla contienen letras de una página de códigos desconocida; esas letras están marcadas
survey-shp-missing = no hay ningún .shp entre los archivos del Shapefile
survey-parts-mixed = hay dos archivos .{ $ending }, o uno que pertenece a otro Shapefile
survey-do-mend-shape = Mire el elemento en el programa que lo dibujó y corríjalo allí.
survey-do-give-plan = Dé GeoJSON, un Shapefile o DXF.
survey-do-give-parts = Dé juntos .shp, .dbf, .prj y .cpg de una misma exportación.
survey-do-give-code-page = Expórtelo en UTF-8, con un archivo .cpg al lado.
survey-rotated = la malla está girada o inclinada respecto al norte
survey-mirrored = las columnas de la malla van hacia el oeste: está reflejada
survey-tie-points-only = la malla está situada solo con puntos de control sueltos
survey-no-georeference = la imagen no dice en qué lugar del terreno está
survey-not-heights = el archivo contiene colores o varias bandas, no una sola banda de cotas
survey-no-heights = ninguna celda tiene una cota que un terreno pueda tener
survey-cells-implausible = { $count ->
    [one] { $count } celda contiene una cota que ningún terreno puede tener, como { $value }, y el archivo no la declara «sin datos»; se ha tomado como desconocida
   *[other] { $count } celdas contienen cotas que ningún terreno puede tener, como { $value }, y el archivo no las declara «sin datos»; se han tomado como desconocidas
}
survey-cells-coarse = celdas de { $cell } son demasiado grandes para el terreno bajo cuatro ruedas: los baches y bordes que hay entre ellas no aparecen
survey-heights-whole = todas las cotas son números enteros, así que las pendientes van a saltos
survey-text-utf16 = el texto está en UTF-16
survey-column-missing = no hay columna para { $column }; la primera línea tiene: { $found }
survey-column-twice = dos columnas pueden significar lo mismo, o una se usa dos veces: { $first } y { $second }
survey-column-unit = la columna { $column } está en { $unit }, que no es ninguna de las que se leen
survey-columns-unknown = no hay línea de títulos, y hay muy pocas columnas para saber cuál es este, norte y cota
survey-order-assumed = no hay línea de títulos; las columnas se han leído como punto, norte, este, cota. El otro orden reflejaría la obra como en un espejo
survey-column-east = la coordenada este
survey-column-north = la coordenada norte
survey-column-height = la cota
survey-row-field-empty = falta { $column } (columna { $place }) en esta fila
survey-row-not-a-number = el valor «{ $value }» de { $column } no es un número
survey-row-implausible = un punto aquí, o con la cota { $height }, no puede ser terreno
survey-more-bad-rows = { $count ->
    [one] hay { $count } fila más con fallos
   *[other] hay { $count } filas más con fallos
}
survey-name-twice = el nombre de punto { $name } ya está en la línea { $first }
survey-two-heights = hay dos cotas en un mismo lugar: { $one } en la línea { $first } y { $other } aquí
survey-rows-repeated = { $count ->
    [one] { $count } fila repite un punto y se ha dejado fuera
   *[other] { $count } filas repiten un punto y se han dejado fuera
}
survey-do-copy-again = Copie o descargue el archivo de nuevo; está dañado o incompleto.
survey-do-export-again = Exporte el archivo de nuevo desde el programa de topografía.
survey-do-export-plain = Expórtelo como LAS sin comprimir, o comprímalo de nuevo con un programa actual.
survey-do-compress-again = Descomprímalo a LAS y comprímalo de nuevo con un programa actual.
survey-do-state-accuracy = Indique el mayor error de cota que cabe esperar bajo una rueda, según el topógrafo: --accuracy "3 cm".
survey-do-site-from = Tómelo entero: site_from = "plot.site" al comienzo del trabajo.
survey-do-give-site = Indique un sitio guardado con «counterpoise survey».
survey-do-bring-in-again = Vuelva a traer los archivos del levantamiento con esta versión.
survey-do-outline-model = Exporte el contorno del edificio como DXF o GeoJSON con su altura, o escriba sus esquinas en el trabajo.
survey-do-give-ground = Indíquelo como plano de cosas, y el terreno como LAS, LAZ, GeoTIFF, LandXML o cotas CSV.
survey-do-give-known-kind = Entregue LAS, LAZ, GeoTIFF, LandXML o cotas en CSV.
survey-do-give-grids-apart = Ponga cada archivo como una fuente de terreno aparte.
survey-do-give-heights = Entregue las cotas mismas (una sola banda), no una imagen en color ni una foto aérea.
survey-do-check-crs = Compruebe dónde se indica el sistema de coordenadas del archivo; expórtelo de nuevo si falta.
survey-do-cut-out = Recorte el archivo a la obra en el programa de topografía.
survey-do-state-window = Indique en el trabajo una ventana (un rectángulo alrededor de la obra) para este archivo.
survey-do-check-window = Compare la ventana con las coordenadas del archivo; lo normal es que el sistema de coordenadas o la unidad sean otros.
survey-do-state-units = Indique en el trabajo las unidades de este archivo (metro, centímetro, milímetro, pie, pie topográfico de EE. UU. o pulgada), después de preguntar a quien lo hizo. En la línea de órdenes: --file-units.
survey-do-state-both-units = Indique en el trabajo las unidades de planta y de cotas, después de preguntar a quien hizo el archivo.
survey-do-check-units = Asegúrese de las unidades: mida en el resultado una longitud y una altura conocidas.
survey-do-state-crs-and-units = Indique en el trabajo el sistema de coordenadas y las unidades de este archivo, después de preguntar a quien lo hizo; lo que dice el archivo es erróneo.
survey-do-export-metres = Expórtelo en metros.
survey-do-reproject = Indique el sistema de coordenadas del sitio, para que se convierta (uno plano como EPSG:25832; en la línea de órdenes: --site-crs), o proyéctelo antes.
survey-do-classify = Haga clasificar el terreno (clase 2) en el programa de topografía, o entregue cotas o una malla del terreno. Si no se puede, pida el filtro de terreno; nunca se usa sin pedirlo.
survey-do-check-filtered = Compare este terreno con la obra antes de colocar nada sobre él: cotas en los emplazamientos y caminos. Mejor aún, haga clasificar el terreno.
survey-do-filter = Celdas de 0,1 a 10 m, pendiente de 0 a 5, escalón menor de 0,01 a 10 m y no superior al mayor (hasta 100 m), lo más ancho de una celda a 500 m, espesor de 0 a 2 m.
survey-do-look-there = Mire ahí. Si es terreno al que llega una máquina, mida cotas ahí.
survey-do-window-or-cell = Indique una ventana alrededor de la obra, o celdas mayores.
survey-do-state-cell = Indique una celda de 0,01 a 1000 m.
survey-do-give-ground-there = Entregue el terreno del mismo lugar, en el mismo sistema de coordenadas.
survey-do-confirm-line = Mire hacia arriba en la obra, y confirme o descarte cada uno con el propietario de la línea.
survey-do-state-option = Indique opciones dentro de los intervalos de su descripción.
survey-do-give-outline = Indique al menos tres vértices, en orden alrededor del edificio.
survey-do-check-heights = Revise las cotas: unidades, números de «sin datos», puntos erróneos.
survey-do-declare-nodata = Declare este número como «sin datos» al exportar, y compruebe que no se ha perdido ninguna cota verdadera.
survey-do-denser = Mida con más puntos los emplazamientos y caminos, o tome cotas allí.
survey-do-finer = Consiga un modelo del terreno más fino, o tome cotas donde la máquina se coloca y circula.
survey-do-more-points = Indique al menos tres puntos que no estén en una recta.
survey-do-warp = Remuestree la malla en filas y columnas según este y norte.
survey-do-georeference = Expórtelo con su georreferencia (etiquetas GeoTIFF); no se lee un archivo de georreferencia aparte.
survey-do-save-utf8 = Guarde el texto en UTF-8.
survey-do-state-columns = Añada una línea de títulos (punto, este, norte, cota), o indique las columnas en el trabajo.
survey-do-mend-row = Corrija o borre la fila.
survey-xml-encoding-unknown = el archivo dice que su texto está codificado como { $encoding }, que aquí no se conoce
survey-xml-encoding-wrong = los bytes del archivo no son texto en { $encoding }, como dice o como es habitual
survey-xml-broken = el archivo no es XML bien formado: { $detail }
survey-xml-root = el archivo debería contener un solo elemento { $expected }; aquí está { $found }
survey-xml-cut = el archivo termina dentro del elemento { $element }
survey-xml-entity = el archivo usa algo que define él mismo ({ $name }); tales entidades pueden crecer sin límite y no se leen
survey-xml-deep = hay elementos anidados a más de { $most } niveles
survey-xml-attributes = un elemento tiene más de { $most } atributos
survey-numbers-wrong = { $element } necesita { $needed } números por punto (norte, este, cota); hay: { $found }
survey-face-wrong = una cara necesita los identificadores de tres o cuatro puntos; hay: { $found }
survey-face-point-missing = la cara nombra el punto { $id }, que no está en la superficie
survey-point-id-twice = el identificador de punto { $id } ya está en la línea { $first }, para otro lugar
survey-reference-unknown = no hay ningún punto de levantamiento llamado { $name }
survey-reference-unclear = varios puntos de levantamiento en lugares distintos se llaman { $name }
survey-more-problems = { $count ->
    [one] { $count } fallo más como estos
   *[other] { $count } fallos más como estos
}
survey-no-surface = el archivo no contiene ninguna superficie con puntos
survey-no-surface-but-points = { $points ->
    [one] el archivo no contiene ninguna superficie, solo { $points } punto de levantamiento
   *[other] el archivo no contiene ninguna superficie, solo { $points } puntos de levantamiento
}
survey-surfaces-several = el archivo contiene { $count } superficies, y el trabajo no dice cuál de ellas es el terreno
survey-surface-not-there = el archivo no tiene ninguna superficie llamada «{ $name }»
survey-surface-name-twice = { $count } superficies del archivo se llaman «{ $name }»
survey-surface-offered = superficie que se puede elegir: «{ $name }», { $points } puntos, cotas de { $low } a { $high }, { $area } en planta
survey-surface-empty = los { $points } puntos y las caras de la superficie «{ $name }» no cubren ningún terreno
survey-surfaces-apart = las superficies «{ $first }» y «{ $second }» están una sobre otra y sus cotas distan al menos { $gap }: una de ellas no puede ser correcta
survey-plan-area-differs = el archivo indica un área en planta de { $declared }, y sus triángulos cubren { $computed }
survey-surface-area-differs = el archivo indica una superficie de { $declared }, y sus triángulos miden { $computed }
survey-faces-invisible = { $count ->
    [one] { $count } cara está marcada como invisible y se ha dejado fuera; allí no se conoce el terreno
   *[other] { $count } caras están marcadas como invisibles y se han dejado fuera; allí no se conoce el terreno
}
survey-faces-upright = { $count ->
    [one] { $count } cara es vertical o no tiene área, y se ha dejado fuera
   *[other] { $count } caras son verticales o no tienen área, y se han dejado fuera
}
survey-faces-repeated = { $count ->
    [one] { $count } cara repite otra, y se ha dejado fuera
   *[other] { $count } caras repiten otras, y se han dejado fuera
}
survey-faces-overlap = { $count ->
    [one] { $count } cara está sobre otra; donde difieren en más de 1 cm, no se conoce el terreno
   *[other] { $count } caras están sobre otras; donde difieren en más de 1 cm, no se conoce el terreno
}
survey-faces-overlap-uncounted = hay tantas caras en un mismo lugar que no se han contado todas las que están unas sobre otras
survey-breaklines-cross = { $count ->
    [one] { $count } tramo de línea de rotura cruza otro anterior y se ha dejado fuera; sus extremos se conservan
   *[other] { $count } tramos de líneas de rotura cruzan otros anteriores y se han dejado fuera; sus extremos se conservan
}
survey-lines-without-height = { $count ->
    [one] { $count } línea o lista de puntos sin cotas propias se ha dejado fuera
   *[other] { $count } líneas o listas de puntos sin cotas propias se han dejado fuera
}
survey-zero-heights = { $count ->
    [one] { $count } punto de levantamiento tiene la cota 0, lejos de toda otra cota del archivo; se ha tomado como sin cota
   *[other] { $count } puntos de levantamiento tienen la cota 0, lejos de toda otra cota del archivo; se han tomado como sin cota
}
survey-do-name-surface = Nombre en el trabajo la superficie que es el terreno de hoy (surface = "…"). En la línea de órdenes: --surface.
survey-do-use-survey-points = Exporte también la superficie; o, si todos los puntos se midieron sobre el terreno, dígalo en el trabajo (survey_points = true).
survey-do-export-surface = Exporte la superficie con sus puntos y caras.
survey-do-mend-at-source = Corríjalo en el programa que escribió el archivo y expórtelo de nuevo.
survey-do-check-holes = Asegúrese de que ningún emplazamiento ni camino quede en un hueco así.
survey-do-check-surface = Mire la superficie en el programa que la hizo, sobre todo en emplazamientos y caminos.
survey-not-a-drawing = no es un dibujo DXF: no empieza en él ninguna sección
survey-drawing-cut = el dibujo termina antes que sus entidades
survey-drawing-garbled = en { $count } líneas no hay código de grupo donde debería haberlo: demasiadas para seguir leyendo
survey-lines-skipped = { $count } líneas, la primera aquí, no tienen código de grupo donde debería haberlo; se han saltado
survey-drawing-no-end = el dibujo no tiene marca de final, aunque sus entidades están cerradas
survey-drawing-empty = el dibujo no tiene sección de entidades
survey-drawing-no-shapes = no se ha podido leer nada del dibujo; contiene: { $left_out }
survey-too-many-shapes = el dibujo dibuja mucho más de lo que permite su tamaño: bloques que insertan bloques, matrices muy grandes o demasiadas curvas
survey-entity-number = una coordenada de este { $kind } no es un número
survey-entity-unusable = este { $kind } de la capa { $layer } no tiene tamaño, o le falta algo; se ha omitido
survey-more-entities = se han omitido o cambiado { $count } entidades más
survey-block-missing = este { $kind } de la capa { $layer } inserta un bloque que el archivo no contiene; se ha omitido
survey-external-drawing = este { $kind } muestra otro dibujo, { $layer }, que no está en el archivo; se ha omitido
survey-blocks-deep = este { $kind } de la capa { $layer } está demasiado hondo en bloques de bloques, o su bloque se inserta a sí mismo; se ha omitido
survey-scale-zero = este { $kind } de la capa { $layer } tiene escala cero en planta; se ha omitido
survey-scale-zero-height = este { $kind } de la capa { $layer } tiene escala cero en altura; su bloque se ha leído plano
survey-outline-split = el contorno de este { $kind } de la capa { $layer } se cruza a sí mismo; se ha cortado allí en varias áreas
survey-joined-split = el contorno que forman aquí líneas sueltas se cruza a sí mismo; se ha cortado allí en varias áreas
survey-outline-crosses = el contorno de este { $kind } de la capa { $layer } se cruza a sí mismo muchas veces; solo se ha tomado su línea, no su área
survey-outline-unchecked = este { $kind } de la capa { $layer } tiene demasiados vértices para ver si su contorno se cruza; solo se ha tomado su línea, no su área
survey-outline-flat = el contorno de este { $kind } de la capa { $layer } no encierra nada; solo se ha tomado su línea
survey-left-out = el dibujo contiene más de lo que se ha leído; se ha omitido: { $left_out }
survey-layers-hidden = se han leído también capas apagadas o congeladas en el dibujo: { $layers }
survey-corners-repeated = { $count } vértices repiten el anterior y se han tomado una vez
survey-lines-joined = { $count } contornos dibujados con líneas y arcos sueltos se han unido en áreas
survey-drawing-units-unknown = ni el dibujo ni el trabajo dicen en qué unidad está dibujado; su lado mayor sería de { $mm } en milímetros, { $cm } en centímetros, { $m } en metros, { $in } en pulgadas, { $ft } en pies
survey-drawing-size = en { $unit } el lado mayor del dibujo es de { $size }, lo que no mide ninguna obra ni edificio; sería de { $mm } en milímetros, { $cm } en centímetros, { $m } en metros, { $in } en pulgadas, { $ft } en pies
survey-drawing-place = el dibujo dice que su punto ({ $east }, { $north }), en su propia unidad, está en ({ $site_east }, { $site_north }) de { $crs }; no se ha aplicado
survey-drawing-place-unreadable = el dibujo dice dónde está sobre la Tierra, de un modo que no se ha podido leer; no se ha aplicado
survey-ground-layers = el trabajo no nombra las capas que son terreno; el dibujo tiene estas, cada una con su número de formas y sus cotas: { $layers }
survey-layers-missing = el dibujo no tiene la capa { $missing }; tiene estas, cada una con su número de formas y sus cotas: { $layers }
survey-layers-flat = nada en las capas nombradas tiene una cota que pueda tener el terreno; el dibujo tiene estas capas: { $layers }
survey-heights-zero = { $count } cotas son exactamente 0 y otras no: a menudo nadie las ha dado
survey-edges-not-followed = { $lines } trozos de líneas o caras cruzan otros: la superficie pasa por sus vértices, pero no los sigue
survey-no-plan = el archivo no contiene formas en planta
survey-do-export-dxf = Exporte de nuevo el dibujo como DXF.
survey-do-check-drawing = Mire el lugar en el dibujo y compárelo con el resultado.
survey-do-check-left-out = Mire si entre lo omitido hay algo que importe; si es así, dibújelo con líneas y exporte de nuevo.
survey-do-bind-drawings = Una los otros dibujos a este antes de exportar, o délos como archivos propios.
survey-do-state-drawing-units = Mida en el dibujo una longitud conocida e indique después su unidad en el trabajo (mm, cm, m, in o ft).
survey-do-state-shift = Si el dibujo no está en las coordenadas del levantamiento, indique su desplazamiento en el trabajo.
survey-do-name-layers = Nombre en el trabajo las capas que son terreno.

## Exported files (exchange)

exchange-height-not-known = (altura desconocida)
exchange-ground-not-known = (cota del terreno desconocida)
exchange-depth-not-known = (profundidad desconocida)
exchange-direction-not-known = (dirección desconocida)
exchange-voltage-not-known = (tensión desconocida)
exchange-note-not-setting-out = Para planificar izados y para mirar. No sirve para replantear obras.
exchange-note-invented = Datos inventados, para demostración o prueba.
exchange-note-written-by = Escrito por Counterpoise { $version }.
exchange-note-epsg = Coordenadas de EPSG:{ $code }, en metros; cotas en metros.
exchange-note-site-grid = Coordenadas de la cuadrícula propia de la obra, metros al este y al norte; cotas en metros. No se indica ningún sistema de coordenadas.
exchange-note-origin = Todas las coordenadas cuentan desde { $east } este, { $north } norte, { $height } de cota; x es el este, y hacia arriba, z el sur.
exchange-note-not-known = Lo que no se conoce queda vacío. Lo que hay que dibujar de todos modos dice en su nombre que no se conoce su altura, profundidad, terreno, dirección o tensión; una altura desconocida se dibuja de { $height }.
exchange-note-ground = Terreno { $name }: exactitud { $accuracy }, levantamiento: { $date }.
exchange-note-thinned = Del terreno { $name } solo se dibuja una de cada { $step } filas y columnas, y las últimas.
exchange-note-no-place = { $name }: no se conoce dónde está, así que no se dibuja.
exchange-note-attribution = Datos: { $text }
exchange-note-plan = Plan de { $job }, { $date }: { $verdict }. Resumen criptográfico { $digest }.
exchange-stand-of = Emplazamiento: { $lift }
exchange-machine-of = { $machine } en { $lift }
exchange-way-of = De la carga al lugar de descarga: { $lift }
exchange-not-finite = { $name } tiene una coordenada o una medida que no es un número, o está más lejos que cualquier obra
exchange-not-finite-hint = Corrija esa coordenada o medida, o quite la entrada.
exchange-no-extent = { $name } no tiene extensión en planta
exchange-no-extent-hint = Un contorno necesita tres vértices que no estén en una recta, una franja dos puntos y un ancho, un círculo un radio.
exchange-columns-wrong = { $name } tiene { $found } alturas de columnas y debería tener { $wanted }
exchange-too-much = con { $name } son { $found } piezas, más de las { $most } que debería contener un archivo así
exchange-too-much-hint = Conserve una ventana menor del levantamiento, o elija otro formato.
exchange-not-its-plan = el plan tiene { $plan } izados y el trabajo { $job }: no corresponden el uno al otro

## Frases de la línea de órdenes (cli)

cli-check-inside = DENTRO DE LA TABLA
cli-check-outside = FUERA DE LA TABLA
cli-check-governs = La tabla admite { $capacity } en la zona { $zone }, con alcance { $reach }, medido como en la tabla, y altura { $height }.
cli-check-nothing = La tabla no muestra nada con alcance { $reach } y altura { $height }: ahí no se permite levantar.
cli-check-room = Seguirían dentro de la tabla: { $further } más lejos, o { $higher } más arriba, o { $heavier } más de carga.
cli-check-over = La carga pesa ahí { $over } de más.
cli-check-excess = El centro de carga está { $excess } más allá del nominal. Eso se ha sumado al alcance.
cli-check-not-made = AQUÍ NO SE HA COMPROBADO
cli-check-not-go = Esto no da el izado por apto. Es solo una lectura de la tabla; únicamente un plan hace todas las comprobaciones.
cli-no-attachment = la máquina no tiene el accesorio «{ $attachment }»; tiene: { $known }
cli-no-chart = no hay tabla de cargas para «{ $attachment }» con este apoyo, así que este izado no se permite
cli-wrong-point = la distancia va hasta un punto que este accesorio no tiene
cli-hint-wrong-point = Horquillas: mida hasta el talón o el centro de carga. Gancho: mida hasta el gancho.
cli-no-job = no hay archivo de trabajo { $file }
cli-hint-new = Cree un trabajo con: counterpoise new CARPETA
cli-cannot-read = no se puede leer { $file }: { $reason }
cli-cannot-write = no se puede escribir { $file }: { $reason }
cli-out-not-ours = la carpeta { $folder } contiene algo que no es un plan anterior, así que no se ha escrito nada en ella
cli-hint-out = Indique otra carpeta, o vacíe esta.
cli-new-written = Se ha escrito un trabajo nuevo en { $folder }. Complételo y planifíquelo con: counterpoise plan { $folder }
cli-new-not-empty = la carpeta { $folder } no está vacía
cli-written = Escrito en { $folder }.
cli-serving = El plan está en { $address } hasta que pulse Ctrl+C.
cli-cannot-serve = no se puede servir la página: { $reason }
cli-no-sheet = no se ha podido hacer la hoja del plan: { $reason }
cli-stability-tipping-load = En terreno nivelado empieza a volcar hacia delante con { $mass }.
cli-stability-no-tipping-load = En terreno nivelado ninguna carga ahí la vuelca hacia delante.
cli-stability-onset = Empieza a volcar hacia { $side } con una inclinación de { $tilt }.
cli-stability-no-onset = En esa dirección no vuelca antes de 90°.
cli-stability-tipped = En terreno nivelado, con esta carga, vuelca hacia { $side }.
cli-stability-at = Centro de carga con alcance { $reach } desde la cara delantera de los neumáticos y altura de elevación { $height }.
cli-boom-range = { $what } es { $value }; la pluma va de { $low } a { $high }
cli-no-such-support = la máquina no puede trabajar { $support }
cli-chart-capacity = La tabla admite { $capacity } en la zona { $zone }.
cli-chart-outside = La tabla no muestra nada con alcance { $reach } y altura { $height }: ahí no se permite levantar.
cli-chart-reserve = Con { $mass } la reserva es { $share }.
cli-no-load-centre = falta --load-centre: con horquillas hace falta la distancia de la cara de las horquillas al centro de la carga
cli-hint-load-centre = En un bulto uniforme es la mitad de su fondo, por ejemplo --load-centre "0,60 m".
warn-at = En { $place }: { $what }

## Claves de los archivos de trabajo y de máquina, y dónde se hallan sus valores (jobfile)

field-source = De dónde salen los valores: placa, manual, medidos o estimados
field-format = Tipo y versión de este archivo
field-machine-id = Nombre corto de la máquina, a su elección
field-machine-name = Fabricante y tipo, como en la placa
field-machine-invented = Verdadero si la máquina no existe
field-machine-serial = Número de serie, tal como está grabado
field-machine-tyres = Medida de los neumáticos, tal como está marcada en ellos
field-machine-counterweight = Contrapeso, tal como está marcado en él
field-machine-options = Lo que lleva además y cambia la masa o las tablas
field-machine-chart-number = Número y revisión de las tablas de las que se escribió el archivo
field-machine-greatest-capacity = Capacidad nominal máxima de la máquina
field-machine-body = Lo que pesa, aparte de la pluma: bastidor, eje delantero, eje trasero
field-body-kind = Quién la soporta: bastidor, eje delantero, eje trasero o superestructura giratoria
field-body-name = Qué parte es, con sus palabras
field-body-mass = Masa de esta parte
field-body-centre = Centro de gravedad: por delante del eje delantero, a la izquierda, hacia arriba
field-front-axle = Eje delantero
field-front-track = Vía: de centro a centro de los neumáticos delanteros
field-front-tyre = Neumáticos del eje delantero
field-tyre-radius = Radio del neumático, sin carga
field-tyre-width = Ancho del neumático
field-tyre-pressure = Presión del neumático, o «solid» (macizo) o «unknown» (desconocida)
field-rear-axle = Eje trasero
field-wheelbase = Distancia entre ejes: del centro del delantero al del trasero
field-rear-track = Vía: de centro a centro de los neumáticos traseros
field-rear-tyre = Neumáticos del eje trasero
field-pin-height = Altura sobre el suelo del bulón en que oscila el eje trasero
field-oscillation = Cuánto oscila el eje trasero a cada lado
field-axle-lock = Qué bloquea la oscilación del eje trasero
field-stabilizers = Estabilizadores, si los lleva
field-stabilizer-ahead = Centro de los platos por delante del eje delantero
field-stabilizer-spread = Separación: de centro a centro de los platos
field-pad-area = Superficie de un plato sobre el suelo
field-stabilizer-rear-axle = Eje trasero con los platos apoyados: libre, bloqueado o desconocido
field-outriggers = Estabilizadores de cuatro puntos que la levantan de los neumáticos
field-outriggers-front = Platos delanteros por delante del eje delantero
field-outriggers-front-spread = Separación: de centro a centro de los platos delanteros
field-outriggers-rear = Platos traseros respecto al eje delantero, negativo por detrás
field-outriggers-rear-spread = Separación: de centro a centro de los platos traseros
field-slew = Superestructura que gira con la pluma
field-slew-axis = Eje de giro, por delante del eje delantero
field-slew-range = Cuánto gira a cada lado
field-boom = Pluma telescópica
field-boom-foot = Bulón de base de la pluma: por delante del eje delantero, hacia arriba
field-boom-angle = Ángulo mínimo y máximo de la pluma
field-boom-extension = Extensión máxima de la pluma
field-head-along = Bulón de la cabeza a lo largo de la pluma, retraída, desde la base
field-head-below = Bulón de la cabeza por debajo de la línea de la pluma
field-carriage-mass = Masa del portahorquillas sin accesorio
field-carriage-centre = Centro del portahorquillas: por delante del bulón de la cabeza, hacia arriba
field-boom-depth = Canto de la pluma vista de lado
field-boom-flex = Cuánto baja o se aleja la punta con carga
field-boom-section = Tramos de la pluma, de la base hacia fuera
field-section-mass = Masa de este tramo de la pluma
field-section-centre = Su centro a lo largo de la pluma, retraída, desde la base
field-section-share = Parte de la extensión que hace este tramo
field-limits = Límites que fija el fabricante
field-carry-angle = Ángulo máximo de la pluma al circular
field-carry-extension = Extensión máxima al circular
field-wind-limit = Límite de viento del fabricante
field-wind-speed = Viento con el que se para el trabajo
field-wind-measure = Si ese viento es ráfaga o media de pronóstico
field-outline = Dimensiones exteriores
field-outline-front = Punto más adelantado respecto al eje delantero, sin accesorio
field-outline-rear = Punto más atrasado, negativo por detrás del eje delantero
field-outline-width = Ancho total
field-ground-clearance = Altura libre bajo el bastidor
field-frame-top = Parte alta del bastidor sin cabina
field-cab-from-to = Cabina, de su parte trasera a la delantera
field-cab-top = Techo de la cabina
field-wind-areas = Superficies que recibe el viento
field-wind-side = Bastidor, cabina y ruedas vistos de lado
field-wind-front = Bastidor, cabina y ruedas vistos de frente
field-wind-height = Altura del centro de esas superficies
field-forks = Horquillas para palets
field-jib = Brazo con gancho
field-attachment-id = Nombre corto del accesorio para tablas e izados
field-attachment-name = Nombre del accesorio
field-attachment-mass = Masa del accesorio
field-attachment-centre = Su centro de gravedad: por delante del bulón de la cabeza, hacia arriba
field-attachment-capacity = Carga máxima según la placa del accesorio
field-attachment-coupling = Cómo se sujeta el accesorio: acople rápido, bulones o fijado con tornillos
field-fork-heel = Talón de las horquillas: por delante del bulón de la cabeza, hacia arriba, niveladas
field-fork-spread = Separación: de centro a centro de las horquillas
field-fork-load-centre = Centro de carga nominal de las horquillas
field-fork-left = Horquilla izquierda
field-fork-right = Horquilla derecha
field-blade-capacity = Capacidad grabada en esta horquilla
field-blade-load-centre = Centro de carga grabado con ella
field-blade-length = Longitud de la horquilla
field-blade-new = Espesor de la horquilla en el talón cuando era nueva
field-blade-now = Espesor de la horquilla en el talón hoy
field-blade-bent = Cuánto se aparta de la recta la hoja de la horquilla, sin la parte vertical
field-blade-angle = Ángulo entre la horquilla y su parte vertical
field-blade-crack = Si se halló una grieta
field-blade-lock = Si funciona el bloqueo de la posición de la horquilla
field-blade-proof-load = Carga de prueba de la horquilla, según sus papeles
field-blade-modified = Si la horquilla se ha soldado, taladrado o doblado
field-fork-carriage = Qué puede hacer el portahorquillas: fijo, desplazamiento lateral, posicionador, se inclina, gira
field-fork-side-shift = Desplazamiento lateral del portahorquillas a cada lado
field-fork-spread-range = Separación mínima y máxima del posicionador
field-fork-extensions = Alargaderas puestas en las horquillas
field-sleeve-length = Longitud de las alargaderas desde la cara de las horquillas
field-sleeve-capacity = Capacidad del par de alargaderas
field-sleeve-load-centre = Mayor centro de carga en la placa de las alargaderas
field-sleeve-cover = Parte de la alargadera que debe llenar la horquilla
field-sleeve-by = De quién es la placa: fabricante y número de las alargaderas
field-fork-tip-difference = Cuánto más alta está una punta de horquilla
field-fork-checked = Día de la última inspección periódica de las horquillas
field-bucket = Cuchara
field-bucket-heel = Parte de atrás de su fondo: por delante del bulón de la cabeza, hacia arriba
field-bucket-volume = Volumen de la cuchara
field-bucket-edge = Ancho de su filo
field-tool-load-centre = Su centro de carga nominal
field-clamp = Pinza para bloques
field-clamp-heel = Arranque de los brazos por su cara inferior: por delante, hacia arriba
field-clamp-grip = Carga más estrecha y más ancha que agarra
field-clamp-grip-force = Fuerza de un brazo sobre la carga
field-clamp-grip-friction = Rozamiento de las zapatas sobre la carga
field-other-tool = Otro accesorio de la lista del fabricante
field-other-heel = Dónde se apoya la carga contra él: por delante, hacia arriba
field-platform = Plataforma para personas: todo izado con ella está prohibido
field-platform-floor = Su suelo: por delante del bulón de la cabeza, hacia arriba
field-jib-hook = Gancho: por delante del bulón de la cabeza, hacia arriba
field-chart = Tablas de cargas: una por accesorio, apoyo y centro de carga
field-chart-attachment = Accesorio al que corresponde esta tabla
field-chart-support = Sobre qué se apoya la máquina: neumáticos, estabilizadores o estabilizadores de cuatro puntos
field-chart-load-centre = Centro de carga nominal desde la cara de las horquillas
field-chart-load-centre-height = Altura del centro de la carga de ensayo sobre las horquillas
field-chart-reach-from = Desde dónde mide el alcance la tabla
field-chart-reach-to = Hasta qué punto mide el alcance la tabla
field-chart-height-to = Hasta qué punto mide la altura la tabla
field-chart-level-sideways = Desnivel transversal con el que la tabla aún vale
field-chart-level-fore-aft = Desnivel longitudinal con el que la tabla aún vale
field-chart-unit = Unidad de los números sin unidad de los contornos
field-chart-not-permitted = Áreas que la tabla declara no permitidas
field-chart-tyres = Neumáticos a los que corresponde esta tabla, tal como están marcados
field-chart-reach-ahead = Inicio del alcance por delante del eje delantero
field-chart-nested = Si cada línea de carga encierra las de cargas mayores
field-chart-table = Capacidades impresas en cuadro en vez de zonas
field-table-angles = Ángulos de pluma de las filas
field-table-extensions = Extensiones de las columnas
field-table-heights = Alturas de las filas
field-table-reaches = Alcances de las columnas
field-table-capacity = Capacidad de cada fila y columna, «-» donde no hay nada
field-table-angle-unit = Unidad de los números sin unidad de los ángulos
field-table-capacity-unit = Unidad de los números sin unidad de las capacidades
field-derating = Capacidades del fabricante para centros de carga mayores que el nominal
field-derating-load-centre = Centro de carga de esta fila
field-derating-share = Parte de la capacidad de la tabla que cuenta ahí
field-derating-at-most = Capacidad máxima ahí
field-chart-rises = Quién comparó con la tabla una capacidad que sube
field-chart-zone = Zonas de la tabla, cada una con su capacidad
field-zone-name = Nombre de la zona
field-zone-capacity = Capacidad en toda la zona
field-zone-outline = Esquinas de la zona como alcance y altura, en orden
field-job-name = Nombre del trabajo
field-job-site = Nombre y dirección de la obra
field-job-date = Día del trabajo
field-job-planner = Quién planifica y responde de este archivo
field-job-invented = Verdadero en las demostraciones
field-policy = Reservas exigidas distintas de las habituales
field-policy-by = Quién responde de los valores por debajo de los habituales
field-policy-tilt-fore-aft = Inclinación que debe quedar en sentido longitudinal
field-policy-tilt-sideways = Inclinación que debe quedar en sentido transversal
field-policy-load-factor = Factor de carga mínimo: carga de vuelco dividida por la carga
field-policy-stand-error = Cuánto puede apartarse la máquina de su sitio previsto
field-policy-line-allowance = Margen del operador sobre la distancia legal a las líneas
field-policy-line-site-rule = Distancia a las líneas según la norma de la obra
field-ground = Archivos del levantamiento topográfico, por orden de prioridad
field-ground-file = Archivo del levantamiento topográfico en esta carpeta
field-ground-files = Hojas de un mismo levantamiento topográfico
field-ground-accuracy = Mayor error de cota bajo una rueda
field-ground-date = Día de la medición del terreno
field-ground-units = Unidad de las coordenadas medidas
field-ground-height-units = Unidad de las cotas medidas
field-ground-crs = Sistema de coordenadas, solo informativo
field-ground-longest-edge = Mayor hueco entre puntos que se salva
field-ground-surface = Superficie de un archivo LandXML que es el terreno, por su nombre
field-ground-survey-points = True: los puntos de levantamiento de un archivo LandXML son el terreno
field-ground-window = Parte que se usa de un levantamiento topográfico grande
field-window-from = Esquina suroeste de la parte
field-window-to = Esquina noreste de la parte
field-ground-columns = Columnas de un archivo de cotas, por nombre o lugar
field-column-point = Columna del número del punto
field-column-east = Columna de la coordenada este
field-column-north = Columna de la coordenada norte
field-column-height = Columna de la cota
field-line = Líneas aéreas cerca de los emplazamientos
field-line-name = Nombre de la línea
field-line-voltage = Tensión nominal, o «unknown» (desconocida)
field-line-unit = Unidad de los números sin unidad del trazado
field-line-course = Puntos en planta, si no se conocen las alturas
field-line-survey-error = Cuánto puede apartarse el conductor de donde se midió
field-line-swing = Cuánto desplaza el viento el conductor hacia un lado
field-line-span = Conductor más bajo, de poste a poste
field-span-from = Poste de un extremo: este, norte, altura del conductor
field-span-to = Poste del otro extremo: este, norte, altura del conductor
field-span-sag = Flecha en el centro del vano
field-line-dead = Confirmación de que la línea está sin tensión
field-dead-owner = Persona del propietario de la línea que lo confirma
field-dead-permit = Número del permiso
field-dead-grounded = Si está puesta a tierra a la vista, junto al trabajo
field-line-insulated = Declaración de que la línea está cubierta; aun así cuenta como desnuda
field-insulated-by = La persona del propietario de la línea que lo declara
field-insulated-permit = Número del permiso en que consta
field-lines-complete = Declaración de que no hay más líneas
field-lines-complete-by = Quién declara que no hay más líneas
field-landing = Lugares que reciben las cargas
field-landing-id = Nombre corto para los izados
field-landing-name = Nombre del lugar de descarga
field-landing-at = Dónde queda el centro de la carga
field-landing-level = Cota de la superficie en que queda la carga
field-landing-size = Tamaño del lugar de descarga
field-landing-along = A lo largo de la aproximación
field-landing-across = A lo ancho de la aproximación
field-landing-approach = Dirección a la que apunta la máquina, o «any» (cualquiera)
field-approach-heading = Rumbo, en sentido horario desde el norte
field-approach-tolerance = Tolerancia a cada lado
field-landing-rating = Lo que soporta el lugar de descarga, y quién lo dice
field-rating-mass = Masa que soporta
field-rating-by = Nombre y función de quien lo indicó
field-landing-occupied = Masa que ya hay allí
field-landing-upstand = Resalte (borde, rodapié o barandilla) que hay que salvar
field-rating-pallet = Masa de un palet que soporta
field-rating-even = Carga uniforme que soporta
field-rating-part = Carga uniforme sobre una parte
field-rating-part-area = Superficie de esa parte
field-rating-point = Carga sobre un cuadrado
field-rating-point-side = Lado de ese cuadrado
field-rating-push = Empuje horizontal que admite
field-rating-setting-down = Verdadero: mass y pallet ya cuentan con el golpe al posar
field-rating-class = Clase de carga del andamio; no dice nada de un palet
field-landing-stands = Sobre qué está el lugar de descarga
field-landing-people = Personas en él mientras llega la carga
field-landing-setting-down = Factor sobre la carga al posarla
field-landing-edge = Cómo se cierra el borde por el que entra la carga
field-landing-runs = Dirección de las viguetas o del vano respecto a la aproximación
field-landing-lying = Lo que ya hay allí
field-lying-what = Qué es
field-lying-mass = Su masa
field-lying-from-edge = Desde el borde por el que entra la carga
field-lying-from-right = Desde el lado derecho, mirando como entra la carga
field-lying-along = Su longitud a lo largo de la aproximación
field-lying-across = Su ancho a través de la aproximación
field-landing-deck = Tablones sobre viguetas que lo soportan
field-structure-by = Quién responde de estos números
field-deck-moisture = Cubierto o a la intemperie
field-board-breadth = Ancho de un tablón
field-board-depth = Grueso de un tablón
field-board-timber = Clase resistente de los tablones
field-board-spans = Vanos que cubre un tablón
field-joist-breadth = Ancho de una vigueta
field-joist-depth = Canto de una vigueta
field-joist-timber = Clase resistente de las viguetas
field-joist-span = Vano de una vigueta
field-joist-spans = Vanos que cubre una vigueta
field-joist-spacing = Distancia entre ejes de viguetas
field-joists-held = Verdadero: los bordes superiores de las viguetas no pueden desplazarse de lado
field-structure-own = Su peso propio
field-structure-beside = Carga uniforme junto al palet
field-landing-slab = Forjado que lo soporta, en una dirección
field-slab-span = Vano del forjado
field-slab-spans = Vanos del forjado
field-slab-depth = De la cara comprimida a la armadura
field-slab-concrete = Resistencia del hormigón en probeta cilíndrica a 28 días
field-slab-cement = Rapidez con que endurece el cemento
field-slab-age = Días desde el hormigonado
field-slab-celsius = Temperatura media desde entonces, en °C
field-slab-steel = Límite elástico de la armadura
field-slab-bottom = Armadura inferior en la dirección del vano, por metro
field-slab-top = Armadura superior en la dirección del vano, por metro
field-slab-across = Armadura inferior transversal, por metro
field-slab-edge-along = Del palet a un borde libre en la dirección del vano
field-slab-edge-across = Del palet a un borde libre en la dirección transversal
field-landing-props = Puntales en los que se apoya el forjado
field-props-by = Ingeniero que proyectó los puntales
field-props-allows = Lo que ese ingeniero permite en total sobre el forjado
field-load-feet = Sobre qué se apoya la carga
field-feet-along = Pies a lo largo de las horquillas
field-feet-across = Pies a través de las horquillas
field-foot-along = Longitud de un pie a lo largo de las horquillas
field-foot-across = Ancho de un pie a través de las horquillas
field-feet-sharing = Cómo se reparte la carga entre los pies
field-lift-signaller = Quién guía la carga en su lugar de descarga
field-job-machine = Máquinas del trabajo y su estado hoy
field-job-machine-id = Nombre corto para los izados
field-job-machine-file = Su archivo de máquina en esta carpeta
field-inspected-by = Quién hizo la revisión antes del uso y la encontró apta
field-tagged-out = Por qué la máquina está fuera de servicio
field-latches = Cómo se vio el pestillo de cada gancho
field-latch-seen = Cómo se vio el pestillo de este gancho
field-cab-seen = Cómo se vieron cinturón, estructura antivuelco y puerta de la cabina
field-kept = De quién es la máquina: propia, alquilada o no se conoce
field-machine-seen = Lo que alguien leyó en la propia máquina
field-seen-by = Quién lo leyó
field-seen-date = Día en que se leyó
field-seen-serial = Número de serie grabado en la máquina
field-seen-tyres = Medida marcada en los neumáticos
field-seen-counterweight = Marca del contrapeso
field-seen-options = Lo que lleva además; [] declara que nada
field-seen-chart-in-cab = Si las tablas están en la cabina
field-seen-manual-in-cab = Si el manual está en la cabina
field-seen-chart = Número y revisión de las tablas de la cabina
field-examined = Última inspección periódica de la máquina
field-examined-date = Día de la inspección
field-examined-next = Día hasta el que vale
field-examined-by = Quién la inspeccionó
field-locks = Cómo se vio el bloqueo de cada accesorio
field-lock-seen = Cómo se vio el bloqueo de este accesorio
field-load = Cargas del trabajo
field-load-id = Nombre corto para los izados
field-load-name = Nombre de la carga
field-load-size = Tamaño: fondo a lo largo de las horquillas, ancho, alto
field-size-depth = Fondo a lo largo de las horquillas
field-size-width = Ancho a través de las horquillas
field-size-height = Alto
field-load-mass = Masa tal como llega, con palet y envoltura
field-load-ticket = Número de la nota de entrega
field-load-left-out = Lo que la nota no incluye: palet, envoltura, lluvia
field-load-uncertainty = Parte en que la masa puede variar
field-uncertainty-below = Parte en que puede ser menor
field-uncertainty-above = Parte en que puede ser mayor
field-load-centre = Centro de gravedad: por delante de la cara de las horquillas, a la izquierda, hacia arriba
field-load-centre-error = Cuánto puede apartarse de ahí el centro
field-load-condition = Palet, flejes y envoltura: en buen estado, en mal estado o sin mirar
field-load-wind-factor = Factor de forma para el viento
field-load-part = Partes de las que se compone la carga
field-part-name = Qué es esta parte
field-part-centre = Su centro: por delante de la cara de las horquillas, a la izquierda, hacia arriba
field-part-count = Cuántas hay en un mismo sitio
field-part-mass = Masa de una
field-part-density = Densidad del material
field-part-material = Material, por su identificador en la lista de materiales
field-part-packing = Parte del volumen que es material
field-part-moisture = Parte en que el agua puede hacerla más pesada
field-part-state = Agua que contiene: seca, húmeda o empapada
field-part-piece = Masa de una pieza
field-part-pieces = Número de piezas
field-pallet = Un palet apilado por capas
field-pallet-base = El palet solo
field-pallet-base-mass = Masa del palet solo
field-pallet-wrap = Masa de envoltura, flejes y tableros
field-pallet-overhang = Parte en que las capas pueden sobresalir de la base
field-pallet-layer = Capas, de la base hacia arriba
field-layer-name = Qué es esta capa
field-layer-layers = Cuántas de estas capas, una sobre otra
field-layer-ahead = Su centro por delante del centro de la base
field-layer-left = Su centro a la izquierda del centro de la base
field-liquid = Un depósito con líquido
field-liquid-name = Qué líquido es
field-liquid-depth = Interior del depósito a lo largo de las horquillas
field-liquid-width = Interior del depósito a través de las horquillas
field-liquid-height = Altura interior del depósito
field-liquid-fill = Altura del líquido en reposo
field-liquid-at = Centro del fondo del depósito: por delante, a la izquierda, hacia arriba
field-liquid-baffled = Si tiene rompeolas que frenan el líquido
field-liquid-closed = Si una tapa retiene el líquido
field-liquid-tilt = Mayor inclinación con la que se cuenta
field-load-defects = Lo que se vio mal en la carga
field-load-sag = Cuánto cuelgan los extremos por debajo de la cara inferior
field-gate = Portones y pasos estrechos por los que pasan las cargas
field-gate-id = Nombre corto para los izados
field-gate-name = Nombre del portón
field-gate-width = Ancho libre
field-gate-height = Altura libre, o «open» (abierto)
field-gate-clearance = Espacio que debe quedar a cada lado
field-gate-clearance-above = Espacio que debe quedar por encima
field-ground-file-crs = Sistema de coordenadas del archivo, como código EPSG
field-ground-site-crs = Sistema de coordenadas del sitio: un archivo en otro se convierte
field-ground-layers = Capas de un dibujo que son terreno
field-ground-filter = Verdadero para buscar el terreno de una nube sin clasificar con un filtro
field-site-from = Un sitio guardado: su terreno, cosas, líneas y zonas
field-thing = Cosas que están en la obra y contra las que se puede chocar
field-thing-id = Nombre corto
field-thing-name = Nombre de la cosa
field-thing-kind = Qué es
field-shape-outline = Esquinas en planta, en orden
field-shape-unit = Unidad de sus listas de números solos
field-shape-course = Eje en planta
field-shape-width = Ancho total a lo largo del eje
field-shape-at = Centro del círculo
field-shape-radius = Radio del círculo
field-thing-base = Cota de su cara inferior; si falta, está apoyada en el terreno
field-thing-top = Cota de su parte superior, o «unknown» si no se conoce
field-thing-accuracy = Cuánto puede estar o llegar más allá de lo indicado
field-opening = Huecos en ella: ventanas, puertas, pasos
field-opening-from = Una jamba
field-opening-to = La otra jamba
field-opening-sill = Cota del antepecho
field-opening-head = Cota del dintel
field-excavation = Zanjas, pozos y otras excavaciones
field-excavation-id = Nombre corto
field-excavation-name = Nombre de la excavación
field-excavation-depth = Profundidad bajo el terreno en su borde, o «unknown» si no se conoce
field-give-or-take = Cuánto puede variar ese valor hacia ambos lados
field-excavation-soil = Suelo de sus lados, según lo clasificó la persona competente
field-excavation-support = Qué sostiene sus lados: «none» (nada), «supported» (entibada), «unknown» (no se sabe), o quién la calculó para cargas al lado
field-excavation-support-by = Quién calculó la entibación para cargas al lado
field-excavation-by = Quién la vio o la declaró
field-buried = Lo que hay bajo el terreno
field-buried-id = Nombre corto
field-buried-name = Nombre de lo que hay allí
field-buried-kind = Qué es
field-buried-cover = Terreno sobre su clave, o «unknown» si no se conoce
field-buried-allowed = Presión en su clave que permite su dueño
field-buried-wall = Cómo se comporta la pared de un tubo o alcantarilla: «rigid», o lo que pide la deformación de una flexible
field-wall-diameter = Diámetro medio del tubo
field-wall-ring = Rigidez anular que declara el fabricante; o espesor y módulo
field-wall-thickness = Espesor de una pared lisa
field-wall-modulus = Módulo de elasticidad de la pared
field-wall-soil = Módulo de reacción del suelo a su lado, E′
field-wall-deflection = Deformación que admite su propietario, del diámetro; si falta: no se conoce
field-wall-bedding = Factor de apoyo; si falta: 0,11
field-wall-lag = Factor de deformación diferida sobre el suelo de encima; si falta: 1,5
field-buried-around = Lo que una persona con nombre dice del terreno a su alrededor
field-around-fill = Verdadero si se rellenó hace poco
field-around-voids = Verdadero si puede haber huecos o suelo lavado
field-around-by = Quién lo dice
field-buried-by = Quién responde de lo que se sabe de ello
field-site-zone = Partes de la obra con una regla propia
field-site-zone-id = Nombre corto
field-site-zone-name = Nombre de la zona
field-site-zone-rule = Qué rige allí
field-site-zone-heading = Sentido de marcha, desde el norte en el sentido del reloj
field-site-zone-speed = Velocidad máxima allí
field-site-zone-slope = Pendiente máxima por la que se circula allí
field-site-zone-times = Cuándo rige; si falta: siempre
field-site-zone-by = Quién la fijó
field-lift-gates = Portones que pasa con la carga; [] declara que ninguno
field-rigging-hitch = Cómo sujetan las eslingas: en vertical, ahorcadas o en cesta
field-rigging-edges = Sobre qué apoyan las eslingas: liso, protegido o canto vivo sin proteger
field-fittings = Grilletes y balancines entre gancho y carga
field-fitting-name = Qué elemento es
field-fitting-limit = Su carga máxima de utilización (CMU, WLL)
field-fitting-takes = Si lleva un ramal o toda la carga
field-rigging-swing = Cuánto puede apartarse de la plomada al oscilar
field-rigging-swing-reach = Lo mismo como distancia en su centro
field-hanging = Eslingado de una carga suspendida
field-rigging-mass = Masa de eslingas y grilletes, que se suma a la carga
field-rigging-drop = Del gancho a la carga
field-rigging-legs = Número de ramales
field-rigging-leg-angle = Ángulo de un ramal con la vertical
field-rigging-leg-limit = Carga máxima de utilización (CMU, WLL) de un ramal
field-tag-lines = Número de cuerdas guía
field-lift = Izados del trabajo
field-lift-id = Nombre corto del izado
field-lift-name = Qué se levanta y adónde
field-lift-machine = Máquina, por su identificador
field-lift-attachment = Accesorio, por su identificador en el archivo de la máquina
field-lift-support = Sobre qué se apoya la máquina: neumáticos, estabilizadores o estabilizadores de cuatro puntos
field-lift-load = Carga, por su identificador
field-lift-landing = Lugar de descarga, por su identificador
field-lift-stand = Dónde se coloca la máquina
field-stand-at = Centro del eje delantero: este, norte
field-stand-heading = Rumbo, en sentido horario desde el norte
field-lift-task = Si la carga se deja o se recoge allí
field-lift-lock-seen = Quién vio cerrado el bloqueo del accesorio para este izado
field-lock-seen-by = Nombre de quien lo vio cerrado
field-lift-side-shift = Cuánto se desplaza el portahorquillas; positivo, a la izquierda
field-lift-extensions = Si hay alargaderas puestas en las horquillas
field-lift-bulk-volume = Material suelto en una cuchara
field-lift-clear = Altura a la que la carga pasa sobre el lugar de descarga
field-lift-stop-gust = Ráfaga con la que se para este izado
field-lift-stops = Lo prohibido siempre que se daría en él; [] declara que nada
field-accept = De qué responden personas identificadas
field-accept-matter = De qué trata la declaración
field-accept-by = Nombre y función de quien responde
field-accept-statement = Qué se vio o ensayó, y cuándo
field-accept-strength = Lo que soporta el terreno bajo una rueda o un plato
where-plate = En la placa de la máquina
where-own = Lo elige usted
where-masses = Manual, página de masas; si no, báscula, eje por eje
where-centres = El fabricante o concesionario; si no, de las cargas por eje en báscula
where-dimensions = Manual, página de dimensiones; si no, cinta métrica en suelo llano
where-tyre = Medida en el flanco del neumático; si no, cinta métrica, con la rueda en el aire
where-gauge = Manómetro, neumático frío; la tabla de la máquina da la nominal
where-axle = Manual, página de los ejes; pregunte al fabricante o concesionario
where-tape = Cinta métrica, máquina en suelo llano, pluma bajada
where-look = Mire la máquina
where-boom = Manual, página de dimensiones; si no, cinta métrica e indicador de ángulo
where-dealer = Pregunte al fabricante o concesionario; rara vez está en el manual
where-manual = Manual, página de límites y cuidados
where-own-plate = En la placa del propio accesorio
where-stamp = Grabado en el lado o encima de la horquilla
where-caliper = Calibre en el talón, en la propia horquilla
where-chart = En la tabla de cargas de la cabina y sus notas
where-tyre-marks = Marcado en los flancos de los neumáticos
where-gauge-tape = Escuadra y regla sobre la horquilla
where-papers = En los papeles de su última inspección
schema-machine-title = Una máquina para Counterpoise
schema-job-title = Un trabajo para Counterpoise
schema-found = Dónde está: { $place }
schema-more-than-zero = Más de 0
schema-not-negative = 0 o más
schema-at-most = Más de 0, como mucho { $high }
schema-zero-to = De 0 a { $high }
schema-within = De { $low } a { $high }
schema-points = Al menos { $least } puntos
schema-quantity = Un valor con su unidad, entre comillas: { $dimension }
schema-fill-in = Por completar: se lee, y nunca es apto
without-serial = Sin él nadie puede comprobar que el archivo es de la máquina que hay en obra
without-wind = Sin él la comprobación del viento es una condición
without-wear = Sin él no se conoce el desgaste de la horquilla: no se puede decir
without-modified = Sin él nadie ha mirado la horquilla: una condición
without-centre-height = Sin ella una carga alta no se puede comparar con la de ensayo
without-chart = Sin tabla no hay ningún izado con este accesorio
without-pressure = Sin ella no se puede decir la presión sobre el terreno
without-axle = Desconocido: se toma como libre, el caso peor
without-attachment = Debe haber al menos un accesorio: horquillas u otro
without-blade = Sin medir o sin mirar: una condición
without-grip = Sin ella lo que sujeta la pinza es una condición
without-coupling = Sin él se toma un acople rápido

## Fin de las claves

## Órdenes de máquina y dibujos de una máquina (cli, ui)

cli-explain-unnamed = Archivo de máquina { $file }
cli-explain-broken = Este archivo todavía no se puede usar. Aquí se explica lo que se pudo leer; lo que está mal figura más abajo.
cli-explain-identity = Identidad
cli-explain-empty = En vacío, calculado
cli-explain-empty-line = Con { $attachment }, pluma a { $angle } y retraída: { $mass } en total, { $front } en el eje delantero y { $rear } en el trasero.
cli-explain-empty-side = Su centro está a { $offset } del medio, hacia { $side }.
cli-explain-weighbridge = Compárelo con una báscula: resulta de todas las masas y centros del archivo.
cli-explain-each = Cada una: { $what }.
cli-explain-charts = Tablas de cargas
cli-explain-datum = Alcance { $reach }; altura { $height }.
cli-explain-height-forks = desde el suelo hasta la cara superior de las horquillas
cli-explain-height-hook = desde el suelo hasta el gancho
cli-explain-height-centre = desde el suelo hasta el centro de carga
cli-explain-height-pin = desde el suelo hasta el bulón de la cabeza
cli-explain-rated = Centro de carga nominal a { $centre } de la cara de las horquillas.
cli-explain-level = Vale con un desnivel de hasta { $sideways } transversal y { $fore_aft } longitudinal.
cli-explain-greatest = Zonas: { $count }. Capacidad máxima { $capacity }: zona { $zone }, alcance de { $reach_low } a { $reach_high }, altura de { $height_low } a { $height_high }.
cli-explain-least = Capacidad mínima { $capacity }: zona { $zone }, alcance de { $reach_low } a { $reach_high }, altura de { $height_low } a { $height_high }.
cli-explain-not-permitted = Áreas declaradas no permitidas: { $count }.
cli-explain-no-charts = El archivo no tiene tabla de cargas: no permite ningún izado.
cli-explain-faults = Lo que está mal
cli-explain-warnings = A revisar
cli-explain-do = Qué hacer: { $what }
cli-explain-missing = Lo que falta
cli-explain-missing-counts = Imprescindible: { $mandatory }. Para una comprobación: { $for_check }. Por completar: { $fill_in }. Útil: { $useful }.
cli-explain-nothing-missing = No falta nada.
cli-explain-more = Dónde está cada dato lo dice:
cli-explain-governs = Mandan el manual del fabricante y la tabla de la cabina; este archivo nunca los sustituye.
cli-word-frame = en el bastidor
cli-word-front-axle = en el eje delantero
cli-word-rear-axle = en el eje trasero
cli-word-upper = en la superestructura giratoria
cli-word-never = nada lo bloquea
cli-word-operator = lo bloquea el operador
cli-word-above-boom-angle = se bloquea por encima de un ángulo de pluma
cli-word-unknown = no se conoce
cli-word-solid = neumáticos macizos
cli-word-free = libre
cli-word-locked = bloqueado
cli-word-gust = ráfaga a la altura de la carga y la pluma
cli-word-mean = media de diez minutos como en los pronósticos, a 10 m
cli-word-quick = acople rápido
cli-word-pinned = con bulones
cli-word-fixed = fijado con tornillos
cli-word-carriage-fixed = fijo
cli-word-side-shift = desplazamiento lateral
cli-word-positioner = posicionador de horquillas
cli-word-tilting = se inclina hacia los lados
cli-word-rotating = gira
cli-missing-title = { $file }: lo que hay y lo que falta
cli-missing-checks = Para qué basta el archivo
cli-missing-checks-note = Un izado pide más que el archivo de la máquina: carga, terreno, líneas, personas. Esta lista trata solo del archivo.
cli-missing-ready = basta
cli-missing-partly = basta, mejor con { $numbers }
cli-missing-not-yet = todavía no, necesita { $numbers }
cli-missing-faulty = todavía no: lo impide un fallo
cli-missing-faulty-needs = todavía no: lo impide un fallo; necesita { $numbers }
cli-missing-mandatory = Imprescindible
cli-missing-for-check = Lo espera una comprobación
cli-missing-fill-in = Por completar
cli-missing-useful = Útil, puede omitirse
cli-compare-title = { $a } y { $b }
cli-compare-dimensions = Dimensiones y masas
cli-compare-empty = Masa en vacío
cli-compare-front = de ella en el eje delantero
cli-compare-longest = Pluma: del bulón de la base al de la cabeza, extendida
cli-compare-highest = Ángulo máximo de la pluma
cli-compare-capacities = Capacidades en las placas
cli-compare-no-attachment = ninguno
cli-compare-at = Carga máxima
cli-compare-place = { $reach } de alcance, { $height } de altura
cli-compare-grid = Cuál levanta más
cli-compare-datum = Alcance desde la cara delantera de los neumáticos delanteros hasta el centro de la carga, a { $centre } de la cara de las horquillas; altura hasta la cara superior de las horquillas. La flexión de la pluma se cuenta hacia fuera, como en un plan.
cli-compare-key = A { $a } · B { $b } · = igual · + solo llega A o B, según la letra · . ninguna de las dos
cli-compare-other-centre = No miden igual: la tabla de A es para un centro de carga de { $a }, la de B para { $b }. Ambas se leyeron para { $centre }; el exceso cuenta como alcance.
cli-compare-other-level = No miden igual: la tabla de A vale con un desnivel transversal de hasta { $a }, la de B de hasta { $b }.
cli-compare-other-level-along = No miden igual: la tabla de A vale con un desnivel longitudinal de hasta { $a }, la de B de hasta { $b }.
cli-compare-no-chart = { $machine } no tiene tabla para horquillas { $support }: ahí no hay nada que comparar.
cli-compare-no-forks = { $machine } no tiene horquillas: no hay nada que comparar.
cli-compare-not-go = Una comparación de tablas no da ningún izado por apto.
cli-compare-bad-at = un sitio son dos longitudes, alcance y altura: «4 m,6 m»; se encontró «{ $found }»
cli-draw-not-ours = la carpeta { $folder } contiene algo que no son dibujos anteriores de una máquina, así que no se ha escrito nada en ella
cli-draw-written = Dibujos escritos en { $folder }: { $count }
cli-materials-none = ningún material lleva «{ $words }» en su identificador o nombre
cli-materials-hint = counterpoise materials, sin palabras, los lista todos.
cli-materials-from-to = de { $low } a { $high }
cli-materials-better = La ficha del proveedor o una báscula valen más que cualquier lista.
ui-machine-side = Vista lateral con medidas
ui-machine-front = Vista frontal con medidas
ui-machine-dim-wheelbase = Distancia entre ejes
ui-machine-dim-front-track = Vía, eje delantero
ui-machine-dim-rear-track = Vía, eje trasero
ui-machine-dim-width = Ancho total
ui-machine-dim-length = Longitud sin accesorio
ui-machine-dim-length-tool = De los neumáticos a la punta del accesorio
ui-machine-dim-clearance = Altura libre sobre el suelo
ui-machine-dim-frame-top = Parte alta del bastidor
ui-machine-dim-cab-top = Techo de la cabina
ui-machine-dim-front-radius = Radio de los neumáticos delanteros, sin carga
ui-machine-dim-rear-radius = Radio de los neumáticos traseros, sin carga
ui-machine-dim-pin = Bulón de oscilación del eje trasero sobre el suelo
ui-machine-dim-foot = Bulón de base de la pluma sobre el suelo
ui-machine-dim-foot-behind = Bulón de base de la pluma detrás del eje delantero
ui-machine-dim-rear = Parte trasera detrás del eje trasero
ui-machine-dim-pads = Separación de los estabilizadores
ui-machine-dim-pads-ahead = Estabilizadores por delante del eje delantero
ui-machine-dim-outriggers-along = Estabilizadores, de los platos traseros a los delanteros
ui-machine-dim-outriggers-front = Separación de los estabilizadores delanteros
ui-machine-dim-outriggers-rear = Separación de los estabilizadores traseros
ui-machine-dim-tyre = Ancho de un neumático delantero
ui-machine-pose = Dibujada con { $attachment }, pluma a { $angle } y retraída, horquillas niveladas.
ui-machine-cab-across = De la cabina el archivo solo da la altura; se dibuja a todo el ancho.
ui-machine-alt = Dibujo a escala de { $machine } con { $count } medidas.
ui-machine-chart-alt = Tabla de cargas de { $machine } con { $attachment }, { $support }: { $count } zonas.
ui-machine-chart-zone = Una zona de la tabla con su capacidad
ui-machine-drawn-from = Dibujado del archivo de la máquina; manda la tabla de la cabina.

## Fin de las órdenes de máquina

## La obra desde arriba, y un corte por ella

ui-site-plan = La obra desde arriba
ui-site-plan-alt = Obra { $site } desde arriba, el norte arriba: { $things } objetos en pie, { $excavations } excavaciones, { $buried } objetos enterrados, { $zones } zonas, { $lines } líneas aéreas.
ui-site-no-extent = Nada de esta obra tiene aún un lugar: indique un terreno, un objeto, una zona o un lugar de descarga.
ui-site-no-ground = No se ha dado ningún terreno: no se conoce ninguna altura de esta obra.
ui-site-read-every = El terreno se lee cada { $cell } para este dibujo; lo que es menor no se ve en él.
ui-site-contours = Línea de igual altura, cada { $step }
ui-site-slope-between = Pendiente de más de { $low }, hasta { $high }
ui-site-slope-over = Pendiente de más de { $limit }
ui-site-building = Edificio
ui-site-wall = Muro o pretil
ui-site-fence = Valla, cerramiento o barandilla
ui-site-scaffold = Andamio
ui-site-floor = Forjado o cubierta
ui-site-bridge = Puente o viga por encima
ui-site-tree = Árbol o seto
ui-site-mast = Mástil, poste o torre
ui-site-plant = Máquina o vehículo estacionado
ui-site-store = Acopio
ui-site-fuel = Depósito de combustible o gas
ui-site-truck-bay = Zona de camiones
ui-site-unnamed = De un levantamiento, aún sin nombre
ui-site-opening = Hueco
ui-site-top = parte alta a { $level }
ui-site-above-ground = { $height } sobre el terreno
ui-site-height-not-known = altura no conocida
ui-site-excavation = Excavación
ui-site-depth = hasta { $depth } de profundidad
ui-site-depth-not-known = profundidad no conocida
ui-site-set-back = distancia al borde { $distance }
ui-site-set-back-for = { $stand }: distancia al borde { $distance }
ui-site-set-back-face = sus lados no se sostienen solos: nada a menos de { $distance }
ui-site-set-back-line = Distancia al borde por la línea de planificación: ningún borde exterior de neumático, apoyo o placa más cerca de la excavación
ui-site-set-back-wheels = Distancia al borde que el suelo declarado exige a las ruedas de un emplazamiento según presionan allí; los trazos apuntan a la excavación
ui-site-buried = Bajo tierra
ui-site-cover = al menos { $cover } de recubrimiento
ui-site-cover-not-known = recubrimiento no conocido
ui-site-zone = Zona con regla propia
ui-site-zone-no-go = sin máquinas ni cargas
ui-site-zone-people = aquí hay personas
ui-site-zone-one-way = sentido único, hacia el { $direction }
ui-site-zone-speed = como máximo a { $speed }
ui-site-zone-soft = terreno blando
ui-site-zone-slope = no se circula con más de { $slope }
ui-site-line-outside = La línea aérea { $line } ({ $voltage }) queda fuera de este dibujo o no tiene lugar.
ui-site-stand = Posición de la máquina
ui-site-heading-not-given = rumbo no indicado
ui-site-level = nivel { $level }
ui-site-carries = soporta { $mass }
ui-site-rated-by = carga admisible declarada por { $by }
ui-site-carries-not-known = no se sabe cuánto soporta
ui-site-names-left-out = Nombres omitidos por falta de espacio: { $count }. Un dibujo más ancho tiene sitio para más (--picture-width).
ui-site-gate = Paso { $name }: { $width } de ancho, { $height } de alto
ui-site-gate-open = Paso { $name }: { $width } de ancho, abierto por arriba
ui-site-source = Terreno: { $name }, { $date }, alturas con un error de hasta { $accuracy }
ui-site-date-not-known = fecha no conocida
ui-site-extent = Extensión: { $width } de este a oeste, { $height } de norte a sur
ui-site-corners = Este de { $west } a { $east }, norte de { $south } a { $north }, en metros del sistema de la obra
ui-site-epsg = Sistema: EPSG { $code }
ui-site-epsg-none = Sistema: propio de la obra, o no conocido
ui-site-cut = Corte de la obra
ui-site-cut-alt = Corte de { $length } por la obra, alturas de { $low } a { $high }.
ui-site-cut-empty = Este corte no tiene longitud o no encuentra ninguna altura conocida.
ui-site-cut-true = Alturas y longitudes a la misma escala
ui-site-cut-factor = Alturas dibujadas { $factor } veces mayores que las longitudes
ui-site-cut-along = Distancia a lo largo del corte
ui-site-cut-ground = Terreno, alturas con un error de hasta { $accuracy }
ui-site-cut-at = de { $from } a { $to } por el corte

## Fin de la obra

## Accesorios, identidad de la máquina, prohibiciones, qué acaba con un plan

check-identity = La máquina es la planificada
list-and-more = { $first }; { $rest }
list-nothing = nada
identity-agrees = { $machine }: número de serie, neumáticos, contrapeso, opciones y tablas de la máquina son los de su archivo; los leyó { $by } el { $date }.
identity-open = { $machine }: falta por saber o comparar: { $open }.
identity-differs = No es la máquina del archivo, o no son sus tablas. No coincide esto: { $what }, «{ $seen }» en la máquina y «{ $file }» en el archivo.
identity-not-in-cab = Falta en la máquina: { $what }.
identity-overdue = La inspección periódica de la máquina valía hasta el { $next }. El trabajo es el { $date }.
item-kept = de quién es la máquina
item-seen = la máquina misma (nadie ha leído su placa, neumáticos y tablas)
item-serial = número de serie
item-tyres = neumáticos
item-counterweight = contrapeso
item-options = opciones montadas
item-chart = número de las tablas de cargas
item-chart-in-cab = tablas de cargas en la cabina
item-manual-in-cab = manual del fabricante en la cabina
item-examined = inspección periódica
do-see-machine = Lea en la propia máquina la placa, los neumáticos, el contrapeso, las opciones y las tablas, y anote en el trabajo lo leído.
do-state-kept = Indique en el trabajo si la máquina es propia o alquilada.
do-right-machine = Averigüe cuál de los dos datos es el correcto. Planifique con el archivo y las tablas de esta misma máquina.
do-into-cab = Pídalo al fabricante o a la empresa de alquiler para esta misma máquina, y guárdelo en la cabina.
do-examine = Haga inspeccionar la máquina por una persona competente, o use otra.
cab-not-seen = { $machine }: nadie ha mirado todavía el cinturón, la estructura antivuelco y la puerta de la cabina.
cab-faulty = { $machine }: el cinturón, la estructura antivuelco o la puerta de la cabina falta o está defectuosa.
do-look-at-cab = Mire el cinturón, la estructura antivuelco y la puerta antes de circular; cierre la puerta y póngase el cinturón.
stop-riders = Alguien iría montado en la máquina, las horquillas o la carga.
stop-under-load = Alguien estaría bajo la carga o la pluma.
stop-belt = El operador trabajaría sin el cinturón puesto.
stop-thunder = Se seguiría trabajando durante una tormenta.
stop-platform = El accesorio es una cesta, jaula o plataforma para personas. Nunca se planifica un izado con ella.
stop-no-chart = El fabricante no da tabla de cargas para este accesorio y apoyo, así que el izado no está permitido.
do-no-riders = Que la gente vaya a pie. En la máquina solo el operador, en su asiento.
do-keep-out = Ponga barreras y levante solo cuando no haya nadie bajo la carga o la pluma, ni donde puedan caer.
do-belt = Póngase el cinturón antes de arrancar y no se lo quite hasta que la carga esté apoyada.
do-wait-storm = Deje la carga, baje y retraiga la pluma y espere a que pase la tormenta.
attachment-changed = { $attachment }: esta mañana el bloqueo se vio cerrado, pero no después de montarlo para este izado.
shift-too-far = La carga se desplazaría { $shift } a un lado; el portahorquillas de { $attachment } se desplaza { $range }.
do-less-shift = Desplace menos, o coloque la máquina de modo que la pluma apunte al lugar de descarga.
shift-stated = La carga se desplaza { $shift } hacia { $side }. Se cuenta en vuelco, líneas y aproximación; la tabla de cargas quizá no la admita.
do-shift-at-landing = Compruebe que la tabla admite el desplazamiento lateral. Transporte y levante con el portahorquillas centrado, y desplace despacio en el lugar de descarga.
carriage-unknown = { $attachment }: nadie ha indicado si el portahorquillas se desplaza, abre, inclina o gira.
do-state-carriage = Mire el portahorquillas e indique en el archivo de la máquina lo que puede hacer.
carriage-leaves-level = El portahorquillas de { $attachment } se inclina o gira hacia los lados.
do-lock-level = Bloquee el portahorquillas nivelado antes de tomar un palet, y déjelo así.
latch-faulty = El pestillo del gancho de { $attachment } falta, está doblado o no cierra.
latch-not-seen = { $attachment }: nadie ha visto todavía cerrar el pestillo del gancho.
do-new-latch = Haga cambiar el pestillo antes de usar el gancho.
do-see-latch = Compruebe que el pestillo se cierra por sí solo sobre la eslinga.
bulk-no-bucket = Material suelto sobre { $attachment }, que no es una cuchara.
bulk-not-stated = { $attachment } admite { $volume }; no se ha indicado cuánto lleva.
bulk-within = { $bulk } de material suelto en { $attachment }, que admite { $volume }.
bulk-too-much = { $bulk } de material suelto es más de lo que admite { $attachment }: { $volume }.
do-bucket = Use una cuchara con su propia tabla, o haga envasar el material.
do-state-bulk = Indique el volumen de material en la cuchara, y calcule su masa en húmedo.
do-less-bulk = Llene la cuchara como máximo a ras, y haga más viajes.
grip-misses = La carga tiene { $width } de ancho; { $attachment } agarra de { $low } a { $high }.
do-other-grip = Use una pinza para ese ancho, gire la carga, o levántela en palet con horquillas.
grip-holds = El rozamiento sujeta { $held } con la mitad en reserva; la carga es de { $mass }.
grip-slips = { $mass } se escurriría: el rozamiento sujeta { $held } con la mitad en reserva.
grip-unknown = { $attachment }: no se conoce la fuerza de agarre o el rozamiento, así que no se calcula lo que sujeta.
do-state-grip = Indique la fuerza y el rozamiento según su manual, y pruebe el agarre justo por encima del suelo.
grip-sound = { $attachment } sujeta solo lo que los dos brazos agarran por completo.
do-grip-sound = Agarre con los dos brazos sobre material en buen estado, nunca con una capa suelta, y mantenga a todos lejos de los lados y de debajo.
forks-cracked = La horquilla de { $side } tiene una grieta.
forks-opened = La horquilla de { $side } forma { $angle } con su parte vertical. Si pasa de { $limit } se retira de servicio.
forks-bent = La horquilla de { $side } se desvía de la recta un { $bent } de su longitud. Si pasa del 0,5 % se retira de servicio.
forks-tips = Las puntas de las horquillas difieren en altura un { $apart } de su longitud. Si pasa del 3 % se retiran de servicio.
forks-lock-fails = No funciona el bloqueo que mantiene la horquilla de { $side } en su sitio del portahorquillas.
forks-proof-short = La horquilla de { $side } se probó con { $proof }; su marca exige { $needed }.
forks-no-stamp = La horquilla de { $side } no tiene marca de capacidad legible.
forks-stamps-differ = Las horquillas llevan marcas distintas, así que no son pareja: la izquierda, { $left } a { $left_centre }; la derecha, { $right } a { $right_centre }. Cuenta la menor.
forks-not-looked-at = Falta por mirar o medir en las horquillas: { $looks }.
forks-overdue = La última inspección periódica de las horquillas es del { $date }. Vale 12 meses.
look-wear = espesor en el talón
look-modified = soldaduras, taladros y otros cambios
look-cracks = grietas en talón y ganchos
look-straight = rectitud de la hoja
look-angle = ángulo entre la horquilla y su parte vertical
look-tips = altura de las puntas
look-lock = bloqueos de las horquillas en el portahorquillas
look-checked = día de la última inspección periódica
do-stamped-forks = Ponga horquillas marcadas por su fabricante con capacidad y centro de carga.
do-matched-forks = Ponga una pareja igual, o que una persona competente confirme que estas dos pueden trabajar juntas.
do-check-forks = Haga inspeccionar las horquillas por una persona competente, y anote el día en el archivo de la máquina.
sleeves-undeclared = Se usan alargaderas de horquilla que el archivo de la máquina no declara: las horquillas están modificadas.
sleeves-long = Las horquillas llenan { $blade } de unas alargaderas de { $sleeve }: demasiado poco.
sleeves-centre = El centro de carga está a { $centre }; la placa de las alargaderas ({ $by }) admite { $limit }.
do-declare-sleeves = Quite las alargaderas, o use horquillas cuyo archivo y tabla de cargas las incluyan.
do-shorter-sleeves = Use alargaderas más cortas u horquillas más largas.
step-tip-out = Sin nadie debajo ni al lado, vuelque la cuchara despacio. Nivélela, retraiga del todo la pluma, bájela y solo entonces circule.
step-fill-bucket = Llene la cuchara como máximo a ras, según su manual, nunca usando la pluma para empujar. Nadie cerca.
step-open-clamp = Abra la pinza solo cuando la carga se sostenga por sí misma. Retraiga del todo la pluma, bájela y solo entonces circule.
step-close-clamp = Con los dos brazos sobre material en buen estado: cierre la pinza, levante lo justo y mire si la carga se escurre. Nadie a los lados ni detrás de la carga.
step-tool-off = Suelte la carga según el manual del accesorio, cuando se sostenga por sí misma. Retraiga del todo la pluma, bájela y solo entonces circule.
step-tool-on = Tome la carga según el manual del accesorio y levántela lo justo. Nadie a los lados ni detrás de la carga.
ends-rain = Si llueve, este plan deja de valer: hay que volver a valorar el terreno y los bordes.
ends-frost = Si hiela o deshiela, este plan deja de valer: hay que volver a valorar el terreno, los caminos y las cargas heladas.
ends-digging = Si se excava o rellena cerca del emplazamiento o del camino, este plan deja de valer.
ends-scaffold = Si se modifica un andamio o lugar de descarga, este plan deja de valer hasta que su proyectista vuelva a indicar cuánto soporta.
ends-defect = Con un defecto de la máquina, el accesorio o las eslingas, este plan deja de valer. Deje la carga y hágalo reparar.
ends-shift = Al acabar el turno, este plan deja de valer: revise y mire de nuevo antes del siguiente.
ends-values = Con cualquier valor fuera de lo que se indica aquí, este plan deja de valer.
working-sleeves = Lo que admiten las alargaderas
working-yield-left = Seguridad frente a fluencia que conserva la horquilla gastada
working-clamp-hold = Masa que los dos brazos sujetan por rozamiento
jobfile-examined-order = la inspección siguiente a la del { $date } no puede tocar antes de ese día: { $next }
## Cargas, materiales, eslingado, portones

check-gate = Portones
do-restack = Apile de nuevo para que cada capa quede sobre el palet y sobre la capa de debajo.
load-layer-overhangs = { $layer } sobresale { $distance } del palet; se admite { $allowed }.
load-layer-unsupported = El centro de { $layer } no está sobre el palet: sobresale { $distance }, y se admite { $allowed }.
defect-broken-pallet = El palet está roto: las horquillas pueden atravesarlo.
defect-loose-bands = Los flejes están flojos, cortados o faltan: las capas pueden correrse.
defect-torn-wrap = La envoltura está rota: lo que sujetaba puede caer.
defect-double-stacked = Hay dos bultos uno sobre otro sin atar entre sí: el de arriba puede deslizarse.
defect-leaning = La pila está inclinada, así que su centro no está donde se calculó.
defect-overhanging = Hay piezas que sobresalen del palet: pueden engancharse en bordes y rodapiés.
defect-loose-pieces = Hay piezas sueltas sobre la carga: caerían desde altura.
defect-frozen = La carga puede estar helada y pegada al suelo, o sus piezas entre sí.
defect-wet = La carga está empapada: pesa más de lo que dicen sus papeles y resbala sobre las horquillas.
defect-ice-or-snow = Hay hielo o nieve sobre la carga: pesa, y puede deslizarse.
defect-unknown-contents = Nadie sabe qué contiene, así que no se conocen ni el peso ni el centro.
defect-leaking = La carga pierde líquido: cambian el peso y el centro, y el suelo se vuelve resbaladizo.
defect-bulging = Los lados están abombados: el bulto está cediendo.
do-rewrap = Envuélvala de nuevo, o quite todo lo que no esté sujeto.
do-one-pack = Lleve los bultos de uno en uno.
do-mind-overhang = Mantenga lo que sobresale lejos de todo borde, con un señalista en el lugar de descarga.
do-break-free = Despéguela antes de levantar. Nunca la arranque con la pluma.
do-count-water = Cuente el agua en el peso, o pese la carga, y seque las horquillas.
do-clear-ice = Quite el hielo y la nieve de la carga y de las horquillas.
do-open-or-weigh = Averigüe qué contiene, pésela y busque su centro antes de levantar.
do-stop-leak = Corte la pérdida, limpie el suelo y pese la carga de nuevo.
do-turn-load = Tome la carga con { $face } contra el portahorquillas: su centro queda entonces a { $centre }, { $distance } más cerca.
face-far = la cara que ahora queda lejos de la máquina
face-left = su cara izquierda
face-right = su cara derecha
do-shift-load = Tome la carga { $distance } más hacia { $side }, para que su centro quede en medio de las horquillas.
load-long-no-sag = La carga tiene { $length } de largo, y nadie ha indicado cuánto cuelgan sus extremos.
do-state-sag = Levántela apenas del suelo, mida cuánto cuelgan los extremos por debajo del centro, e indíquelo.
working-sag = Altura sobre el resalte que necesitan los extremos que cuelgan
load-sag-clears = Los extremos cuelgan { $sag } y necesitan { $needed } sobre el borde; la carga pasa { $clear } por encima de él.
load-sag-strikes = Los extremos cuelgan { $sag } y necesitan { $needed } sobre el borde, pero la carga pasaría solo { $clear } por encima de él.
do-carry-higher = Pásela al menos { $clear } por encima del borde.
load-ends-swing = Cuando la máquina gira, los extremos de la carga barren { $radius } desde el centro del eje delantero, y sobresalen { $beside } a cada lado de la máquina.
do-signaller-at-ends = Ponga un señalista que vea los dos extremos, y mantenga a todos fuera de ese círculo.
working-rise = Cuánto sube la superficie en la esquina más baja
load-open-tank = El depósito está abierto. Inclinado { $tilt }, la superficie sube { $rise }; hay { $room } de margen.
load-spills = El depósito abierto se derramaría: inclinado { $tilt }, la superficie sube { $rise }, y solo hay { $room } de margen.
do-keep-level-tank = Manténgalo nivelado: horquillas sin inclinar hacia atrás, a velocidad muy lenta.
do-draw-off = Saque líquido, o ponga una tapa que cierre bien.
load-surges = El depósito está lleno al { $share } y no tiene rompeolas: el líquido golpea al arrancar, frenar o girar. Su desplazamiento en reposo se cuenta en el centro de carga; el golpe, no.
do-creep-tank = Muévase muy despacio, sin frenar ni dar tirones; mejor, llene el depósito o vacíelo.
rigging-fitting-within = { $fitting } recibe { $force }; puede recibir { $limit }.
rigging-fitting-overloaded = { $fitting } recibiría { $force }, más de lo que puede: { $limit }.
rigging-no-hitch = Nadie ha indicado cómo sujetan la carga las eslingas; su límite se ha multiplicado por { $factor }, como si fueran ahorcadas.
do-state-hitch = Indique si las eslingas van en vertical, ahorcadas o en cesta.
rigging-edges-bare = Las eslingas apoyan en cantos vivos sin proteger, que las cortan bajo carga.
rigging-edges-not-stated = Nadie ha indicado sobre qué apoyan las eslingas.
do-protect-edges = Ponga cantoneras entre las eslingas y todo canto, e indíquelo.
rigging-swings = Al oscilar, el centro de la carga llega { $distance } más lejos que a plomo bajo el gancho; la tabla de cargas, el vuelco y la distancia a las líneas cuentan con ello.
rigging-few-tag-lines = Una carga de { $length } de largo necesita { $needed } cuerdas guía, una en cada extremo; indicadas: { $there }.
do-keep-plumb = Mueva la pluma despacio, mantenga el gancho a plomo sobre la carga, y pare mientras oscile.
gate-not-stated = La obra tiene portones, y nadie ha indicado cuáles pasa esta carga.
do-state-gates = Indique los portones que pasa la carga, o una lista vacía si no pasa ninguno.
working-gate-width = Ancho que pasa, con margen a cada lado
working-gate-height = Altura que pasa, con margen por encima
gate-wide-enough = { $gate }: hacen falta { $needed } con margen a cada lado; tiene { $width } de ancho.
gate-narrow = { $gate }: paso demasiado estrecho; hacen falta { $needed } con margen a cada lado, y tiene { $width } de ancho.
gate-high-enough = { $gate }: hacen falta { $needed } de altura en posición de transporte; tiene { $height } de alto.
gate-low = { $gate }: paso demasiado bajo; hacen falta { $needed } en posición de transporte, y tiene { $height } de alto.
gate-height-unknown = { $gate }: no se sabe qué altura alcanza esta carga al transportarla.
do-other-gate = Vaya por otro camino, o divida o gire la carga.
jobfile-unknown-material = no existe el material «{ $material }»
jobfile-hint-materials = Tome un identificador de la lista de materiales de docs/job-files.md, o indique masa o densidad.
jobfile-no-packing = falta packing: un bulto de esto no pesa lo que pesaría el material solo ({ $material })
jobfile-moisture-assumed = { $material }: sin humedad indicada; se cuenta con hasta un { $share } más
jobfile-pallet-larger = el palet apilado mide, { $axis }, { $stacked }: más que el tamaño indicado de la carga, { $stated }
jobfile-fill-too-high = el líquido llega a { $fill } en un depósito de { $height }
jobfile-liquid-heavier = el líquido solo pesa { $liquid }, más que toda la carga: { $mass }
jobfile-outline-crosses = el contorno se cruza a sí mismo o tiene menos de tres esquinas
jobfile-hint-corners-in-order = Indique las esquinas en orden, en un mismo sentido.
jobfile-bad-epsg = «{ $value }» no es un código de sistema de coordenadas
jobfile-site-far = ningún emplazamiento está sobre el terreno del sitio guardado ni cerca: abarca del este { $west } al { $east } y del norte { $south } al { $north }
jobfile-bad-time = «{ $time }» no es una parte del día
jobfile-kind-gate = ningún portón
working-part-volume = Peso de { $part } por volumen
working-part-pieces = Peso de { $part } por piezas
working-centre-ahead = Centro de todas las partes por delante del portahorquillas
working-centre-left = Centro de todas las partes a la izquierda del medio
working-centre-up = Centro de todas las partes sobre la cara inferior
working-liquid-ahead = Cuánto corre el líquido adelante o atrás
working-liquid-left = Cuánto corre el líquido a un lado
working-choker = Límite de una eslinga ahorcada
working-swing = Cuánto sale la carga al oscilar
material-note-solid = Es la densidad del material macizo; los paquetes de barras, tubos y perfiles llevan aire. Indique packing, la parte del bulto que es material, por ejemplo packing = "35 %".
material-note-compressed = Es la densidad suelta; en el palet va prensado y pesa varias veces más. Indique packing, por ejemplo packing = "300 %", o la masa de la etiqueta.
material-note-damp = A menudo se entrega húmedo, y entonces pesa entre un 20 y un 30 % más.
material-note-unit = Es la densidad de la pieza, sin los huecos entre piezas.

material-concrete-normal-weight-hardened = hormigón de densidad normal, endurecido
material-concrete-reinforced-hardened = hormigón armado, endurecido
material-concrete-normal-weight-fresh-wet = hormigón de densidad normal, fresco
material-cement-mortar = mortero de cemento
material-gypsum-mortar = mortero de yeso
material-lime-cement-mortar = mortero mixto de cal y cemento
material-lime-mortar = mortero de cal
material-granite-syenite-porphyry = granito, sienita, pórfido
material-basalt-diorite-gabbro = basalto, diorita, gabro
material-sandstone-greywacke = arenisca, grauvaca
material-limestone-dense = caliza compacta
material-limestone-other = caliza, otras
material-volcanic-tuff = toba volcánica
material-timber-c14 = madera aserrada C14
material-timber-c22 = madera aserrada C22
material-timber-c30 = madera aserrada C30
material-timber-d30 = madera de frondosas D30
material-timber-d50 = madera de frondosas D50
material-concrete-reinforced-fresh-wet = hormigón armado, fresco
material-timber-c16 = madera aserrada C16
material-timber-c24 = madera aserrada C24
material-glued-laminated-timber-gl24h = madera laminada encolada GL24h
material-glued-laminated-timber-gl28h = madera laminada encolada GL28h
material-plywood-softwood = contrachapado de coníferas
material-plywood-birch = contrachapado de abedul
material-chipboard = tablero de partículas (aglomerado)
material-cement-bonded-particle-board = tablero de partículas con cemento
material-osb = tablero OSB de virutas orientadas
material-hardboard = tablero de fibras duro
material-mdf = tablero de fibras de densidad media, MDF
material-softboard-fibreboard = tablero de fibras blando
material-aluminium = aluminio
material-steel = acero, también barras de armado
material-cast-iron = hierro fundido (fundición)
material-copper = cobre
material-lead = plomo
material-zinc = cinc
material-glass-sheet = vidrio en hojas
material-glass-broken = vidrio roto
material-acrylic-sheet = placa acrílica (metacrilato)
material-foamed-glass = vidrio celular
material-slate = pizarra
material-gravel = grava
material-sand = arena
material-aggregate-normal = árido normal
material-aggregate-lightweight = árido ligero
material-blast-furnace-slag-lumps = escoria de alto horno, en trozos
material-cement-bulk = cemento a granel
material-cement-in-bags = cemento en sacos
material-fly-ash = cenizas volantes
material-gypsum-ground = yeso molido
material-lime = cal
material-fresh-water = agua dulce
material-aluminum = aluminio, lista de EE. UU.
material-copper-us-list = cobre, lista de EE. UU.
material-steel-us-list = acero, lista de EE. UU.
material-concrete-normal-weight-light-reinforcement = hormigón de densidad normal, poco armado
material-masonry-grout = hormigón de relleno para muros de bloque
material-brick-masonry = muro de ladrillo
material-concrete-masonry = muro de bloque de hormigón
material-glass-us-list = vidrio, lista de EE. UU.
material-spruce-pine-fir-lumber = madera de pícea, pino y abeto (SPF)
material-southern-yellow-pine-lumber = madera de pino amarillo del sur
material-douglas-fir-larch-lumber = madera de abeto Douglas y alerce
material-hem-fir-lumber = madera de tsuga y abeto
material-mixed-oak = roble, mezcla
material-water-us-list = agua, lista de EE. UU.
material-plywood-us-list = contrachapado, lista de EE. UU.
material-osb-us-list = tablero OSB, lista de EE. UU.
material-gypsum-board = placa de yeso
material-sand-dry = arena seca
material-gravel-dry = grava seca
material-clay-facing-brick-unit = ladrillo cerámico cara vista, pieza
material-engineering-brick-unit = ladrillo de alta resistencia, pieza
material-concrete-brick-unit = ladrillo de hormigón, pieza
material-dense-aggregate-concrete-block = bloque de hormigón de árido denso
material-medium-density-aggregate-block = bloque de hormigón de densidad media
material-lightweight-aggregate-block = bloque de hormigón de árido ligero
material-aerated-autoclaved-concrete-block = bloque de hormigón celular curado en autoclave
material-plasterboard-standard = placa de yeso laminado, normal
material-plasterboard-dense-acoustic-or-fire = placa de yeso laminado densa, acústica o contra fuego
material-sand-damp-loose-bulk = arena húmeda, suelta a granel
material-sand-wet-saturated = arena mojada (saturada)
material-gravel-wet = grava mojada
material-crushed-stone-loose = piedra triturada, suelta
material-topsoil-loose-moist = tierra vegetal, suelta y húmeda
material-clay-excavated-moist = arcilla excavada, húmeda
material-ready-mixed-mortar-wet = mortero preparado, fresco
material-sand-cement-screed = recrecido de mortero de cemento
material-roof-tile-concrete = teja de hormigón
material-roof-tile-clay = teja cerámica
material-mineral-wool-roll = lana mineral en rollo
material-mineral-wool-slab = lana mineral en panel
material-eps-board = panel de poliestireno expandido, EPS
material-xps-board = panel de poliestireno extruido, XPS
material-pir-or-pur-board = panel de poliuretano, PIR o PUR
material-pvc-u-pipe-material = tubería de PVC-U, material
material-hdpe-pipe-material = tubería de PEAD, material
material-ductile-iron-pipe-material = tubería de fundición dúctil, material
material-vitrified-clay-pipe-material = tubería de gres, material
material-concrete-pipe-material = tubería de hormigón, material
material-copper-tube-material = tubo de cobre, material
material-asphalt-rolled = asfalto compactado
material-bitumen = betún asfáltico
material-ceramic-tile = baldosa cerámica
material-porcelain-tile = baldosa de gres porcelánico
material-fibre-cement-sheet = placa de fibrocemento
material-diesel-fuel = gasóleo (diésel)
material-rubble-mixed-demolition-loose = escombro mezclado de demolición, suelto
material-snow-settled = nieve asentada
material-ice = hielo
# Máquinas giratorias
check-slewing = Superestructura giratoria
slewing-not-computed = { $machine } tiene superestructura giratoria: aquí no se calcula cómo se sostiene mientras gira, así que no se puede decir nada
do-slewing = Planifique este izado con la tabla de cargas del fabricante y una persona competente.
jobfile-upper-without-slew = una parte es de tipo «upper», y la máquina no tiene nada que gire

# Tablas en todas sus formas
chart-derated = { $what } Según la tabla de reducción del fabricante, fila para un centro de carga de { $centre }.
chart-beyond-table = El centro de la carga queda a { $centre } de la cara de las horquillas; la tabla de reducción del fabricante acaba en { $last }. No se permite levantarla.
do-centre-nearer = Haga embalar de nuevo la carga o gírela para que su centro quede más cerca de la cara de las horquillas, o use horquillas y tabla para este centro de carga.
chart-other-tyres = La tabla de cargas de { $attachment } es para otros neumáticos ({ $tyres }) que los de esta máquina, así que no vale.
do-chart-for-tyres = Consiga la tabla del fabricante para los neumáticos que lleva la máquina, o haga montar los neumáticos de la tabla.
datum-from-to = medido { $from } { $to }
datum-height-to = { $reach }; altura { $to }
datum-from-tyre-face = desde la cara delantera de los neumáticos delanteros
datum-from-axle = desde el eje delantero
datum-from-frame-front = desde la parte delantera del bastidor
datum-from-pads = desde el centro de los platos de los estabilizadores
datum-from-boom-foot = desde el bulón de la base de la pluma
datum-from-turntable = desde el eje de giro
datum-from-ahead-of-axle = desde un punto a { $distance } por delante del eje delantero
datum-from-behind-axle = desde un punto a { $distance } por detrás del eje delantero
datum-to-load-centre = hasta el centro de carga
datum-to-heel = hasta el talón de las horquillas
datum-to-tip = hasta la punta de las horquillas
datum-to-hook = hasta el gancho
datum-to-head-pin = hasta el bulón de la cabeza de la pluma
working-derating = Capacidad según la tabla de reducción del fabricante, fila para un centro de carga de { $centre }
jobfile-chart-levels-cross = de dos tablas para { $attachment } { $support } cada una admite más desnivel que la otra en una dirección, así que ninguna es la más estricta
jobfile-hint-tell-apart = Las tablas se distinguen por accesorio, apoyo, centro de carga, neumáticos y el desnivel que admiten.
jobfile-chart-height-unknown = la altura se mide hasta el centro de carga, y la tabla no dice a qué altura sobre las horquillas está (load_centre_height)
jobfile-chart-no-pads = el alcance se mide desde los platos de los estabilizadores, y la máquina no los tiene
jobfile-chart-no-turntable = la tabla mide desde el eje de giro, y la máquina no lo tiene
jobfile-chart-line-leaves = la línea de carga { $zone } tiene más capacidad que { $lower } y sale de ella en { $area }, cerca del alcance { $reach } y la altura { $height }
jobfile-hint-line-leaves = Una línea de más capacidad queda dentro de las de menos. Compare vértices y capacidades con la tabla.
jobfile-chart-uncut = lo que queda entre la línea de carga { $zone } y las líneas de dentro no se puede cortar en contornos simples; dibújelo como zonas contiguas
jobfile-table-order = { $key } tiene que subir o bajar de un elemento al siguiente, sin dos iguales (al menos 0,02 m o 0,3° entre ellos)
jobfile-table-empty = no hay cuatro casillas vecinas de la tabla que tengan todas capacidad, así que no se permite nada
jobfile-table-beyond-boom = la tabla llega a una extensión de { $extension }; la pluma se extiende { $most }
jobfile-list-too-long = { $key } tiene { $found } elementos; se leen como máximo { $most }
jobfile-derating-order = el centro de carga { $centre } no queda más allá de { $before }, el nominal o el de la fila anterior
jobfile-derating-rises = la fila para un centro de carga de { $centre } da más que la fila anterior
jobfile-chart-other-tyres = esta tabla es para los neumáticos { $tyres }; el archivo describe { $fitted }. La tabla se conserva y no se usa nunca
jobfile-chart-tyres-unsaid = esta tabla es para los neumáticos { $tyres }, y el archivo no dice cuáles lleva la máquina. La tabla se conserva y no se usa nunca
jobfile-chart-tips = la zona { $zone } dice { $capacity }; con las masas y centros de este archivo, { $tipping } vuelcan la máquina con alcance { $reach } y altura { $height }
jobfile-hint-tips-pounds = La misma cifra en libras no la volcaría. Mire si la tabla está en lb, y si en este archivo falta alguna masa de la máquina o es demasiado pequeña.
jobfile-hint-tips = Compare la capacidad, el contorno y la referencia con la tabla, y las masas y centros de la máquina con su placa.
jobfile-chart-perhaps-pounds = la zona { $zone } no concuerda con sus vecinas: leída como { $capacity }; la misma cifra en libras sería { $other }, y concordaría
jobfile-chart-perhaps-kilograms = la zona { $zone } no concuerda con sus vecinas: leída como { $capacity }; la misma cifra en kilogramos sería { $other }, y concordaría
jobfile-chart-rises-reach = la capacidad sube con el alcance: la zona { $zone } con { $capacity } queda detrás de { $other } con { $less }, desde alcance { $reach } a la altura { $height }
jobfile-chart-rises-height = la capacidad sube con la altura: la zona { $zone } con { $capacity } queda encima de { $other } con { $less }, con alcance { $reach } desde la altura { $height }
jobfile-hint-rises = Compare con la tabla. Si en ella es así, dígalo con rises = "quién lo confirmó y con qué".

# Lo que descansa en las horquillas, lo que lleva una cuchara, cuándo cuenta un registro
sleeves-off = Las horquillas del archivo de la máquina y su diagrama son con alargaderas, y este izado se hace sin ellas.
sleeves-not-stated = El archivo de la máquina declara alargaderas en estas horquillas, y nadie ha indicado si están puestas.
do-entry-without-sleeves = Dé a las horquillas una entrada propia sin alargaderas, con sus masas y su diagrama, o ponga las alargaderas.
do-state-sleeves = Mire si las alargaderas están puestas e indíquelo en el izado.
forks-load-narrow = Lo que descansa en las horquillas tiene { $width } de ancho; para alcanzar las dos debe tener { $needed }, contando horquillas de 10 cm.
do-narrower-forks = Acerque las horquillas, o ponga la carga en un palet que alcance las dos.
working-over-both = Ancho sobre las dos horquillas
forks-centre-far = El centro de la carga puede estar a { $centre } sobre una longitud de { $length }: cerca del límite de { $limit }.
forks-centre-at-tips = El centro de la carga puede estar a { $centre } sobre una longitud de { $length }: más allá de { $limit } queda demasiado cerca de las puntas.
do-check-seated = Compruebe que la carga apoya contra el talón de las horquillas y está sujeta, con las horquillas inclinadas hacia atrás.
working-centre-limit = Centro más alejado sobre horquillas o alargaderas
bulk-unweighed = No se indica cuánto pesan los { $bulk } de material suelto.
do-state-bulk-density = Indique el material de la cuchara, o su densidad, tan húmedo como venga.
bulk-mass-covers = { $bulk } de material suelto pesan hasta { $mass }; la carga se toma como { $stated }.
bulk-mass-short = { $bulk } de material suelto pesan hasta { $mass }; la carga se declara de { $stated } como máximo, que es demasiado poco.
do-bulk-mass = Declare al menos { $mass } para la carga, o cargue menos.
working-bulk-mass = Masa del material suelto
other-asks = Aquí no se sabe cómo sujeta la carga { $attachment }, cuándo se inspeccionó ni qué límites propios tiene.
do-other-manual = Siga el manual de este accesorio, y haga que una persona competente lo mire y responda de cómo sujeta la carga.
gate-tool-unknown = { $gate }: no se indicó el ancho del accesorio; sin él hacen falta { $needed } y hay { $width }.
do-state-tool-width = Mida el ancho del accesorio y anótelo en el archivo de la máquina.
forks-closed = La horquilla de { $side } forma { $angle } con su parte vertical. Por debajo de { $limit } se retira de servicio.
forks-shank-bent = La parte vertical de la horquilla de { $side } se desvía de la recta un { $bent } de su longitud. A partir del 0,5 % se retira de servicio.
forks-wear-unknown = No se sabe si las horquillas están sanas: sin medir o sin mirar: { $looks }.
look-shank = rectitud de la parte vertical
identity-seen-long-ago = La máquina se leyó el { $seen }, más de 7 días antes del trabajo del { $date }.
identity-seen-ahead = Se dice que la máquina se leyó el { $seen }, después del trabajo del { $date }.
without-crack = Sin mirar si hay grietas: no se puede decir
without-width = Sin él no se puede decir si pasa un portón, y las líneas se guardan como de un accesorio de 3 m
field-blade-shank-bent = Cuánto se aparta de la recta la parte vertical
field-blade-shank-length = Longitud medida de la parte vertical
field-tool-width = Ancho del propio accesorio, con los brazos abiertos
field-lift-bulk-density = Densidad del material suelto, tan húmedo como venga
field-lift-bulk-material = Material suelto de la cuchara, por su id
## Diagramas que prohíben o se contradicen, y la consulta rápida
jobfile-chart-bad-area = un contorno declarado como no permitido no tiene área o se cruza a sí mismo
jobfile-chart-level-more = de dos tablas que solo se distinguen por el desnivel que admiten, la de más desnivel permite más: { $capacity } en la zona { $zone }, donde la de menos desnivel permite { $less }, cerca de alcance { $reach } y altura { $height }
jobfile-chart-level-nowhere = de dos tablas que solo se distinguen por el desnivel que admiten, la de más desnivel permite más: { $capacity } en la zona { $zone }, donde la de menos desnivel no muestra nada, cerca de alcance { $reach } y altura { $height }
jobfile-hint-level-more = Una máquina desnivelada no carga más que nivelada. Compare desniveles, capacidades y contornos con ambas tablas; dibuje con los mismos vértices el borde que comparten.
cli-no-people = esto es una cesta, jaula o plataforma para personas: aquí no se planifica ningún izado con ella ni se lee tabla alguna para ella
cli-hint-no-people = Elevar personas exige una máquina homologada para ello, el manual de su fabricante y una persona competente.
## Cargas apiladas, colgadas y líquidas tal como están; valores de los que alguien responde
load-layer-over-layer = { $layer } sobresale { $distance } de { $below }, que está debajo; se admite { $allowed }.
load-layer-not-on-layer = El centro de { $layer } no está sobre { $below }, que está debajo: sobresale { $distance }, y se admite { $allowed }.
defect-wet-not-counted = La carga está empapada, y su peso es el de piezas secas o el de los papeles: no se sabe cuánto pesa el agua.
do-weigh-wet = Pésela tal como está, o indique la humedad de cada pieza.
load-tilts = El terreno inclina el depósito hasta { $stands }; su líquido se calculó solo con { $tilt }.
do-state-tilt = Indique para el líquido una inclinación de al menos { $tilt }, o nivele el emplazamiento.
rigging-tips = El centro de la carga puede estar a { $off } del medio, y los puntos de enganche a { $half }: la carga vuelca en sus eslingas.
rigging-picks-unknown = El centro de la carga puede estar a { $off } del medio; según la altura y el ángulo de los ramales los puntos de enganche están a { $half }, y nadie los ha indicado.
do-hook-over-centre = Enganche sobre el centro de la carga, o use puntos de enganche que lo tengan entre ellos.
do-state-picks = Mida la distancia entre los puntos de enganche a lo largo de la carga e indíquela.
rigging-choked = Las eslingas van en lazo; { $factor } de su límite vale solo si el ángulo del lazo es de al menos { $angle }.
do-check-choke = Compruebe el ángulo del lazo; por debajo de ese ángulo, y siempre que la etiqueta de la eslinga indique menos, rige el límite de la etiqueta.
working-lever = Parte del peso en la eslinga más cercana
jobfile-below-usual = { $key } es menos que lo habitual, { $usual }, y nadie responde de ello
field-answered-value = El valor, cuando alguien responde de él
field-answered-by = Nombre y función de quien responde de menos que lo habitual
field-rigging-picks = Distancia entre los dos puntos de enganche a lo largo de la carga
# Outline
jobfile-narrower-than-tyres = el ancho total es { $width }, y por fuera de los neumáticos son { $tyres }
jobfile-hint-over-tyres = La vía se mide de centro a centro de los neumáticos; el ancho total, por fuera de todo.

# Frame levelling
field-levelling = Nivelación del bastidor: gira sobre el eje delantero
field-levelling-pin = Altura del bulón sobre el que se nivela el bastidor
field-levelling-range = Cuánto se puede nivelar el bastidor a cada lado
field-levelling-error = Cuánto puede errar el indicador de nivel de la cabina
cli-no-levelling = la máquina no tiene nivelación del bastidor
cli-levelled-over = el bastidor se puede nivelar { $range } como máximo
jobfile-shorter-than-tyres = el frente de la máquina está a { $front } por delante del eje delantero, y sus neumáticos delanteros llegan a { $tyres }
jobfile-hint-radius = ¿Se escribió el diámetro del neumático como radio? El frente es el de bastidor y ruedas, sin accesorio.

cli-both-stiffnesses = falta { $other } al lado
cli-stability-on-springs = Sobre apoyos que ceden, en la peor dirección, empieza a volcar con { $tilt }.
cli-stability-forces = Nivelada, los apoyos reciben, delantero izquierdo, delantero derecho, trasero izquierdo, trasero derecho: { $forces }.
cli-stability-not-on-springs = Sobre apoyos que ceden tanto no se sostiene nivelada, o no se puede decir.

# Viento y marcha, solos
cli-wind-named = parte indicada: { $name }
cli-wind-force = Una ráfaga de { $gust } presiona con { $pressure }: { $force } como máximo, sople de donde sople.
cli-wind-line = Hacia { $side }: { $moment } con viento que empuja { $towards } respecto a la marcha adelante, positivo a la izquierda. Inclinación que queda { $tilt }, se pide { $required }.
cli-wind-limit = Ahí alcanza justo con ráfagas de { $gust } a una altura de { $height }, que es una media de pronóstico de { $mean } (10 minutos, a 10 m, campo abierto; según EN 1991-1-4, de memoria).
cli-wind-limit-high = Ahí alcanza justo con ráfagas de { $gust }. No se da media de pronóstico: el perfil del viento llega hasta { $height }.
cli-wind-short-calm = Hacia { $side } no queda la inclinación que se pide ni sin viento.
cli-wind-no-limit = Ningún viento la vuelca hacia ese lado.
cli-wind-not-a-limit = Calculado con neumáticos y placas que ceden, según tamaño y presión. Primero vale el límite de viento del fabricante. Junto a edificios las ráfagas son más fuertes de lo que dice el perfil.
cli-calc-governs = Lo que decide es { $side }.
cli-case-at-rest = Parada
cli-case-braking = Frenando
cli-case-starting = Arrancando con tanta fuerza como frena
cli-case-turning-left = En curva a la izquierda
cli-case-turning-right = En curva a la derecha
cli-case-braking-left = Frenando en curva a la izquierda
cli-case-braking-right = Frenando en curva a la derecha
cli-case-kerb = Parada en seco por un bordillo
cli-case-wheel-drop = Caen ruedas en una rodera
cli-travel-line = { $case }, hacia { $side }: queda una inclinación de { $tilt }, el { $share } de la que hay parada.
cli-travel-energy = { $case }, hacia { $side }: queda el { $share } de la energía que la vuelca.
cli-travel-governs = Donde menos queda: { $case }, hacia { $side }.
cli-travel-tips = No queda nada, puede volcar: { $case }, hacia { $side }.
cli-travel-kerb-speed = Por debajo de { $speed } no vuelca si algo la para en seco, sobre neumáticos que ceden.
cli-travel-rear = El eje trasero de dirección lleva el { $rest } del peso parada, y el { $least } como mínimo.
cli-travel-rear-lifts = El eje trasero de dirección lleva el { $rest } del peso parada; se levanta y nada dirige la máquina.
cli-travel-stops = Se detiene en { $distance }, con { $time } s hasta que agarra el freno y sin más adherencia que la del suelo mojado.
cli-travel-never-stops = No se detiene: la pendiente tira tanto como se puede retener sin deslizar, volcar ni perder la carga.
cli-travel-slides = Los neumáticos patinan: necesitan un rozamiento de { $needed } y se indica { $friction }. Lo que pare a una máquina que patina puede volcarla.
cli-travel-slides-first = Los neumáticos agarran: necesitan un rozamiento de { $needed } y se indica { $friction }. Patinarían antes de volcar; lo que pare a una máquina que patina puede volcarla.
cli-travel-tips-first = Los neumáticos agarran: necesitan un rozamiento de { $needed } y se indica { $friction }. Volcaría antes de patinar.
cli-travel-load-slides = La carga resbala sobre las horquillas: necesita un rozamiento de { $needed } y se indica { $friction }. Inclínela hacia atrás, átela o vaya más despacio.
cli-travel-load-stays = La carga no resbala sobre las horquillas: necesita un rozamiento de { $needed } y se indica { $friction }.
cli-travel-load-off = La carga no se apoya en las horquillas: se cae.
cli-travel-cannot-tell = las masas o los lugares de la máquina no dan ningún número: no se puede decir nada
cli-travel-carry = Frenar, arrancar y girar sobre neumáticos que ceden, contando un tercio más por si empieza de golpe; bordillo y rodera también sobre neumáticos que ceden. Primero valen la posición de transporte, las velocidades y las pendientes del fabricante.
# Fit of a machine, tilting platform, reserve of charts
cli-fit-nothing = no se declara nada de la máquina: ni carga por eje, ni masa, ni ensayo de vuelco, ni punto de la tabla de cargas
cli-hint-fit-nothing = Empiece por las cargas por eje en una báscula, con la pluma retraída, y otra vez con la pluma extendida.
cli-fit-no-ask = no se pregunta por ningún lugar
cli-fit-no-part = la máquina no tiene esa parte
cli-fit-bad-range = el intervalo termina antes de empezar, o un valor no es posible
cli-fit-impossible-mass = una masa debe ser mayor que cero y menor que 200 t
cli-fit-impossible-centre = el centro se declara entre { $low } y { $high }; solo puede estar entre { $least } y { $most }
cli-fit-boom = la pluma va de { $low } a { $high } y se extiende { $longest } como máximo
cli-fit-load-holds = esta carga está detrás de la línea de vuelco delantera y no vuelca nada hacia delante
cli-fit-bad-pitch = la máquina se puede pesar con el morro hasta 45° hacia arriba o hacia abajo, y necesita una distancia entre ejes mayor que cero
cli-fit-contradiction = ninguna máquina es así; estas declaraciones se contradicen, y sin una cualquiera de ellas el resto no: { $names }
cli-hint-fit-contradiction = Compruebe cada una: posición de la pluma, accesorio, combustible y lastre al pesar, la unidad, la incertidumbre, el origen de medida de la tabla.
cli-fit-cannot-tell = el cálculo no llegó a término: no se puede decir nada
cli-fit-side-needs = para la inclinación lateral también hace falta { $key }
cli-fit-zone = tabla de cargas para { $attachment }, zona { $zone }
cli-fit-unnamed = { $what } n.º { $number }
cli-fit-part-range = { $name } ({ $what })
cli-fit-what-axles = cargas por eje
cli-fit-what-total = masa de la máquina
cli-fit-what-tipping = ensayo de vuelco
cli-fit-what-charted = punto de la tabla de cargas
cli-fit-what-part = parte
cli-fit-what-ask = lugar
cli-fit-word-mass = masa
cli-fit-word-ahead = centro hacia delante
cli-fit-word-left = centro hacia la izquierda
cli-fit-word-up = altura del centro
cli-fit-word-front = eje delantero
cli-fit-word-rear = eje trasero
cli-fit-word-whole = máquina entera
cli-fit-word-tipping = carga de vuelco
cli-fit-word-other = otro
cli-fit-residuals = En la máquina que mejor encaja:
cli-fit-residual = { $name }, { $of }: declarado { $stated }, encaja con { $fitted }; { $share } de su incertidumbre
cli-fit-asked = { $name }: centro de carga con alcance { $reach } desde la cara delantera de los neumáticos, altura de elevación { $height }.
cli-fit-between = En terreno nivelado empieza a volcar hacia delante con no menos de { $lower } y no más de { $upper }; a medio camino { $middle }, que es una estimación y no un límite.
cli-fit-at-least = En terreno nivelado empieza a volcar hacia delante con no menos de { $lower }; nada de lo declarado dice cuánto más.
cli-fit-no-lower = Nada de lo declarado impide que ahí vuelque hacia delante sin carga.
cli-fit-not-forward = Una carga ahí no está por delante de la línea de vuelco delantera y no la vuelca hacia delante.
cli-fit-side = Con { $mass } empieza a volcar hacia un lado con una inclinación entre { $least } y { $most }, en la peor dirección.
cli-fit-no-height = Inclinación lateral: no identificable. Las pesadas en terreno nivelado son iguales con un centro de gravedad alto o bajo. Pésela con un eje levantado, o declare un intervalo de la altura del bastidor.
cli-fit-no-sideways = Inclinación lateral: no identificable. No se declara cuánto se aparta hacia un lado el centro del bastidor.
cli-fit-next = Qué medir ahora; lo que dejaría entre los límites:
cli-fit-next-axles = las dos cargas por eje, en vacío, pluma a { $angle } y extendida { $extension }: unos { $width }
cli-fit-next-tipping = un ensayo de vuelco a { $angle }, extendida { $extension }, solo por el fabricante o bajo una persona competente: unos { $width }
cli-fit-next-attachment = el accesorio solo: unos { $width }
cli-fit-note = Los límites valen lo que vale lo declarado, con apoyos rígidos y terreno nivelado. No sustituyen a ninguna tabla de cargas: rigen el manual del fabricante y la tabla de la cabina.
cli-platform-unladen = este ensayo se hace sin carga
cli-platform-laden = este ensayo se hace con carga
cli-platform-boom-up = este ensayo se hace con la pluma por encima de la posición de transporte
cli-platform-boom-down = este ensayo se hace con la pluma en la posición de transporte
cli-platform-nose-down = Morro cuesta abajo
cli-platform-tail-down = Cola cuesta abajo
cli-platform-left-edge = Arista de vuelco izquierda a través de la pendiente
cli-platform-right-edge = Arista de vuelco derecha a través de la pendiente
cli-platform-tips = { $turned }: vuelca hacia { $side } con una pendiente de { $slope }.
cli-platform-never = { $turned }: no vuelca antes de que la plataforma quede vertical.
cli-platform-worst = En la peor orientación vuelca hacia { $side } con una pendiente de { $slope }; cuesta abajo queda entonces { $azimuth } a la izquierda del frente.
cli-platform-more = Es al menos lo que pide el ensayo { $number }, de { $low } a { $high }.
cli-platform-less = Es menos de lo que pide el ensayo { $number }, de { $low } a { $high }.
cli-platform-between = No se puede decir si basta para el ensayo { $number }: pide de { $low } a { $high }.
cli-platform-note = Las pendientes que pide { $standard } son de memoria y de poca confianza: consiga la norma antes de usarlas. Calculado con neumáticos y placas que ceden, según tamaño y presión; un cálculo no sustituye a ningún ensayo.
cli-reserve-no-chart = no hay tabla de cargas para lo pedido; la máquina tiene: { $known }
cli-reserve-title = { $attachment }, { $support }, centro de carga { $centre }: { $count } de { $cells } celdas figuran en la tabla y se alcanzan.
cli-reserve-nothing = La pluma no llega a ninguna parte de esta tabla.
cli-reserve-ratio = Razón menor { $ratio }: capacidad { $charted }, vuelca hacia delante con { $tipping }, con alcance { $reach } y altura { $height }.
cli-reserve-fore-aft = Menor inclinación restante hacia delante o atrás con la carga de la tabla: { $tilt }, con { $charted }, alcance { $reach } y altura { $height }.
cli-reserve-sideways = Menor inclinación restante hacia un lado: { $tilt }, con { $charted }, alcance { $reach } y altura { $height }.
cli-reserve-tips = Imposible en { $count } celdas: la capacidad de la tabla vuelca la máquina nivelada. La tabla o las masas y centros de la máquina están mal escritos; no los use.
cli-reserve-below = En { $count } celdas la vuelca hacia delante menos de { $margin } veces la capacidad de la tabla.
cli-reserve-keeps = Todas las celdas mantienen { $margin } veces la capacidad de la tabla.
cli-reserve-not-judged = No se declaró ningún margen: los números se muestran, no se juzgan.
cli-reserve-ahead-only = La máquina gira su parte superior; esto vale solo con la pluma recta hacia delante.
cli-reserve-note = Máquina nivelada, apoyos rígidos, sin viento, horquillas niveladas. Rigen el manual del fabricante y la tabla de la cabina; esto no autoriza ninguna elevación.
cli-reserve-bad-margin = un margen es un número de 1 a 10
cli-landing-nothing = no se declara nada que soporte la carga: [rating], [deck] o [slab]
cli-landing-lying-larger = lo que hay allí es mayor que el lugar de descarga: revise su along y su across, y la superficie
cli-landing-carries = { $part }: { $demand } de { $limit }, { $share } utilizado
cli-landing-too-much = { $part }: { $demand }, más que { $limit } ({ $share })
cli-landing-not-known = { $part }: { $demand }, y no se sabe lo que soporta: no se puede determinar
cli-landing-governs = Lo que manda: { $part }.
cli-landing-fits = La mayor carga de esta forma que cabe: { $mass }.
cli-landing-half-fits = Medio palet, { $mass }, cabe: tráigalo en dos viajes y retire la primera mitad antes de que llegue la segunda.
cli-landing-half-does-not = Medio palet, { $mass }, tampoco cabe.
cli-landing-ask = Pregunte lo que no se sabe a quien proyectó el lugar de descarga; hasta entonces no se deposita nada allí.
cli-landing-hold-down = Una vigueta se levanta en un apoyo: hay que sujetarla allí con { $force }.
cli-landing-note = Aquí no se comprueba lo que hay debajo del tablero o forjado, sus apoyos ni su arriostramiento. La capacidad que declara quien lo proyectó va primero.

working-tilt-on-tyres = Inclinación restante con neumáticos que ceden
working-factor-on-tyres = Factor de carga con neumáticos que ceden: la carga que agota la inclinación

cli-travel-boom-up = Alto: no circule nunca con la pluma por encima de la posición de transporte del fabricante.
cli-travel-hung = Una carga colgada oscila, y eso no se calcula: no se puede decir. Solo dentro de los límites del fabricante para circular con carga colgada.
cli-travel-none-left = { $case }, hacia { $side }: no queda nada, puede volcar.
cli-travel-short = Demasiado poco: { $case }, hacia { $side }, deja { $tilt } de inclinación; se piden { $required }.
cli-travel-straight = No se indica radio: los giros no se calculan.

check-contacts = Ruedas y momentos
check-steering = Peso en la dirección
check-sudden = Parada o caída brusca
wind-turns = { $what } Posición y peso soportan { $gust } en altura (media prevista a 10 m: { $mean }).
contacts-pressed = Todas las ruedas o placas siguen apoyadas; la menos cargada, { $wheel }: { $force }, el { $share } de lo que lleva a nivel.
contacts-light = { $wheel } puede quedar casi sin peso: { $force }, el { $share } de lo que lleva a nivel.
contacts-lifted = { $wheel } puede despegarse del suelo.
contacts-no-number = Las fuerzas bajo las ruedas no dan ningún número; no se puede decir nada de ellas.
contacts-ratio = { $what } Lo que sujeta es { $ratio } veces lo que vuelca hacia { $side }.
do-mind-light = { $wheel }: una rueda o placa que pierde peso es lo primero que se ve de un vuelco. Que alguien la vigile desde lugar seguro, y siga solo mientras esté bien apoyada; si se levanta, baje y recoja despacio, y averigüe la causa.
working-side-moments = Momentos hacia { $side }: lo que sujeta frente a peso y viento que vuelcan
working-least-force = { $wheel }: fuerza mínima frente a la que lleva a nivel, pluma en transporte, sin carga
steering-enough = El { $share } del peso va en el eje trasero, que dirige, en posición de transporte; lo usual es { $required }.
steering-light = Solo el { $share } del peso va en el eje trasero, que dirige, en posición de transporte; lo usual es { $required }.
steering-cannot-tell = El peso sobre el eje trasero no da ningún número.
do-steer-carefully = Circule al paso, frene y arranque con suavidad y no cuente con giros cerrados; o lleve menos carga.
working-steering = Parte del peso en el eje trasero: a nivel, parada, pluma en transporte, carga máxima y más alejada
sudden-borne = Ni una parada brusca de la bajada ni una pérdida brusca de la carga la vuelcan.
sudden-stop-tips = Una bajada parada de golpe puede apretar con el doble del peso de pluma y carga. Soporta hacia { $side } { $factor } veces: una parada en medio segundo desde { $speed }.
sudden-cannot-tell = Lo que deja una parada o caída brusca no da ningún número.
sudden-drop-tips = Si la carga falta de golpe, puede volcar hacia { $side } al rebotar la pluma; no debe soltarse de golpe más del { $share } de la carga.
do-lower-slowly = Baje despacio y pare con suavidad, nunca de golpe.
do-set-down-softly = Deposítela con suavidad hasta que horquillas o gancho queden libres; nunca la deje resbalar ni caer.
working-sudden-stop = Bajada parada de golpe: inclinación que queda con el doble del peso de pluma, accesorio y carga, y el múltiplo que soporta
working-sudden-drop = Carga que falta de golpe: inclinación con el doble del cambio, y energía, frente a lo que hay sin la carga
descent-ahead = cuesta abajo hacia delante
descent-ahead-left = cuesta abajo hacia delante a la izquierda
descent-left = cuesta abajo hacia la izquierda
descent-behind-left = cuesta abajo hacia atrás a la izquierda
descent-behind = cuesta abajo hacia atrás
descent-behind-right = cuesta abajo hacia atrás a la derecha
descent-right = cuesta abajo hacia la derecha
descent-ahead-right = cuesta abajo hacia delante a la derecha
tolerance-load-mass = Más carga
tolerance-load-aside = Centro de carga a un lado
tolerance-slope = Más pendiente
tolerance-gust = Ráfaga más fuerte
tolerance-wheel = Una rueda o placa más baja
tolerance-together = Todo a la vez, en pasos de { $share } de carga, { $aside }, { $slope }, { $gust }, { $wheel }
tolerance-of-mass = { $amount } ({ $share })
tolerance-of-gust = hasta { $amount } (media { $mean })
tolerance-plain = { $amount }
tolerance-steps = { $amount } de un paso
tolerance-not-before = no antes de { $amount }
tolerance-way = { $check }: { $way }
tolerance-no-way = { $check }
tolerance-nothing = –
ui-tolerances = Cuánto más soporta
ui-tolerance-what = Una cosa más
ui-tolerance-alone = Resto según plan
ui-tolerance-at-worst = Resto en lo peor
ui-tolerance-turns = Qué lo cambia
ui-tolerance-note = Para quien planifica: hasta dónde puede errar un dato. No es permiso para salirse del plan; el límite de viento del fabricante sigue valiendo.
## Neumáticos, bloqueo del eje y la máquina tal como está hoy
jobfile-least-above-mass = least, { $least }, es más que mass, { $mass }
jobfile-hint-least = mass es lo más que puede pesar esta parte; least, lo menos.
jobfile-rim-too-large = una llanta de { $rim } no cabe en un neumático de { $diameter }
jobfile-hint-rim = El diámetro de la llanta es el último número de la medida del flanco, casi siempre en pulgadas; radius es la mitad del diámetro del neumático entero.
jobfile-stiffness-of-no-pressure = una rigidez de { $stiffness } vale para una presión, y la presión es desconocida
jobfile-hint-stiffness = Mida la presión y compárela con la de la rigidez, o quite stiffness.
jobfile-lock-angle-misplaced = lock_angle es para un eje que se bloquea por encima de un ángulo de la pluma, y el bloqueo de este es «{ $lock }»
jobfile-hint-lock-angle = Quite lock_angle, o escriba lock = "above-boom-angle" si así lo dice el manual.
jobfile-lock-angle-outside-boom = el eje se bloquea por encima de un ángulo de la pluma de { $angle }, y la pluma va de { $low } a { $high }
jobfile-axle-never-locks = alguien probó el bloqueo del eje trasero, y nada bloquea el de { $machine }: lock = "never" en su archivo
jobfile-hint-axle-never-locks = Quite axle_lock_tried, o corrija lock en el archivo de la máquina según el manual.
jobfile-listed-twice = «{ $word }» está dos veces en { $key }
jobfile-hint-listed-twice = Quite una, ¿o era otra?
jobfile-no-air = el neumático { $wheel } no tiene presión: está desinflado
jobfile-no-body-of-that-name = el archivo de { $machine } no tiene ninguna parte con el nombre «{ $name }»
jobfile-bodies-of-one-name = { $count } partes de la máquina tienen el nombre «{ $name }», y no queda claro cuál no está puesta
jobfile-hint-bodies-of-one-name = Dé a cada una su propio nombre en el archivo de la máquina.
jobfile-no-body-left = sin eso, a la máquina no le queda ninguna parte del tipo { $kind }
jobfile-hint-no-body-left = Ponga lo que hay en su lugar como [[machine.added]]; si una sola parte es el conjunto entero, divídala en el archivo de la máquina.
jobfile-no-levelling = el bastidor no se puede nivelar: { $machine } no tiene nivelación del bastidor
jobfile-hint-no-levelling = Quite levelled, o describa [levelling] en el archivo de la máquina si la lleva.
jobfile-levelled-on-pads = el bastidor se nivela respecto del eje delantero, con los neumáticos apoyados, y este izado se hace { $support }
jobfile-hint-levelled-on-pads = Ahí nivelan los platos: quite levelled.
jobfile-axle-not-operators = el operador no puede bloquear el eje trasero de { $machine }: su bloqueo es «{ $lock }»
jobfile-hint-axle-not-operators = Quite axle_locked, o escriba lock = "operator" en el archivo de la máquina si así lo dice el manual.
jobfile-front-tyres-misplaced = front_tyres dice cómo quedan los neumáticos delanteros con los estabilizadores bajados, y este izado no se hace sobre estabilizadores
jobfile-hint-front-tyres = Quite front_tyres, o escriba support = "stabilizers".
field-body-least = Masa mínima de esta parte, si no es siempre la misma
field-tyre-rim = Diámetro de la llanta
field-tyre-stiffness = Rigidez vertical del neumático a su presión
field-lock-angle = Ángulo de la pluma por encima del cual el eje trasero se bloquea solo, o «unknown» (desconocido)
field-axle-lock-tried = Quién probó hoy el bloqueo del eje trasero y vio que el eje queda bloqueado
field-flat = Neumáticos que se encontraron desinflados
field-measured-pressures = Presiones de los neumáticos medidas hoy
field-measured-pressure = Presión de este neumático medida hoy
field-without-bodies = Partes del archivo de la máquina que hoy no están puestas
field-added = Lo que hoy lleva la máquina además de lo que dice su archivo
field-lift-levelled = Si se nivela el bastidor antes de levantar la pluma
field-lift-axle-locked = Si el operador bloquea el eje trasero antes de levantar la pluma
field-lift-front-tyres = Neumáticos delanteros con los estabilizadores bajados: «clear» (en el aire) o «touching» (apoyan)
# Fuerzas en los apoyos
cli-rear-roll-free = un eje trasero que puede oscilar sigue el terreno: el ángulo se indica solo para uno bloqueado
cli-rear-roll-over = el eje trasero gira { $range } como máximo
cli-roll-on-pads = un eje que no lleva la máquina no guarda ningún ángulo: esto es para una máquina sobre sus neumáticos
cli-reactions-weight = La máquina y la carga pesan { $weight }.
cli-reactions-rigid = Sobre apoyos rígidos:
cli-reactions-soft = Sobre neumáticos y placas que ceden:
cli-reactions-contact = { $contact }: { $force }, { $share } del peso
cli-reactions-light = { $contact }: { $force }, { $share } del peso. Poco cargado: menos de { $limit }
cli-reactions-in-the-air = { $contact }: en el aire, no lleva nada
cli-reactions-attitude = Bastidor respecto a la horizontal: { $roll }, { $pitch }
cli-roll-left = lado izquierdo { $angle } abajo
cli-roll-right = lado derecho { $angle } abajo
cli-pitch-down = morro { $angle } abajo
cli-pitch-up = morro { $angle } arriba
cli-reactions-turn-left = Eje trasero respecto al bastidor: extremo izquierdo { $turn } abajo
cli-reactions-turn-right = Eje trasero respecto al bastidor: extremo derecho { $turn } abajo
cli-reactions-stop = El eje trasero llega a su tope de { $range }: no sujeta nada en lo que se pueda confiar
cli-reactions-steers = El eje trasero, que dirige, lleva { $share } del peso
cli-reactions-tips = Vuelca: ninguna posición la sostiene
cli-reactions-cannot-tell = No se puede decir: el cálculo no encontró ni posición ni vuelco
cli-reactions-line = Hacia { $side }: lo que sujeta es { $ratio } veces lo que vuelca.
cli-reactions-line-none = Hacia { $side }: casi nada la vuelca.
cli-reactions-line-tips = Hacia { $side } vuelca: lo que sujeta es solo { $ratio } veces lo que vuelca.
cli-reactions-stands = Tal como se describe, se sostiene.
cli-reactions-not-stands = No se sostiene, o no se puede decir.
cli-reactions-note = Fuerzas en reposo, sin viento. Que se sostenga no es un margen: valen el manual del fabricante y la tabla de la cabina.
working-holds = Momento de todas las partes que sujetan, respecto a la línea de vuelco
working-overturns = Momento de todas las partes que vuelcan, respecto a la misma línea
working-moment-ratio = Lo que sujeta entre lo que vuelca
working-weight = Peso de la máquina y la carga
working-seen-centre = Dónde el peso corta el plano del suelo, { $axis }
working-contact-force = Fuerza en el apoyo: { $contact }
contact-front-left = delantero izquierdo
contact-front-right = delantero derecho
contact-rear-left = trasero izquierdo
contact-rear-right = trasero derecho
cli-travel-wind-without-gust = lo que el viento ve de la carga cuenta solo con una ráfaga
cli-travel-bad-time = { $found } no es un tiempo hasta que agarra el freno: escriba segundos de 0 a 10, como en "3 s"
cli-travel-no-wind = No se indica ráfaga: el viento no se calcula.
working-turning = Tirón hacia el centro del giro, en proporción a la gravedad
working-sudden = Un tercio más, por si empieza de golpe
working-apparent = Tirón que nota la máquina, en proporción a la gravedad
working-tilt-soft = Inclinación que queda sobre apoyos que ceden
working-energy = Energía que la vuelca sobre la línea, al menos
working-trip = Velocidad por debajo de la cual nada que la pare en seco la vuelca
working-drop = Inclinación que queda si caen ruedas: girada el doble de lo que piden los apoyos bajados
working-drop-energy = Energía que queda si caen ruedas
working-stopping = Distancia hasta parar
jobfile-tips-forward-empty = vacía, con { $attachment } y la pluma en posición de transporte, el centro de gravedad de la máquina queda { $by } por delante del eje delantero: se levantaría el eje trasero y volcaría
jobfile-tips-back-empty = vacía, con { $attachment } y la pluma en posición de transporte, el centro de gravedad de la máquina queda { $by } por detrás del eje trasero: se levantaría el eje delantero y volcaría
tolerance-fact = { $alone }, lo demás como se planeó; { $at_worst }, lo demás en lo peor ({ $turns })
tolerance-fact-at-worst = { $at_worst }, lo demás en lo peor ({ $turns })

## Things, zones, digs, what is buried

thing-clear = { $thing }: todas las partes quedan al menos a { $distance }; hacen falta { $required }.
thing-near = { $thing } estorba: la máquina, la pluma o la carga llega a { $distance }; hacen falta { $required }.
thing-height-unknown = { $thing }: no se sabe su altura, y en planta la máquina, la pluma o la carga llega a { $distance } (hacen falta { $required }).
thing-not-checked = { $thing }: no se comprobó la distancia: { $why }
things-far = Fuera de alcance, haga lo que haga la pluma: { $count ->
        [one] una cosa
       *[other] { $count } cosas
    }.
do-thing-away = Sitúese al menos { $distance } más lejos, o haga que lo retiren.
do-measure-thing = Mida su altura e indíquela en el trabajo.
working-thing-required = Distancia necesaria: margen, precisión de la cosa, flexión de la pluma, inclinación de la punta por el error del levantamiento y el asiento bajo las ruedas, posición de la máquina
working-thing-nearest = Distancia menor de cualquier parte, en todo el movimiento
zone-no-go = { $zone } está cerrada a máquinas y cargas ({ $by }), y la máquina, la pluma o la carga entra en ella.
zone-no-go-times = { $zone } está cerrada a máquinas y cargas a las { $times } ({ $by }), y la máquina, la pluma o la carga entra en ella.
zone-people = Hay personas en { $zone } ({ $by }), y la máquina, la pluma o la carga pasa por encima.
zone-people-times = Hay personas en { $zone } a las { $times } ({ $by }), y la máquina, la pluma o la carga pasa por encima.
zone-soft = Una rueda o un apoyo está en { $zone }, que es terreno blando ({ $by }).
stands-in-excavation = Una rueda o un apoyo está dentro de { $name }.
near-excavation = Una rueda o un apoyo llega a { $distance } de { $name }; hacen falta { $required } por la línea desde su pie.
near-excavation-slips = Una rueda o un apoyo llega a { $distance } de { $name }; hacen falta { $required } para que su lado no deslice.
near-supported-excavation = Una rueda o un apoyo llega a { $distance } de { $name } (sin cuidado desde { $required }): pregunte a quien calculó su entibación si soporta esta máquina.
near-excavation-unknown = Una rueda o un apoyo llega a { $distance } de { $name }, y nadie sabe qué profundidad tiene; sin saberla hacen falta { $required }.
stands-over-buried = Una rueda o un apoyo está sobre { $name }; no se ha comprobado lo que soporta (se sabe por: { $by }).
do-leave-zone = Busque un sitio desde el que nada entre en ella, o haga que la cambie quien la fijó.
do-wait-for-zone = Levante fuera de esas horas y haga que vigilen la zona.
do-other-stand = Busque otro sitio.
do-clear-buried = Sitúese al lado, o haga que su dueño o un ingeniero declare por escrito qué puede estar encima.

## The command survey

cli-survey-read-file = archivo { $file } ({ $kind })
cli-survey-holds = contiene { $count ->
        [one] un punto o forma
       *[other] { $count } puntos, celdas o formas
    }
cli-survey-extent = { $width } por { $depth }, desde este { $east }, norte { $north }
cli-survey-heights = cotas de { $low } a { $high }
cli-survey-unit = unidad del archivo: { $unit }
cli-survey-system = sistema de coordenadas: { $crs }
cli-survey-system-not-known = sistema de coordenadas: no se conoce
cli-survey-system-rejected = no se tomó como su sistema de coordenadas: { $why }
cli-survey-site-system = sistema de coordenadas del sitio: { $crs }
cli-survey-site-system-not-stated = sistema de coordenadas del sitio: no consta (--site-crs)
cli-survey-settled = Se trajeron antes que el terreno y se calculan ahora desde él: las cotas superiores de { $count } cosas.
cli-survey-settled-from-cloud = Se trajeron antes que la nube y se toman ahora del punto más alto que muestra dentro: las cotas superiores de { $count } cosas.
cli-survey-settled-below = Se trajeron antes que el terreno y resulta que acaban dentro de él (¿otro datum u otra unidad?): las cotas superiores de { $count } cosas, que se toman como no conocidas.
cli-survey-waiting = cosas sin terreno conocido en su contorno: { $count }; se calculan o se comprueban cuando se traiga terreno allí
cli-survey-by-kind = por clase o capa: { $list }
cli-survey-left-out = sin usar: { $list }
cli-survey-doubts = dudoso al traerlo: { $count ->
        [one] un aviso
       *[other] { $count } avisos
    }; un trabajo que toma el sitio los repite
cli-survey-placed = puestas en el sitio: { $count }
cli-survey-guessed = «{ $layer }» se tomó como «{ $kind }», por su nombre
cli-survey-unnamed = sin usar, porque nada dice qué son: { $list }
cli-survey-hint-unnamed = Indíquelo: --layer "{ $layer }=building,height=9 m", o =nothing para no usarla.
cli-survey-site = En el sitio { $name }:
cli-survey-surface = terreno: { $name }, con ±{ $accuracy }, del { $date }
cli-survey-things = cosas que están en pie: { $count }
cli-survey-things-unknown = de ellas no se conoce la altura de { $count }: nada pasa por encima hasta que se sepa
cli-survey-lines = líneas aéreas: { $count }; no se conocen las alturas de { $heights } ni la tensión de { $voltages }: no se puede decir la distancia a ellas
cli-survey-others = excavaciones: { $digs }, enterrado: { $buried }, zonas: { $zones }
cli-survey-no-ground = todavía sin terreno
cli-survey-no-lines = aquí no consta ninguna línea aérea; mire hacia arriba y pregunte al dueño de la red
cli-survey-likely-line = posible conductor { $number }: { $length } de largo, lo más bajo a { $low }, flecha { $sag }, desde este { $east }, norte { $north }
cli-survey-hint-likely = Son sugerencias: mire cada uno en la obra, pregunte la tensión a su dueño y escríbalo en el trabajo como línea.
cli-survey-kept = Guardado en { $file } ({ $size }). Un trabajo en esa carpeta lo toma con: site_from = "{ $name }"
cli-survey-not-kept = No se guardó nada: añada --into plot.site.
cli-survey-wrote = Escrito: { $file }
cli-survey-under = Terreno bajo { $length } × { $width } en este { $east }, norte { $north }, rumbo { $heading }:
cli-survey-under-no-ground = aquí no se conoce el terreno
cli-survey-under-holes = no se conoce el terreno en { $holes } de { $places } puntos, por ejemplo este { $east }, norte { $north }; lo que sigue es solo del resto
cli-survey-under-lowest = punto más bajo: { $nominal } ({ $low } a { $high })
cli-survey-under-highest = punto más alto: { $nominal } ({ $low } a { $high })
cli-survey-under-along = pendiente a lo largo del rumbo: { $nominal } ({ $low } a { $high }); positiva es cuesta arriba hacia delante
cli-survey-under-across = pendiente transversal: { $nominal } ({ $low } a { $high }); positiva es cuesta arriba hacia la izquierda
cli-survey-under-slope = pendiente máxima: { $nominal } ({ $low } a { $high }); baja hacia { $direction } desde el norte
cli-survey-under-level = pendiente máxima: { $nominal } ({ $low } a { $high })
cli-survey-under-roughness = rugosidad respecto a ese plano, media cuadrática: { $nominal } ({ $low } a { $high })
cli-survey-under-above = lo más alto sobre el plano: { $nominal } ({ $low } a { $high })
cli-survey-under-below = lo más hondo bajo el plano: { $nominal } ({ $low } a { $high })
cli-survey-under-no-plane = se conoce aquí demasiado poco terreno para una pendiente
cli-survey-under-read = Leído cada { $step } de { $surfaces }. Los intervalos valen si cada altura está dentro de la exactitud de su levantamiento; lo que es menor que ella, o ha cambiado desde entonces, no está en ellos.
cli-survey-hint-under = Escríbalo como --at "12 m, 8 m" --heading "30°" --footprint "4 m x 2 m": este y norte, en sentido horario desde el norte, largo según el rumbo (de 5 cm a 100 m) y ancho.
cli-survey-bad-argument = no se entiende { $argument }: { $value }
cli-survey-hint-layer = Escríbalo como NOMBRE=CLASE, con where=type=fence (solo donde lo diga un atributo), height=9 m, level=112 m, attribute=HEIGHT, height=shape o width=30 cm tras comas. Clases: { $kinds }.
cli-survey-hint-shift = Escríbalo como --shift "84800 m, 447400 m" y --turn "12°".
cli-survey-hint-window = Escríbalo como --window "0 m, 0 m, 60 m, 50 m": oeste, sur, este, norte.
cli-survey-hint-length = Indique una longitud con su unidad, como "3 cm".
cli-survey-hint-epsg = Indique su código EPSG, como EPSG:25832.
cli-survey-hint-units = Indique m, ft, "US ft" y, para dibujos, también mm, cm o in.
cli-survey-hint-columns = Escríbalo como --columns "east=2,north=3,height=4", por nombre o por lugar desde 1.
cli-survey-bad-format = la terminación de { $file } no indica ningún formato que se escriba: .geojson, .dxf o .glb
cli-survey-not-stored = el sitio no se puede guardar: un número no es finito
cli-survey-caution = Un levantamiento muestra el terreno de su día. Excavaciones, rellenos, roderas, acopios y máquinas desde entonces no están en él: recorra el terreno y deje decidir a la persona competente de la obra.
cli-survey-above = { $file }: { $count } cosas están sobre el terreno
cli-survey-why-not-ground = puntos que no son terreno:
cli-survey-why-unknown-cells = celdas sin cota:
cli-survey-why-withheld = puntos marcados como retenidos:
cli-survey-why-lone = puntos aislados:
cli-survey-why-stated = como usted indicó:
cli-survey-why-no-size = puntos sin tamaño (indique width):
cli-survey-why-text = textos:
cli-survey-why-no-course = líneas que en planta no lo son:
cli-survey-why-far = líneas lejos del sitio:
cli-survey-why-no-outline = excavaciones sin contorno:
cli-survey-from-cloud = altura tomada del punto más alto que muestra la nube dentro: { $count }
cli-survey-surface-undated = terreno: { $name }, con ±{ $accuracy }; no consta el día del levantamiento
cli-survey-why-support = apoyos de líneas (indique =mast,width=1 m):
cli-survey-why-voltage = tensiones que no pueden ser voltios, tomadas como desconocidas:
cli-survey-why-below = partes altas bajo el terreno, tomadas como desconocidas (¿otro datum u otra unidad?):
cli-survey-why-outside = fuera de la ventana:
cli-survey-without-ground = no se conoce el terreno en el contorno de { $count } de ellas: traiga terreno que llegue hasta allí y sus alturas se calcularán entonces, o compruebe que plano y terreno están en el mismo lugar
cli-survey-idle-rule = nada en él es «{ $layer }»: ese --layer no hizo nada
cli-survey-known = su cota se conoce en { $area }
cli-survey-site-unnamed = En el sitio:
cli-survey-hint-accuracy = Indique el mayor error de cota que cabe esperar, más de 0 y hasta 10 m, como "3 cm".
cli-survey-hint-date = Indique un día como año-mes-día, como 2027-04-12.

## Capacidad portante, placas de apoyo, asientos (ground)

soil-unit-weight = peso específico
soil-friction = ángulo de rozamiento
soil-cohesion = cohesión
soil-undrained = resistencia al corte sin drenaje
soil-modulus = módulo de elasticidad
soil-poisson = coeficiente de Poisson
soil-thickness = espesor
soil-water-depth = profundidad del nivel freático
soil-no-layers = No se indica ninguna capa de suelo. Hace falta al menos una, desde la superficie hacia abajo.
soil-out-of-order = La capa empieza a { $given }; se esperaba { $expected }, donde acaba la de encima.
soil-order-hint = Indique las capas desde la superficie hacia abajo, la primera desde la profundidad 0, sin huecos.
soil-out-of-range = Valor fuera de lo razonable ({ $what }): { $given }; se esperaba de { $low } a { $high }.
soil-weight-hint = Parece un valor en kN/m³ o kg/m³ leído como N/m³. El suelo pesa de 15 a 22 kN/m³, más o menos.
bearing-no-number = No se puede dar la capacidad portante: falta un valor, es negativo o no es un número.
bearing-lacks-inclination = { $author } no contempla fuerzas inclinadas.
bearing-lacks-slope = { $author } no contempla terreno en pendiente.
bearing-lacks-friction = La tabla de { $author } acaba en 45°.
bearing-slides = La base desliza: se empuja con { $push } y el terreno retiene { $held }.
bearing-off-base = La fuerza cae en el borde de la base o fuera de ella.
bearing-slope-beyond = El terreno tiene una pendiente de { $slope }, más que los { $friction } que sostiene por sí mismo. Ahí no se da capacidad portante.
bearing-no-strength = No hay ninguna resistencia que cuente en este estado del terreno. La lluvia anula la resistencia sin drenaje, el deshielo la cohesión, y el terreno helado no cuenta.
bearing-not-explored = El terreno se conoce hasta { $known } y la carga llega hasta { $needed }. Hágalo reconocer, o que alguien responda de lo que hay debajo.
bearing-outside-method = Un valor queda fuera de aquello para lo que se hizo este método.
settlement-no-stiffness = Una capa que la carga alcanza no indica su módulo de elasticidad. Indíquelo, o un ensayo de placa.
presumed-under-tyre = Los valores presuntos de capacidad portante son para platos y placas de apoyo, no para neumáticos. Use una resistencia del terreno.
presumed-nothing = La tabla no presume nada seguro para este suelo. Hágalo ensayar.
presumed-too-narrow = El valor presunto vale para bases de al menos { $least } de ancho.
mat-off = El plato sobresale del borde de la placa de apoyo, o la fuerza cae junto a lo que la sostiene.
mat-none = Ninguna placa de apoyo cuadrada de hasta { $side } de lado lo soporta. Use una más gruesa o resistente, o un terreno mejor.
working-bearing-area = Superficie eficaz de la base
working-bearing-factor = Factor de capacidad portante
working-bearing-shape = Factor de forma de la base
working-bearing-depth = Factor de profundidad de la base
working-bearing-inclination = Factor de inclinación de la fuerza
working-bearing-ground = Factor de pendiente del terreno
working-bearing-ultimate = Presión a la que falla el terreno: por cohesión, por el suelo de los lados y por su propio peso
working-bearing-resistance = Fuerza a la que falla el terreno
working-bearing-least = Cuenta el menor de los autores que cubren este caso: { $author }
working-spread-size = Tamaño de la carga sobre la capa inferior; sigue lo que ésta soporta
working-spread = Reparto de la carga en la capa superior: lo que soporta la capa débil, visto desde la base
working-punching = Punzonamiento de la capa superior hacia la capa débil
working-two-layers = La menor de las formas en que fallan dos capas
working-platform-own = Lo que soporta el propio material de la plataforma
working-platform = Plataforma granular: lo que soporta la arcilla y lo que añade la plataforma en los lados punzonados
working-platform-thickness = Espesor de plataforma necesario
working-presumed = Presión que un código presume para este suelo
working-rut-pressure = Presión de las ruedas hasta la que las roderas quedan pequeñas
working-rut-number = Número de movilidad de la rueda, según el índice de cono
working-rut-depth = Profundidad de la rodera tras una pasada
working-site-test = Valor de un ensayo en obra; cuenta su extremo bajo
working-design-action = Fuerza con sus coeficientes parciales
working-design-resistance = Resistencia con su coeficiente parcial
working-mat-pressure = Presión bajo la parte de la placa que trabaja
working-mat-strength = Resistencia de la placa a flexión, con sus coeficientes
working-mat-shear-strength = Resistencia de la placa a cortante, con sus coeficientes
working-mat-bending = Flexión de la placa en el borde del plato, por un metro de ese borde
working-mat-shear = Cortante en la placa en el borde del plato
working-mat-stiff = Hasta dónde trabaja la placa más allá del plato antes de ceder demasiado
working-mat-side = Placa de apoyo cuadrada más pequeña que sirve
working-settlement-layer = Asiento del centro del plato por una capa
working-settlement = Asiento inmediato del plato
working-settlement-tilt = Inclinación por la diferencia de asientos
working-settlement-head = Lo que la inclinación desplaza a la altura de la cabeza de la pluma

## calc bearing, calc mat

cli-no-force = La fuerza es 0. Indique lo que presiona el terreno.
cli-one-base = Indique una sola base: pad_width y pad_length, o pad_diameter, o tyre_pressure y tyre_width.
cli-bearing-carries = El terreno soporta { $resistance }; lo presionan { $force }: { $used } empleado.
cli-bearing-too-much = Demasiado: presionan el terreno { $force } y soporta { $resistance }: { $used } empleado.
cli-bearing-pressures = Presión en la parte que trabaja { $pressure }; el terreno falla a { $ultimate }.
cli-bearing-undrained = resistencia sin drenaje
cli-bearing-drained = resistencia con drenaje
cli-bearing-lower = Decide la capa { $layer } desde arriba, por su { $strength }.
cli-bearing-upper = Decide la capa bajo la base, por su { $strength }.
cli-bearing-note = Es un cálculo suelto, nunca un «adelante»: no incluye bordes, taludes próximos, lo enterrado, los asientos lentos ni lo que nadie ha mirado debajo.
cli-mat-carries = Una placa de apoyo de { $along } por { $across } lo soporta: { $pressure } bajo la parte que trabaja, el terreno soporta { $carries }.
cli-mat-too-much = Una placa de apoyo de { $along } por { $across } no basta: { $pressure } bajo la parte que trabaja, el terreno soporta { $carries }.
cli-mat-works = De ella trabajan { $along } por { $across }, hasta donde alcanza { $limit }.
cli-mat-to-edge = lo que llegan tablas y bordes
cli-mat-to-bending = su resistencia a flexión
cli-mat-to-shear = su resistencia a cortante
cli-mat-to-stiffness = su rigidez para presionar el terreno
cli-mat-centred = La placa más pequeña se busca centrada bajo el plato. Indique mat_along y mat_across, o suprima los desplazamientos.

## calc settlement, calc rut, calc presumed, calc working-platform

cli-settles = Asienta { $settlement } de inmediato, con las fuerzas sin coeficientes.
cli-settles-not-told = No se dice cuánto asienta: { $why }.
cli-not-told-modulus = una capa no indica su módulo
cli-not-told-depth = las capas acaban antes de cuatro anchos de la base
cli-not-told-base = solo se calculan platos y placas de apoyo en la superficie
cli-not-told-number = un valor no es un número
cli-pad-settles = El plato { $pad } asienta { $settlement } de inmediato y presiona con { $pressure }.
cli-pads-tilt = Los platos { $one } y { $other } difieren en { $difference }: una inclinación de { $tilt }.
cli-tilt-moves = A la altura indicada, la cabeza se desplaza { $moves }.
cli-settlement-note = Asiento inmediato de platos rígidos sobre terreno elástico. La arcilla sigue asentando, y un terreno suelto o mojado cede más de lo que dice ningún módulo: vigile el nivel mientras está apoyada.
cli-pads-in-one-place = Dos platos tienen el mismo centro. Dé a cada uno su lugar.
cli-rut-stays = Las roderas quedan como se pide: { $pressure } bajo el neumático; quedan así hasta { $stays }, y desde { $sinks } se hunde.
cli-rut-deepens = Las roderas se ahondan con cada pasada: { $pressure } bajo el neumático, más de { $stays }; desde { $sinks } se hunde.
cli-rut-sinks = La rueda se hunde: { $pressure } bajo el neumático, más de { $sinks }; hasta { $stays } las roderas quedarían como se pide.
cli-rut-depth = Según el índice de cono una pasada deja una rodera de { $low } a { $high }.
cli-rut-note = Estas reglas son de memoria y se dispersan la mitad y más: distinguen el terreno bueno del malo y nada más. Los neumáticos de flanco rígido presionan más que su inflado.
cli-rut-needs-cone = Las medidas del neumático solo cuentan junto a cone_index. Indique cone_index o suprima las cuatro.
cli-rut-deflection = La fuerza no puede hundir el neumático todo su flanco. Mida tyre_deflection sobre suelo duro.
cli-presumed-carries = { $pressure } bajo la base; { $code } presume { $allowable } para este suelo: { $used } empleado.
cli-presumed-too-much = Demasiado: { $pressure } bajo la base; { $code } presume { $allowable } para este suelo: { $used } empleado.
cli-presumed-note = Los valores presuntos son para zapatas sobre un suelo que alguien ha visto y nombrado. No son un ensayo de este terreno, y nunca valen para neumáticos.
cli-granular-carries = Una plataforma de { $thickness } lo soporta: { $demand } con su coeficiente, falla a { $fails }.
cli-granular-too-thin = Una plataforma de { $thickness } no lo soporta: { $demand } con su coeficiente, falla a { $fails }.
cli-granular-needed = Para { $demand } con su coeficiente la plataforma ha de tener { $thickness } de espesor.
cli-granular-clay-alone = La arcilla soporta { $demand } con su coeficiente sin plataforma.
cli-granular-note = El método es de memoria y para una plataforma construida, drenada y mantenida como se proyectó; una persona con nombre la proyecta y firma.

soil-carries = { $wheel } transmite { $force } con coeficiente; { $soil } soporta { $limit } ({ $factors }), según { $by }.
soil-weak = { $wheel } transmite { $force } con coeficiente, más de lo que soporta { $soil }: { $limit } ({ $factors }), según { $by }.
working-group = Los apoyos como un solo rectángulo sobre sus contornos, con la fuerza fuera de su centro
group-front = Todo el eje delantero junto
group-rear = Todo el eje trasero junto
group-all = La máquina entera
soil-presumed = { $wheel } presiona con { $force }; se presume que { $soil } soporta { $limit } ({ $factors }), según { $by }.
soil-presumed-weak = { $wheel } presiona con { $force }, más de lo que se presume que soporta { $soil }: { $limit } ({ $factors }), según { $by }.
presumed-by = presunto según { $code }
soil-cannot-tell = { $wheel } sobre { $soil }: no se puede decir cuánto soporta. { $why }
factors-da1-1 = EN 1997-1, enfoque de proyecto 1, combinación 1
factors-da1-2 = EN 1997-1, enfoque de proyecto 1, combinación 2
factors-da2 = EN 1997-1, enfoque de proyecto 2
factors-da3 = EN 1997-1, enfoque de proyecto 3
factors-one = un coeficiente de { $factor } sobre la resistencia
do-explore = Haga reconocer el terreno y declare sus capas y el agua, o colóquese en otro sitio.
do-mat-area = Reparta la fuerza sobre { $side } × { $side } como mínimo, con placas lo bastante rígidas y resistentes.
do-better-ground = Aquí no ayuda ninguna placa que una máquina coloque. Busque mejor terreno, o haga que lo mejoren y ensayen.
settlement-within = { $wheel } asienta hasta { $settles }. En la dirección que deja menos, una diferencia de { $difference } inclina la máquina { $tilt } y desplaza la cabeza de la pluma { $moves }; con el emplazamiento tal como está son { $total } de desnivel, se permiten { $tolerance }.
settlement-too-much = { $wheel } asienta hasta { $settles }. En la dirección que deja menos, una diferencia de { $difference } inclina la máquina { $tilt } y desplaza la cabeza de la pluma { $moves }; con el emplazamiento tal como está son { $total } de desnivel, más de los { $tolerance } permitidos.
settlement-no-tolerance = { $wheel } asienta hasta { $settles }; ninguna tabla dice cuán nivelada debe estar la máquina.
settlement-not-known = { $wheel }: no se sabe cuánto asienta. { $why } Frente al vuelco solo cuenta lo que ceden neumático, plato y pata.
settlement-no-soil = Ahí no se declara ningún suelo.
settlement-soil-no-stiffness = No se declara la rigidez de { $soil }.
do-watch-level = Lea el nivel antes de izar, con la carga apenas separada del suelo y antes de dejarla. Si la máquina se ha inclinado { $angle } o más en cualquier dirección, baje la carga.
do-mats-settle = Ponga placas de { $side } × { $side } como mínimo bajo cada rueda o plato, lo bastante rígidas y resistentes para repartir su fuerza.
working-settled-level = Desnivel: cómo está el emplazamiento y lo que añade el asiento
working-ground-gives = { $wheel }: rigidez con el terreno debajo
ruts-small = { $wheel } presiona { $soil } con { $pressure }: las roderas quedan por debajo de { $depth } (resistencia sin drenaje { $strength }).
ruts-deep = { $wheel } presiona { $soil } con { $pressure }: roderas de unos { $depth } en menos de 100 pasadas (resistencia sin drenaje { $strength }). Bajo un solo lado inclinan la máquina { $lean }.
ruts-deepen = { $wheel } presiona { $soil } con { $pressure }: las roderas pasan de { $depth }, y más con cada pasada (resistencia sin drenaje { $strength }).
ruts-sinks = { $wheel } presiona { $soil } con { $pressure }: se hunde y queda atascada (resistencia sin drenaje { $strength }).
ruts-not-known = { $wheel } sobre { $soil }: no se sabe cuánto se hunden sus roderas. La resistencia declarada no cuenta en este estado del terreno, o no se sabe cuánto presiona.
do-watch-ruts = Entre una sola vez y colóquese junto a las roderas viejas, no dentro. Mire detrás de las ruedas: con roderas de { $depth }, o con agua en ellas, no ice aquí. Lea el nivel antes de subir la pluma.
do-mats-against-ruts = Ponga placas bajo las ruedas, también en la entrada, o colóquese sobre terreno con una resistencia sin drenaje de { $strength }.
working-rut-leans = Inclinación por una rodera bajo un lado
edge-far-enough = El borde de rueda más cercano está a { $distance } de { $name }; hacen falta { $required } por la línea desde su pie.
edge-needs-engineer = El borde de rueda más cercano está a { $distance } de { $name }, de { $depth } de profundidad. Por lo demás bastan { $required }, pero lo que pasa de 6,1 m (20 ft) lo proyecta un ingeniero, y no se nombra a ninguno.
edge-stands = El borde de rueda más cercano está a { $distance } de { $name }; hacen falta { $required } para que su lado no deslice.
face-fails = El lado de { $name } no se sostiene por sí mismo: coeficiente { $factor }, se exige { $required }, incluso sin la máquina.
edge-not-known = El borde de rueda más cercano está a { $distance } de { $name }. Por la línea bastan { $required }, pero no se puede decir si su lado desliza: { $what }.
unknown-soil = falta conocer una capa del suelo
unknown-strength = una capa no tiene resistencia que cuente ahora
unknown-water = falta conocer el nivel del agua
ground-falls = El terreno baja { $by } a menos de un metro de una rueda.
do-watch-edge = Señale el borde, mantenga a las personas fuera de abajo, revíselo después de la lluvia y cada mañana.
do-name-engineer = Que un ingeniero proyecte la excavación para esta máquina a su lado, y nómbrelo en el archivo («support», «by»).
do-move-back = Colóquese { $by } más lejos del borde.
do-measure-excavation = Averigüe su profundidad y anótela.
do-support-face = Nadie abajo y nada cerca: que la persona competente haga entibar o tender el lado.
do-hand-loads = Entregue las fuerzas de las ruedas a quien proyectó la entibación; solo cuenta su sí por escrito.
buried-bears = { $name }: { $stress } en su clave, se permiten { $allowed }, según { $by }.
buried-overloaded = { $name }: { $stress } en su clave, más de { $allowed } que permite su dueño, según { $by }.
buried-pressed = { $name }: { $stress } en su clave (según { $by }); nadie ha dicho cuánto soporta.
buried-flattens = { $name }: se aplasta { $share } de su diámetro, se admiten { $allowed }, según { $by }.
buried-flattened = { $name }: se aplasta { $share } de su diámetro, más de { $allowed } que admite su propietario, según { $by }.
do-spread-over-buried = Colóquese en otro sitio, o que su dueño acepte por escrito placas o más cobertura.
do-clear-condition = { $name }: falta aclarar, a nombre de alguien: { $what }.
buried-open-kind = qué es («around», por quien lo ha mirado)
buried-open-wall = si su pared cede, y cuánto («wall», por su dueño)
buried-open-cover = cuánto terreno tiene encima, como mínimo («cover», por quien lo halló)
buried-open-allowable = qué permite su dueño en la clave («allowed_pressure»)
buried-open-deflection = qué deformación permite su dueño («wall», «deflection»)
buried-open-backfill = relleno reciente encima («around», por quien ha mirado el terreno)
buried-open-voids = huecos a su lado («around», por quien ha mirado el terreno)
field-policy-ground-factors = Coeficientes que se exigen al terreno: un conjunto de EN 1997-1, o un número; si falta: 3
field-soil = Capas del terreno bajo una parte de la obra
field-soil-id = Identificador corto de este terreno
field-soil-name = Nombre de este terreno para las personas
field-soil-water = Profundidad del nivel del agua; desconocido cuenta en la superficie
field-soil-state = Estado del terreno frente al del ensayo
field-soil-by = Quién responde de las capas: calicata, sondeo, ensayo
field-soil-presumed = En lugar de capas: lo que un código presume para este suelo, solo bajo platos y placas de apoyo
field-presumed-code = El código
field-presumed-soil = El suelo, en palabras de ese código
field-soil-layer = Capas desde la superficie hacia abajo
field-layer-thickness = Espesor; si falta en la última capa: continúa
field-layer-weight = Peso específico con el agua que contiene
field-layer-undrained = Resistencia al corte sin drenaje
field-layer-cbr = Índice CBR; su extremo bajo da la resistencia sin drenaje
field-layer-vane = Lectura del molinete de mano
field-layer-plasticity = Índice de plasticidad, para el molinete
field-layer-blow = Penetración del cono dinámico por golpe
field-layer-cone = Índice de cono de un penetrómetro de mano
field-layer-plate = Ensayo de placa sobre esta capa, de suelo fino; dice del suelo hasta el doble de su diámetro, y del módulo donde no se indica otro
field-plate-diameter = Diámetro de la placa
field-plate-pressure = Presión alcanzada
field-plate-settlement = Asiento bajo esa presión
field-layer-cohesion = Cohesión efectiva; si falta: ninguna
field-layer-friction = Ángulo de rozamiento efectivo
field-layer-modulus = Módulo de elasticidad, para el asiento
field-layer-poisson = Coeficiente de Poisson; si falta: 0,3
field-mat = Tipos de placas disponibles
field-mat-id = Identificador corto de la placa
field-mat-name = Nombre de la placa para las personas
field-mat-length = Longitud a lo largo de sus tablones, en el sentido de la máquina
field-mat-width = Anchura a través de sus tablones
field-mat-thickness = Espesor de la placa
field-mat-timber = Clase resistente de la madera (EN 338)
field-mat-steel = Límite elástico de una placa de acero
field-mat-declared = Valores de cálculo que alguien declara
field-mat-bending = Resistencia de cálculo a flexión
field-mat-shear = Resistencia de cálculo a cortante
field-mat-modulus = Módulo de elasticidad de la placa
field-mat-spreads = «planks» reparte la carga sólo a lo largo de sus tablones, «plate» en ambos sentidos; si falta: planks
field-mat-by = Quién declara los valores
field-excavation-batter = Distancia horizontal del pie al borde; si falta: vertical
field-excavation-line = Otra línea de planificación que la habitual, a nombre de una persona competente
field-excavation-line-slope = Horizontal por vertical, desde el pie
field-excavation-line-by = La persona competente que responde de ella
field-excavation-open = Horas desde que se excavó
field-excavation-undrained = Horas durante las que cuenta la resistencia sin drenaje; si falta: no cuenta
field-excavation-wetted = Lluvia, deshielo o agua estancada desde que se excavó
field-excavation-people = Falso donde nadie puede estar dentro; si falta: hay personas abajo
field-lift-mat = Placas bajo sus ruedas o apoyos, por identificador; si falta: ninguna
jobfile-soil-without-layer = un suelo tiene al menos una capa: [[soil.layer]] con thickness, unit_weight y una resistencia
jobfile-cohesion-alone = una cohesión necesita a su lado su ángulo de rozamiento
jobfile-rating-both = la clave `{ $other }` va con ella y falta
jobfile-rating-of-nothing = una carga admisible declara al menos uno de mass, pallet, even o duty_class
jobfile-lying-beside = termina a { $end } y el lugar de descarga mide { $size } en esa dirección: se cuenta desde el borde por el que entra la carga y desde el lado derecho
jobfile-lying-by-half = dónde está se declara con from_edge, from_right, along y across juntos; falta `{ $missing }`
jobfile-counts-beside = { $key } solo cuenta junto a { $other }: indíquelo también o suprima { $key }
jobfile-plate-too-small = un ensayo de placa dice del suelo hasta el doble de su diámetro, aquí { $depth }: termine ahí esta capa e indique lo de debajo como otra capa
jobfile-soil-of-another-code = { $code } no tiene ese suelo
jobfile-wall-of-what = wall es de tubos y alcantarillas: suprímalo o corrija kind
jobfile-mats-count = una placa o varias, la de arriba primero, { $most } como máximo
jobfile-mat-of-what = diga de qué es la placa: timber, steel_yield o declared
jobfile-ground-factors-unanswered = menos del coeficiente habitual de 3 necesita el nombre de quien responde
jobfile-kind-mat = ninguna placa
## Tensión, bordes y cosas enterradas por separado (cli calc)

cli-stress-result = A { $depth } los apoyos ejercen { $larger } sobre el terreno: elástico { $elastic }, por reparto 2:1 { $spread }.
cli-stress-note = Solo de los apoyos; el peso del terreno se añade. Un solo suelo en toda la profundidad.
cli-edge-kept = Las ruedas están bastante lejos del borde para lo indicado.
cli-edge-too-near = Las ruedas están demasiado cerca del borde.
cli-edge-face-fails = La pared no alcanza el coeficiente de seguridad exigido, o ninguna distancia lo restablece: tiéndala o entíbela y manténgase lejos.
cli-edge-supported = El lado está sostenido: su proyectista debe decir la distancia. Entréguele los números de abajo.
cli-edge-cannot-tell = No se puede decir a qué distancia pueden estar las ruedas.
cli-edge-no-soil = No se indica ningún suelo.
cli-edge-no-drained = Ahora cuenta la resistencia drenada y un estrato no la tiene.
cli-edge-no-undrained = Un estrato no tiene resistencia sin drenaje ni drenada.
cli-edge-no-water = No se conoce el nivel freático.
cli-edge-no-engineer = Más allá de 6,1 m (20 ft) la excavación la proyecta un ingeniero (29 CFR 1926, subparte P, de memoria): ninguna distancia de aquí lo sustituye.
cli-edge-distance = Distancia mínima del borde exterior del neumático o placa a la coronación: { $distance }, por { $governs }. Línea desde el pie { $line }, equilibrio { $equilibrium }; las ruedas están a { $stands }.
cli-edge-by-rule = la regla
cli-edge-by-wedge = una cuña plana
cli-edge-by-circle = un círculo de deslizamiento
cli-edge-factor = Coeficiente de seguridad donde están: { $factor }, exigido { $required } (de memoria), con resistencia { $strength }.
cli-edge-drained = drenada
cli-edge-undrained = sin drenaje
cli-edge-ends = Esto vale { $hours } horas más, y termina al instante con lluvia, deshielo o agua encharcada.
cli-edge-support = Las cargas empujan el sostenimiento con { $force } de su longitud, a { $height } sobre el pie, duplicado para un muro que no cede.
cli-edge-slices = Rebanadas del peor círculo donde van a estar las ruedas, por metro de borde, desde su salida hacia arriba:
cli-edge-slices-at = Rebanadas del peor círculo con las ruedas a { $distance }, la distancia mínima:
cli-edge-note = Vale lo que valga el suelo indicado. Una persona competente mira la pared antes de trabajar y después de llover; esto no da paso a ningún izado.
cli-buried-stress = En la clave: { $total }, de ello { $wheels } de las ruedas con impacto y { $soil } del recubrimiento.
cli-buried-deflection = El tubo se aplasta { $share } de su diámetro.
cli-buried-left = Queda { $share } de lo que admite su propietario.
cli-buried-beyond = Eso supera en { $share } lo que admite su propietario.
cli-buried-no-kind = Por aclarar con nombre: qué es.
cli-buried-no-cover = Por aclarar con nombre: su recubrimiento. Sin él no hay número.
cli-buried-no-allowable = Por aclarar con nombre: la tensión que admite su propietario.
cli-buried-no-deflection = Por aclarar con nombre: la deformación que admite su propietario.
cli-buried-backfill = Por aclarar con nombre: el relleno encima es reciente o nadie dice que no lo sea.
cli-buried-voids = Por aclarar con nombre: puede haber huecos a su lado o nadie los descarta.
cli-buried-note = Su propietario decide si alguien pasa por encima. Impacto y deformación son de memoria.
reason-survey = Terreno sin levantar
reason-approach = Lado, puntería o espacio en el lugar de descarga
reason-reach = Fuera del alcance de la pluma
reason-other = Otra comprobación del emplazamiento
reason-everywhere = No depende del emplazamiento
way-ahead = hacia delante
way-back = hacia atrás
way-left = a la izquierda
way-right = a la derecha

## Planes de trabajo: listas, lugares de recogida, dirección

jobfile-kind-pickup = ningún lugar de recogida
jobfile-kind-lift = ningún izado
jobfile-after-itself = el izado { $id } no puede esperarse a sí mismo
jobfile-posts-apart = los postes están a { $apart } uno de otro, y el portón mide { $width } de ancho
jobfile-turns-too-tight = { $key } de { $radius } es menos de lo que permiten esta batalla y este ancho de vía
jobfile-hint-over-the-tyres = indique el radio del círculo por el que pasa la cara exterior del neumático delantero exterior, no el diámetro ni el de la rueda interior
jobfile-list-quote = aquí empiezan unas comillas que nada cierra
jobfile-hint-list-quote = ciérrelas, o escriba dos veces las comillas que son parte del texto
jobfile-list-empty = la lista no tiene filas debajo de una primera fila con nombres
jobfile-list-row-cells = la fila tiene { $found } celdas, y la primera fila tiene { $expected }
jobfile-hint-list-row-cells = si los valores llevan coma decimal, separe las celdas con punto y coma o ponga esos valores entre comillas
jobfile-list-column-unknown = ninguna columna se llama «{ $column }»
jobfile-list-column-twice = la columna { $column } está dos veces
jobfile-list-cell-missing = la fila no tiene { $column }
jobfile-hint-list-cell-missing = rellene la celda; lo que es igual en todas las filas puede estar en la tabla del archivo del trabajo que nombra la lista

field-steering = Dirección y traslación, según el fabricante
field-steering-two = Radio de giro por fuera del neumático delantero exterior, solo con las ruedas delanteras a tope
field-steering-four = Lo mismo con las cuatro ruedas a tope
field-steering-crab = Verdadero si las cuatro ruedas pueden girar hacia el mismo lado
field-travel-speed = Velocidad máxima con carga
field-hours = Horario de trabajo, desde y hasta; si falta: no declarado
field-pickup = Lugares donde esperan las cargas
field-pickup-id = Nombre corto para los izados
field-pickup-name = Nombre del lugar
field-pickup-at = Dónde está el centro de la cara inferior de la carga
field-pickup-heading = Dirección en que entran las horquillas, desde el norte en el sentido del reloj; si falta: cualquiera
field-pickup-level = Cota de la superficie donde están las cargas; si falta: la del terreno
field-gate-from = Cara interior de un poste, en planta
field-gate-to = Cara interior del otro poste, en planta
field-lift-choose = Lo que el planificador puede elegir; si falta: nada
field-lift-from = Dónde espera la carga, por su identificador
field-lift-window = No empezar antes de, terminar antes de
field-lift-after = Izados que deben terminar antes, por su identificador
field-lift-priority = De 1 (primero) a 9 (último); si falta: 5
field-lift-minutes = Cuánto dura; si falta: estimado
field-crane = Otras máquinas cuyo alcance cruza el espacio aéreo
field-crane-id = Nombre corto
field-crane-name = Nombre de la máquina
field-crane-at = El eje sobre el que gira, en planta
field-crane-radius = Hasta dónde llegan pluma o carga desde su eje
field-crane-tail = Hasta dónde gira su parte trasera; si falta: nada que importe
field-crane-from-height = Cota más baja de lo que gira, con la carga
field-crane-to-height = Cota más alta de lo que gira
field-crane-times = Cuándo trabaja; si falta: siempre
field-crane-rule = Quién tiene prioridad, con palabras
field-crane-by = Quién fijó esa regla
field-loads-from = Una lista de cargas: cada fila, una carga y su izado
field-loads-from-file = La lista en la carpeta del trabajo
field-loads-condition = Estado de las filas que no declaran otro
field-loads-centre-error = Error del centro de las filas que no declaran otro
field-loads-wind-factor = Factor de forma al viento de las filas que no declaran otro
field-loads-left-out = Lo que falta en los albaranes, en las filas que no lo declaran
field-loads-clear = Altura sobre el lugar de descarga a la que entran las cargas, en las filas que no declaran otra
field-loads-stop-gust = Ráfaga a la que se paran los izados, en las filas que no declaran otra
field-loads-stops = Lo prohibido que ocurre en estos izados; [] declara que nada
field-slots-from = Una lista de entregas: cada fila, una franja
field-delivery = Entregas y sus franjas
field-delivery-id = Nombre corto
field-delivery-loads = Cargas que trae, por su identificador
field-delivery-slot = Cuándo se puede descargar, desde y hasta
field-delivery-place = Dónde se descarga, por el identificador del lugar de recogida
field-routine = Planes aprobados para familias de izados iguales
field-routine-id = Nombre corto
field-routine-name = Nombre de la rutina
field-routine-machine = Máquina, por su identificador
field-routine-attachment = Accesorio, por su identificador en el archivo de la máquina
field-routine-support = Sobre neumáticos, estabilizadores o apoyos
field-routine-load = La más pesada y grande de la familia, por su identificador
field-routine-load-up-to = O una masa y un tamaño que ninguna supera
field-routine-mass = Masa máxima, con todas las tolerancias
field-routine-depth = Fondo máximo, a lo largo de las horquillas
field-routine-width = Ancho máximo
field-routine-height = Altura máxima
field-routine-landings = Lugares de descarga, por su identificador
field-routine-landing-area = O las esquinas de una zona: todos los lugares de descarga que contiene
field-routine-stands = Esquinas de la zona donde está el centro del eje delantero
field-routine-stop-gust = Ráfaga a la que se para
field-routine-ground = Pendiente máxima del terreno en que se apoya
field-routine-approved = Quién la aprobó; si falta: nadie, y no permite nada
field-outside = sin mirar
field-not-yet = aún no se sabe
field-go = apto
field-condition = apto con condiciones
field-cannot-tell = no se puede decir
field-no-go = no apto
check-stand = Sitio del emplazamiento
stand-by-eye = El emplazamiento puede desviarse { $disc } en cualquier sentido, y su rumbo { $turn }.
stand-by-tape = El emplazamiento solo puede desviarse { $disc }, y su rumbo { $turn }; a ojo son { $asked } y { $asked_turn }.
do-set-out = Marque el emplazamiento con cinta y entre con un señalista.
do-stand-there = Un emplazamiento que sirve: { $east } este, { $north } norte, rumbo { $heading }.
stand-nowhere = Ningún sitio a menos de { $radius } del lugar de descarga sirve. Lo que impide la mayor parte del terreno al alcance: { $reason }.
stand-not-sought = No se buscó ningún sitio: { $reason } impide cualquiera.
change-half-load = La mitad cada vez: { $mass }.
change-equipment = { $machine } con { $attachment }, { $support }.
change-any-side = Si el lugar de descarga recibiera cargas por otro lado.
change-line-dead = Si { $line } estuviera cortada y puesta a tierra a la vista.
change-mat = Con { $mat } bajo cada rueda o placa.
change-stand = Emplácese en { $east } este, { $north } norte, rumbo { $heading }.

## Orden de los izados

order-not-checked = nadie ha comprobado todavía este izado
order-no-go = sus propias comprobaciones lo prohíben
order-no-stand = no tiene elegida ninguna posición
order-not-known = no se conoce su máquina, su carga, su lugar de descarga o su duración
order-too-many = un orden admite { $most } izados: reparta el trabajo por días
order-window-empty = su ventana, su entrega y el horario de trabajo no dejan tiempo: no antes de las { $from }, terminado a las { $to }
order-window-short = dura hasta { $needs } min, y sus tiempos dejan { $has } min
order-window-missed = detrás de los demás terminaría { $by } min después de las { $until }
order-landing-over = { $landing } pasaría de su límite en { $by }: cuando llega esta carga puede haber allí { $may } más de lo declarado; lo han dejado los izados { $lifts }
order-landing-full = { $landing } pasaría de su límite en { $by }: cuando llega esta carga puede haber allí { $may } más de lo declarado, y allí hay sin declarar lo que otros izados retiran
order-landing-never = { $landing } no soporta esta carga ni estando despejado
order-not-there = la carga que recoge de { $landing } no está allí
order-cycle = los izados { $lifts } se esperan unos a otros
order-waits = espera al izado { $lift }, que queda fuera
order-has-conditions = Cumpla las condiciones de este izado antes de empezar.
order-crane-always = Al alcance de { $crane }, cuyo horario nadie declaró: { $rule } ({ $by })
order-crane-times = Al alcance de { $crane }: previsto fuera de su horario. { $rule } ({ $by })
order-hours-taken = Nadie declaró el horario de trabajo: se toma de { $from } a { $to }.
order-times-usual = Las duraciones de izados y trayectos son estimaciones según la práctica común. Nada empieza aquí antes del final más tardío de lo que espera.
order-times-stated = Las duraciones de izados y trayectos son estimaciones con valores que declara { $by }.
order-places-open = Varias cargas llegan a { $landing }. Acuerde dónde quedará cada una: el orden cuenta sus masas, no sus lugares.
order-do-see-findings = Vea qué piden sus resultados.
order-do-choose-stand = Elija una posición que pase sus comprobaciones.
order-do-window = Deje que termine a las { $until }: así tiene sitio, y los demás izados conservan el suyo.
order-do-leave = Deje fuera el izado { $lift }, que no es más urgente: así este tiene sitio.
order-do-take-away = Retire antes lo que dejó allí el izado { $lift }.
order-do-half = Lleve la mitad de la carga: el lugar de descarga la soporta tal como está entonces.
order-do-other-landing = La resistencia de estos basta: { $landings }. Allí hay que comprobar posición, alcance y tabla.
order-do-drop-after = Que deje de esperar al izado { $lift }: así se abre el círculo.

## Movimiento de la pluma cuando el sencillo no se admite
check-movement = Movimiento de la pluma
movement-other = El movimiento sencillo (subir, extender, dejar) no se admite: { $what }. Otro movimiento supera todas las comprobaciones; está en los pasos.
movement-past = { $thing } estorba
movement-chart = la tabla de cargas, el factor de carga o la inclinación no cumplen por el camino
do-move-in-order = Mueva la pluma en el orden de los pasos y en ningún otro, despacio, y que alguien vigile lo que allí se nombra.
movement-none = Ningún movimiento de la pluma lleva la carga más allá de { $thing }: en el mejor de ellos falta { $missing } de espacio.
movement-none-touches = Ningún movimiento de la pluma lleva la carga más allá de { $thing }: todos lo tocan.
movement-none-low = Ningún movimiento de la pluma lleva la carga a través de { $thing }: al hueco le falta { $missing } de altura. Carga y margen necesitan { $height }.
movement-none-narrow = Ningún movimiento de la pluma lleva la carga a través de { $thing }: al hueco le falta { $missing } de anchura. Carga y margen necesitan { $width }.
movement-none-chart = Ningún movimiento de la pluma cumple: donde hay espacio termina la tabla de cargas, o el factor de carga o la inclinación son insuficientes.
movement-frame = Ningún movimiento de la pluma ayuda: donde está la máquina falta { $missing } de espacio hasta { $thing }.
movement-carry = Ningún movimiento de la pluma ayuda: con la pluma abajo, en posición de transporte, falta al menos { $missing } de espacio hasta { $thing }.
movement-landing = Ningún movimiento de la pluma ayuda: con la carga en el lugar de descarga falta al menos { $missing } de espacio hasta { $thing }.
movement-none-back = La carga puede entrar, pero sin ella la pluma no vuelve a salir. { $what }
do-clear-way = Haga despejar el paso, entregue la carga por otro sitio o redúzcala.
do-stand-back = Sitúese { $distance } más atrás en la misma línea: desde allí hay un movimiento que cumple (probado).
do-stand-nearer = Sitúese { $distance } más cerca en la misma línea: desde allí hay un movimiento que cumple (probado).
step-way-raise = Suba la pluma hasta { $angle } en el indicador de ángulo; no cambie la extensión.
step-way-lower = Baje la pluma hasta { $angle } en el indicador de ángulo; no cambie la extensión.
step-way-extend = Extienda la pluma hasta { $extension }; no cambie el ángulo.
step-way-retract = Retraiga la pluma hasta { $extension }; no cambie el ángulo.
step-way-together = Mueva ángulo y extensión a la vez y por igual, hasta { $angle } y { $extension }.
step-way-straight-in = Entre en línea recta y a nivel, extendiendo y manteniendo la altura con la pluma, hasta { $angle } y { $extension }.
step-way-straight-out = Salga en línea recta y a nivel, retrayendo y manteniendo la altura con la pluma, hasta { $angle } y { $extension }.
step-way-straight-up = Suba en vertical, pluma arriba y afuera a la vez, hasta { $angle } y { $extension }.
step-way-straight-down = Baje en vertical, pluma abajo y adentro a la vez, hasta { $angle } y { $extension }.
step-way-watch = { $what } Vigile { $thing }: quedan libres { $distance }.
step-way-order = Los pasos siguientes tienen su propio orden, porque algo estorba: respételo.
step-way-withdraw = Retraiga la pluma para sacar las horquillas en línea recta, niveladas y sin rozar la carga, sin mover la máquina. Luego vuelva con los pasos siguientes y en su orden.
step-way-let-go = Suelte la carga cuando se sostenga por sí misma y todos estén apartados. Luego vuelva con los pasos siguientes y en su orden.
step-way-carry = Circule solo con la pluma abajo, en posición de transporte.

## Dónde situarse y el camino de la pluma (dibujos, hoja, pantalla)

ui-field-not-looked = No se examinó el terreno alrededor de este lugar de descarga.
ui-stand-field-alt = Terreno alrededor del lugar de descarga de { $lift } visto desde arriba: apto en { $go }, apto con condiciones en { $condition }, { $others } emplazamientos más.
ui-field-area = { $state }: { $area }
ui-field-area-by = { $state }, { $reason }: { $area }
ui-field-everywhere = Rechazado en cualquier emplazamiento: { $checks }
ui-field-stand-stated = Emplazamiento indicado, centro del eje delantero: { $east } este, { $north } norte, rumbo { $heading }
ui-field-stand-found = Emplazamiento hallado, centro del eje delantero: { $east } este, { $north } norte, rumbo { $heading }
ui-field-stand-refused = Aquí no: emplazamiento indicado, { $east } este, { $north } norte, rumbo { $heading }
ui-field-other = { $verdict }: { $east } este, { $north } norte, rumbo { $heading }
ui-field-approach = Entrada de las cargas: rumbo { $heading }, { $tolerance } a cada lado
ui-field-disc = Centro del eje delantero en cualquier punto de este círculo: { $distance } alrededor
ui-field-grid = Cuadrícula: cada { $step } m, cifras en metros este y norte. Las superficies son de todo el terreno examinado, para el centro del eje delantero.
ui-strip-none = No hay movimiento previsto para este izado.
ui-strip-alt = Movimiento de la pluma de { $lift } en { $steps } imágenes.
ui-strip-reads = { $angle } · { $extension }
ui-strip-least = Donde menos queda, antes de acabar la imagen { $step }: { $check }, { $reserve }
ui-strip-note = Bajo cada imagen: ángulo en el indicador, extensión según las marcas y qué hacer. Línea discontinua: pluma y carga en la imagen anterior. Vista desde el lado derecho; todo a la misma escala.
ui-other-stands = Otros emplazamientos
ui-changes = Qué lo haría posible
ui-stand-off = Emplazamiento
ui-stand-off-by = puede desviarse { $disc } en cualquier sentido, y el rumbo { $turn }
ui-east = Este
ui-north-coordinate = Norte
ui-other-stands-note = Comprobados por completo para este izado. Póngalo en el trabajo y planifique de nuevo antes de usarlo.
ui-changes-note = Cada cambio se probó buscando emplazamientos de nuevo. Cambie el trabajo y planifique otra vez antes de izar nada.
