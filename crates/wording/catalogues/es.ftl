### Español. Palabras sencillas para gente de obra. Los argumentos llegan como texto listo, en las unidades del lector.

## Dictamen, estado, gravedad, certeza, fuente

ui-verdict-go = APTO
ui-verdict-conditions = APTO CON CONDICIONES
ui-verdict-no-go = NO APTO
ui-verdict-go-means = Todas las comprobaciones están dentro de su límite, con la reserva exigida.
ui-verdict-conditions-means = Permitido solo si se cumplen todas las condiciones indicadas.
ui-verdict-no-go-means = No haga este izado. Vea qué es lo que manda y qué hay que hacer.
ui-status-go = Apto
ui-status-condition = Condición
ui-status-cannot-tell = No se puede saber
ui-status-no-go = No apto
ui-status-stop = Alto
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
ui-certainty-ticket = del albarán
ui-certainty-measured = medido
ui-certainty-built-up = calculado a partir de sus partes
ui-certainty-estimated = estimado
ui-certainty-stated = declarado por una persona con nombre
ui-certainty-invented = inventado
ui-source-published = { $citation }
ui-source-from-memory = { $citation } (de memoria)
ui-source-common-practice = práctica habitual
ui-source-mechanics = mecánica
ui-source-input = { $place }, { $certainty }
ui-source-person = { $name } declara: { $statement }

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
ui-demand = Solicitación
ui-limit = Límite
ui-reserve = Reserva
ui-reserve-of = { $share } de reserva
ui-reserve-over = { $share } por encima del límite
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
ui-stand-field = Campo de emplazamientos
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
ui-landing = Punto de descarga
ui-pick-up = Punto de recogida
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
ui-plan-view-alt = Izado { $lift } visto desde arriba, con emplazamiento, punto de descarga, líneas y obstáculos.

## Páginas, archivos, órdenes

ui-page-of = Página { $page } de { $pages }
ui-made-by = Counterpoise { $version }, plan { $digest }
ui-lifts-summary = { $lifts ->
    [one] { $lifts } izado
   *[other] { $lifts } izados
}: { $go } aptos, { $conditions } aptos con condiciones, { $no_go } no aptos
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

## Rótulos de los dibujos y hoja del plan

ui-not-posed = Sin dibujo: no se pudo colocar la máquina en este puesto. Vea las comprobaciones.
ui-no-chart = Sin dibujo: no hay tabla de cargas para esta máquina, accesorio y apoyo.
ui-line-number = Línea { $number }
ui-line-keep = mantener { $distance }
ui-line-no-required = tensión no conocida; por eso no se conoce la distancia exigida
ui-voltage-not-known = tensión no conocida
ui-line-nearest = menor distancia hallada { $distance }
ui-line-aside = a { $distance } al lado de esta vista
ui-outside-picture = fuera de este dibujo
ui-ground-not-known = terreno no conocido
ui-slope-not-known = Pendiente del terreno no conocida.
ui-seen-from-right = Visto desde el lado derecho de la máquina.
ui-nose-up = Terreno a lo largo de la máquina { $slope }, delante más alto
ui-nose-down = Terreno a lo largo de la máquina { $slope }, delante más bajo
ui-left-low = de través { $slope }, lado izquierdo más bajo
ui-right-low = de través { $slope }, lado derecho más bajo
ui-load-gravity = Centro de gravedad de la carga
ui-chart-point = Punto leído en el tabla de cargas
ui-load-of-capacity = { $load } de { $capacity }
ui-load-up-to = Carga, como máximo
ui-no-zone = La tabla no muestra nada aquí: no permitido
ui-rated-load-centre = Centro de carga nominal { $distance }
ui-capacity-factor = Capacidades multiplicadas por { $factor }: el centro de carga supera el nominal
ui-zone-enough = Admite esta carga y sobra { $share } o más
ui-zone-little = Admite esta carga y sobra menos de { $share }
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
ui-over-limit = sobre el límite
ui-in-reserve = de reserva
ui-no-number = sin número
ui-area = Área
ui-wheel = Rueda o placa
ui-position = Posición
ui-east-north = { $east } este, { $north } norte
ui-size = Tamaño (fondo × ancho × alto)
ui-from-to = { $value } (de { $low } a { $high })
ui-checks-of = { $met } de { $checks } comprobaciones cumplidas
ui-engine-version = Counterpoise { $version }
ui-digest = Huella
ui-lift-of = Izado { $number } de { $lifts }
ui-ground-file = Alturas del terreno según
ui-wheel-heights = Terreno bajo las ruedas
ui-printed = Impreso

## La pantalla

ui-all-lifts = Todos los izados
ui-light-choice = Pantalla
ui-light-auto = Como el dispositivo
ui-light-day = Clara, para el día
ui-light-night = Oscura, para la noche
ui-reading-choices = Idioma, unidades, pantalla
ui-loading = Trayendo el plan…
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
