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
