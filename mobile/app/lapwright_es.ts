<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>AboutPart</name>
    <message>
        <source>About</source>
        <translation>Acerca de</translation>
    </message>
    <message>
        <source>Lapwright %1. Free software under the MIT licence, without any warranty.</source>
        <translation>Lapwright %1. Software libre con la licencia MIT, sin ninguna garantía.</translation>
    </message>
    <message>
        <source>Made with:</source>
        <translation>Hecho con:</translation>
    </message>
    <message>
        <source>%1, for %2. Licence: %3</source>
        <translation>%1, para %2. Licencia: %3</translation>
    </message>
</context>
<context>
    <name>CameraSheet</name>
    <message>
        <source>Close the camera</source>
        <translation>Cerrar la cámara</translation>
    </message>
    <message>
        <source>The camera does not answer: %1</source>
        <translation>La cámara no responde: %1</translation>
    </message>
    <message>
        <source>The camera is starting</source>
        <translation>La cámara se está iniciando</translation>
    </message>
    <message>
        <source>Hold the label&apos;s code in view until it is read.</source>
        <translation>Mantenga a la vista el código de la etiqueta hasta que se lea.</translation>
    </message>
    <message>
        <source>Take the photo</source>
        <translation>Tomar la foto</translation>
    </message>
</context>
<context>
    <name>ChainBar</name>
    <message>
        <source>Chains</source>
        <translation>Cadenas</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Go on with the chain</source>
        <translation>Seguir con la cadena</translation>
    </message>
    <message>
        <source>Start another chain</source>
        <translation>Empezar otra cadena</translation>
    </message>
</context>
<context>
    <name>ChainStart</name>
    <message>
        <source>Start another chain</source>
        <translation>Empezar otra cadena</translation>
    </message>
    <message>
        <source>Start a chain</source>
        <translation>Empezar una cadena</translation>
    </message>
    <message>
        <source>or tap a run to change it</source>
        <translation>o toque un tramo para cambiarlo</translation>
    </message>
    <message>
        <source>Kinds of chain</source>
        <translation>Clases de cadena</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>It goes round a chimney or the like</source>
        <translation>Rodea una chimenea o algo parecido</translation>
    </message>
    <message>
        <source>Its width along the ridge</source>
        <translation>Su ancho a lo largo de la cumbrera</translation>
    </message>
    <message>
        <source>as its headwall</source>
        <translation>como su pared frontal</translation>
    </message>
    <message>
        <source>Cricket above it</source>
        <translation>Desviador de agua arriba</translation>
    </message>
    <message>
        <source>Name of the chain in hand</source>
        <translation>Nombre de la cadena en curso</translation>
    </message>
    <message>
        <source>Remove it</source>
        <translation>Quitarla</translation>
    </message>
</context>
<context>
    <name>CheckScreen</name>
    <message numerus="yes">
        <source>%n must be put right</source>
        <translation>
            <numerusform>%n por corregir</numerusform>
            <numerusform>%n por corregir</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing blocks this order</source>
        <translation>Nada bloquea este pedido</translation>
    </message>
    <message numerus="yes">
        <source>%n to look at</source>
        <translation>
            <numerusform>%n por mirar</numerusform>
            <numerusform>%n por mirar</numerusform>
        </translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>Observaciones</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>. Your reason: %1</source>
        <translation>. Su motivo: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n photos</source>
        <translation>
            <numerusform>%n foto</numerusform>
            <numerusform>%n fotos</numerusform>
        </translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Photos of %1</source>
        <translation>Fotos de %1</translation>
    </message>
    <message>
        <source>Change the reason</source>
        <translation>Cambiar el motivo</translation>
    </message>
    <message>
        <source>Go on, with a reason</source>
        <translation>Seguir, con un motivo</translation>
    </message>
    <message>
        <source>Show it</source>
        <translation>Mostrarlo</translation>
    </message>
    <message>
        <source>Nothing to say</source>
        <translation>Nada que observar</translation>
    </message>
    <message>
        <source>Every run has its length and trim, every closed chain comes back to its start, and the rules are met.</source>
        <translation>Cada tramo tiene su largo y su moldura, cada cadena cerrada vuelve a su inicio y se cumplen las reglas.</translation>
    </message>
    <message>
        <source>Look at the order</source>
        <translation>Ver el pedido</translation>
    </message>
</context>
<context>
    <name>ClosureBar</name>
    <message>
        <source>Open the chain</source>
        <translation>Abrir la cadena</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>The chain does not close yet</source>
        <translation>La cadena aún no cierra</translation>
    </message>
</context>
<context>
    <name>CornerChoice</name>
    <message>
        <source>Square, outside</source>
        <translation>A escuadra, exterior</translation>
    </message>
    <message>
        <source>Square, inside</source>
        <translation>A escuadra, interior</translation>
    </message>
    <message>
        <source>Straight on</source>
        <translation>Recto</translation>
    </message>
    <message>
        <source>Another angle</source>
        <translation>Otro ángulo</translation>
    </message>
    <message>
        <source>Two sides and a diagonal</source>
        <translation>Dos lados y una diagonal</translation>
    </message>
    <message>
        <source>Inside corner</source>
        <translation>Esquina interior</translation>
    </message>
    <message>
        <source>the building takes the rest of the full turn</source>
        <translation>el edificio ocupa el resto de la vuelta entera</translation>
    </message>
    <message>
        <source>The angle is on the building&apos;s side: under 180° at an outside corner, over 180° at an inside one. With the tape: mark a length along each side from the corner, and measure between the marks.</source>
        <translation>El ángulo es el del lado del edificio: menos de 180° en una esquina exterior, más de 180° en una interior. Con la cinta: marque un largo en cada lado desde la esquina y mida entre las marcas.</translation>
    </message>
</context>
<context>
    <name>CountSheet</name>
    <message>
        <source>Tap a mark, or scan its label</source>
        <translation>Toque una marca o escanee su etiqueta</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántas</translation>
    </message>
    <message>
        <source>Came</source>
        <translation>Llegaron</translation>
    </message>
    <message>
        <source>Short</source>
        <translation>Faltan</translation>
    </message>
    <message>
        <source>Damaged</source>
        <translation>Dañadas</translation>
    </message>
    <message>
        <source>Wrong</source>
        <translation>Equivocadas</translation>
    </message>
    <message>
        <source>Note for what is damaged or wrong</source>
        <translation>Nota de lo dañado o equivocado</translation>
    </message>
    <message>
        <source>Put the piece down uncounted</source>
        <translation>Dejar la pieza sin contar</translation>
    </message>
</context>
<context>
    <name>DeliveryScreen</name>
    <message>
        <source>No load list yet</source>
        <translation>Todavía no hay lista de carga</translation>
    </message>
    <message>
        <source>Open the load list that came with the truck; then count the bundles in.</source>
        <translation>Abra la lista de carga que vino con el camión; después cuente los atados.</translation>
    </message>
    <message>
        <source>Open a load list</source>
        <translation>Abrir una lista de carga</translation>
    </message>
    <message>
        <source>still missing</source>
        <translation>por contar</translation>
    </message>
    <message>
        <source>received</source>
        <translation>recibidas</translation>
    </message>
    <message>
        <source>short, damaged, wrong</source>
        <translation>faltantes, dañadas, equivocadas</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Mark or bundle, typed or scanned</source>
        <translation>Marca o atado</translation>
    </message>
    <message>
        <source>Read a label from a photo</source>
        <translation>Leer una etiqueta de una foto</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todas</translation>
    </message>
    <message>
        <source>Missing</source>
        <translation>Por contar</translation>
    </message>
    <message>
        <source>Show all pieces</source>
        <translation>Mostrar todas las piezas</translation>
    </message>
    <message>
        <source>Show only what is missing</source>
        <translation>Mostrar solo lo que falta por contar</translation>
    </message>
    <message>
        <source>Pieces on the load</source>
        <translation>Piezas de la carga</translation>
    </message>
    <message>
        <source>Bundle %1</source>
        <translation>Atado %1</translation>
    </message>
    <message>
        <source>All came</source>
        <translation>Llegó todo</translation>
    </message>
    <message>
        <source>All of bundle %1 came</source>
        <translation>Llegó todo el atado %1</translation>
    </message>
    <message>
        <source>two people</source>
        <translation>dos personas</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 of %2 left</source>
        <translation>%1 de %2 por contar</translation>
    </message>
    <message>
        <source>%1 short</source>
        <translation>%1 faltantes</translation>
    </message>
    <message>
        <source>%1 damaged</source>
        <translation>%1 dañadas</translation>
    </message>
    <message>
        <source>%1 wrong</source>
        <translation>%1 equivocadas</translation>
    </message>
    <message>
        <source>Take the order of this job in to see where the piece goes.</source>
        <translation>Reciba el pedido de este trabajo para ver dónde va la pieza.</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Take in</source>
        <translation>Recibir</translation>
    </message>
    <message>
        <source>Take in a load list, or another tablet&apos;s receipt</source>
        <translation>Recibir una lista de carga o el recibo de otra tableta</translation>
    </message>
    <message>
        <source>Write the receipt</source>
        <translation>Escribir el recibo</translation>
    </message>
    <message>
        <source>Where the receipt goes</source>
        <translation>Dónde guardar el recibo</translation>
    </message>
    <message>
        <source>Which photo of a label</source>
        <translation>Qué foto de una etiqueta</translation>
    </message>
    <message>
        <source>Load list, order or another tablet&apos;s receipt</source>
        <translation>Lista de carga, pedido o recibo de otra tableta</translation>
    </message>
    <message>
        <source>the receipt</source>
        <translation>el recibo</translation>
    </message>
    <message>
        <source>Scan a label with the camera</source>
        <translation>Leer una etiqueta con la cámara</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>Label of a piece or bundle</source>
        <translation>Etiqueta de una pieza o un atado</translation>
    </message>
</context>
<context>
    <name>EndChoice</name>
    <message>
        <source>Left end, standing outside</source>
        <translation>Extremo izquierdo, visto desde afuera</translation>
    </message>
    <message>
        <source>Right end</source>
        <translation>Extremo derecho</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
</context>
<context>
    <name>FieldChip</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>sin dato</translation>
    </message>
</context>
<context>
    <name>FileBrowser</name>
    <message>
        <source>Back without choosing</source>
        <translation>Volver sin elegir</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Subir</translation>
    </message>
    <message>
        <source>Files</source>
        <translation>Archivos</translation>
    </message>
    <message>
        <source>No folders in here</source>
        <translation>Aquí no hay carpetas</translation>
    </message>
    <message>
        <source>Nothing in here that this program reads</source>
        <translation>Aquí no hay nada que este programa lea</translation>
    </message>
    <message>
        <source>Write %1 here</source>
        <translation>Escribir %1 aquí</translation>
    </message>
</context>
<context>
    <name>FindingRow</name>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Look at this</source>
        <translation>Mire esto</translation>
    </message>
    <message>
        <source>Must be put right</source>
        <translation>Hay que corregirlo</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Why, and what to do</source>
        <translation>Por qué, y qué hacer</translation>
    </message>
</context>
<context>
    <name>GuideBar</name>
    <message>
        <source>An L-shaped eave line, walked with the building on the left. Tap a run in the plan to see it.</source>
        <translation>Una línea de alero en forma de L, recorrida con el edificio a la izquierda. Toque un tramo de la planta para verlo.</translation>
    </message>
    <message>
        <source>The keypad has feet, inches and every eighth. Close the run with the cross; the bar under the plan says whether the chain closes.</source>
        <translation>El teclado tiene pies, pulgadas y cada octavo. Cierre el tramo con la cruz; la barra bajo la planta dice si la cadena cierra.</translation>
    </message>
    <message>
        <source>Under Trim each kind of run gets its profile. The valley has none yet: choose the usual trim for it.</source>
        <translation>En Molduras cada clase de tramo recibe su perfil. La limahoya aún no tiene: elija la moldura usual.</translation>
    </message>
    <message>
        <source>Check lists what cannot be right, and what to look at. A warning may stand, with your reason.</source>
        <translation>En Revisión está lo que no puede ser y lo que hay que mirar. Una advertencia puede quedar, con su motivo.</translation>
    </message>
    <message>
        <source>The order: every piece with its mark. Tap one to see why it is as it is; then send it as one file.</source>
        <translation>El pedido: cada pieza con su marca. Toque una para ver por qué es así; después envíelo en un solo archivo.</translation>
    </message>
    <message>
        <source>Guide, step %1 of %2: %3</source>
        <translation>Guía, paso %1 de %2: %3</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Siguiente</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>Leave the guide</source>
        <translation>Salir de la guía</translation>
    </message>
</context>
<context>
    <name>HandOnButton</name>
    <message>
        <source>Share the file</source>
        <translation>Compartir el archivo</translation>
    </message>
    <message>
        <source>Show the folder</source>
        <translation>Mostrar la carpeta</translation>
    </message>
</context>
<context>
    <name>HouseScreen</name>
    <message>
        <source>Walk with the building on your left</source>
        <translation>Camine con el edificio a su izquierda</translation>
    </message>
    <message>
        <source>Type the first run on the keypad. The plan grows as you go.</source>
        <translation>Escriba el primer tramo en el teclado. La planta crece a medida que avanza.</translation>
    </message>
</context>
<context>
    <name>JobFormScreen</name>
    <message>
        <source>Whose house</source>
        <translation>De quién es la casa</translation>
    </message>
    <message>
        <source>Name of the job</source>
        <translation>Nombre del trabajo</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Cliente</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Wanted by</source>
        <translation>Se necesita el</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>año-mes-día</translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation>Midió</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation>Metal</translation>
    </message>
    <message>
        <source>a gauge has no thickness without its metal</source>
        <translation>un calibre no tiene espesor sin su metal</translation>
    </message>
    <message>
        <source>Gauge or thickness</source>
        <translation>Calibre o espesor</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Color</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>or the name on the coil</source>
        <translation>o el nombre que lleva el rollo</translation>
    </message>
    <message>
        <source>What limits a piece</source>
        <translation>Qué limita una pieza</translation>
    </message>
    <message>
        <source>Longest piece the shop folds</source>
        <translation>Pieza más larga que dobla el taller</translation>
    </message>
    <message>
        <source>Longest piece for the truck</source>
        <translation>Pieza más larga para el camión</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>sin límite</translation>
    </message>
    <message>
        <source>Stock length</source>
        <translation>Largo de existencias</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>Shortest piece</source>
        <translation>Pieza más corta</translation>
    </message>
    <message>
        <source>Wind pressure at the house, lb/sq ft</source>
        <translation>Presión del viento en la casa, lb/pie²</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>Rules to hold to</source>
        <translation>Reglas que se deben cumplir</translation>
    </message>
    <message>
        <source>the local code and a licensed professional decide</source>
        <translation>deciden el código local y un profesional con licencia</translation>
    </message>
    <message>
        <source>Measure the house</source>
        <translation>Medir la casa</translation>
    </message>
</context>
<context>
    <name>JobsScreen</name>
    <message>
        <source>Name, customer or place</source>
        <translation>Nombre, cliente o lugar</translation>
    </message>
    <message>
        <source>Take in a file</source>
        <translation>Recibir un archivo</translation>
    </message>
    <message>
        <source>New job</source>
        <translation>Trabajo nuevo</translation>
    </message>
    <message>
        <source>Which jobs are shown</source>
        <translation>Qué trabajos se muestran</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abiertos</translation>
    </message>
    <message>
        <source>Measuring</source>
        <translation>En medición</translation>
    </message>
    <message>
        <source>Sent</source>
        <translation>Enviados</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Cambiados</translation>
    </message>
    <message>
        <source>Archived</source>
        <translation>Archivados</translation>
    </message>
    <message>
        <source>Deleted</source>
        <translation>Borrados</translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation>Trabajos</translation>
    </message>
    <message>
        <source>wanted %1</source>
        <translation>para el %1</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n tramo</numerusform>
            <numerusform>%n tramos</numerusform>
        </translation>
    </message>
    <message>
        <source>More about %1</source>
        <translation>Más sobre %1</translation>
    </message>
    <message>
        <source>No job is called so</source>
        <translation>Ningún trabajo se llama así</translation>
    </message>
    <message>
        <source>No jobs here</source>
        <translation>Aquí no hay trabajos</translation>
    </message>
    <message>
        <source>Every word must stand in the name, the customer or the place.</source>
        <translation>Cada palabra debe estar en el nombre, el cliente o el lugar.</translation>
    </message>
    <message>
        <source>Measure a house once and send it right. Start with the sample house: it takes two minutes and shows every step.</source>
        <translation>Mida una casa una sola vez y envíela bien. Empiece con la casa de muestra: toma dos minutos y enseña cada paso.</translation>
    </message>
    <message>
        <source>Show all</source>
        <translation>Mostrar todos</translation>
    </message>
    <message>
        <source>Open the sample house</source>
        <translation>Abrir la casa de muestra</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Duplicar</translation>
    </message>
    <message>
        <source>Archive</source>
        <translation>Archivar</translation>
    </message>
    <message>
        <source>Back to the open jobs</source>
        <translation>Volver a los abiertos</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Take in a job, an order, a load list or a receipt</source>
        <translation>Recibir un trabajo, un pedido, una lista de carga o un recibo</translation>
    </message>
</context>
<context>
    <name>KindChoice</name>
    <message>
        <source>Kinds of run</source>
        <translation>Clases de tramo</translation>
    </message>
</context>
<context>
    <name>Language</name>
    <message>
        <source>English</source>
        <translation>Español</translation>
    </message>
</context>
<context>
    <name>LoadTrust</name>
    <message>
        <source>A shop signed this load list. If the shop shows the same code, %1, trust it: load lists of anybody else are questioned from then on.</source>
        <translation>Un taller firmó esta lista de carga. Si el taller muestra el mismo código, %1, confíe en él: desde entonces se cuestionan las listas de carga de cualquier otro.</translation>
    </message>
    <message>
        <source>A shop that this tablet does not trust signed this load list. Its code is %1: compare it with the one your shop shows.</source>
        <translation>Firmó esta lista de carga un taller en el que esta tableta no confía. Su código es %1: compárelo con el que muestra su taller.</translation>
    </message>
    <message>
        <source>This load list is signed with a key that this tablet trusts no longer, %1.</source>
        <translation>Esta lista de carga está firmada con una clave en la que esta tableta ya no confía, %1.</translation>
    </message>
    <message>
        <source>What stands in this load list as its signature is none.</source>
        <translation>Lo que esta lista de carga trae como firma no es una firma.</translation>
    </message>
    <message>
        <source>This load list was changed after the shop signed it.</source>
        <translation>Esta lista de carga se cambió después de que el taller la firmó.</translation>
    </message>
    <message>
        <source>No shop signed this load list.</source>
        <translation>Ningún taller firmó esta lista de carga.</translation>
    </message>
</context>
<context>
    <name>LoadTrustBar</name>
    <message>
        <source>Same code: trust this shop</source>
        <translation>Mismo código: confiar en este taller</translation>
    </message>
    <message>
        <source>Count it all the same</source>
        <translation>Contarla de todos modos</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Lapwright</source>
        <translation>Lapwright</translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation>Trabajos</translation>
    </message>
    <message>
        <source>House</source>
        <translation>Casa</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation>Molduras</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Delivery</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>No job is open</source>
        <translation>Ningún trabajo está abierto</translation>
    </message>
    <message>
        <source>Open a job or start one; then its house, trim, findings and order are here.</source>
        <translation>Abra o empiece un trabajo; entonces aquí estarán su casa, sus molduras, sus observaciones y su pedido.</translation>
    </message>
    <message>
        <source>Go to the jobs</source>
        <translation>Ir a los trabajos</translation>
    </message>
</context>
<context>
    <name>MeasurePad</name>
    <message>
        <source>Nothing typed yet</source>
        <translation>Nada escrito todavía</translation>
    </message>
    <message>
        <source>Typed: %1. %2</source>
        <translation>Escrito: %1. %2</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Rise in 12</source>
        <translation>Subida en 12</translation>
    </message>
    <message>
        <source>Angle</source>
        <translation>Ángulo</translation>
    </message>
    <message>
        <source>= %1</source>
        <translation>= %1</translation>
    </message>
    <message>
        <source>Decimal point</source>
        <translation>Punto decimal</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>pie</translation>
    </message>
    <message>
        <source>Feet</source>
        <translation>Pies</translation>
    </message>
    <message>
        <source>in</source>
        <translation>pulg</translation>
    </message>
    <message>
        <source>Inches</source>
        <translation>Pulgadas</translation>
    </message>
    <message>
        <source>In twelve</source>
        <translation>En doce</translation>
    </message>
    <message>
        <source>Degrees</source>
        <translation>Grados</translation>
    </message>
    <message>
        <source>Per cent</source>
        <translation>Por ciento</translation>
    </message>
    <message>
        <source>ft in</source>
        <translation>pie pulg</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Measure in feet and inches</source>
        <translation>Medir en pies y pulgadas</translation>
    </message>
    <message>
        <source>Measure in millimetres</source>
        <translation>Medir en milímetros</translation>
    </message>
    <message>
        <source>C</source>
        <translation>C</translation>
    </message>
    <message>
        <source>Clear</source>
        <translation>Vaciar</translation>
    </message>
    <message>
        <source>%1 inch</source>
        <translation>%1 de pulgada</translation>
    </message>
    <message>
        <source>One sixteenth more</source>
        <translation>Un dieciseisavo más</translation>
    </message>
    <message>
        <source>%1:12</source>
        <translation>%1:12</translation>
    </message>
    <message>
        <source>%1 in 12</source>
        <translation>%1 en 12</translation>
    </message>
</context>
<context>
    <name>MessageBar</name>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Close the message</source>
        <translation>Cerrar el aviso</translation>
    </message>
</context>
<context>
    <name>NavigationRail</name>
    <message>
        <source>Places</source>
        <translation>Lugares</translation>
    </message>
    <message>
        <source>%1, %2 waiting</source>
        <translation>%1, %2 pendientes</translation>
    </message>
</context>
<context>
    <name>NumberStepper</name>
    <message>
        <source>One less</source>
        <translation>Uno menos</translation>
    </message>
    <message>
        <source>One more</source>
        <translation>Uno más</translation>
    </message>
</context>
<context>
    <name>OrderScreen</name>
    <message>
        <source>Profiles</source>
        <translation>Perfiles</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>No pieces yet</source>
        <translation>Todavía no hay piezas</translation>
    </message>
    <message>
        <source>Runs with a length and a trim become pieces here.</source>
        <translation>Los tramos con largo y moldura se vuelven piezas aquí.</translation>
    </message>
    <message>
        <source>Choose trim</source>
        <translation>Elegir molduras</translation>
    </message>
    <message>
        <source>Why %1 is as it is</source>
        <translation>Por qué %1 es así</translation>
    </message>
    <message>
        <source>Where the order goes</source>
        <translation>Dónde guardar el pedido</translation>
    </message>
</context>
<context>
    <name>OrderSide</name>
    <message numerus="yes">
        <source>%n pieces</source>
        <translation>
            <numerusform>%n pieza</numerusform>
            <numerusform>%n piezas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, revision %2, sent</source>
        <translation>%1, versión %2, enviado</translation>
    </message>
    <message>
        <source>%1, revision %2, not sent yet</source>
        <translation>%1, versión %2, sin enviar</translation>
    </message>
    <message numerus="yes">
        <source>%n findings block this order</source>
        <translation>
            <numerusform>%n observación bloquea este pedido</numerusform>
            <numerusform>%n observaciones bloquean este pedido</numerusform>
        </translation>
    </message>
    <message>
        <source>See what blocks</source>
        <translation>Ver qué lo bloquea</translation>
    </message>
    <message numerus="yes">
        <source>%n to look at first</source>
        <translation>
            <numerusform>%n por mirar antes</numerusform>
            <numerusform>%n por mirar antes</numerusform>
        </translation>
    </message>
    <message>
        <source>Write the file again</source>
        <translation>Escribir el archivo otra vez</translation>
    </message>
    <message>
        <source>Send the order</source>
        <translation>Enviar el pedido</translation>
    </message>
    <message numerus="yes">
        <source>%n photos go along in one ZIP</source>
        <translation>
            <numerusform>%n foto va también en un ZIP</numerusform>
            <numerusform>%n fotos van también en un ZIP</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them are no longer on this tablet</source>
        <translation>
            <numerusform>%n de ellas ya no está en esta tableta</numerusform>
            <numerusform>%n de ellas ya no están en esta tableta</numerusform>
        </translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>Changed since it was sent</source>
        <translation>Cambiado desde que se envió</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Runs longer than a piece</source>
        <translation>Tramos más largos que una pieza</translation>
    </message>
    <message>
        <source>Full lengths, then the rest</source>
        <translation>Largos completos y el resto</translation>
    </message>
    <message>
        <source>Equal lengths</source>
        <translation>Largos iguales</translation>
    </message>
    <message>
        <source>Stock lengths, cut on site</source>
        <translation>Largos de existencias, a cortar en obra</translation>
    </message>
    <message>
        <source>Spare pieces of each profile</source>
        <translation>Piezas de repuesto de cada perfil</translation>
    </message>
    <message>
        <source>What goes along</source>
        <translation>Lo que va con el pedido</translation>
    </message>
</context>
<context>
    <name>PhotoSheet</name>
    <message>
        <source>Photos of %1</source>
        <translation>Fotos de %1</translation>
    </message>
    <message>
        <source>Close the photos</source>
        <translation>Cerrar las fotos</translation>
    </message>
    <message>
        <source>No photos of it yet</source>
        <translation>Todavía no hay fotos</translation>
    </message>
    <message>
        <source>A photo travels with the order: the shop sees what you saw. Take it with the tablet&apos;s camera; then choose its file here.</source>
        <translation>Una foto viaja con el pedido: el taller ve lo que usted vio. Tómela con la cámara de la tableta; después elija aquí su archivo.</translation>
    </message>
    <message>
        <source>Photo %1 of %2</source>
        <translation>Foto %1 de %2</translation>
    </message>
    <message>
        <source>This photo is not on this tablet.</source>
        <translation>Esta foto no está en esta tableta.</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Remove the photo</source>
        <translation>Quitar la foto</translation>
    </message>
    <message>
        <source>Another in its place</source>
        <translation>Otra en su lugar</translation>
    </message>
    <message>
        <source>Add a photo</source>
        <translation>Agregar una foto</translation>
    </message>
    <message>
        <source>Which photo</source>
        <translation>Qué foto</translation>
    </message>
    <message>
        <source>A photo travels with the order: the shop sees what you saw.</source>
        <translation>Una foto viaja con el pedido: el taller ve lo que usted vio.</translation>
    </message>
    <message>
        <source>From a file</source>
        <translation>De un archivo</translation>
    </message>
    <message>
        <source>Take a photo</source>
        <translation>Tomar una foto</translation>
    </message>
    <message>
        <source>Photo of %1</source>
        <translation>Foto de %1</translation>
    </message>
</context>
<context>
    <name>PhotoThumb</name>
    <message>
        <source>%1, not on this tablet</source>
        <translation>%1, no está en esta tableta</translation>
    </message>
</context>
<context>
    <name>ProfileCard</name>
    <message numerus="yes">
        <source>%1, %2, girth %3, %n pieces</source>
        <translation>
            <numerusform>%1, %2, desarrollo %3, %n pieza</numerusform>
            <numerusform>%1, %2, desarrollo %3, %n piezas</numerusform>
        </translation>
    </message>
    <message>
        <source>Change its legs or lap</source>
        <translation>Cambiar sus alas o su traslape</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>girth %1, lap %2</source>
        <translation>desarrollo %1, traslape %2</translation>
    </message>
    <message>
        <source>girth %1</source>
        <translation>desarrollo %1</translation>
    </message>
</context>
<context>
    <name>ProgressStrip</name>
    <message>
        <source>Stop</source>
        <translation>Detener</translation>
    </message>
</context>
<context>
    <name>ReasonSheet</name>
    <message>
        <source>Why it is right all the same</source>
        <translation>Por qué está bien de todos modos</translation>
    </message>
    <message>
        <source>The shop reads this beside the warning</source>
        <translation>El taller lee esto junto a la advertencia</translation>
    </message>
    <message>
        <source>Go on</source>
        <translation>Seguir</translation>
    </message>
    <message>
        <source>Take the reason back</source>
        <translation>Retirar el motivo</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
</context>
<context>
    <name>RunChips</name>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Level run</source>
        <translation>Largo a nivel</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Pendiente</translation>
    </message>
    <message>
        <source>Other slope</source>
        <translation>Otra pendiente</translation>
    </message>
    <message>
        <source>Plan corner</source>
        <translation>Esquina en planta</translation>
    </message>
    <message>
        <source>square</source>
        <translation>a escuadra</translation>
    </message>
    <message>
        <source>Exposure</source>
        <translation>Exposición</translation>
    </message>
    <message>
        <source>Corner before it</source>
        <translation>Esquina anterior</translation>
    </message>
    <message>
        <source>Photos</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>Ends, note</source>
        <translation>Extremos, nota</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>extremos</translation>
    </message>
</context>
<context>
    <name>RunPanel</name>
    <message>
        <source>Run in hand</source>
        <translation>Tramo en curso</translation>
    </message>
    <message>
        <source>New run</source>
        <translation>Tramo nuevo</translation>
    </message>
    <message>
        <source>Run %1</source>
        <translation>Tramo %1</translation>
    </message>
    <message>
        <source>The chain is closed</source>
        <translation>La cadena está cerrada</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Leave the run as it was</source>
        <translation>Dejar el tramo como estaba</translation>
    </message>
    <message>
        <source>It does not come back to its start</source>
        <translation>No vuelve a su inicio</translation>
    </message>
    <message>
        <source>This chain is done</source>
        <translation>Esta cadena está lista</translation>
    </message>
    <message>
        <source>Measure again what stands under the plan, or tap a run to change it.</source>
        <translation>Mida otra vez lo que está bajo la planta, o toque un tramo para cambiarlo.</translation>
    </message>
    <message>
        <source>Tap a run in the plan to change it, or start another chain with the plus sign.</source>
        <translation>Toque un tramo de la planta para cambiarlo, o empiece otra cadena con el signo más.</translation>
    </message>
    <message>
        <source>Side before</source>
        <translation>Lado anterior</translation>
    </message>
    <message>
        <source>Side after</source>
        <translation>Lado siguiente</translation>
    </message>
    <message>
        <source>Diagonal</source>
        <translation>Diagonal</translation>
    </message>
    <message>
        <source>%1 apart</source>
        <translation>%1 de diferencia</translation>
    </message>
    <message>
        <source>%1 counts</source>
        <translation>vale %1</translation>
    </message>
    <message>
        <source>Let %1 count</source>
        <translation>Que valga %1</translation>
    </message>
    <message>
        <source>Forget the measure that counts</source>
        <translation>Olvidar la medida que vale</translation>
    </message>
    <message>
        <source>Close the chain</source>
        <translation>Cerrar la cadena</translation>
    </message>
    <message>
        <source>Measured again</source>
        <translation>Medido otra vez</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Add run %1</source>
        <translation>Agregar tramo %1</translation>
    </message>
    <message>
        <source>Remove the run</source>
        <translation>Quitar el tramo</translation>
    </message>
</context>
<context>
    <name>RunStrip</name>
    <message>
        <source>Runs</source>
        <translation>Tramos</translation>
    </message>
    <message>
        <source>then a corner %1</source>
        <translation>luego una esquina %1</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
</context>
<context>
    <name>SampleHouse</name>
    <message>
        <source>Eave line</source>
        <translation>Línea de alero</translation>
    </message>
    <message>
        <source>Main ridge</source>
        <translation>Cumbrera principal</translation>
    </message>
    <message>
        <source>Hip, south-west</source>
        <translation>Limatesa suroeste</translation>
    </message>
    <message>
        <source>Valley</source>
        <translation>Limahoya</translation>
    </message>
</context>
<context>
    <name>SearchField</name>
    <message>
        <source>Search</source>
        <translation>Buscar</translation>
    </message>
    <message>
        <source>Empty the search</source>
        <translation>Vaciar la búsqueda</translation>
    </message>
</context>
<context>
    <name>SettingsScreen</name>
    <message>
        <source>This tablet&apos;s code, to read to the shop once</source>
        <translation>Código de esta tableta, para leérselo una vez al taller</translation>
    </message>
    <message>
        <source>Where the backup goes</source>
        <translation>Dónde guardar el respaldo</translation>
    </message>
    <message>
        <source>Which backup to restore</source>
        <translation>Qué respaldo restaurar</translation>
    </message>
    <message>
        <source>the backup</source>
        <translation>el respaldo</translation>
    </message>
    <message>
        <source>Backed up: %1</source>
        <translation>Respaldado: %1</translation>
    </message>
    <message>
        <source>Who measures</source>
        <translation>Quién mide</translation>
    </message>
    <message>
        <source>Name, as it stands in orders and receipts</source>
        <translation>Nombre, como va en pedidos y recibos</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Unidades</translation>
    </message>
    <message>
        <source>Feet and inches</source>
        <translation>Pies y pulgadas</translation>
    </message>
    <message>
        <source>Millimetres</source>
        <translation>Milímetros</translation>
    </message>
    <message>
        <source>Smallest fraction shown</source>
        <translation>Fracción más pequeña que se muestra</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>How it looks</source>
        <translation>Apariencia</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Sunlight</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Size of text</source>
        <translation>Tamaño del texto</translation>
    </message>
    <message>
        <source>Small</source>
        <translation>Pequeño</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Normal</translation>
    </message>
    <message>
        <source>Large</source>
        <translation>Grande</translation>
    </message>
    <message>
        <source>Very large</source>
        <translation>Muy grande</translation>
    </message>
    <message>
        <source>Hand that holds the stylus</source>
        <translation>Mano que sostiene el lápiz</translation>
    </message>
    <message>
        <source>Right-handed</source>
        <translation>Diestro</translation>
    </message>
    <message>
        <source>Left-handed</source>
        <translation>Zurdo</translation>
    </message>
    <message>
        <source>Safekeeping</source>
        <translation>Respaldo</translation>
    </message>
    <message>
        <source>everything on this tablet in one file</source>
        <translation>todo lo de esta tableta en un solo archivo</translation>
    </message>
    <message>
        <source>Back up</source>
        <translation>Respaldar</translation>
    </message>
    <message>
        <source>Restore a backup</source>
        <translation>Restaurar un respaldo</translation>
    </message>
    <message>
        <source>Load lists of the shop %1 are trusted.</source>
        <translation>Se confía en las listas de carga del taller %1.</translation>
    </message>
    <message>
        <source>Trust no longer</source>
        <translation>Ya no confiar</translation>
    </message>
    <message>
        <source>Restored. What was here before: %1</source>
        <translation>Restaurado. Lo que había antes: %1</translation>
    </message>
</context>
<context>
    <name>SidePanel</name>
    <message>
        <source>Close %1</source>
        <translation>Cerrar %1</translation>
    </message>
</context>
<context>
    <name>TopBar</name>
    <message>
        <source>Jobs on this tablet</source>
        <translation>Trabajos en esta tableta</translation>
    </message>
    <message>
        <source>Delivery</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Job without a name</source>
        <translation>Trabajo sin nombre</translation>
    </message>
    <message>
        <source>Kept: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>Everything is kept as you enter it</source>
        <translation>Todo se guarda a medida que lo escribe</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Deshacer: %1</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Rehacer: %1</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Rehacer</translation>
    </message>
    <message>
        <source>Customer, material and limits of the job</source>
        <translation>Cliente, material y límites del trabajo</translation>
    </message>
</context>
<context>
    <name>TrimScreen</name>
    <message>
        <source>No runs yet</source>
        <translation>Todavía no hay tramos</translation>
    </message>
    <message>
        <source>Measure the house first; then every kind of run gets its trim here.</source>
        <translation>Mida primero la casa; después cada clase de tramo recibe aquí su moldura.</translation>
    </message>
    <message>
        <source>Kinds of run</source>
        <translation>Clases de tramo</translation>
    </message>
    <message>
        <source>For which runs</source>
        <translation>Para qué tramos</translation>
    </message>
    <message>
        <source>Trims that suit</source>
        <translation>Molduras que sirven</translation>
    </message>
    <message numerus="yes">
        <source>Usual trim on %n runs that have none</source>
        <translation>
            <numerusform>La usual en %n tramo sin moldura</numerusform>
            <numerusform>La usual en %n tramos sin moldura</numerusform>
        </translation>
    </message>
    <message>
        <source>girth %1</source>
        <translation>desarrollo %1</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Take off</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Choose</source>
        <translation>Elegir</translation>
    </message>
    <message>
        <source>No section yet</source>
        <translation>Todavía no hay sección</translation>
    </message>
    <message>
        <source>Measures and legs</source>
        <translation>Medidas y alas</translation>
    </message>
    <message>
        <source>Why %1 is as it is</source>
        <translation>Por qué %1 es así</translation>
    </message>
</context>
<context>
    <name>TrimSizeRow</name>
    <message>
        <source>measure it: %1</source>
        <translation>mídala: %1</translation>
    </message>
    <message>
        <source>set by you, %1</source>
        <translation>puesto por usted, %1</translation>
    </message>
    <message>
        <source>%1 shorter</source>
        <translation>%1 más corto</translation>
    </message>
    <message>
        <source>%1 longer</source>
        <translation>%1 más largo</translation>
    </message>
</context>
<context>
    <name>WhySheet</name>
    <message>
        <source>Close %1</source>
        <translation>Cerrar %1</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>a measure, found nothing</source>
        <translation>una medida, no se encontró nada</translation>
    </message>
    <message>
        <source>digits, fractions, units and their marks only</source>
        <translation>solo cifras, fracciones, unidades y sus signos</translation>
    </message>
    <message>
        <source>a fraction with fewer digits</source>
        <translation>una fracción con menos cifras</translation>
    </message>
    <message>
        <source>a fraction that divides by more than 0</source>
        <translation>una fracción que divida entre más de 0</translation>
    </message>
    <message>
        <source>a number such as 3820 or 3820.5</source>
        <translation>un número como 3820 o 3820.5</translation>
    </message>
    <message>
        <source>a smaller number</source>
        <translation>un número menor</translation>
    </message>
    <message>
        <source>at most nine decimals</source>
        <translation>nueve decimales a lo más</translation>
    </message>
    <message>
        <source>text in UTF-8</source>
        <translation>texto en UTF-8</translation>
    </message>
    <message>
        <source>at most {count} characters</source>
        <translation>{count} caracteres a lo más</translation>
    </message>
    <message>
        <source>{entered}: at character {position} expected</source>
        <translation>{entered}: en el carácter {position} se esperaba</translation>
    </message>
    <message>
        <source>{entered}: found {found} at character {position}, expected</source>
        <translation>{entered}: se encontró {found} en el carácter {position}, se esperaba</translation>
    </message>
    <message>
        <source>{entered} can be read as</source>
        <translation>{entered} se puede leer como</translation>
    </message>
    <message>
        <source>or</source>
        <translation>o</translation>
    </message>
    <message>
        <source>the end of the angle</source>
        <translation>el final del ángulo</translation>
    </message>
    <message>
        <source>at most 360°</source>
        <translation>360° a lo más</translation>
    </message>
    <message>
        <source>an angle that is not negative</source>
        <translation>un ángulo que no sea negativo</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un número</translation>
    </message>
    <message>
        <source>a fraction below 1, such as 22 1/2</source>
        <translation>una fracción menor que 1, como 22 1/2</translation>
    </message>
    <message>
        <source>either decimals or a fraction</source>
        <translation>decimales o una fracción, no ambos</translation>
    </message>
    <message>
        <source>whole degrees before minutes, or nothing more</source>
        <translation>grados enteros antes de los minutos, o nada más</translation>
    </message>
    <message>
        <source>minutes below 60</source>
        <translation>minutos, menos de 60</translation>
    </message>
    <message>
        <source>whole minutes before seconds, or nothing more</source>
        <translation>minutos enteros antes de los segundos, o nada más</translation>
    </message>
    <message>
        <source>seconds below 60</source>
        <translation>segundos, menos de 60</translation>
    </message>
    <message>
        <source>a unit: &apos; ft &quot; in mm cm m</source>
        <translation>una unidad: &apos; ft &quot; in mm cm m</translation>
    </message>
    <message>
        <source>the end of the measure</source>
        <translation>el final de la medida</translation>
    </message>
    <message>
        <source>a length that is not negative</source>
        <translation>un largo que no sea negativo</translation>
    </message>
    <message>
        <source>whole feet before inches</source>
        <translation>pies enteros antes de las pulgadas</translation>
    </message>
    <message>
        <source>a fraction below 1, such as 1 1/4</source>
        <translation>una fracción menor que 1, como 1 1/4</translation>
    </message>
    <message>
        <source>inches after feet</source>
        <translation>pulgadas después de los pies</translation>
    </message>
    <message>
        <source>less than 12 inches after feet</source>
        <translation>menos de 12 pulgadas después de los pies</translation>
    </message>
    <message>
        <source>one number of millimetres, or feet and inches with their marks</source>
        <translation>un solo número de milímetros, o pies y pulgadas con sus signos</translation>
    </message>
    <message>
        <source>at most 1 000 km</source>
        <translation>1 000 km a lo más</translation>
    </message>
    <message>
        <source>a fraction in halves, quarters, 8ths, 16ths, 32nds, 64ths or tenths</source>
        <translation>una fracción en medios, cuartos, octavos, 16avos, 32avos, 64avos o décimos</translation>
    </message>
    <message>
        <source>a fraction of a whole number of nanometres</source>
        <translation>una fracción de nanómetros enteros</translation>
    </message>
    <message>
        <source>a slope such as 6/12, 6 in 12, 26.6° or 50%</source>
        <translation>una pendiente como 6/12, 6 in 12, 26.6° o 50%</translation>
    </message>
    <message>
        <source>the end of the slope</source>
        <translation>el final de la pendiente</translation>
    </message>
    <message>
        <source>a slope that is not negative</source>
        <translation>una pendiente que no sea negativa</translation>
    </message>
    <message>
        <source>at most 1 000 000, with at most six decimals</source>
        <translation>1 000 000 a lo más, con seis decimales a lo más</translation>
    </message>
    <message>
        <source>a run above 0 and a slope of at most 1 000 in 1</source>
        <translation>un avance mayor que 0 y una pendiente de 1 000 en 1 a lo más</translation>
    </message>
    <message>
        <source>less than 90° and at most 1 000 in 1</source>
        <translation>menos de 90° y 1 000 en 1 a lo más</translation>
    </message>
    <message>
        <source>in 12</source>
        <translation>en 12</translation>
    </message>
    <message>
        <source>an inside corner taken for an outside one</source>
        <translation>una esquina interior tomada por exterior</translation>
    </message>
    <message>
        <source>an outside corner taken for an inside one</source>
        <translation>una esquina exterior tomada por interior</translation>
    </message>
    <message>
        <source>the chain has no runs</source>
        <translation>la cadena no tiene tramos</translation>
    </message>
    <message>
        <source>add its runs, or take the chain out</source>
        <translation>agregue sus tramos o quite la cadena</translation>
    </message>
    <message>
        <source>a closed chain needs three runs or more, this has {have}</source>
        <translation>una cadena cerrada necesita tres tramos o más; esta tiene {have}</translation>
    </message>
    <message>
        <source>add the runs that are missing, or mark the chain open</source>
        <translation>agregue los tramos que faltan o marque la cadena como abierta</translation>
    </message>
    <message>
        <source>the chain has {have} corners; {runs} runs need {wanted}</source>
        <translation>la cadena tiene {have} esquinas; {runs} tramos necesitan {wanted}</translation>
    </message>
    <message>
        <source>give one corner for each place where two runs meet</source>
        <translation>dé una esquina por cada lugar donde se juntan dos tramos</translation>
    </message>
    <message>
        <source>the bearing of the first run is no angle</source>
        <translation>el rumbo del primer tramo no es un ángulo</translation>
    </message>
    <message>
        <source>give it counter-clockwise from east</source>
        <translation>delo en sentido contrario al reloj desde el este</translation>
    </message>
    <message>
        <source>the {end} is to be mitred, but no run of the chain meets it there</source>
        <translation>el extremo ({end}) debe ir a inglete, pero ningún tramo de la cadena llega ahí</translation>
    </message>
    <message>
        <source>start and the end</source>
        <translation>inicio y final</translation>
    </message>
    <message>
        <source>choose another end, or add the run it meets</source>
        <translation>elija otro extremo, o agregue el tramo con el que se junta</translation>
    </message>
    <message>
        <source>{mitred} is mitred here and {other} is {end}</source>
        <translation>{mitred} va aquí a inglete y {other} va así: {end}</translation>
    </message>
    <message>
        <source>mitre both, or neither</source>
        <translation>ponga los dos a inglete, o ninguno</translation>
    </message>
    <message>
        <source>without the slope of this {kind} its length in plan is unknown, and the chain cannot be checked</source>
        <translation>sin la pendiente de este tramo ({kind}) no se sabe su largo en planta, y no se puede revisar la cadena</translation>
    </message>
    <message>
        <source>measure the slope of the roof here</source>
        <translation>mida aquí la pendiente del techo</translation>
    </message>
    <message>
        <source>a chain has no id</source>
        <translation>una cadena no tiene id</translation>
    </message>
    <message>
        <source>give each chain an id</source>
        <translation>dé a cada cadena un id</translation>
    </message>
    <message>
        <source>two chains are called {id}</source>
        <translation>dos cadenas se llaman {id}</translation>
    </message>
    <message>
        <source>give each chain its own id</source>
        <translation>dé a cada cadena su propio id</translation>
    </message>
    <message>
        <source>a run has no id</source>
        <translation>un tramo no tiene id</translation>
    </message>
    <message>
        <source>give each run an id</source>
        <translation>dé a cada tramo un id</translation>
    </message>
    <message>
        <source>two runs are called {id}</source>
        <translation>dos tramos se llaman {id}</translation>
    </message>
    <message>
        <source>give each run its own id: marks go by it</source>
        <translation>dé a cada tramo su propio id: de él salen las marcas</translation>
    </message>
    <message>
        <source>chain</source>
        <translation>cadena</translation>
    </message>
    <message>
        <source>run</source>
        <translation>tramo</translation>
    </message>
    <message>
        <source>corner</source>
        <translation>esquina</translation>
    </message>
    <message>
        <source>to</source>
        <translation>a</translation>
    </message>
    <message>
        <source>nothing is measured yet</source>
        <translation>todavía no hay nada medido</translation>
    </message>
    <message>
        <source>add a chain</source>
        <translation>agregue una cadena</translation>
    </message>
    <message>
        <source>start</source>
        <translation>inicio</translation>
    </message>
    <message>
        <source>end</source>
        <translation>final</translation>
    </message>
    <message>
        <source>the angles add up to {sum}, as they do outside the building; inside, {corners} corners make {expected}</source>
        <translation>los ángulos suman {sum}, como suman por fuera del edificio; por dentro, {corners} esquinas suman {expected}</translation>
    </message>
    <message>
        <source>walk with the building on the left and give the angles on the building&apos;s side</source>
        <translation>camine con el edificio a la izquierda y dé los ángulos del lado del edificio</translation>
    </message>
    <message>
        <source>the interior angles add up to {sum}, {off} more than the {expected} that {corners} corners make</source>
        <translation>los ángulos interiores suman {sum}, {off} más que los {expected} que suman {corners} esquinas</translation>
    </message>
    <message>
        <source>the interior angles add up to {sum}, {off} less than the {expected} that {corners} corners make</source>
        <translation>los ángulos interiores suman {sum}, {off} menos que los {expected} que suman {corners} esquinas</translation>
    </message>
    <message>
        <source>measure the corners again; each outside corner is under 180°, each inside corner over</source>
        <translation>mida otra vez las esquinas; cada esquina exterior tiene menos de 180°, cada interior más</translation>
    </message>
    <message>
        <source>the last run ends {miss} from where the chain began ({east} east, {north} north), 1 in {share} of the {perimeter} around; {tolerance} is allowed</source>
        <translation>el último tramo termina a {miss} de donde empezó la cadena ({east} al este, {north} al norte), 1 en {share} de los {perimeter} de contorno; se permiten {tolerance}</translation>
    </message>
    <message>
        <source>the last run ends {miss} from where the chain began ({east} east, {north} south), 1 in {share} of the {perimeter} around; {tolerance} is allowed</source>
        <translation>el último tramo termina a {miss} de donde empezó la cadena ({east} al este, {north} al sur), 1 en {share} de los {perimeter} de contorno; se permiten {tolerance}</translation>
    </message>
    <message>
        <source>the last run ends {miss} from where the chain began ({east} west, {north} north), 1 in {share} of the {perimeter} around; {tolerance} is allowed</source>
        <translation>el último tramo termina a {miss} de donde empezó la cadena ({east} al oeste, {north} al norte), 1 en {share} de los {perimeter} de contorno; se permiten {tolerance}</translation>
    </message>
    <message>
        <source>the last run ends {miss} from where the chain began ({east} west, {north} south), 1 in {share} of the {perimeter} around; {tolerance} is allowed</source>
        <translation>el último tramo termina a {miss} de donde empezó la cadena ({east} al oeste, {north} al sur), 1 en {share} de los {perimeter} de contorno; se permiten {tolerance}</translation>
    </message>
    <message>
        <source>the chain closes exactly, {perimeter} around</source>
        <translation>la cadena cierra exacta, {perimeter} de contorno</translation>
    </message>
    <message>
        <source>the chain closes to {miss}, 1 in {share} of the {perimeter} around; {tolerance} is allowed</source>
        <translation>la cadena cierra con {miss}, 1 en {share} de los {perimeter} de contorno; se permiten {tolerance}</translation>
    </message>
    <message>
        <source>over {look} is more than careful taping leaves: measure {run}, and the runs that go its way or back, once more</source>
        <translation>más de {look} es más de lo que deja una cinta bien llevada: mida otra vez {run} y los tramos que van como él o de regreso</translation>
    </message>
    <message>
        <source>and</source>
        <translation>y</translation>
    </message>
    <message>
        <source>more</source>
        <translation>más</translation>
    </message>
    <message>
        <source>with</source>
        <translation>con</translation>
    </message>
    <message>
        <source>no single length or corner explains it: two or more are off</source>
        <translation>ningún largo ni esquina lo explica por sí solo: hay dos o más equivocados</translation>
    </message>
    <message>
        <source>measure {names} again</source>
        <translation>mida otra vez {names}</translation>
    </message>
    <message>
        <source>measure again, in this order: {names}; parallel runs cannot be told apart from the closure alone</source>
        <translation>mida otra vez, en este orden: {names}; por el cierre solo no se distinguen los tramos paralelos</translation>
    </message>
    <message>
        <source>measure again, in this order: {names}</source>
        <translation>mida otra vez, en este orden: {names}</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>probablemente</translation>
    </message>
    <message>
        <source>with this corner at {angle} instead of {given} and {run} at {length} instead of {measured} the chain would close to {residual}</source>
        <translation>con esta esquina en {angle} en vez de {given} y {run} en {length} en vez de {measured} la cadena cerraría con {residual}</translation>
    </message>
    <message>
        <source>with an interior angle of {angle} here instead of {given} the chain would close to {residual}</source>
        <translation>con un ángulo interior de {angle} aquí en vez de {given} la cadena cerraría con {residual}</translation>
    </message>
    <message>
        <source>at {length} instead of {measured} the chain would close to {residual}</source>
        <translation>con {length} en vez de {measured} la cadena cerraría con {residual}</translation>
    </message>
    <message>
        <source>runs that go the way of the first add up to {one}, those that come back to {other}: {off} apart</source>
        <translation>los tramos que van como el primero suman {one}, los que regresan {other}: {off} de diferencia</translation>
    </message>
    <message>
        <source>runs that go left of the first add up to {one}, those that come back to {other}: {off} apart</source>
        <translation>los tramos que van a la izquierda del primero suman {one}, los que regresan {other}: {off} de diferencia</translation>
    </message>
    <message>
        <source>in plan {first} crosses or touches {second}</source>
        <translation>en planta {first} cruza o toca {second}</translation>
    </message>
    <message>
        <source>check the corners between them: outside or inside, and their angles</source>
        <translation>revise las esquinas entre ellos: exteriores o interiores, y sus ángulos</translation>
    </message>
    <message>
        <source>sides {before} and {after} and diagonal {diagonal} make no triangle</source>
        <translation>los lados {before} y {after} y la diagonal {diagonal} no forman un triángulo</translation>
    </message>
    <message>
        <source>the diagonal must be shorter than the two sides together and longer than their difference; tape the three again</source>
        <translation>la diagonal debe ser más corta que los dos lados juntos y más larga que su diferencia; mida los tres otra vez</translation>
    </message>
    <message>
        <source>an interior angle of {given} is no corner</source>
        <translation>un ángulo interior de {given} no es una esquina</translation>
    </message>
    <message>
        <source>give the angle on the building&apos;s side: 90° at a square outside corner, 270° at a square inside one, 180° straight on</source>
        <translation>dé el ángulo del lado del edificio: 90° en una esquina exterior a escuadra, 270° en una interior a escuadra, 180° recto</translation>
    </message>
    <message>
        <source>the interior angle {given} is very sharp</source>
        <translation>el ángulo interior {given} es muy agudo</translation>
    </message>
    <message>
        <source>check that it is the angle on the building&apos;s side</source>
        <translation>revise que sea el ángulo del lado del edificio</translation>
    </message>
    <message>
        <source>{step} of tape is worth {angle} at this corner</source>
        <translation>{step} de cinta valen {angle} en esta esquina</translation>
    </message>
    <message>
        <source>longer sides give the angle more sharply</source>
        <translation>con lados más largos el ángulo sale más preciso</translation>
    </message>
    <message>
        <source>in plan the {kind} stands δ = {angle} off the eave before it: both planes, {before} and {after}, rise equally along it</source>
        <translation>en planta el tramo ({kind}) está a δ = {angle} del alero anterior: los dos planos, {before} y {after}, suben igual a lo largo de él</translation>
    </message>
    <message>
        <source>{length} = common run {run} × {factor}, √(1/sin²δ + (rise/run)²)</source>
        <translation>{length} = avance común {run} × {factor}, √(1/sen²δ + (subida/avance)²)</translation>
    </message>
    <message>
        <source>the {kind} turns {turn}: cos = cos θ₁ cos θ₂ + sin θ₁ sin θ₂ cos φ with slopes {before} ({first}) and {after} ({second}) and φ = {between} between the ways they fall</source>
        <translation>el tramo ({kind}) gira {turn}: cos = cos θ₁ cos θ₂ + sen θ₁ sen θ₂ cos φ con pendientes {before} ({first}) y {after} ({second}) y φ = {between} entre sus caídas</translation>
    </message>
    <message>
        <source>hip</source>
        <translation>limatesa</translation>
    </message>
    <message>
        <source>valley</source>
        <translation>limahoya</translation>
    </message>
    <message>
        <source>{what} is {first} in one and {second} in the other; the first counts</source>
        <translation>{what} es {first} en uno y {second} en el otro; vale el primero</translation>
    </message>
    <message>
        <source>the address</source>
        <translation>la dirección</translation>
    </message>
    <message>
        <source>the customer</source>
        <translation>el cliente</translation>
    </message>
    <message>
        <source>the date wanted</source>
        <translation>la fecha en que se necesita</translation>
    </message>
    <message>
        <source>the metal</source>
        <translation>el metal</translation>
    </message>
    <message>
        <source>the gauge</source>
        <translation>el calibre</translation>
    </message>
    <message>
        <source>the colour</source>
        <translation>el color</translation>
    </message>
    <message>
        <source>the list of rule sets</source>
        <translation>la lista de reglas</translation>
    </message>
    <message>
        <source>limits, division of runs, spares, tolerances or wind pressure differ; the first&apos;s count</source>
        <translation>los límites, la división de tramos, los repuestos, las tolerancias o la presión del viento son distintos; valen los del primero</translation>
    </message>
    <message>
        <source>is in both jobs with all its runs; kept once</source>
        <translation>está en los dos trabajos con todos sus tramos; se guarda una vez</translation>
    </message>
    <message>
        <source>is of one kind and length with run {run} of the first job: perhaps one edge measured twice</source>
        <translation>es de la misma clase y largo que el tramo {run} del primer trabajo: tal vez un borde medido dos veces</translation>
    </message>
    <message>
        <source>both are kept; take one out if they are one edge</source>
        <translation>se guardan los dos; quite uno si son un mismo borde</translation>
    </message>
    <message>
        <source>run {old} of the second job is run {now} from now on</source>
        <translation>el tramo {old} del segundo trabajo es desde ahora el tramo {now}</translation>
    </message>
    <message>
        <source>the reason given for going on is left behind with the run&apos;s old name: {reason}</source>
        <translation>el motivo dado para seguir se queda con el nombre anterior del tramo: {reason}</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>two digits of {meant} changed places</source>
        <translation>dos cifras de {meant} cambiadas de lugar</translation>
    </message>
    <message>
        <source>a 6 and a 9 of {meant} taken for one another</source>
        <translation>un 6 y un 9 de {meant} tomados uno por otro</translation>
    </message>
    <message>
        <source>inches taken for feet</source>
        <translation>pulgadas tomadas por pies</translation>
    </message>
    <message>
        <source>feet taken for inches</source>
        <translation>pies tomados por pulgadas</translation>
    </message>
    <message>
        <source>an inch lost or won where the tape began</source>
        <translation>una pulgada perdida o ganada donde empezaba la cinta</translation>
    </message>
    <message>
        <source>a foot misread on the tape</source>
        <translation>un pie mal leído en la cinta</translation>
    </message>
    <message>
        <source>{feet} feet misread on the tape</source>
        <translation>{feet} pies mal leídos en la cinta</translation>
    </message>
    <message>
        <source>{length} = level run {run} × slope factor {factor} of {slope}, √(1 + (rise/run)²)</source>
        <translation>{length} = largo a nivel {run} × factor de pendiente {factor} de {slope}, √(1 + (subida/avance)²)</translation>
    </message>
    <message>
        <source>the ridge turns {turn} = −({angle} + {other}), the slope angles of {slope} and {otherSlope}</source>
        <translation>la cumbrera gira {turn} = −({angle} + {other}), los ángulos de las pendientes {slope} y {otherSlope}</translation>
    </message>
    <message>
        <source>the slope changes by {turn} = {upper} of the upper plane − {lower} of the lower</source>
        <translation>la pendiente cambia {turn} = {upper} del plano de arriba − {lower} del de abajo</translation>
    </message>
    <message>
        <source>the wall turns {turn} = 180° − interior angle {interior}</source>
        <translation>la pared gira {turn} = 180° − ángulo interior {interior}</translation>
    </message>
    <message>
        <source>the cricket rises {height} = half the width {width} at {slope}</source>
        <translation>el desviador sube {height} = la mitad del ancho {width} con {slope}</translation>
    </message>
    <message>
        <source>measure again, and check the unit: the same number in inches is {inches}, in millimetres about {millimetres}</source>
        <translation>mida otra vez y revise la unidad: el mismo número en pulgadas es {inches}, en milímetros unos {millimetres}</translation>
    </message>
    <message>
        <source>the length is {length}</source>
        <translation>el largo es {length}</translation>
    </message>
    <message>
        <source>enter the measured length</source>
        <translation>escriba el largo medido</translation>
    </message>
    <message>
        <source>{length} is longer than any run may be, {most}</source>
        <translation>{length} es más largo que cualquier tramo, {most}</translation>
    </message>
    <message>
        <source>{length} is long for one run</source>
        <translation>{length} es mucho para un solo tramo</translation>
    </message>
    <message>
        <source>{length} is short for a run</source>
        <translation>{length} es poco para un tramo</translation>
    </message>
    <message>
        <source>check the unit and the number</source>
        <translation>revise la unidad y el número</translation>
    </message>
    <message>
        <source>measure {wanted} is chosen, there are {have}</source>
        <translation>se eligió la medida {wanted}, hay {have}</translation>
    </message>
    <message>
        <source>choose the measure that counts</source>
        <translation>elija la medida que vale</translation>
    </message>
    <message>
        <source>the level run is {length}</source>
        <translation>el largo a nivel es {length}</translation>
    </message>
    <message>
        <source>enter the level distance under the run</source>
        <translation>escriba la distancia a nivel bajo el tramo</translation>
    </message>
    <message>
        <source>a level run is given, but {article} {kind} does not follow a slope: it is not used</source>
        <translation>se dio un largo a nivel, pero {article} {kind} no sigue una pendiente: no se usa</translation>
    </message>
    <message>
        <source>give the length of the run itself</source>
        <translation>dé el largo del tramo mismo</translation>
    </message>
    <message>
        <source>the course exposure is {length}</source>
        <translation>la exposición de la hilada es {length}</translation>
    </message>
    <message>
        <source>enter what one course of the roofing shows</source>
        <translation>escriba lo que se ve de una hilada de la cubierta</translation>
    </message>
    <message>
        <source>repeated measures of this run lie {spread} apart: {least} to {most}</source>
        <translation>las medidas repetidas de este tramo difieren {spread}: de {least} a {most}</translation>
    </message>
    <message>
        <source>measure once more and choose the one that counts</source>
        <translation>mida una vez más y elija la que vale</translation>
    </message>
    <message>
        <source>the slope at this {kind} is missing</source>
        <translation>falta la pendiente de este tramo ({kind})</translation>
    </message>
    <message>
        <source>the slope of the other plane at this {kind} is missing</source>
        <translation>falta la pendiente del otro plano de este tramo ({kind})</translation>
    </message>
    <message>
        <source>enter it, also where both planes have the same slope</source>
        <translation>escríbala, también cuando los dos planos tienen la misma pendiente</translation>
    </message>
    <message>
        <source>a {kind} cannot rise beside a level plane</source>
        <translation>un tramo así ({kind}) no puede subir junto a un plano a nivel</translation>
    </message>
    <message>
        <source>measure both slopes again</source>
        <translation>mida otra vez las dos pendientes</translation>
    </message>
    <message>
        <source>the plan corner of this {kind} is {given}; it stands at an outside corner, under 180°</source>
        <translation>la esquina en planta de este tramo ({kind}) es {given}; está en una esquina exterior, menos de 180°</translation>
    </message>
    <message>
        <source>the plan corner of this {kind} is {given}; it stands at an inside corner, over 180°</source>
        <translation>la esquina en planta de este tramo ({kind}) es {given}; está en una esquina interior, más de 180°</translation>
    </message>
    <message>
        <source>the angle counts on the building&apos;s side: measured from outside it would be {other}</source>
        <translation>el ángulo que vale es el del lado del edificio: medido desde afuera sería {other}</translation>
    </message>
    <message>
        <source>this {kind} has no length</source>
        <translation>este tramo ({kind}) no tiene largo</translation>
    </message>
    <message>
        <source>measure it, or give the level run and slope of a sloped one</source>
        <translation>mídalo, o dé el largo a nivel y la pendiente si es inclinado</translation>
    </message>
    <message>
        <source>measured {measured}; the level run and slope say {derived}: {difference} apart</source>
        <translation>medido {measured}; el largo a nivel y la pendiente dan {derived}: {difference} de diferencia</translation>
    </message>
    <message>
        <source>check the length, the level run and the slope; the measure counts</source>
        <translation>revise el largo, el largo a nivel y la pendiente; vale la medida</translation>
    </message>
    <message>
        <source>an</source>
        <translation>un tramo de</translation>
    </message>
    <message>
        <source>{run} is {length} long</source>
        <translation>{run} mide {length} de largo</translation>
    </message>
    <message>
        <source>eave</source>
        <translation>alero</translation>
    </message>
    <message>
        <source>rake</source>
        <translation>borde de hastial</translation>
    </message>
    <message>
        <source>ridge</source>
        <translation>cumbrera</translation>
    </message>
    <message>
        <source>headwall</source>
        <translation>pared frontal</translation>
    </message>
    <message>
        <source>sidewall</source>
        <translation>pared lateral</translation>
    </message>
    <message>
        <source>slope change</source>
        <translation>cambio de pendiente</translation>
    </message>
    <message>
        <source>fascia</source>
        <translation>fascia</translation>
    </message>
    <message>
        <source>wall base</source>
        <translation>base de pared</translation>
    </message>
    <message>
        <source>outside corner</source>
        <translation>esquina exterior</translation>
    </message>
    <message>
        <source>inside corner</source>
        <translation>esquina interior</translation>
    </message>
    <message>
        <source>opening head</source>
        <translation>dintel de abertura</translation>
    </message>
    <message>
        <source>opening sill</source>
        <translation>antepecho de abertura</translation>
    </message>
    <message>
        <source>opening jamb</source>
        <translation>jamba de abertura</translation>
    </message>
    <message>
        <source>parapet</source>
        <translation>parapeto</translation>
    </message>
    <message>
        <source>gravel edge</source>
        <translation>borde de grava</translation>
    </message>
    <message>
        <source>free</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>butt</source>
        <translation>a tope</translation>
    </message>
    <message>
        <source>mitre</source>
        <translation>inglete</translation>
    </message>
    <message>
        <source>wrap tab</source>
        <translation>lengüeta envolvente</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrado</translation>
    </message>
    <message>
        <source>turn up</source>
        <translation>vuelto hacia arriba</translation>
    </message>
    <message>
        <source>{length} as measured</source>
        <translation>{length} según se midió</translation>
    </message>
    <message>
        <source>{length} as measured, entered as {entered}</source>
        <translation>{length} según se midió, escrito {entered}</translation>
    </message>
    <message>
        <source>one between each two legs</source>
        <translation>uno entre cada dos alas</translation>
    </message>
    <message>
        <source>a turn of at most</source>
        <translation>un giro de a lo más</translation>
    </message>
    <message>
        <source>either way</source>
        <translation>a cualquier lado</translation>
    </message>
    <message>
        <source>mitre: each mould line of the blank reaches tan({turn} / 2) = {slant} times its distance outside the measured line beyond the measured end; long point {long}, short point {short}</source>
        <translation>inglete: cada línea de doblez de la lámina llega tan({turn} / 2) = {slant} veces su distancia hacia afuera de la línea medida más allá del extremo medido; punta larga {long}, punta corta {short}</translation>
    </message>
    <message>
        <source>Type a leg, then a turn and a leg for each bend</source>
        <translation>Escriba un ala, después un giro y un ala por cada doblez</translation>
    </message>
    <message>
        <source>The profile has no leg</source>
        <translation>El perfil no tiene ninguna ala</translation>
    </message>
    <message>
        <source>The profile has {legs} legs; at most {most} are taken</source>
        <translation>El perfil tiene {legs} alas; se aceptan {most} a lo más</translation>
    </message>
    <message>
        <source>Divide it into two profiles</source>
        <translation>Divídalo en dos perfiles</translation>
    </message>
    <message>
        <source>The profile has {turns} turns between {legs} legs</source>
        <translation>El perfil tiene {turns} giros entre {legs} alas</translation>
    </message>
    <message>
        <source>bend after</source>
        <translation>doblez después de</translation>
    </message>
    <message>
        <source>The bend after {leg} turns {turn}; a bend turns less than a half turn</source>
        <translation>El doblez después de {leg} gira {turn}; un doblez gira menos de media vuelta</translation>
    </message>
    <message>
        <source>Use a hem to double an edge back</source>
        <translation>Use un dobladillo para doblar un borde sobre sí mismo</translation>
    </message>
    <message>
        <source>The bend after {leg} turns only {turn}: there is nothing to fold</source>
        <translation>El doblez después de {leg} gira solo {turn}: no hay nada que doblar</translation>
    </message>
    <message>
        <source>Make one leg of the two</source>
        <translation>Haga una sola ala de las dos</translation>
    </message>
    <message>
        <source>{leg} is {length}; a folder takes hold of {least} at least</source>
        <translation>{leg} mide {length}; una dobladora sujeta {least} por lo menos</translation>
    </message>
    <message>
        <source>Make it longer or leave it out</source>
        <translation>Hágala más larga o quítela</translation>
    </message>
    <message>
        <source>leg</source>
        <translation>ala</translation>
    </message>
    <message>
        <source>{leg} {length}, as typed</source>
        <translation>{leg} {length}, según se escribió</translation>
    </message>
    <message>
        <source>bend {number} turns {turn}, as typed</source>
        <translation>el doblez {number} gira {turn}, según se escribió</translation>
    </message>
    <message>
        <source>start hem edge</source>
        <translation>borde del dobladillo inicial</translation>
    </message>
    <message>
        <source>end hem edge</source>
        <translation>borde del dobladillo final</translation>
    </message>
    <message>
        <source>bend</source>
        <translation>doblez</translation>
    </message>
    <message>
        <source>K {k} = half of k = 0.65 + 0.5 log10(inside radius / thickness), from 0 to 1</source>
        <translation>K {k} = la mitad de k = 0.65 + 0.5 log10(radio interior / espesor), de 0 a 1</translation>
    </message>
    <message>
        <source>K {k} is kept with the metal {metal}</source>
        <translation>K {k} está guardado con el metal {metal}</translation>
    </message>
    <message>
        <source>{line}, {angle}: takes up {deduction}, measured in the shop for {gauge}</source>
        <translation>{line}, {angle}: consume {deduction}, medido en el taller para {gauge}</translation>
    </message>
    <message>
        <source>the shop&apos;s own table</source>
        <translation>la tabla propia del taller</translation>
    </message>
    <message>
        <source>{line}, {angle} pressed flat: takes up {deduction} = 2 × setback {setback} − allowance {allowance}</source>
        <translation>{line}, {angle} aplastado: consume {deduction} = 2 × retroceso {setback} − tolerancia de doblez {allowance}</translation>
    </message>
    <message>
        <source>{line}, {angle} over an inside radius of {radius}: takes up {deduction} = 2 × setback {setback} − allowance {allowance}</source>
        <translation>{line}, {angle} con un radio interior de {radius}: consume {deduction} = 2 × retroceso {setback} − tolerancia de doblez {allowance}</translation>
    </message>
    <message>
        <source>setback = tan(half the fold angle) × (inside radius + thickness); of a hem&apos;s edge inside radius + thickness</source>
        <translation>retroceso = tan(la mitad del ángulo de doblez) × (radio interior + espesor); en el borde de un dobladillo, radio interior + espesor</translation>
    </message>
    <message>
        <source>allowance = fold angle in radians × (inside radius + K × thickness)</source>
        <translation>tolerancia de doblez = ángulo de doblez en radianes × (radio interior + K × espesor)</translation>
    </message>
    <message>
        <source>thickness {thickness}: {gauge} {metal}</source>
        <translation>espesor {thickness}: {gauge} {metal}</translation>
    </message>
    <message>
        <source>girth {girth}, exactly {fine} = outside legs {legs} + hems {hems} − what the bends take up {deductions}</source>
        <translation>desarrollo {girth}, exactamente {fine} = alas por fuera {legs} + dobladillos {hems} − lo que consumen los dobleces {deductions}</translation>
    </message>
    <message>
        <source>{part} is {found}; it must be {expected}</source>
        <translation>{part} es {found}; debe ser {expected}</translation>
    </message>
    <message>
        <source>Make it longer, or the bends beside it less sharp</source>
        <translation>Alargue esa parte, o haga menos agudos los dobleces junto a ella</translation>
    </message>
    <message>
        <source>{first} and {second} would lie in one another</source>
        <translation>{first} y {second} se atravesarían</translation>
    </message>
    <message>
        <source>Shorten one of them or change a turn between them</source>
        <translation>Acorte una de ellas o cambie un giro entre ellas</translation>
    </message>
    <message>
        <source>other slope</source>
        <translation>otra pendiente</translation>
    </message>
    <message>
        <source>turn of the wall</source>
        <translation>giro de la pared</translation>
    </message>
    <message>
        <source>turn of the crease</source>
        <translation>giro de la arista</translation>
    </message>
    <message>
        <source>{slope} {angle} is {rise} in 12</source>
        <translation>{slope} {angle} es {rise} en 12</translation>
    </message>
    <message>
        <source>The trim {trim} contradicts itself: {what}</source>
        <translation>La moldura {trim} se contradice: {what}</translation>
    </message>
    <message>
        <source>Correct the file of this trim</source>
        <translation>Corrija el archivo de esta moldura</translation>
    </message>
    <message>
        <source>it needs one bend between each two legs</source>
        <translation>necesita un doblez entre cada dos alas</translation>
    </message>
    <message>
        <source>its anchor is beyond its last leg</source>
        <translation>su ancla está más allá de su última ala</translation>
    </message>
    <message>
        <source>it uses the measure</source>
        <translation>usa la medida</translation>
    </message>
    <message>
        <source>which it does not declare</source>
        <translation>que no declara</translation>
    </message>
    <message>
        <source>{measure} is not given</source>
        <translation>no se dio {measure}</translation>
    </message>
    <message>
        <source>Measure it: {least} to {most}</source>
        <translation>Mídala: de {least} a {most}</translation>
    </message>
    <message>
        <source>{measure} is {value}; {trim} takes {least} to {most}</source>
        <translation>{measure} es {value}; {trim} acepta de {least} a {most}</translation>
    </message>
    <message>
        <source>Measure it again, or choose another trim</source>
        <translation>Mídala otra vez, o elija otra moldura</translation>
    </message>
    <message>
        <source>{measure} {value}, by default</source>
        <translation>{measure} {value}, lo usual</translation>
    </message>
    <message>
        <source>{measure} {value}, as measured</source>
        <translation>{measure} {value}, según se midió</translation>
    </message>
    <message>
        <source>Check the name; the value is not used</source>
        <translation>Revise el nombre; el valor no se usa</translation>
    </message>
    <message>
        <source>{trim} has no measure {name}</source>
        <translation>{trim} no tiene ninguna medida {name}</translation>
    </message>
    <message>
        <source>{trim} has no leg {name}</source>
        <translation>{trim} no tiene ninguna ala {name}</translation>
    </message>
    <message>
        <source>{trim} needs the {angle}</source>
        <translation>{trim} necesita este dato: {angle}</translation>
    </message>
    <message>
        <source>Enter it with the run</source>
        <translation>Escríbalo con el tramo</translation>
    </message>
    <message>
        <source>first direction</source>
        <translation>primera dirección</translation>
    </message>
    <message>
        <source>{leg} {length}, set by hand</source>
        <translation>{leg} {length}, puesto a mano</translation>
    </message>
    <message>
        <source>{leg} is {length}, shorter than {limit}</source>
        <translation>{leg} mide {length}, menos que {limit}</translation>
    </message>
    <message>
        <source>{leg} is {length}, longer than {limit}</source>
        <translation>{leg} mide {length}, más que {limit}</translation>
    </message>
    <message>
        <source>Change the leg, or give the reason</source>
        <translation>Cambie el ala, o dé el motivo</translation>
    </message>
    <message>
        <source>{leg} {length}, as the trim has it</source>
        <translation>{leg} {length}, como lo trae la moldura</translation>
    </message>
    <message>
        <source>rounded up to a multiple of {step}</source>
        <translation>redondeado hacia arriba a un múltiplo de {step}</translation>
    </message>
    <message>
        <source>at least {least} by {rule}</source>
        <translation>por lo menos {least} según {rule}</translation>
    </message>
    <message>
        <source>bend {number}, {before} to {after}: folded {fold}, which leaves {included} between them</source>
        <translation>doblez {number}, de {before} a {after}: doblado {fold}, lo que deja {included} entre ellas</translation>
    </message>
    <message>
        <source>the trim has it so</source>
        <translation>así lo trae la moldura</translation>
    </message>
    <message>
        <source>turn {turn} = {constant}</source>
        <translation>giro {turn} = {constant}</translation>
    </message>
    <message>
        <source>turn {turn}</source>
        <translation>giro {turn}</translation>
    </message>
    <message>
        <source>The bend after {leg} would turn {turn}; {trim} takes {least} to {most}</source>
        <translation>El doblez después de {leg} giraría {turn}; {trim} acepta de {least} a {most}</translation>
    </message>
    <message>
        <source>Check the slopes and corners of the run, or choose another trim</source>
        <translation>Revise las pendientes y esquinas del tramo, o elija otra moldura</translation>
    </message>
    <message>
        <source>The bend after {leg} would turn only {turn}: there is nothing to fold</source>
        <translation>El doblez después de {leg} giraría solo {turn}: no hay nada que doblar</translation>
    </message>
    <message>
        <source>slope</source>
        <translation>pendiente</translation>
    </message>
    <message>
        <source>start hem</source>
        <translation>dobladillo inicial</translation>
    </message>
    <message>
        <source>end hem</source>
        <translation>dobladillo final</translation>
    </message>
    <message>
        <source>at least one leg</source>
        <translation>por lo menos un ala</translation>
    </message>
    <message>
        <source>a thickness over 0 and up to 100 mm</source>
        <translation>un espesor mayor que 0 y hasta 100 mm</translation>
    </message>
    <message>
        <source>less than a half turn</source>
        <translation>menos de media vuelta</translation>
    </message>
    <message>
        <source>no number</source>
        <translation>ningún número</translation>
    </message>
    <message>
        <source>an angle</source>
        <translation>un ángulo</translation>
    </message>
    <message>
        <source>start of the path</source>
        <translation>inicio del recorrido</translation>
    </message>
    <message>
        <source>within 100 m of the measured line</source>
        <translation>a menos de 100 m de la línea medida</translation>
    </message>
    <message>
        <source>inside radius</source>
        <translation>radio interior</translation>
    </message>
    <message>
        <source>0 to 100 m</source>
        <translation>de 0 a 100 m</translation>
    </message>
    <message>
        <source>a length over 0 and up to 100 m</source>
        <translation>un largo mayor que 0 y hasta 100 m</translation>
    </message>
    <message>
        <source>more than its bends take up</source>
        <translation>más de lo que consumen sus dobleces</translation>
    </message>
    <message>
        <source>corner tab</source>
        <translation>lengüeta de esquina</translation>
    </message>
    <message>
        <source>corner tabs: {count}, one behind each mitre</source>
        <translation>lengüetas de esquina: {count}, una detrás de cada inglete</translation>
    </message>
    <message>
        <source>backup plate</source>
        <translation>placa de respaldo</translation>
    </message>
    <message>
        <source>{count} backup plates: one behind each open joint, lapping the piece on either side by at least {lap}</source>
        <translation>{count} placas de respaldo: una detrás de cada junta abierta, que traslapa la pieza de cada lado por lo menos {lap}</translation>
    </message>
    <message>
        <source>{count} fasteners, at most {spacing} apart on {length}, both ends too</source>
        <translation>{count} fijaciones, a {spacing} a lo más en {length}, también en los dos extremos</translation>
    </message>
    <message>
        <source>{count} fasteners in {rows} rows, at most {spacing} apart on {length}, both ends too</source>
        <translation>{count} fijaciones en {rows} filas, a {spacing} a lo más en {length}, también en los dos extremos</translation>
    </message>
    <message>
        <source>for each of {pieces} pieces</source>
        <translation>por cada una de {pieces} piezas</translation>
    </message>
    <message>
        <source>{count} cleats in {rows} rows, at most {spacing} apart on {length}, both ends too; each of the same metal, nailed twice and folded back over the nails</source>
        <translation>{count} grapas en {rows} filas, a {spacing} a lo más en {length}, también en los dos extremos; cada una del mismo metal, con dos clavos y doblada sobre los clavos</translation>
    </message>
    <message>
        <source>sealant: {beads} × the girth of {girth}, a bead at each lap ({laps}) and each mitre ({corners})</source>
        <translation>sellador: {beads} × el desarrollo de {girth}, un cordón en cada traslape ({laps}) y cada inglete ({corners})</translation>
    </message>
    <message>
        <source>end cap</source>
        <translation>tapa de extremo</translation>
    </message>
    <message>
        <source>end caps: {count}, one at each closed end</source>
        <translation>tapas de extremo: {count}, una en cada extremo cerrado</translation>
    </message>
    <message>
        <source>{count} movement joints, {apart} apart: on {length} one at the end of every whole {interval}, one more where the last would stand further than half of it from the end, spaced evenly</source>
        <translation>{count} juntas de dilatación, cada {apart}: en {length} una al final de cada {interval} entero, una más donde la última quedaría a más de la mitad de eso del extremo, repartidas por igual</translation>
    </message>
    <message>
        <source>fastener</source>
        <translation>fijación</translation>
    </message>
    <message>
        <source>cleat</source>
        <translation>grapa</translation>
    </message>
    <message>
        <source>sealant</source>
        <translation>sellador</translation>
    </message>
    <message>
        <source>take the job off again; if this stays, the program is at fault</source>
        <translation>haga otra vez el despiece del trabajo; si esto sigue, la falla es del programa</translation>
    </message>
    <message>
        <source>{mark} is no mark</source>
        <translation>{mark} no es una marca</translation>
    </message>
    <message>
        <source>the mark {mark} is there twice</source>
        <translation>la marca {mark} está dos veces</translation>
    </message>
    <message>
        <source>{mark} cannot be cut from stock length {stock}: {length} and {left} left do not add up to what was there</source>
        <translation>{mark} no se puede cortar del largo de existencias {stock}: {length} y {left} que quedan no suman lo que había</translation>
    </message>
    <message>
        <source>nothing is cut from stock length {stock}</source>
        <translation>no se corta nada del largo de existencias {stock}</translation>
    </message>
    <message>
        <source>{mark} names a run, a trim, a profile or pieces that are not there</source>
        <translation>{mark} nombra un tramo, una moldura, un perfil o piezas que no están</translation>
    </message>
    <message>
        <source>{piece} does not stand in its place in {mark}</source>
        <translation>{piece} no está en su lugar en {mark}</translation>
    </message>
    <message>
        <source>{mark} does not cover the piece before it by {lap}</source>
        <translation>{mark} no cubre {lap} de la pieza anterior</translation>
    </message>
    <message>
        <source>{mark} is not square where the next piece covers it</source>
        <translation>{mark} no está a escuadra donde la cubre la siguiente pieza</translation>
    </message>
    <message>
        <source>{mark} stands for several</source>
        <translation>{mark} vale por varias</translation>
    </message>
    <message>
        <source>the pieces of {mark} cover {reached}, the run with its ends is {usable}</source>
        <translation>las piezas de {mark} cubren {reached}, el tramo con sus extremos es {usable}</translation>
    </message>
    <message>
        <source>{mark} is {length} long, over the longest piece, {limit}</source>
        <translation>{mark} mide {length}, más que la pieza más larga, {limit}</translation>
    </message>
    <message>
        <source>{mark} is {length} long, under the shortest piece, {limit}</source>
        <translation>{mark} mide {length}, menos que la pieza más corta, {limit}</translation>
    </message>
    <message>
        <source>{mark} has {count} pieces where {fewer} would reach</source>
        <translation>{mark} tiene {count} piezas donde bastarían {fewer}</translation>
    </message>
    <message>
        <source>{count} pieces do not flash the courses of {mark}</source>
        <translation>{count} piezas no cubren las hiladas de {mark}</translation>
    </message>
    <message>
        <source>{mark} has not all its pieces</source>
        <translation>{mark} no tiene todas sus piezas</translation>
    </message>
    <message>
        <source>{mark} has no profile</source>
        <translation>{mark} no tiene perfil</translation>
    </message>
    <message>
        <source>pieces are listed that belong to no run, or to two</source>
        <translation>hay piezas en la lista que no son de ningún tramo, o son de dos</translation>
    </message>
    <message>
        <source>{profile} has {count} spare pieces, {wanted} are wanted</source>
        <translation>{profile} tiene {count} piezas de repuesto, se quieren {wanted}</translation>
    </message>
    <message>
        <source>the run ends in a {what}, but the trim gives no measure for one: the end is cut to the measured length</source>
        <translation>el tramo termina así: {what}, pero la moldura no trae medida para eso: el extremo se corta al largo medido</translation>
    </message>
    <message>
        <source>choose another trim or another end</source>
        <translation>elija otra moldura u otro extremo</translation>
    </message>
    <message>
        <source>A mitre is asked for where the run meets no other: there is no corner to cut it to</source>
        <translation>Se pide un inglete donde el tramo no se junta con otro: no hay esquina a la cual cortarlo</translation>
    </message>
    <message>
        <source>choose another end, or put the runs that meet into one chain</source>
        <translation>elija otro extremo, o ponga en una sola cadena los tramos que se juntan</translation>
    </message>
    <message>
        <source>the job makes more pieces than one order may have, {most}</source>
        <translation>el trabajo da más piezas de las que puede tener un pedido, {most}</translation>
    </message>
    <message>
        <source>check the lengths, the piece limits and the spares, or divide the job</source>
        <translation>revise los largos, los límites de las piezas y los repuestos, o divida el trabajo</translation>
    </message>
    <message>
        <source>laid from the start of the run, taken for the hidden or down-wind end; each piece covers the one before</source>
        <translation>se coloca desde el inicio del tramo, tomado como el extremo escondido o el del lado a donde va el viento; cada pieza cubre la anterior</translation>
    </message>
    <message>
        <source>laid from the low end, the {end} of the run, upwards; each piece covers the one below</source>
        <translation>se coloca desde el extremo bajo, el {end} del tramo, hacia arriba; cada pieza cubre la de abajo</translation>
    </message>
    <message>
        <source>kept with the metal</source>
        <translation>guardado con el metal</translation>
    </message>
    <message>
        <source>between −20 and +80 °C {length} of {metal} moves {movement} = length × {expansion} per million and degree × 100</source>
        <translation>entre −20 y +80 °C {length} de {metal} se mueven {movement} = largo × {expansion} por millón y grado × 100</translation>
    </message>
    <message>
        <source>the trim cannot be laid flat: {error}</source>
        <translation>la moldura no se puede extender en plano: {error}</translation>
    </message>
    <message>
        <source>check the legs, hems and the thickness of the metal</source>
        <translation>revise las alas, los dobladillos y el espesor del metal</translation>
    </message>
    <message>
        <source>the job asks for the metal {metal}; known are {known}</source>
        <translation>el trabajo pide el metal {metal}; se conocen {known}</translation>
    </message>
    <message>
        <source>choose a metal of the library</source>
        <translation>elija un metal de la biblioteca</translation>
    </message>
    <message>
        <source>{metal} is not sold as {gauge}; it is sold as {sold}; as {gauge} there are: {others}</source>
        <translation>{metal} no se vende en {gauge}; se vende en {sold}; en {gauge} hay: {others}</translation>
    </message>
    <message>
        <source>choose a gauge the metal is sold in; a gauge number means nothing without its metal</source>
        <translation>elija un calibre en que se venda el metal; un número de calibre no dice nada sin su metal</translation>
    </message>
    <message>
        <source>each piece laps the one before by {lap}</source>
        <translation>cada pieza traslapa la anterior {lap}</translation>
    </message>
    <message>
        <source>set by hand</source>
        <translation>puesto a mano</translation>
    </message>
    <message>
        <source>{mass} kg per metre: girth {girth} × {surface} kg per square metre of {gauge} {metal}</source>
        <translation>{mass} kg por metro: desarrollo {girth} × {surface} kg por metro cuadrado de {gauge} {metal}</translation>
    </message>
    <message>
        <source>the job is to be checked against the rule set {id}, which is not here</source>
        <translation>el trabajo se debe revisar con las reglas {id}, que no están aquí</translation>
    </message>
    <message>
        <source>add the rule set, or take it off the job</source>
        <translation>agregue las reglas, o quítelas del trabajo</translation>
    </message>
    <message>
        <source>the mitre of a sloping run to {met} is not computed: the end is made square, as long as measured</source>
        <translation>no se calcula el inglete de un tramo inclinado con {met}: el extremo se hace a escuadra, del largo medido</translation>
    </message>
    <message>
        <source>measure to the longest point, and cut the mitre on site</source>
        <translation>mida hasta la punta más larga y corte el inglete en obra</translation>
    </message>
    <message>
        <source>the end cannot be mitred: {error}</source>
        <translation>el extremo no se puede cortar a inglete: {error}</translation>
    </message>
    <message>
        <source>check the corner, or choose another end</source>
        <translation>revise la esquina, o elija otro extremo</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>exposure</source>
        <translation>exposición</translation>
    </message>
    <message>
        <source>width</source>
        <translation>ancho</translation>
    </message>
    <message>
        <source>cricket</source>
        <translation>desviador de agua</translation>
    </message>
    <message>
        <source>hand</source>
        <translation>mano</translation>
    </message>
    <message>
        <source>butt, less the clearance</source>
        <translation>a tope, menos la holgura</translation>
    </message>
    <message>
        <source>mitre, to the longest point of the cut</source>
        <translation>inglete, hasta la punta más larga del corte</translation>
    </message>
    <message>
        <source>closed end</source>
        <translation>extremo cerrado</translation>
    </message>
    <message>
        <source>{usable} to cover</source>
        <translation>{usable} por cubrir</translation>
    </message>
    <message>
        <source>measured {measured} with what the ends add or take away</source>
        <translation>medido {measured} con lo que los extremos agregan o quitan</translation>
    </message>
    <message>
        <source>{trim} goes by courses, but the exposure of the roofing is not given</source>
        <translation>{trim} va por hiladas, pero no se dio la exposición de la cubierta</translation>
    </message>
    <message>
        <source>measure what one course of the roofing shows</source>
        <translation>mida lo que se ve de una hilada de la cubierta</translation>
    </message>
    <message>
        <source>{count} pieces: one for each course of {exposure} over {length}, and one for the starter course</source>
        <translation>{count} piezas: una por cada hilada de {exposure} en {length}, y una para la hilada de arranque</translation>
    </message>
    <message>
        <source>each {length} long: exposure {exposure} and head lap {lap}</source>
        <translation>cada una de {length}: exposición {exposure} y traslape superior {lap}</translation>
    </message>
    <message>
        <source>the run makes one piece of {length}, under the shortest piece, {shortest}</source>
        <translation>el tramo da una sola pieza de {length}, menos que la pieza más corta, {shortest}</translation>
    </message>
    <message>
        <source>check that the shop can fold it and that the measure is right</source>
        <translation>revise que el taller la pueda doblar y que la medida esté bien</translation>
    </message>
    <message>
        <source>the bending length of the folder</source>
        <translation>el largo de doblado de la dobladora</translation>
    </message>
    <message>
        <source>the stock length</source>
        <translation>el largo de existencias</translation>
    </message>
    <message>
        <source>what can be carried</source>
        <translation>lo que se puede transportar</translation>
    </message>
    <message>
        <source>longest piece {limit}: {reason}</source>
        <translation>pieza más larga {limit}: {reason}</translation>
    </message>
    <message>
        <source>square</source>
        <translation>a escuadra</translation>
    </message>
    <message>
        <source>lap</source>
        <translation>traslape</translation>
    </message>
    <message>
        <source>turn-up</source>
        <translation>vuelta hacia arriba</translation>
    </message>
    <message>
        <source>no length is left for a piece: the ends take away {missing} more than was measured</source>
        <translation>no queda largo para una pieza: los extremos quitan {missing} más de lo que se midió</translation>
    </message>
    <message>
        <source>check the measured length and what happens at the ends</source>
        <translation>revise el largo medido y lo que pasa en los extremos</translation>
    </message>
    <message>
        <source>the longest piece allowed is {limit}: nothing can be made</source>
        <translation>la pieza más larga permitida es {limit}: no se puede hacer nada</translation>
    </message>
    <message>
        <source>check the piece limits of the job</source>
        <translation>revise los límites de pieza del trabajo</translation>
    </message>
    <message>
        <source>{length} needs several pieces, but the longest piece allowed, {limit}, is no longer than its lap of {lap}</source>
        <translation>{length} necesita varias piezas, pero la pieza más larga permitida, {limit}, no es más larga que su traslape de {lap}</translation>
    </message>
    <message>
        <source>allow longer pieces or choose a trim with a shorter lap</source>
        <translation>permita piezas más largas o elija una moldura con menos traslape</translation>
    </message>
    <message>
        <source>{length} would need {count} pieces of {limit}; {most} is the most</source>
        <translation>{length} necesitaría {count} piezas de {limit}; lo más son {most}</translation>
    </message>
    <message>
        <source>check the measured length and the piece limits of the job</source>
        <translation>revise el largo medido y los límites de pieza del trabajo</translation>
    </message>
    <message>
        <source>{length} cannot be divided: it is over the longest piece, {limit}, and {count} pieces with laps of {lap} would be {each} each, under the shortest piece, {shortest}</source>
        <translation>{length} no se puede dividir: pasa de la pieza más larga, {limit}, y {count} piezas con traslapes de {lap} serían de {each} cada una, menos que la pieza más corta, {shortest}</translation>
    </message>
    <message>
        <source>allow shorter or longer pieces</source>
        <translation>permita piezas más cortas o más largas</translation>
    </message>
    <message>
        <source>one piece: {length} is within the longest piece, {limit}</source>
        <translation>una pieza: {length} cabe en la pieza más larga, {limit}</translation>
    </message>
    <message>
        <source>as equal lengths</source>
        <translation>en largos iguales</translation>
    </message>
    <message>
        <source>as full lengths and the rest</source>
        <translation>en largos completos y el resto</translation>
    </message>
    <message>
        <source>{count} pieces, {policy}: ({length} − lap {lap}) / (longest piece {limit} − lap {lap}) = {parts}, rounded up; with their laps they are {total} together</source>
        <translation>{count} piezas, {policy}: ({length} − traslape {lap}) / (pieza más larga {limit} − traslape {lap}) = {parts}, redondeado hacia arriba; con sus traslapes suman {total}</translation>
    </message>
    <message>
        <source>{trim} does not suit this kind of run, {kind}; it suits {kinds}</source>
        <translation>{trim} no sirve para esta clase de tramo, {kind}; sirve para {kinds}</translation>
    </message>
    <message>
        <source>choose a trim that suits the run, or correct the kind of run</source>
        <translation>elija una moldura que sirva para el tramo, o corrija la clase de tramo</translation>
    </message>
    <message>
        <source>no trim is chosen for the run</source>
        <translation>no se eligió moldura para el tramo</translation>
    </message>
    <message>
        <source>choose a trim, if the edge is to have one</source>
        <translation>elija una moldura, si el borde debe llevar una</translation>
    </message>
    <message>
        <source>the trim {trim} is not in the library</source>
        <translation>la moldura {trim} no está en la biblioteca</translation>
    </message>
    <message>
        <source>choose a trim of the library, or add it</source>
        <translation>elija una moldura de la biblioteca, o agréguela</translation>
    </message>
    <message>
        <source>longest piece {limit}: no piece may cross a movement joint</source>
        <translation>pieza más larga {limit}: ninguna pieza puede cruzar una junta de dilatación</translation>
    </message>
    <message>
        <source>as made it may be up to {allowed} longer or shorter</source>
        <translation>ya hecha puede ser hasta {allowed} más larga o más corta</translation>
    </message>
    <message>
        <source>in installing order</source>
        <translation>en orden de colocación</translation>
    </message>
    <message>
        <source>then</source>
        <translation>luego</translation>
    </message>
    <message>
        <source>of</source>
        <translation>de</translation>
    </message>
    <message>
        <source>length {length}</source>
        <translation>largo {length}</translation>
    </message>
    <message>
        <source>profile {id}, {name}: girth {girth}, {gauge} {metal}, {colour}</source>
        <translation>perfil {id}, {name}: desarrollo {girth}, {gauge} {metal}, {colour}</translation>
    </message>
    <message>
        <source>profile {id}, {name}: girth {girth}, {gauge} {metal}</source>
        <translation>perfil {id}, {name}: desarrollo {girth}, {gauge} {metal}</translation>
    </message>
    <message>
        <source>mass {kilograms} kg ({pounds} lb): {length} at {each} kg per metre</source>
        <translation>peso {kilograms} kg ({pounds} lb): {length} a {each} kg por metro</translation>
    </message>
    <message>
        <source>along with the run</source>
        <translation>junto con el tramo</translation>
    </message>
    <message>
        <source>{mark}: {length} long</source>
        <translation>{mark}: {length} de largo</translation>
    </message>
    <message>
        <source>{mark}: piece {ordinal} of {count} on run {run}, {length} long</source>
        <translation>{mark}: pieza {ordinal} de {count} en el tramo {run}, {length} de largo</translation>
    </message>
    <message>
        <source>a stock length to cut on site</source>
        <translation>un largo de existencias a cortar en obra</translation>
    </message>
    <message>
        <source>as long as the longest piece of its profile</source>
        <translation>tan larga como la pieza más larga de su perfil</translation>
    </message>
    <message>
        <source>{mark}: {length} for run {run}, cut on site from stock length {stock}</source>
        <translation>{mark}: {length} para el tramo {run}, cortada en obra del largo de existencias {stock}</translation>
    </message>
    <message>
        <source>not checked against this clause, for this is not known: {meaning}</source>
        <translation>no se revisó con esta cláusula, porque no se conoce: {meaning}</translation>
    </message>
    <message>
        <source>Give it with the job, or check this by hand.</source>
        <translation>Póngalo en el trabajo, o revise esto a mano.</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>kind of edge, as files write it: eave, rake, slope_change</source>
        <translation>clase de borde, como la escriben los archivos: eave, rake, slope_change</translation>
    </message>
    <message>
        <source>gauge as the trade names it for the metal</source>
        <translation>calibre como lo nombra el oficio para el metal</translation>
    </message>
    <message>
        <source>colour ordered</source>
        <translation>color pedido</translation>
    </message>
    <message>
        <source>what happens at the start of the run: free, mitre, turn_up</source>
        <translation>lo que pasa en el inicio del tramo: free, mitre, turn_up</translation>
    </message>
    <message>
        <source>what happens at the end of the run</source>
        <translation>lo que pasa en el final del tramo</translation>
    </message>
    <message>
        <source>none, left or right</source>
        <translation>ninguna, izquierda o derecha</translation>
    </message>
    <message>
        <source>slope of the roof plane at the run</source>
        <translation>pendiente del plano de techo en el tramo</translation>
    </message>
    <message>
        <source>slope of the other plane</source>
        <translation>pendiente del otro plano</translation>
    </message>
    <message>
        <source>thickness of the metal</source>
        <translation>espesor del metal</translation>
    </message>
    <message>
        <source>flat width across the profile</source>
        <translation>ancho en plano a través del perfil</translation>
    </message>
    <message>
        <source>measured length of the run</source>
        <translation>largo medido del tramo</translation>
    </message>
    <message>
        <source>length of the longest piece of the run</source>
        <translation>largo de la pieza más larga del tramo</translation>
    </message>
    <message>
        <source>length of the shortest piece of the run</source>
        <translation>largo de la pieza más corta del tramo</translation>
    </message>
    <message>
        <source>pieces on the run</source>
        <translation>piezas del tramo</translation>
    </message>
    <message>
        <source>how far one piece covers the next</source>
        <translation>cuánto cubre una pieza a la siguiente</translation>
    </message>
    <message>
        <source>laps are bedded in sealant</source>
        <translation>los traslapes van sobre sellador</translation>
    </message>
    <message>
        <source>step flashing: length of a piece less the exposure</source>
        <translation>tapajuntas escalonado: largo de una pieza menos la exposición</translation>
    </message>
    <message>
        <source>what one course of the roofing shows</source>
        <translation>lo que se ve de una hilada de la cubierta</translation>
    </message>
    <message>
        <source>distance between fasteners of one row</source>
        <translation>distancia entre las fijaciones de una fila</translation>
    </message>
    <message>
        <source>rows of fasteners</source>
        <translation>filas de fijaciones</translation>
    </message>
    <message>
        <source>distance between cleats</source>
        <translation>distancia entre grapas</translation>
    </message>
    <message>
        <source>distance between movement joints, or the run&apos;s length without any</source>
        <translation>distancia entre juntas de dilatación, o el largo del tramo sin ninguna</translation>
    </message>
    <message>
        <source>height of the plumb face that shows</source>
        <translation>altura de la cara a plomo que se ve</translation>
    </message>
    <message>
        <source>how far the trim stands up a wall</source>
        <translation>cuánto sube la moldura por una pared</translation>
    </message>
    <message>
        <source>how far the trim reaches over or under the roofing, on the lesser side</source>
        <translation>cuánto entra la moldura sobre la cubierta o bajo ella, en el lado menor</translation>
    </message>
    <message>
        <source>how far the trim reaches up the deck</source>
        <translation>cuánto sube la moldura por el tablero</translation>
    </message>
    <message>
        <source>height of the rib in the middle of a valley</source>
        <translation>altura del nervio en medio de una limahoya</translation>
    </message>
    <message>
        <source>how far the trim goes into a joint or slot of masonry</source>
        <translation>cuánto entra la moldura en una junta o ranura de la mampostería</translation>
    </message>
    <message>
        <source>width of a chimney or other obstacle, parallel to the ridge</source>
        <translation>ancho de una chimenea u otro obstáculo, paralelo a la cumbrera</translation>
    </message>
    <message>
        <source>whether a cricket stands on the upper side of the obstacle</source>
        <translation>si hay un desviador de agua en el lado alto del obstáculo</translation>
    </message>
    <message>
        <source>height of that cricket at this slope: half the width of the obstacle times the slope</source>
        <translation>altura de ese desviador con esta pendiente: la mitad del ancho del obstáculo por la pendiente</translation>
    </message>
    <message>
        <source>wind velocity pressure at the building, pounds per square foot</source>
        <translation>presión del viento en el edificio, libras por pie cuadrado</translation>
    </message>
    <message>
        <source>{what} was {before}, is now {now}</source>
        <translation>{what} era {before}, ahora es {now}</translation>
    </message>
    <message>
        <source>date wanted</source>
        <translation>fecha en que se necesita</translation>
    </message>
    <message>
        <source>measured by</source>
        <translation>midió</translation>
    </message>
    <message>
        <source>folding length</source>
        <translation>largo de doblado</translation>
    </message>
    <message>
        <source>stock length</source>
        <translation>largo de existencias</translation>
    </message>
    <message>
        <source>transport length</source>
        <translation>largo de transporte</translation>
    </message>
    <message>
        <source>shortest piece</source>
        <translation>pieza más corta</translation>
    </message>
    <message>
        <source>how runs are divided</source>
        <translation>cómo se dividen los tramos</translation>
    </message>
    <message>
        <source>rule sets</source>
        <translation>reglas</translation>
    </message>
    <message>
        <source>wind pressure, psf</source>
        <translation>presión del viento, psf</translation>
    </message>
    <message>
        <source>spare pieces per profile</source>
        <translation>piezas de repuesto por perfil</translation>
    </message>
    <message>
        <source>is new</source>
        <translation>se agregó</translation>
    </message>
    <message>
        <source>is no longer there</source>
        <translation>ya no está</translation>
    </message>
    <message>
        <source>the chain</source>
        <translation>la cadena</translation>
    </message>
    <message>
        <source>bearing of the first run</source>
        <translation>rumbo del primer tramo</translation>
    </message>
    <message>
        <source>width of the obstacle</source>
        <translation>ancho del obstáculo</translation>
    </message>
    <message>
        <source>number of corners</source>
        <translation>número de esquinas</translation>
    </message>
    <message>
        <source>interior angle</source>
        <translation>ángulo interior</translation>
    </message>
    <message>
        <source>level run</source>
        <translation>largo a nivel</translation>
    </message>
    <message>
        <source>plan corner</source>
        <translation>esquina en planta</translation>
    </message>
    <message>
        <source>its repeated measures or texts as entered changed</source>
        <translation>cambiaron sus medidas repetidas o sus textos escritos</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>marca</translation>
    </message>
    <message>
        <source>is no longer wanted</source>
        <translation>ya no se quiere</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>customer</source>
        <translation>cliente</translation>
    </message>
    <message>
        <source>address</source>
        <translation>dirección</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>metal</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>calibre</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>color</translation>
    </message>
    <message>
        <source>photos</source>
        <translation>fotos</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>clase</translation>
    </message>
    <message>
        <source>length</source>
        <translation>largo</translation>
    </message>
    <message>
        <source>trim</source>
        <translation>moldura</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>to the</source>
        <translation>hacia la</translation>
    </message>
    <message>
        <source>length cut on site</source>
        <translation>largo cortado en obra</translation>
    </message>
    <message>
        <source>stock length it is cut from</source>
        <translation>largo de existencias del que se corta</translation>
    </message>
    <message>
        <source>what is left of the stock length</source>
        <translation>lo que queda del largo de existencias</translation>
    </message>
    <message>
        <source>length of the blank</source>
        <translation>largo de la lámina plana</translation>
    </message>
    <message>
        <source>length along the run</source>
        <translation>largo a lo largo del tramo</translation>
    </message>
    <message>
        <source>allowance</source>
        <translation>(añadido)</translation>
    </message>
    <message>
        <source>points of the cut at the</source>
        <translation>puntos del corte en el</translation>
    </message>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>of the cut at the</source>
        <translation>del corte en el</translation>
    </message>
    <message>
        <source>profile</source>
        <translation>perfil</translation>
    </message>
    <message>
        <source>coloured face</source>
        <translation>cara pintada</translation>
    </message>
    <message>
        <source>hem at the start</source>
        <translation>dobladillo inicial</translation>
    </message>
    <message>
        <source>hem at the end</source>
        <translation>dobladillo final</translation>
    </message>
    <message>
        <source>number of legs</source>
        <translation>número de alas</translation>
    </message>
    <message>
        <source>turn of bend</source>
        <translation>giro del doblez</translation>
    </message>
    <message>
        <source>inside radius of bend</source>
        <translation>radio interior del doblez</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>plano</translation>
    </message>
    <message>
        <source>count</source>
        <translation>cantidad</translation>
    </message>
    <message>
        <source>thickness</source>
        <translation>espesor</translation>
    </message>
    <message>
        <source>girth</source>
        <translation>desarrollo</translation>
    </message>
    <message>
        <source>Plan of</source>
        <translation>Planta de</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>tramos</translation>
    </message>
    <message>
        <source>Outside lengths. Fold angles: 0° is flat.</source>
        <translation>Largos por fuera. Ángulos de doblez: 0° es plano.</translation>
    </message>
    <message>
        <source>Outside lengths. Included angles: 180° is flat.</source>
        <translation>Largos por fuera. Ángulos entre alas: 180° es plano.</translation>
    </message>
    <message>
        <source>Metal drawn thicker than it is.</source>
        <translation>El metal se dibuja más grueso de lo que es.</translation>
    </message>
    <message>
        <source>Shortest parts drawn larger.</source>
        <translation>Las partes más cortas se dibujan más grandes.</translation>
    </message>
    <message>
        <source>No room for</source>
        <translation>No caben</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>escala</translation>
    </message>
    <message>
        <source>closed hem</source>
        <translation>dobladillo cerrado</translation>
    </message>
    <message>
        <source>open hem</source>
        <translation>dobladillo abierto</translation>
    </message>
    <message>
        <source>teardrop hem</source>
        <translation>dobladillo de gota</translation>
    </message>
    <message>
        <source>first edge</source>
        <translation>primer borde</translation>
    </message>
    <message>
        <source>last edge</source>
        <translation>último borde</translation>
    </message>
    <message>
        <source>Section of</source>
        <translation>Sección de</translation>
    </message>
    <message>
        <source>From the first edge</source>
        <translation>Desde el primer borde</translation>
    </message>
    <message>
        <source>fold</source>
        <translation>doblez de</translation>
    </message>
    <message>
        <source>to the left</source>
        <translation>a la izquierda</translation>
    </message>
    <message>
        <source>to the right</source>
        <translation>a la derecha</translation>
    </message>
    <message>
        <source>Coloured face on the</source>
        <translation>Cara pintada a la</translation>
    </message>
    <message>
        <source>of the path.</source>
        <translation>del recorrido.</translation>
    </message>
    <message>
        <source>hem</source>
        <translation>dobladillo</translation>
    </message>
    <message>
        <source>Coping</source>
        <translation>Albardilla</translation>
    </message>
    <message>
        <source>Covers the top of a parapet and falls towards the roof. Both faces hang over cleats and end in a kick.</source>
        <translation>Cubre lo alto de un parapeto con caída hacia el techo. Las dos caras cuelgan sobre grapas y terminan en una pestaña.</translation>
    </message>
    <message>
        <source>Thickness of the wall, with its cladding</source>
        <translation>Espesor de la pared, con su revestimiento</translation>
    </message>
    <message>
        <source>Height of the outer face</source>
        <translation>Altura de la cara exterior</translation>
    </message>
    <message>
        <source>Height of the face towards the roof</source>
        <translation>Altura de la cara hacia el techo</translation>
    </message>
    <message>
        <source>Kick towards the roof</source>
        <translation>Pestaña hacia el techo</translation>
    </message>
    <message>
        <source>Face towards the roof</source>
        <translation>Cara hacia el techo</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Parte alta</translation>
    </message>
    <message>
        <source>Outer face</source>
        <translation>Cara exterior</translation>
    </message>
    <message>
        <source>Kick</source>
        <translation>Pestaña</translation>
    </message>
    <message>
        <source>Counterflashing</source>
        <translation>Contratapajuntas</translation>
    </message>
    <message>
        <source>Let into a masonry joint over a base flashing: turned up inside the joint, out to the face of the wall, down over the base flashing.</source>
        <translation>Metido en una junta de la mampostería sobre un tapajuntas de base: vuelto hacia arriba dentro de la junta, afuera hasta la cara de la pared, abajo sobre el tapajuntas de base.</translation>
    </message>
    <message>
        <source>Cover over the base flashing</source>
        <translation>Cuánto cubre el tapajuntas de base</translation>
    </message>
    <message>
        <source>Turn-up in the joint</source>
        <translation>Vuelta en la junta</translation>
    </message>
    <message>
        <source>Leg in the joint</source>
        <translation>Ala en la junta</translation>
    </message>
    <message>
        <source>Face</source>
        <translation>Cara</translation>
    </message>
    <message>
        <source>Eave drip edge, square-cut fascia</source>
        <translation>Goterón de alero, fascia a escuadra</translation>
    </message>
    <message>
        <source>As the eave drip edge, where the fascia stands square to the deck and not plumb.</source>
        <translation>Como el goterón de alero, donde la fascia está a escuadra con el tablero y no a plomo.</translation>
    </message>
    <message>
        <source>Height of the face</source>
        <translation>Altura de la cara</translation>
    </message>
    <message>
        <source>Deck flange</source>
        <translation>Ala sobre el tablero</translation>
    </message>
    <message>
        <source>Eave drip edge</source>
        <translation>Goterón de alero</translation>
    </message>
    <message>
        <source>Under the underlayment, on the deck along a level eave; the face hangs plumb in front of the fascia and the kick throws the water off. At a fascia cut square to the rafters use the square-cut form.</source>
        <translation>Bajo la membrana base, sobre el tablero a lo largo de un alero a nivel; la cara cuelga a plomo delante de la fascia y la pestaña aleja el agua. Si la fascia está cortada a escuadra con los cabios use la forma a escuadra.</translation>
    </message>
    <message>
        <source>Fascia cover</source>
        <translation>Forro de fascia</translation>
    </message>
    <message>
        <source>Covers a fascia board from behind the drip edge down and returns under it against the soffit. The top edge is hidden by the drip edge.</source>
        <translation>Cubre la tabla de fascia desde atrás del goterón hacia abajo y regresa por debajo contra el sofito. El goterón esconde el borde de arriba.</translation>
    </message>
    <message>
        <source>Height of the fascia</source>
        <translation>Altura de la fascia</translation>
    </message>
    <message>
        <source>Return under the fascia</source>
        <translation>Retorno bajo la fascia</translation>
    </message>
    <message>
        <source>Gravel edge</source>
        <translation>Borde de grava</translation>
    </message>
    <message>
        <source>At the edge of a low-slope roof: the flange is nailed under the roofing and stripped in, the dam holds the gravel, the face covers the edge and hooks over a continuous strip.</source>
        <translation>En el borde de un techo de poca pendiente: el ala se clava bajo la cubierta y se sella con tiras, el dique detiene la grava, la cara cubre el borde y se engancha en una tira continua.</translation>
    </message>
    <message>
        <source>Height of the dam</source>
        <translation>Altura del dique</translation>
    </message>
    <message>
        <source>Height of the face below the roof edge</source>
        <translation>Altura de la cara bajo el borde del techo</translation>
    </message>
    <message>
        <source>Flange</source>
        <translation>Ala de clavado</translation>
    </message>
    <message>
        <source>Dam</source>
        <translation>Dique</translation>
    </message>
    <message>
        <source>Hooked edge</source>
        <translation>Borde enganchado</translation>
    </message>
    <message>
        <source>Gutter apron</source>
        <translation>Faldón de canaleta</translation>
    </message>
    <message>
        <source>On the deck at an eave with a gutter: the face reaches over the gutter&apos;s back and its kick leads the water in.</source>
        <translation>Sobre el tablero en un alero con canaleta: la cara pasa sobre la espalda de la canaleta y su pestaña lleva el agua adentro.</translation>
    </message>
    <message>
        <source>Depth of the face into the gutter</source>
        <translation>Cuánto entra la cara en la canaleta</translation>
    </message>
    <message>
        <source>Lip into the gutter</source>
        <translation>Labio hacia la canaleta</translation>
    </message>
    <message>
        <source>Head Z</source>
        <translation>Z de dintel</translation>
    </message>
    <message>
        <source>Over the head of a door or window: up behind the cladding, out over the trim with a fall, down in front of it. The ends are turned up or closed.</source>
        <translation>Sobre el dintel de una puerta o ventana: sube detrás del revestimiento, sale con caída sobre la moldura y baja por delante. Los extremos van vueltos hacia arriba o cerrados.</translation>
    </message>
    <message>
        <source>Projection of the trim from the wall</source>
        <translation>Cuánto sale la moldura de la pared</translation>
    </message>
    <message>
        <source>Wall leg</source>
        <translation>Ala de pared</translation>
    </message>
    <message>
        <source>Ledge</source>
        <translation>Repisa</translation>
    </message>
    <message>
        <source>Lip</source>
        <translation>Labio</translation>
    </message>
    <message>
        <source>Headwall apron</source>
        <translation>Faldón de pared frontal</translation>
    </message>
    <message>
        <source>Where the top of a roof plane meets a wall: the wall leg goes up behind the cladding, the roof leg lies over the roofing.</source>
        <translation>Donde lo alto de un plano de techo llega a una pared: el ala de pared sube detrás del revestimiento, el ala de techo va sobre la cubierta.</translation>
    </message>
    <message>
        <source>Roof leg</source>
        <translation>Ala de techo</translation>
    </message>
    <message>
        <source>Hip cap</source>
        <translation>Tapa de limatesa</translation>
    </message>
    <message>
        <source>Covers a hip, from the low end up. The turn is the crease of the two planes, square to the hip; for unequal slopes the drawing shows it upright, the piece is the same.</source>
        <translation>Cubre una limatesa, desde el extremo bajo hacia arriba. El giro es la arista de los dos planos, a escuadra con la limatesa; con pendientes desiguales el dibujo la muestra derecha, la pieza es la misma.</translation>
    </message>
    <message>
        <source>Wing on the plane before the hip</source>
        <translation>Ala en el plano antes de la limatesa</translation>
    </message>
    <message>
        <source>Wing on the plane after the hip</source>
        <translation>Ala en el plano después de la limatesa</translation>
    </message>
    <message>
        <source>Inside corner</source>
        <translation>Esquina interior</translation>
    </message>
    <message>
        <source>Lines a vertical inside corner of a wall, from the low end up. Section seen from above.</source>
        <translation>Forra una esquina interior vertical de pared, desde el extremo bajo hacia arriba. Sección vista desde arriba.</translation>
    </message>
    <message>
        <source>Face on the wall before the corner</source>
        <translation>Cara en la pared antes de la esquina</translation>
    </message>
    <message>
        <source>Face on the wall after the corner</source>
        <translation>Cara en la pared después de la esquina</translation>
    </message>
    <message>
        <source>Jamb trim</source>
        <translation>Moldura de jamba</translation>
    </message>
    <message>
        <source>Beside a window or door: one face on the wall, one into the opening, from the low end up. Section seen from above, the wall before the opening.</source>
        <translation>Al lado de una ventana o puerta: una cara en la pared, otra en la abertura, desde el extremo bajo hacia arriba. Sección vista desde arriba, la pared antes de la abertura.</translation>
    </message>
    <message>
        <source>Depth of the reveal</source>
        <translation>Profundidad de la abertura</translation>
    </message>
    <message>
        <source>Face on the wall</source>
        <translation>Cara en la pared</translation>
    </message>
    <message>
        <source>Leg into the opening</source>
        <translation>Ala en la abertura</translation>
    </message>
    <message>
        <source>Open valley with centre rib</source>
        <translation>Limahoya abierta con nervio central</translation>
    </message>
    <message>
        <source>Lines an open valley from the low end up, each piece over the one below. The rib keeps the water of one plane from running under the other; where the flows are unequal make it 1-1/2 in (CDA). The edges are folded up under the roofing, held by cleats at 12 in, no nail through the metal.</source>
        <translation>Forra una limahoya abierta desde el extremo bajo hacia arriba, cada pieza sobre la de abajo. El nervio impide que el agua de un plano se meta bajo el otro; donde baja más agua por un lado hágalo de 1-1/2 in (CDA). Los bordes se doblan hacia arriba bajo la cubierta, sujetos con grapas cada 12 in, ningún clavo atraviesa el metal.</translation>
    </message>
    <message>
        <source>Height of the centre rib</source>
        <translation>Altura del nervio central</translation>
    </message>
    <message>
        <source>Width of each wing</source>
        <translation>Ancho de cada ala</translation>
    </message>
    <message>
        <source>Wing on the plane before the valley</source>
        <translation>Ala en el plano antes de la limahoya</translation>
    </message>
    <message>
        <source>Rib, first side</source>
        <translation>Nervio, primer lado</translation>
    </message>
    <message>
        <source>Rib, second side</source>
        <translation>Nervio, segundo lado</translation>
    </message>
    <message>
        <source>Wing on the plane after the valley</source>
        <translation>Ala en el plano después de la limahoya</translation>
    </message>
    <message>
        <source>Open valley</source>
        <translation>Limahoya abierta</translation>
    </message>
    <message>
        <source>Lines an open valley from the low end up, each piece over the one below, for roofs whose planes shed alike; where the flows are unequal take the one with a centre rib. The edges are folded up under the roofing, held by cleats at 12 in, no nail through the metal.</source>
        <translation>Forra una limahoya abierta desde el extremo bajo hacia arriba, cada pieza sobre la de abajo, para techos cuyos planos escurren parejo; donde baja más agua por un lado use la de nervio central. Los bordes se doblan hacia arriba bajo la cubierta, sujetos con grapas cada 12 in, ningún clavo atraviesa el metal.</translation>
    </message>
    <message>
        <source>Outside corner</source>
        <translation>Esquina exterior</translation>
    </message>
    <message>
        <source>Covers a vertical outside corner of a wall, over the cladding, from the low end up. Section seen from above.</source>
        <translation>Cubre una esquina exterior vertical de pared, sobre el revestimiento, desde el extremo bajo hacia arriba. Sección vista desde arriba.</translation>
    </message>
    <message>
        <source>Rake drip edge</source>
        <translation>Goterón de hastial</translation>
    </message>
    <message>
        <source>Over the underlayment along a rake, from the low end up; laps over the eave drip edge at the corner. The section is square to the rake, so the slope does not enter.</source>
        <translation>Sobre la membrana base a lo largo de un hastial, desde el extremo bajo hacia arriba; en la esquina traslapa el goterón de alero. La sección es a escuadra con el hastial, así que la pendiente no cuenta.</translation>
    </message>
    <message>
        <source>Rake trim</source>
        <translation>Moldura de hastial</translation>
    </message>
    <message>
        <source>Covers the edge of the roofing along a rake: the top leg lies on the roofing, the face hangs in front of the barge board. Pieces go on from the low end up; the low end is closed.</source>
        <translation>Cubre el borde de la cubierta a lo largo de un hastial: el ala de arriba va sobre la cubierta, la cara cuelga delante de la tabla de hastial. Las piezas van desde el extremo bajo hacia arriba; el extremo bajo va cerrado.</translation>
    </message>
    <message>
        <source>Top leg</source>
        <translation>Ala de arriba</translation>
    </message>
    <message>
        <source>Ridge cap</source>
        <translation>Tapa de cumbrera</translation>
    </message>
    <message>
        <source>Covers a ridge; the first wing lies on the plane of the run&apos;s slope, the second on the other. Laps away from the wind.</source>
        <translation>Cubre una cumbrera; la primera ala va en el plano de la pendiente del tramo, la segunda en el otro. Traslapa de espaldas al viento.</translation>
    </message>
    <message>
        <source>Wing on the plane of the run</source>
        <translation>Ala en el plano del tramo</translation>
    </message>
    <message>
        <source>Wing on the other plane</source>
        <translation>Ala en el otro plano</translation>
    </message>
    <message>
        <source>Sidewall flashing</source>
        <translation>Tapajuntas de pared lateral</translation>
    </message>
    <message>
        <source>Continuous flashing where a roof plane runs beside a wall, from the low end up; the low end is turned out as a kick-out. The edge on the roof is folded up as a stop for water under the roofing.</source>
        <translation>Tapajuntas continuo donde un plano de techo corre junto a una pared, desde el extremo bajo hacia arriba; el extremo bajo se abre hacia afuera para alejar el agua de la pared. El borde en el techo se dobla hacia arriba para detener el agua bajo la cubierta.</translation>
    </message>
    <message>
        <source>Sill flashing</source>
        <translation>Tapajuntas de antepecho</translation>
    </message>
    <message>
        <source>Under a window or door sill: a back dam turned up inside, out with a fall, down over the cladding with a kick. The ends are turned up against the jambs.</source>
        <translation>Bajo el antepecho de una ventana o puerta: un dique atrás vuelto hacia arriba por dentro, afuera con caída, abajo sobre el revestimiento con una pestaña. Los extremos van vueltos hacia arriba contra las jambas.</translation>
    </message>
    <message>
        <source>Depth of the sill</source>
        <translation>Profundidad del antepecho</translation>
    </message>
    <message>
        <source>Back dam</source>
        <translation>Dique de atrás</translation>
    </message>
    <message>
        <source>Sill</source>
        <translation>Antepecho</translation>
    </message>
    <message>
        <source>Slope change</source>
        <translation>Cambio de pendiente</translation>
    </message>
    <message>
        <source>Where a roof plane meets a steeper or flatter one: under the roofing above, over the roofing below.</source>
        <translation>Donde un plano de techo llega a otro más inclinado o más plano: bajo la cubierta de arriba, sobre la cubierta de abajo.</translation>
    </message>
    <message>
        <source>Leg under the upper roofing</source>
        <translation>Ala bajo la cubierta de arriba</translation>
    </message>
    <message>
        <source>Leg over the lower roofing</source>
        <translation>Ala sobre la cubierta de abajo</translation>
    </message>
    <message>
        <source>Step flashing</source>
        <translation>Tapajuntas escalonado</translation>
    </message>
    <message>
        <source>One piece per course of roofing beside a wall, each over the course below and under the next.</source>
        <translation>Una pieza por hilada de cubierta junto a una pared, cada una sobre la hilada de abajo y bajo la siguiente.</translation>
    </message>
    <message>
        <source>Wall base</source>
        <translation>Base de pared</translation>
    </message>
    <message>
        <source>At the foot of the wall cladding: up behind it, out with a fall under its lower edge, down past the foundation, and a kick.</source>
        <translation>Al pie del revestimiento de pared: sube por detrás, sale con caída bajo su borde inferior, baja más allá del cimiento, y una pestaña.</translation>
    </message>
    <message>
        <source>Depth under the cladding</source>
        <translation>Profundidad bajo el revestimiento</translation>
    </message>
    <message>
        <source>Height of the face below</source>
        <translation>Altura de la cara de abajo</translation>
    </message>
    <message>
        <source>Copper handbook: flashing</source>
        <translation>Manual del cobre: tapajuntas</translation>
    </message>
    <message>
        <source>Codes differ: the local code and a licensed professional decide.</source>
        <translation>Los códigos varían: deciden el código local y un profesional con licencia.</translation>
    </message>
    <message>
        <source>Copper of {thickness} is thinner than the 16 oz that open valleys need</source>
        <translation>Cobre de {thickness} es más delgado que las 16 oz que necesitan las limahoyas abiertas</translation>
    </message>
    <message>
        <source>Choose 16 oz or heavier.</source>
        <translation>Elija 16 oz o más pesado.</translation>
    </message>
    <message>
        <source>Valley pieces lap {lap}; at least {demanded} is asked for</source>
        <translation>Las piezas de limahoya traslapan {lap}; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Lap the pieces further.</source>
        <translation>Aumente el traslape de las piezas.</translation>
    </message>
    <message>
        <source>The details of copper valleys are for slopes of at least {demanded}; this one is {slope}</source>
        <translation>Los detalles de limahoyas de cobre son para pendientes de por lo menos {demanded}; esta es {slope}</translation>
    </message>
    <message>
        <source>Ask for a detail for low slopes.</source>
        <translation>Pida un detalle para poca pendiente.</translation>
    </message>
    <message>
        <source>A coping piece is {piece_length} long; lengths of 8 or 10 ft are asked for</source>
        <translation>Una pieza de albardilla mide {piece_length}; se piden largos de 8 o 10 ft</translation>
    </message>
    <message>
        <source>Set the longest piece of the order to 10 ft.</source>
        <translation>Ponga en 10 ft la pieza más larga del pedido.</translation>
    </message>
    <message>
        <source>Gravel stops lap {lap}; at least {demanded} is asked for</source>
        <translation>Los bordes de grava traslapan {lap}; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>The gravel stop is nailed every {fastener_spacing}; at most {demanded} is asked for</source>
        <translation>El borde de grava se clava cada {fastener_spacing}; se piden {demanded} a lo más</translation>
    </message>
    <message>
        <source>Set the nails closer.</source>
        <translation>Ponga los clavos más juntos.</translation>
    </message>
    <message>
        <source>The flange on the roof is {leg.flange} wide; at most {demanded} is asked for</source>
        <translation>El ala de clavado tiene {leg.flange} de ancho; se piden {demanded} a lo más</translation>
    </message>
    <message>
        <source>Make the flange narrower.</source>
        <translation>Haga más angosta el ala de clavado.</translation>
    </message>
    <message>
        <source>The gravel stop is {measure.dam_height} high; at least {demanded} is asked for</source>
        <translation>El borde de grava tiene {measure.dam_height} de alto; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Make the dam higher.</source>
        <translation>Haga más alto el dique.</translation>
    </message>
    <message>
        <source>Rake strips lap {lap}; at least {demanded} in the direction of flow is asked for</source>
        <translation>Las tiras de hastial traslapan {lap}; se piden por lo menos {demanded} en el sentido del agua</translation>
    </message>
    <message>
        <source>A narrow strip held along its edge is nailed every {fastener_spacing}; at most {demanded}, staggered, is asked for</source>
        <translation>Una tira angosta sujeta por su borde se clava cada {fastener_spacing}; se piden {demanded} a lo más, con clavos alternados</translation>
    </message>
    <message>
        <source>The wind velocity pressure is {velocity_pressure_psf} lb/sq ft; the table of copper fascias ends at {demanded}</source>
        <translation>La presión del viento es {velocity_pressure_psf} lb/pie²; la tabla de fascias de cobre termina en {demanded}</translation>
    </message>
    <message>
        <source>Have the face and its fixing designed.</source>
        <translation>Haga calcular la cara y su fijación.</translation>
    </message>
    <message>
        <source>A face of {face_height} in 16 oz copper is higher than {demanded} at a wind velocity pressure of {velocity_pressure_psf} lb/sq ft</source>
        <translation>Una cara de {face_height} en cobre de 16 oz es más alta que {demanded} con una presión del viento de {velocity_pressure_psf} lb/pie²</translation>
    </message>
    <message>
        <source>Choose heavier copper, a lower face, or two pieces.</source>
        <translation>Elija cobre más pesado, una cara más baja o dos piezas.</translation>
    </message>
    <message>
        <source>A face of {face_height} in 20 oz copper is higher than {demanded} at a wind velocity pressure of {velocity_pressure_psf} lb/sq ft</source>
        <translation>Una cara de {face_height} en cobre de 20 oz es más alta que {demanded} con una presión del viento de {velocity_pressure_psf} lb/pie²</translation>
    </message>
    <message>
        <source>A face of {face_height} in 24 oz copper is higher than {demanded} at a wind velocity pressure of {velocity_pressure_psf} lb/sq ft</source>
        <translation>Una cara de {face_height} en cobre de 24 oz es más alta que {demanded} con una presión del viento de {velocity_pressure_psf} lb/pie²</translation>
    </message>
    <message>
        <source>A face of {face_height} in 32 oz copper is higher than {demanded} at a wind velocity pressure of {velocity_pressure_psf} lb/sq ft</source>
        <translation>Una cara de {face_height} en cobre de 32 oz es más alta que {demanded} con una presión del viento de {velocity_pressure_psf} lb/pie²</translation>
    </message>
    <message>
        <source>A face of {face_height} in 16 oz copper is higher than the {demanded} allowed even in the least wind</source>
        <translation>Una cara de {face_height} en cobre de 16 oz es más alta que los {demanded} permitidos aun con el viento más débil</translation>
    </message>
    <message>
        <source>Choose heavier copper, a lower face, or two pieces. Stronger wind allows less.</source>
        <translation>Elija cobre más pesado, una cara más baja o dos piezas. Un viento más fuerte permite menos.</translation>
    </message>
    <message>
        <source>A face of {face_height} in 20 oz copper is higher than the {demanded} allowed even in the least wind</source>
        <translation>Una cara de {face_height} en cobre de 20 oz es más alta que los {demanded} permitidos aun con el viento más débil</translation>
    </message>
    <message>
        <source>A face of {face_height} in 24 oz copper is higher than the {demanded} allowed even in the least wind</source>
        <translation>Una cara de {face_height} en cobre de 24 oz es más alta que los {demanded} permitidos aun con el viento más débil</translation>
    </message>
    <message>
        <source>A face of {face_height} in 32 oz copper is higher than the {demanded} allowed even in the least wind</source>
        <translation>Una cara de {face_height} en cobre de 32 oz es más alta que los {demanded} permitidos aun con el viento más débil</translation>
    </message>
    <message>
        <source>Building code: roof flashing</source>
        <translation>Código de construcción: tapajuntas de techo</translation>
    </message>
    <message>
        <source>The face of the drip edge is {face_height} high; at least {demanded} is asked for</source>
        <translation>La cara del goterón tiene {face_height} de alto; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Make the face higher.</source>
        <translation>Haga más alta la cara.</translation>
    </message>
    <message>
        <source>Drip edge laps {lap}; at least {demanded} is asked for</source>
        <translation>El goterón traslapa {lap}; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>The drip edge reaches {deck_width} up the deck; at least {demanded} is asked for</source>
        <translation>El goterón sube {deck_width} por el tablero; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Make the deck leg longer.</source>
        <translation>Haga más larga el ala sobre el tablero.</translation>
    </message>
    <message>
        <source>The drip edge is fastened every {fastener_spacing}; at most {demanded} is asked for</source>
        <translation>El goterón se fija cada {fastener_spacing}; se piden {demanded} a lo más</translation>
    </message>
    <message>
        <source>Set the fasteners closer.</source>
        <translation>Ponga las fijaciones más juntas.</translation>
    </message>
    <message>
        <source>Metal of {thickness} is thinner than the {demanded} that roof flashing needs</source>
        <translation>Metal de {thickness} es más delgado que los {demanded} que necesita el tapajuntas de techo</translation>
    </message>
    <message>
        <source>Choose a heavier gauge.</source>
        <translation>Elija un calibre más pesado.</translation>
    </message>
    <message>
        <source>Residential code: roof flashing</source>
        <translation>Código residencial: tapajuntas de techo</translation>
    </message>
    <message>
        <source>The face of the drip edge is {face_height} high and cannot reach {demanded} below the sheathing</source>
        <translation>La cara del goterón tiene {face_height} de alto y no puede llegar {demanded} por debajo del tablero</translation>
    </message>
    <message>
        <source>Choose a heavier gauge. The thickness decides, not the gauge number: gauges of different metals differ.</source>
        <translation>Elija un calibre más pesado. Decide el espesor, no el número de calibre: los calibres de metales distintos son distintos.</translation>
    </message>
    <message>
        <source>Base and cap flashing of {thickness} is thinner than {demanded}</source>
        <translation>El tapajuntas de base o el contratapajuntas de {thickness} es más delgado que {demanded}</translation>
    </message>
    <message>
        <source>The valley lining is {girth} wide flat; an open valley lined with metal needs at least {demanded}</source>
        <translation>El forro de limahoya tiene {girth} de ancho en plano; una limahoya abierta forrada de metal necesita por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Make the wings wider.</source>
        <translation>Haga más anchas las alas.</translation>
    </message>
    <message>
        <source>Cold-rolled copper of {thickness} is thinner than the {demanded} the table asks for in a valley</source>
        <translation>Cobre laminado en frío de {thickness} es más delgado que los {demanded} que pide la tabla en una limahoya</translation>
    </message>
    <message>
        <source>Aluminium of {thickness} is thinner than the {demanded} the table asks for in a valley</source>
        <translation>Aluminio de {thickness} es más delgado que los {demanded} que pide la tabla en una limahoya</translation>
    </message>
    <message>
        <source>Zinc of {thickness} is thinner than the {demanded} the table asks for in a valley</source>
        <translation>Zinc de {thickness} es más delgado que los {demanded} que pide la tabla en una limahoya</translation>
    </message>
    <message>
        <source>Galvanised steel of {thickness} is thinner than the {demanded} the table asks for in a valley</source>
        <translation>Acero galvanizado de {thickness} es más delgado que los {demanded} que pide la tabla en una limahoya</translation>
    </message>
    <message>
        <source>The flashing stands {wall_height} up the wall; at least {demanded} is asked for</source>
        <translation>El tapajuntas sube {wall_height} por la pared; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Make the wall leg longer.</source>
        <translation>Haga más larga el ala de pared.</translation>
    </message>
    <message>
        <source>The flashing reaches {roof_width} under the roofing; at least {demanded} is asked for</source>
        <translation>El tapajuntas entra {roof_width} bajo la cubierta; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Make the roof leg longer.</source>
        <translation>Haga más larga el ala de techo.</translation>
    </message>
    <message>
        <source>The valley reaches {roof_width} from its centre line; under metal shingles at least {demanded} each way is asked for</source>
        <translation>La limahoya llega a {roof_width} de su línea central; bajo tejas de metal se piden por lo menos {demanded} a cada lado</translation>
    </message>
    <message>
        <source>Make the wings wider if the roof is laid with metal shingles.</source>
        <translation>Haga más anchas las alas si el techo lleva tejas de metal.</translation>
    </message>
    <message>
        <source>The splash rib is {rib_height} high; under metal shingles at least {demanded} is asked for</source>
        <translation>El nervio contra salpicaduras tiene {rib_height} de alto; bajo tejas de metal se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Make the rib higher if the roof is laid with metal shingles.</source>
        <translation>Haga más alto el nervio si el techo lleva tejas de metal.</translation>
    </message>
    <message>
        <source>The valley laps {lap}; under metal shingles at least {demanded} is asked for</source>
        <translation>La limahoya traslapa {lap}; bajo tejas de metal se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>A chimney or penetration {width} wide, parallel to the ridge, needs a cricket or saddle on its upper side</source>
        <translation>Una chimenea o penetración de {width} de ancho, paralelo a la cumbrera, necesita un desviador de agua en su lado alto</translation>
    </message>
    <message>
        <source>Plan a cricket: its height is half the width times the slope.</source>
        <translation>Planee un desviador de agua: su altura es la mitad del ancho por la pendiente.</translation>
    </message>
    <message>
        <source>Trade manuals: flashing</source>
        <translation>Manuales del oficio: tapajuntas</translation>
    </message>
    <message>
        <source>The counterflashing covers the base flashing by {leg.face}; at least {demanded} is asked for</source>
        <translation>El contratapajuntas cubre el tapajuntas de base {leg.face}; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Make the face longer.</source>
        <translation>Haga más larga la cara.</translation>
    </message>
    <message>
        <source>Base flashing stands {wall_height} up the wall; at least {demanded} is asked for</source>
        <translation>El tapajuntas de base sube {wall_height} por la pared; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Flashing laps {lap} at its joints; at least {demanded} is asked for</source>
        <translation>El tapajuntas traslapa {lap} en sus juntas; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Metal of {thickness} is thinner than the {demanded} (0.021 in) asked for in {metal}</source>
        <translation>Metal de {thickness} es más delgado que los {demanded} (0.021 in) que se piden en {metal}</translation>
    </message>
    <message>
        <source>Metal of {thickness} is thicker than the {demanded} (0.044 in) allowed in {metal}</source>
        <translation>Metal de {thickness} es más grueso que los {demanded} (0.044 in) que se permiten en {metal}</translation>
    </message>
    <message>
        <source>Choose a lighter gauge.</source>
        <translation>Elija un calibre más ligero.</translation>
    </message>
    <message>
        <source>Metal of {thickness} is thinner than the {demanded} (16 oz) asked for in {metal}</source>
        <translation>Metal de {thickness} es más delgado que los {demanded} (16 oz) que se piden en {metal}</translation>
    </message>
    <message>
        <source>Metal of {thickness} is thicker than the {demanded} (20 oz) allowed in {metal}</source>
        <translation>Metal de {thickness} es más grueso que los {demanded} (20 oz) que se permiten en {metal}</translation>
    </message>
    <message>
        <source>Metal of {thickness} is thinner than the {demanded} (26 ga) asked for in {metal}</source>
        <translation>Metal de {thickness} es más delgado que los {demanded} (26 ga) que se piden en {metal}</translation>
    </message>
    <message>
        <source>Metal of {thickness} is thicker than the {demanded} (22 ga) allowed in {metal}</source>
        <translation>Metal de {thickness} es más grueso que los {demanded} (22 ga) que se permiten en {metal}</translation>
    </message>
    <message>
        <source>Metal of {thickness} is thinner than the {demanded} (28 ga) asked for in {metal}</source>
        <translation>Metal de {thickness} es más delgado que los {demanded} (28 ga) que se piden en {metal}</translation>
    </message>
    <message>
        <source>The face is {face_height} high; over {demanded} it is made in two pieces or with ribs</source>
        <translation>La cara tiene {face_height} de alto; de más de {demanded} se hace en dos piezas o con nervios</translation>
    </message>
    <message>
        <source>Divide the face, or give it ribs.</source>
        <translation>Divida la cara, o póngale nervios.</translation>
    </message>
    <message>
        <source>Sealed end laps are {lap}; at least {demanded} is asked for</source>
        <translation>Los traslapes sellados son de {lap}; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>End laps without sealant are {lap}; at least {demanded} is asked for</source>
        <translation>Los traslapes sin sellador son de {lap}; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Lap the pieces further, or seal the laps.</source>
        <translation>Aumente el traslape de las piezas, o selle los traslapes.</translation>
    </message>
    <message>
        <source>The ridge cap covers {roof_width} on its lesser side; at least {demanded} is asked for even in light wind</source>
        <translation>La tapa de cumbrera cubre {roof_width} en su lado menor; se piden por lo menos {demanded} aun con viento débil</translation>
    </message>
    <message>
        <source>The zinc runs {joint_interval} without a movement joint; at most {demanded} is asked for at copings and roof edges</source>
        <translation>El zinc corre {joint_interval} sin junta de dilatación; se piden {demanded} a lo más en albardillas y bordes de techo</translation>
    </message>
    <message>
        <source>Plan movement joints, evenly spaced.</source>
        <translation>Planee juntas de dilatación, a distancias iguales.</translation>
    </message>
    <message>
        <source>The zinc runs {joint_interval} without a movement joint; at most {demanded} is asked for at eaves</source>
        <translation>El zinc corre {joint_interval} sin junta de dilatación; se piden {demanded} a lo más en aleros</translation>
    </message>
    <message>
        <source>Guide specification: sheet-metal flashing</source>
        <translation>Especificación guía: tapajuntas de lámina</translation>
    </message>
    <message>
        <source>The longest piece of a run in several pieces is {piece_length}; full pieces of at least {demanded} are asked for, shorter ones at corners and ends only</source>
        <translation>La pieza más larga de un tramo en varias piezas es de {piece_length}; se piden piezas completas de por lo menos {demanded}, más cortas solo en esquinas y extremos</translation>
    </message>
    <message>
        <source>Lay full lengths and one remainder.</source>
        <translation>Ponga largos completos y un solo resto.</translation>
    </message>
    <message>
        <source>A piece is {piece_length} long; at most {demanded} is asked for</source>
        <translation>Una pieza mide {piece_length}; se piden {demanded} a lo más</translation>
    </message>
    <message>
        <source>Metal {girth} wide is held by cleats every {cleat_spacing}; at most {demanded} is asked for</source>
        <translation>Metal de {girth} de ancho va sujeto con grapas cada {cleat_spacing}; se piden {demanded} a lo más</translation>
    </message>
    <message>
        <source>Set the cleats closer.</source>
        <translation>Ponga las grapas más juntas.</translation>
    </message>
    <message>
        <source>Pieces lap {lap}; unsoldered laps of at least {demanded} are asked for</source>
        <translation>Las piezas traslapan {lap}; se piden traslapes sin soldar de por lo menos {demanded}</translation>
    </message>
    <message>
        <source>The metal runs {joint_interval} without a movement joint; at most {demanded} is asked for in {metal}</source>
        <translation>El metal corre {joint_interval} sin junta de dilatación; se piden {demanded} a lo más en {metal}</translation>
    </message>
    <message>
        <source>The metal runs {joint_interval} without a movement joint; at most {demanded} is asked for in aluminium</source>
        <translation>El metal corre {joint_interval} sin junta de dilatación; se piden {demanded} a lo más en aluminio</translation>
    </message>
    <message>
        <source>The aluminium runs {joint_interval} without a movement joint; at most {demanded} is asked for in gravel stops and fascias</source>
        <translation>El aluminio corre {joint_interval} sin junta de dilatación; se piden {demanded} a lo más en bordes de grava y fascias</translation>
    </message>
    <message>
        <source>Base flashing reaches {roof_width} on to the roof; at least {demanded} is asked for</source>
        <translation>El tapajuntas de base entra {roof_width} en el techo; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Base flashing laps {lap}; at least {demanded} is asked for</source>
        <translation>El tapajuntas de base traslapa {lap}; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>The counterflashing goes {masonry_depth} into the masonry; at least {demanded} is asked for</source>
        <translation>El contratapajuntas entra {masonry_depth} en la mampostería; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Make the leg in the joint longer.</source>
        <translation>Haga más larga el ala en la junta.</translation>
    </message>
    <message>
        <source>The counterflashing is turned up {leg.turn_up} in the joint; at least {demanded} is asked for</source>
        <translation>El contratapajuntas va vuelto hacia arriba {leg.turn_up} en la junta; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Make the turn-up longer.</source>
        <translation>Haga más larga la vuelta.</translation>
    </message>
    <message>
        <source>The gravel stop hooks {leg.kick} over its strip; at least {demanded} is asked for</source>
        <translation>El borde de grava se engancha {leg.kick} en su tira; se piden por lo menos {demanded}</translation>
    </message>
    <message>
        <source>Make the hooked edge longer.</source>
        <translation>Haga más largo el borde enganchado.</translation>
    </message>
    <message>
        <source>The gravel stop is nailed in {fastener_rows} row; {demanded} staggered rows are asked for</source>
        <translation>El borde de grava se clava en {fastener_rows} fila; se piden {demanded} filas alternadas</translation>
    </message>
    <message>
        <source>Nail in two staggered rows.</source>
        <translation>Clave en dos filas alternadas.</translation>
    </message>
    <message>
        <source>The drip edge is nailed every {fastener_spacing}; at most {demanded} is asked for</source>
        <translation>El goterón se clava cada {fastener_spacing}; se piden {demanded} a lo más</translation>
    </message>
    <message>
        <source>The drip edge reaches {deck_width} up the deck; at most {demanded} is asked for</source>
        <translation>El goterón sube {deck_width} por el tablero; se piden {demanded} a lo más</translation>
    </message>
    <message>
        <source>Make the deck leg shorter.</source>
        <translation>Haga más corta el ala sobre el tablero.</translation>
    </message>
    <message>
        <source>Aluminium 3105</source>
        <translation>Aluminio 3105</translation>
    </message>
    <message>
        <source>Aluminium-zinc coated steel</source>
        <translation>Acero con aluminio y zinc</translation>
    </message>
    <message>
        <source>Copper</source>
        <translation>Cobre</translation>
    </message>
    <message>
        <source>Galvanised steel</source>
        <translation>Acero galvanizado</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Plomo</translation>
    </message>
    <message>
        <source>Stainless steel 304</source>
        <translation>Acero inoxidable 304</translation>
    </message>
    <message>
        <source>Uncoated steel</source>
        <translation>Acero sin recubrir</translation>
    </message>
    <message>
        <source>Zinc</source>
        <translation>Zinc</translation>
    </message>
    <message>
        <source>a</source>
        <translation>un tramo de</translation>
    </message>
    <message>
        <source>Cut map</source>
        <translation>Mapa de corte</translation>
    </message>
    <message>
        <source>cut {count} alike</source>
        <translation>{count} cortadas iguales</translation>
    </message>
    <message>
        <source>off the coil</source>
        <translation>del rollo</translation>
    </message>
    <message>
        <source>crosscut first, then slit each part</source>
        <translation>primero los cortes transversales, luego cada parte a lo largo</translation>
    </message>
    <message>
        <source>slit first, then crosscut each strip from the lead end</source>
        <translation>primero a lo largo, luego cada tira a lo ancho desde el extremo delantero</translation>
    </message>
    <message>
        <source>lead end</source>
        <translation>extremo delantero</translation>
    </message>
    <message>
        <source>remnant, to be kept and labelled</source>
        <translation>retazo, se guarda con etiqueta</translation>
    </message>
    <message>
        <source>width drawn {times} times as large</source>
        <translation>ancho dibujado {times} veces más grande</translation>
    </message>
    <message>
        <source>blank</source>
        <translation>lámina plana</translation>
    </message>
    <message>
        <source>waste</source>
        <translation>desperdicio</translation>
    </message>
    <message>
        <source>lengthwise</source>
        <translation>a lo largo</translation>
    </message>
    <message>
        <source>Strip</source>
        <translation>Tira</translation>
    </message>
    <message>
        <source>Remnant</source>
        <translation>Retazo</translation>
    </message>
    <message>
        <source>strip</source>
        <translation>tira</translation>
    </message>
    <message>
        <source>Fold step</source>
        <translation>Paso de doblez</translation>
    </message>
    <message>
        <source>to gauge</source>
        <translation>al tope</translation>
    </message>
    <message>
        <source>push the folded edge under the clamp</source>
        <translation>empuje el borde doblado debajo de la mordaza</translation>
    </message>
    <message>
        <source>fold to a mark</source>
        <translation>doblez en una marca</translation>
    </message>
    <message>
        <source>from the</source>
        <translation>desde el</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>Operator to the right. Dashed: as laid in. Sheet drawn thicker than it is, a flat part behind left out.</source>
        <translation>El operador a la derecha. De trazos: como se coloca. Lámina dibujada más gruesa de lo que es, sin una parte plana de atrás.</translation>
    </message>
    <message>
        <source>Operator to the right. Dashed: as laid in. Sheet drawn thicker than it is.</source>
        <translation>El operador a la derecha. De trazos: como se coloca. Lámina dibujada más gruesa de lo que es.</translation>
    </message>
    <message>
        <source>Fold up</source>
        <translation>Doblar arriba</translation>
    </message>
    <message>
        <source>Fold down</source>
        <translation>Doblar abajo</translation>
    </message>
    <message>
        <source>Fold up, partly</source>
        <translation>Doblar arriba en parte</translation>
    </message>
    <message>
        <source>Fold down, partly</source>
        <translation>Doblar abajo en parte</translation>
    </message>
    <message>
        <source>Finish the fold up</source>
        <translation>Terminar arriba</translation>
    </message>
    <message>
        <source>Finish the fold down</source>
        <translation>Terminar abajo</translation>
    </message>
    <message>
        <source>Pre-bend hem up</source>
        <translation>Predoblez arriba</translation>
    </message>
    <message>
        <source>Pre-bend hem down</source>
        <translation>Predoblez abajo</translation>
    </message>
    <message>
        <source>Press to a gap</source>
        <translation>Prensar, con abertura</translation>
    </message>
    <message>
        <source>Flatten the hem</source>
        <translation>Aplastar el dobladillo</translation>
    </message>
    <message>
        <source>Scale</source>
        <translation>Escala</translation>
    </message>
    <message>
        <source>set</source>
        <translation>poner</translation>
    </message>
    <message>
        <source>for springback</source>
        <translation>por la recuperación elástica</translation>
    </message>
    <message>
        <source>included</source>
        <translation>entre alas</translation>
    </message>
    <message>
        <source>colour up</source>
        <translation>color arriba</translation>
    </message>
    <message>
        <source>colour down</source>
        <translation>color abajo</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>abertura</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>ángulo</translation>
    </message>
    <message>
        <source>Fold ticket</source>
        <translation>Hoja de doblez</translation>
    </message>
    <message>
        <source>beam face</source>
        <translation>cara de la viga</translation>
    </message>
    <message>
        <source>first hem</source>
        <translation>primer dobladillo</translation>
    </message>
    <message>
        <source>last hem</source>
        <translation>último dobladillo</translation>
    </message>
    <message>
        <source>Check the finished piece: outside lengths within {length}, angles within {angle}</source>
        <translation>Revise la pieza terminada: largos por fuera con {length} de tolerancia, ángulos con {angle}</translation>
    </message>
    <message>
        <source>fold, angle</source>
        <translation>doblez, ángulo</translation>
    </message>
    <message>
        <source>lies, to the gauge</source>
        <translation>posición, al tope</translation>
    </message>
    <message>
        <source>slide in endways</source>
        <translation>meter por el costado</translation>
    </message>
    <message>
        <source>lift</source>
        <translation>levantar</translation>
    </message>
    <message>
        <source>over the bed</source>
        <translation>sobre la mesa</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>pieza</translation>
    </message>
    <message>
        <source>pieces</source>
        <translation>piezas</translation>
    </message>
    <message>
        <source>step</source>
        <translation>paso</translation>
    </message>
    <message>
        <source>first</source>
        <translation>primera</translation>
    </message>
    <message>
        <source>Schedule of</source>
        <translation>Calendario de</translation>
    </message>
    <message>
        <source>Schedule</source>
        <translation>Calendario</translation>
    </message>
    <message>
        <source>tasks</source>
        <translation>tareas</translation>
    </message>
    <message>
        <source>of them late · all done</source>
        <translation>de ellas tarde · todo listo</translation>
    </message>
    <message>
        <source>making ready</source>
        <translation>preparación</translation>
    </message>
    <message>
        <source>in order of arrival</source>
        <translation>por orden de llegada</translation>
    </message>
    <message>
        <source>not worked</source>
        <translation>no se trabaja</translation>
    </message>
    <message>
        <source>due</source>
        <translation>para el</translation>
    </message>
    <message>
        <source>new program</source>
        <translation>otro programa</translation>
    </message>
    <message>
        <source>made ready</source>
        <translation>preparación</translation>
    </message>
    <message>
        <source>late because</source>
        <translation>tarde porque</translation>
    </message>
    <message>
        <source>Nothing is scheduled.</source>
        <translation>No hay nada programado.</translation>
    </message>
    <message>
        <source>cutting</source>
        <translation>corte</translation>
    </message>
    <message>
        <source>folding</source>
        <translation>doblado</translation>
    </message>
    <message>
        <source>sheet</source>
        <translation>hoja</translation>
    </message>
    <message>
        <source>sheets</source>
        <translation>hojas</translation>
    </message>
    <message>
        <source>LATE</source>
        <translation>TARDE</translation>
    </message>
    <message>
        <source>because</source>
        <translation>porque</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>on</source>
        <translation>en</translation>
    </message>
    <message>
        <source>Section of the machine, operator to the right.</source>
        <translation>Sección de la máquina, el operador a la derecha.</translation>
    </message>
    <message>
        <source>folding beam</source>
        <translation>viga de doblar</translation>
    </message>
    <message>
        <source>face</source>
        <translation>cara</translation>
    </message>
    <message>
        <source>beam that folds down</source>
        <translation>viga que dobla hacia abajo</translation>
    </message>
    <message>
        <source>bending length</source>
        <translation>dobla hasta</translation>
    </message>
    <message>
        <source>up and down</source>
        <translation>arriba y abajo</translation>
    </message>
    <message>
        <source>up only</source>
        <translation>solo arriba</translation>
    </message>
    <message>
        <source>clamp opens</source>
        <translation>mordaza abre</translation>
    </message>
    <message>
        <source>least leg</source>
        <translation>ala mínima</translation>
    </message>
    <message>
        <source>back gauge</source>
        <translation>tope trasero</translation>
    </message>
    <message>
        <source>none, to marks</source>
        <translation>ninguno, con marcas</translation>
    </message>
    <message>
        <source>not pressed</source>
        <translation>no se prensan</translation>
    </message>
    <message>
        <source>closed, open to</source>
        <translation>cerrados, abiertos hasta</translation>
    </message>
    <message>
        <source>Operator to the right. Chain line: the sheet, folded as far as the clamp lets it.</source>
        <translation>El operador a la derecha. Trazo y punto: la lámina, doblada hasta donde la mordaza deja.</translation>
    </message>
    <message>
        <source>hems</source>
        <translation>dobladillos</translation>
    </message>
    <message>
        <source>folds</source>
        <translation>dobla</translation>
    </message>
    <message>
        <source>throat</source>
        <translation>garganta</translation>
    </message>
    <message>
        <source>as it lies</source>
        <translation>como está</translation>
    </message>
    <message>
        <source>turn over</source>
        <translation>voltear</translation>
    </message>
    <message>
        <source>spin end for end</source>
        <translation>girar de punta a punta</translation>
    </message>
    <message>
        <source>turn over and spin end for end</source>
        <translation>voltear y girar de punta a punta</translation>
    </message>
    <message>
        <source>in the face of the wall)</source>
        <translation>en la cara de la pared)</translation>
    </message>
    <message>
        <source>would close at</source>
        <translation>cerraría con</translation>
    </message>
    <message>
        <source>corners are off by</source>
        <translation>a las esquinas les faltan o sobran</translation>
    </message>
    <message>
        <source>does not close</source>
        <translation>no cierra</translation>
    </message>
    <message>
        <source>east</source>
        <translation>este</translation>
    </message>
    <message>
        <source>west</source>
        <translation>oeste</translation>
    </message>
    <message>
        <source>north</source>
        <translation>norte</translation>
    </message>
    <message>
        <source>south</source>
        <translation>sur</translation>
    </message>
    <message>
        <source>it ends</source>
        <translation>termina</translation>
    </message>
    <message>
        <source>of the start</source>
        <translation>del inicio</translation>
    </message>
    <message>
        <source>Dot: start of the walk, the building on its left. Square: a square corner. Sloped runs are drawn with their level length.</source>
        <translation>Punto: inicio del recorrido, con el edificio a la izquierda. Cuadro: una esquina a escuadra. Los tramos inclinados se dibujan con su largo a nivel.</translation>
    </message>
    <message>
        <source>Not drawn</source>
        <translation>No dibujado</translation>
    </message>
    <message>
        <source>page</source>
        <translation>página</translation>
    </message>
    <message>
        <source>no steps, or a beam face the machine does not have</source>
        <translation>sin pasos, o una cara de viga que la máquina no tiene</translation>
    </message>
    <message>
        <source>a plan of this machine</source>
        <translation>un plan de esta máquina</translation>
    </message>
    <message>
        <source>a step at a bend line the profile does not have</source>
        <translation>un paso en una línea de doblez que el perfil no tiene</translation>
    </message>
    <message>
        <source>a plan of this profile</source>
        <translation>un plan de este perfil</translation>
    </message>
    <message>
        <source>Slide the piece in past the end of the clamp, and out the same way.</source>
        <translation>Meta la pieza por el costado de la mordaza y sáquela igual.</translation>
    </message>
    <message>
        <source>Slide the folded piece out past the end of the clamp.</source>
        <translation>Saque la pieza doblada por el costado de la mordaza.</translation>
    </message>
    <message>
        <source>Lift by {lift} while laying in: a folded edge hangs below the sheet.</source>
        <translation>Levante {lift} al colocarla: un borde doblado cuelga debajo de la lámina.</translation>
    </message>
    <message>
        <source>Open the clamp by {open} only, then draw the sheet out: it reaches back over it.</source>
        <translation>Abra la mordaza solo {open} y luego saque la lámina: vuelve por encima de ella.</translation>
    </message>
    <message>
        <source>Draw the sheet {drawn} towards you before the clamp opens wide.</source>
        <translation>Jale la lámina {drawn} hacia usted antes de que la mordaza abra del todo.</translation>
    </message>
    <message>
        <source>Draw the sheet {drawn} towards you before lifting it.</source>
        <translation>Jale la lámina {drawn} hacia usted antes de levantarla.</translation>
    </message>
    <message>
        <source>Draw the sheet {drawn} towards you as the clamp opens.</source>
        <translation>Jale la lámina {drawn} hacia usted mientras la mordaza abre.</translation>
    </message>
    <message>
        <source>Stop with the clamp just open, look, keep hands clear, then press the hem.</source>
        <translation>Pare con la mordaza apenas abierta, mire, aparte las manos y luego prense el dobladillo.</translation>
    </message>
    <message>
        <source>Stop with the clamp just open, look, keep hands clear, then close it.</source>
        <translation>Pare con la mordaza apenas abierta, mire, aparte las manos y luego ciérrela.</translation>
    </message>
    <message>
        <source>Two people: {mass}, {length} long.</source>
        <translation>Dos personas: {mass}, {length} de largo.</translation>
    </message>
    <message>
        <source>Fit the {face} beam face.</source>
        <translation>Ponga la cara de viga {face}.</translation>
    </message>
    <message>
        <source>{metal} may crack in a closed hem: use an open or teardrop hem.</source>
        <translation>{metal} puede agrietarse en un dobladillo cerrado: use uno abierto o de gota.</translation>
    </message>
    <message>
        <source>One bend is made in two goes: fold it partly, then its neighbours, then finish it and check its angle.</source>
        <translation>Un doblez se hace en dos veces: dóblelo en parte, luego los vecinos, luego termínelo y revise su ángulo.</translation>
    </message>
    <message>
        <source>Sheet edges cut: wear gloves. The machine&apos;s own manual and guards rule.</source>
        <translation>Los bordes de la lámina cortan: use guantes. Mandan el manual y las guardas de la máquina.</translation>
    </message>
    <message>
        <source>One bend in two goes does not help either.</source>
        <translation>Un doblez en dos veces tampoco ayuda.</translation>
    </message>
    <message>
        <source>over 0 and up to 100 m</source>
        <translation>más de 0 y hasta 100 m</translation>
    </message>
    <message>
        <source>1 to</source>
        <translation>1 a</translation>
    </message>
    <message>
        <source>{count} bends and hem edges are more than the {most} whose every order can be tried.</source>
        <translation>{count} dobleces y bordes de dobladillo son más que los {most} cuyo orden se puede probar entero.</translation>
    </message>
    <message>
        <source>raw edge</source>
        <translation>borde crudo</translation>
    </message>
    <message>
        <source>hem fold</source>
        <translation>doblez del dobladillo</translation>
    </message>
    <message>
        <source>folded corner</source>
        <translation>esquina doblada</translation>
    </message>
    <message>
        <source>folded leg</source>
        <translation>ala doblada</translation>
    </message>
    <message>
        <source>clamp opening</source>
        <translation>abertura de la mordaza</translation>
    </message>
    <message>
        <source>clamp nose</source>
        <translation>nariz de la mordaza</translation>
    </message>
    <message>
        <source>part already folded</source>
        <translation>parte ya doblada</translation>
    </message>
    <message>
        <source>flattening of the hem</source>
        <translation>aplastado del dobladillo</translation>
    </message>
    <message>
        <source>way out of the machine</source>
        <translation>salida de la máquina</translation>
    </message>
    <message>
        <source>direction of the fold</source>
        <translation>sentido del doblez</translation>
    </message>
    <message>
        <source>profile itself</source>
        <translation>perfil mismo</translation>
    </message>
    <message>
        <source>number of bends</source>
        <translation>número de dobleces</translation>
    </message>
    <message>
        <source>what is folded stands {over} higher than the {part}</source>
        <translation>lo doblado queda {over} más alto que esto: {part}</translation>
    </message>
    <message>
        <source>the {part} stops it {over} short</source>
        <translation>esto lo para {over} antes: {part}</translation>
    </message>
    <message>
        <source>what would touch the {part} is {over} out of its range</source>
        <translation>lo que tocaría esto queda {over} fuera de su alcance: {part}</translation>
    </message>
    <message>
        <source>what lies behind is {over} deeper than the {part}</source>
        <translation>lo que queda atrás es {over} más hondo que esto: {part}</translation>
    </message>
    <message>
        <source>the leg in front is {over} shorter than the {part}</source>
        <translation>el ala de adelante es {over} más corta que esto: {part}</translation>
    </message>
    <message>
        <source>it meets the {part} {over} before it is folded</source>
        <translation>topa con esto {over} antes de quedar doblado: {part}</translation>
    </message>
    <message>
        <source>the gap is {over} wider than the {part} can leave</source>
        <translation>la abertura es {over} más ancha de lo que puede dejar esto: {part}</translation>
    </message>
    <message>
        <source>folded, it closes round the clamp or the bed and there is no {part}; it reaches {over} back</source>
        <translation>doblado, se cierra alrededor de la mordaza o de la mesa y no hay esto: {part}; vuelve {over} hacia atrás</translation>
    </message>
    <message>
        <source>in the way is the {part}, by {over}</source>
        <translation>estorba esto: {part}, por {over}</translation>
    </message>
    <message>
        <source>what would touch the {part} leans so far that it rides up on it</source>
        <translation>lo que tocaría esto se inclina tanto que se monta encima: {part}</translation>
    </message>
    <message>
        <source>the machine is not made for the {part}</source>
        <translation>la máquina no está hecha para esto: {part}</translation>
    </message>
    <message>
        <source>folded, it closes round the clamp or the bed and there is no {part}</source>
        <translation>doblado, se cierra alrededor de la mordaza o de la mesa y no hay esto: {part}</translation>
    </message>
    <message>
        <source>in the way is the {part}</source>
        <translation>estorba esto: {part}</translation>
    </message>
    <message>
        <source>The hem at bend line {bend} cannot be made</source>
        <translation>El dobladillo en la línea de doblez {bend} no se puede hacer</translation>
    </message>
    <message>
        <source>Bend line {bend} cannot be folded</source>
        <translation>La línea de doblez {bend} no se puede doblar</translation>
    </message>
    <message>
        <source>Bend line {bend}, between {between}, cannot be folded</source>
        <translation>La línea de doblez {bend}, entre {between}, no se puede doblar</translation>
    </message>
    <message>
        <source>once bend line {made} is made</source>
        <translation>una vez hecha la línea de doblez {made}</translation>
    </message>
    <message>
        <source>once bend lines {made} are made, in that order</source>
        <translation>una vez hechas las líneas de doblez {made}, en ese orden</translation>
    </message>
    <message>
        <source>No other sequence gets further.</source>
        <translation>Ningún otro orden llega más lejos.</translation>
    </message>
    <message>
        <source>the first hem</source>
        <translation>el primer dobladillo</translation>
    </message>
    <message>
        <source>the last hem</source>
        <translation>el último dobladillo</translation>
    </message>
    <message>
        <source>The {part} is in the way: finished, {one} and {other} run through each other. No machine can fold it.</source>
        <translation>Estorba esto: {part}. Terminadas, {one} y {other} se atraviesan. Ninguna máquina lo puede doblar.</translation>
    </message>
    <message>
        <source>Look at the drawing: a turn to the wrong side, or a leg too long or too short.</source>
        <translation>Mire el dibujo: un doblez hacia el lado equivocado, o un ala muy larga o muy corta.</translation>
    </message>
    <message>
        <source>The piece is {length} long, the machine folds {most}: {over} too long.</source>
        <translation>La pieza mide {length} de largo y la máquina dobla {most}: sobran {over}.</translation>
    </message>
    <message>
        <source>{metal} {gauge}, {thickness}, is thicker than about {most}, the machine&apos;s capacity for it; a guide from {reference}: the machine&apos;s plate rules.</source>
        <translation>{metal} {gauge}, {thickness}, es más grueso que unos {most}, la capacidad de la máquina para él; es una guía a partir de {reference}: manda la placa de la máquina.</translation>
    </message>
    <message>
        <source>Beam face {face}.</source>
        <translation>Cara de viga {face}.</translation>
    </message>
    <message>
        <source>capacity</source>
        <translation>capacidad</translation>
    </message>
    <message>
        <source>bed</source>
        <translation>mesa</translation>
    </message>
    <message>
        <source>clamp</source>
        <translation>mordaza</translation>
    </message>
    <message>
        <source>between</source>
        <translation>entre</translation>
    </message>
    <message>
        <source>made</source>
        <translation>hechas</translation>
    </message>
    <message>
        <source>over</source>
        <translation>sobre</translation>
    </message>
    <message>
        <source>In {count} pieces or more, none longer than {most}, it can be folded here; add a lap for each.</source>
        <translation>En {count} piezas o más, ninguna de más de {most}, se puede doblar aquí; agregue un traslape por cada una.</translation>
    </message>
    <message>
        <source>In {gauge} it can be folded here.</source>
        <translation>En {gauge} se puede doblar aquí.</translation>
    </message>
    <message>
        <source>Fit the {face} beam face: with it the profile can be folded.</source>
        <translation>Ponga la cara de viga {face}: con ella se puede doblar el perfil.</translation>
    </message>
    <message>
        <source>With open hems, {gap} inside, it can be folded here.</source>
        <translation>Con dobladillos abiertos, {gap} por dentro, se puede doblar aquí.</translation>
    </message>
    <message>
        <source>With closed hems it can be folded here.</source>
        <translation>Con dobladillos cerrados se puede doblar aquí.</translation>
    </message>
    <message>
        <source>Without its hems it can be folded here.</source>
        <translation>Sin sus dobladillos se puede doblar aquí.</translation>
    </message>
    <message>
        <source>Split in {leg} into two pieces that lap by {lap}: both can be folded here.</source>
        <translation>Parta en {leg} en dos piezas que se traslapen {lap}: las dos se pueden doblar aquí.</translation>
    </message>
    <message>
        <source>Split into {count} pieces, in {legs}, that lap by {lap}: each can be folded here.</source>
        <translation>Parta en {count} piezas, en {legs}, que se traslapen {lap}: cada una se puede doblar aquí.</translation>
    </message>
    <message>
        <source>{machine} can fold it.</source>
        <translation>{machine} lo puede doblar.</translation>
    </message>
    <message>
        <source>The stock does not suffice for all blanks</source>
        <translation>Las existencias no alcanzan para todas las láminas planas</translation>
    </message>
    <message>
        <source>No plan of these patterns takes less</source>
        <translation>Ningún plan de estos patrones gasta menos</translation>
    </message>
    <message>
        <source>No plan of these patterns takes less than one fewer</source>
        <translation>Ningún plan de estos patrones puede ahorrar más de una unidad</translation>
    </message>
    <message>
        <source>How much less another plan could take is not known</source>
        <translation>No se sabe cuánto menos podría gastar otro plan</translation>
    </message>
    <message>
        <source>No plan of these patterns can save more than {percent} %</source>
        <translation>Ningún plan de estos patrones puede ahorrar más de {percent} %</translation>
    </message>
    <message>
        <source>Of the metal taken {blanks} % is blanks, {trim} % edge trim, {kerf} % kerf, {girth} % trimmed to girth, {remnants} % remnants kept, {scrap} % scrap</source>
        <translation>Del metal tomado, {blanks} % es láminas planas, {trim} % recorte de orillas, {kerf} % ancho de corte, {girth} % recorte al desarrollo, {remnants} % retazos guardados, {scrap} % chatarra</translation>
    </message>
    <message>
        <source>Beside and behind girth {girth} lie {area} m² that are no blanks</source>
        <translation>Al lado y detrás del desarrollo {girth} quedan {area} m² que no son láminas planas</translation>
    </message>
    <message>
        <source>{count} more of {key}, {girth} by {length}, would cost nothing</source>
        <translation>{count} más de {key}, {girth} por {length}, no costarían nada</translation>
    </message>
    <message>
        <source>strips, then sheets</source>
        <translation>tiras, luego hojas</translation>
    </message>
    <message>
        <source>every plan</source>
        <translation>cada plan</translation>
    </message>
    <message>
        <source>ruin and recreate</source>
        <translation>deshacer y rehacer</translation>
    </message>
    <message>
        <source>value correction</source>
        <translation>corrección de valores</translation>
    </message>
    <message>
        <source>number of levels</source>
        <translation>número de niveles</translation>
    </message>
    <message>
        <source>order of blanks</source>
        <translation>orden de las láminas planas</translation>
    </message>
    <message>
        <source>left edge trim</source>
        <translation>recorte de la orilla izquierda</translation>
    </message>
    <message>
        <source>right edge trim</source>
        <translation>recorte de la orilla derecha</translation>
    </message>
    <message>
        <source>lead edge trim</source>
        <translation>recorte de la orilla delantera</translation>
    </message>
    <message>
        <source>tail edge trim</source>
        <translation>recorte de la orilla de atrás</translation>
    </message>
    <message>
        <source>least strip width</source>
        <translation>ancho mínimo de tira</translation>
    </message>
    <message>
        <source>least remnant width</source>
        <translation>ancho mínimo de retazo</translation>
    </message>
    <message>
        <source>least remnant length</source>
        <translation>largo mínimo de retazo</translation>
    </message>
    <message>
        <source>The {name} of {value} is not between 0 and {most}</source>
        <translation>El valor de {name}, {value}, no está entre 0 y {most}</translation>
    </message>
    <message>
        <source>At most {count} strips in one setup cannot be cut</source>
        <translation>Con {count} tiras a lo más en un ajuste no se puede cortar</translation>
    </message>
    <message>
        <source>{percent} % is not between 0 and 100</source>
        <translation>{percent} % no está entre 0 y 100</translation>
    </message>
    <message>
        <source>Stock {key} measures {width} by {length}; both must be more than 0 and at most {most}</source>
        <translation>El artículo {key} mide {width} por {length}; las dos medidas deben ser más de 0 y {most} a lo más</translation>
    </message>
    <message>
        <source>There cannot be {count} of stock {key}</source>
        <translation>No puede haber {count} del artículo {key}</translation>
    </message>
    <message>
        <source>The cost {cost} of stock {key} is not between 1 and {most}</source>
        <translation>El costo {cost} del artículo {key} no está entre 1 y {most}</translation>
    </message>
    <message>
        <source>The longest crosscut {length} of stock {key} makes no sense</source>
        <translation>El corte transversal más largo {length} del artículo {key} no tiene sentido</translation>
    </message>
    <message>
        <source>Blank {key} measures {girth} by {length}; both must be more than 0 and at most {most}</source>
        <translation>La lámina plana {key} mide {girth} por {length}; las dos medidas deben ser más de 0 y {most} a lo más</translation>
    </message>
    <message>
        <source>{count} of blank {key} is not between 1 and {most}</source>
        <translation>{count} de la lámina plana {key} no está entre 1 y {most}</translation>
    </message>
    <message>
        <source>Blank {key}, {girth} by {length}, fits no stock within the shop&apos;s rules</source>
        <translation>La lámina plana {key}, {girth} por {length}, no cabe en nada de las existencias con las reglas del taller</translation>
    </message>
    <message>
        <source>More than {most} kinds of stock</source>
        <translation>Más de {most} clases de existencias</translation>
    </message>
    <message>
        <source>There is no stock to cut from</source>
        <translation>No hay existencias de donde cortar</translation>
    </message>
    <message>
        <source>With {count} of blank {key} there are more than {most} pieces in one problem</source>
        <translation>Con {count} de la lámina plana {key} hay más de {most} piezas en un problema</translation>
    </message>
    <message>
        <source>With {count} of blank {key} the cost of the plan could pass what can be counted</source>
        <translation>Con {count} de la lámina plana {key} el costo del plan podría pasar de lo que se puede contar</translation>
    </message>
    <message>
        <source>no blank</source>
        <translation>ninguna lámina plana</translation>
    </message>
    <message>
        <source>at least one blank to cut</source>
        <translation>por lo menos una lámina plana que cortar</translation>
    </message>
    <message>
        <source>of pattern</source>
        <translation>del patrón</translation>
    </message>
    <message>
        <source>no more than the plan has</source>
        <translation>no más de las que tiene el plan</translation>
    </message>
    <message>
        <source>of blank</source>
        <translation>de la lámina plana</translation>
    </message>
    <message>
        <source>no more than were cut</source>
        <translation>no más de las que se cortaron</translation>
    </message>
    <message>
        <source>{count} more of stock {key} will be cut</source>
        <translation>Se cortarán {count} más del artículo {key}</translation>
    </message>
    <message>
        <source>{count} fewer of stock {key} will be cut</source>
        <translation>Se cortarán {count} menos del artículo {key}</translation>
    </message>
    <message>
        <source>{count} of blank {key} came in</source>
        <translation>Entraron {count} de la lámina plana {key}</translation>
    </message>
    <message>
        <source>{count} of blank {key} will be cut again</source>
        <translation>Se cortarán otra vez {count} de la lámina plana {key}</translation>
    </message>
    <message>
        <source>fewer setups</source>
        <translation>menos ajustes</translation>
    </message>
    <message>
        <source>first fit</source>
        <translation>el primero que quepa</translation>
    </message>
    <message>
        <source>room for all</source>
        <translation>lugar para todas</translation>
    </message>
    <message>
        <source>of work within twenty years</source>
        <translation>de trabajo en veinte años</translation>
    </message>
    <message>
        <source>a date like 2026-12-01</source>
        <translation>una fecha como 2026-12-01</translation>
    </message>
    <message>
        <source>a day that the month has</source>
        <translation>un día que el mes tenga</translation>
    </message>
    <message>
        <source>a time of day like 07:30, up to 24:00</source>
        <translation>una hora como 07:30, hasta 24:00</translation>
    </message>
    <message>
        <source>a date and time like 2026-12-01T07:30</source>
        <translation>una fecha y hora como 2026-12-01T07:30</translation>
    </message>
    <message>
        <source>an hour</source>
        <translation>por hora</translation>
    </message>
    <message>
        <source>no rate</source>
        <translation>sin tarifa</translation>
    </message>
    <message>
        <source>one in the rates, for this colour or for all</source>
        <translation>una en las tarifas, para este color o para todos</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>segundos</translation>
    </message>
    <message>
        <source>0 to 86400 seconds</source>
        <translation>0 a 86400 segundos</translation>
    </message>
    <message>
        <source>1 to 10000</source>
        <translation>1 a 10000</translation>
    </message>
    <message>
        <source>again</source>
        <translation>otra vez</translation>
    </message>
    <message>
        <source>each only once</source>
        <translation>cada uno solo una vez</translation>
    </message>
    <message>
        <source>a folding machine&apos;s id in the machine library, and none for cutting</source>
        <translation>el id de una dobladora en la biblioteca de máquinas, y ninguno para cortar</translation>
    </message>
    <message>
        <source>weights out of range</source>
        <translation>pesos fuera de rango</translation>
    </message>
    <message>
        <source>at least one, each 0 to</source>
        <translation>por lo menos uno, cada uno de 0 a</translation>
    </message>
    <message>
        <source>a time of day</source>
        <translation>una hora del día</translation>
    </message>
    <message>
        <source>one or more</source>
        <translation>uno o más</translation>
    </message>
    <message>
        <source>usual floor</source>
        <translation>taller usual</translation>
    </message>
    <message>
        <source>Cutting line</source>
        <translation>Línea de corte</translation>
    </message>
    <message>
        <source>shifts of one day in order, each ending after it begins</source>
        <translation>turnos de un día en orden, cada uno terminando después de empezar</translation>
    </message>
    <message>
        <source>each date only once</source>
        <translation>cada fecha solo una vez</translation>
    </message>
    <message>
        <source>a week without hours</source>
        <translation>una semana sin horario</translation>
    </message>
    <message>
        <source>at least one shift on one weekday</source>
        <translation>por lo menos un turno en un día de la semana</translation>
    </message>
    <message>
        <source>even alone in the shop it is done only {alone}: {work} of folding, and {machine} works {there} between {blanks}, when its first blanks can be there, and {due}</source>
        <translation>aun solo en el taller no estaría listo hasta el {alone}: {work} de doblado, y {machine} trabaja {there} entre el {blanks}, cuando pueden llegar sus primeras láminas planas, y el {due}</translation>
    </message>
    <message>
        <source>{what} is pinned to {start} on {machine}</source>
        <translation>{what} está fijado al {start} en {machine}</translation>
    </message>
    <message>
        <source>its blanks waited {waited} for {machine}, behind {before}</source>
        <translation>sus láminas planas esperaron {waited} a {machine}, detrás de {before}</translation>
    </message>
    <message>
        <source>it waited {waited} for {machine}, behind {before}, some of it pinned</source>
        <translation>esperó {waited} a {machine}, detrás de {before}, parte de ello fijado</translation>
    </message>
    <message>
        <source>it waited {waited} for {machine}, behind {before}</source>
        <translation>esperó {waited} a {machine}, detrás de {before}</translation>
    </message>
    <message>
        <source>its own setup</source>
        <translation>su propio ajuste</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>por lo menos</translation>
    </message>
    <message>
        <source>an advance to ordered</source>
        <translation>un avance a pedido</translation>
    </message>
    <message>
        <source>an order or a remake</source>
        <translation>un pedido o una reposición</translation>
    </message>
    <message>
        <source>ordered, cut, folded, bundled, loaded, received, short, damaged or wrong</source>
        <translation>pedida, cortada, doblada, en atado, cargada, recibida, faltante, dañada o equivocada</translation>
    </message>
    <message>
        <source>awaiting a remake</source>
        <translation>en espera de reposición</translation>
    </message>
    <message>
        <source>scrap of a piece that is</source>
        <translation>chatarra de una pieza que está</translation>
    </message>
    <message>
        <source>cut, folded or bundled</source>
        <translation>cortada, doblada o en atado</translation>
    </message>
    <message>
        <source>it is pinned twice; the first pin holds</source>
        <translation>está fijado dos veces; vale la primera</translation>
    </message>
    <message>
        <source>take one of the two away</source>
        <translation>quite una de las dos</translation>
    </message>
    <message>
        <source>it is pinned to {machine}, which cannot make it</source>
        <translation>está fijado a {machine}, que no lo puede hacer</translation>
    </message>
    <message>
        <source>pin it to a machine that can, or to none</source>
        <translation>fíjelo a una máquina que pueda, o a ninguna</translation>
    </message>
    <message>
        <source>it is pinned to {start}, before it can begin</source>
        <translation>está fijado al {start}, antes de que pueda empezar</translation>
    </message>
    <message>
        <source>pin it later</source>
        <translation>fíjelo para más tarde</translation>
    </message>
    <message>
        <source>it is pinned to {start}, when no machine that can make it works</source>
        <translation>está fijado al {start}, cuando ninguna máquina que lo puede hacer trabaja</translation>
    </message>
    <message>
        <source>pin it within the hours of its machine, or change the floor&apos;s hours</source>
        <translation>fíjelo dentro del horario de su máquina, o cambie el horario del taller</translation>
    </message>
    <message>
        <source>it is pinned to {start}; its first blanks cannot be cut before {earliest}</source>
        <translation>está fijado al {start}; sus primeras láminas planas no se pueden cortar antes del {earliest}</translation>
    </message>
    <message>
        <source>it is pinned to {start}, while {other}, pinned to {there}, takes its machine</source>
        <translation>está fijado al {start}, mientras {other}, fijado al {there}, ocupa su máquina</translation>
    </message>
    <message>
        <source>move one of the two, or pin it to another machine</source>
        <translation>mueva uno de los dos, o fíjelo a otra máquina</translation>
    </message>
    <message>
        <source>it is pinned after {other}, which no machine that can make it makes</source>
        <translation>está fijado después de {other}, que no hace ninguna máquina que lo puede hacer</translation>
    </message>
    <message>
        <source>pin the order of tasks on one machine</source>
        <translation>fije el orden de tareas en una sola máquina</translation>
    </message>
    <message>
        <source>it is pinned after {other}, which is pinned after it</source>
        <translation>está fijado después de {other}, que está fijado después de él</translation>
    </message>
    <message>
        <source>take one of the pins away</source>
        <translation>quite una de las fijaciones</translation>
    </message>
    <message>
        <source>at most twenty years</source>
        <translation>veinte años a lo más</translation>
    </message>
    <message>
        <source>hours in order, from the schedule&apos;s begin, within twenty years</source>
        <translation>horas en orden, desde el inicio del calendario, dentro de veinte años</translation>
    </message>
    <message>
        <source>one of the machines of the document</source>
        <translation>una de las máquinas del documento</translation>
    </message>
    <message>
        <source>made ready, begun and ended in this order, from the schedule&apos;s begin</source>
        <translation>preparado, empezado y terminado en este orden, desde el inicio del calendario</translation>
    </message>
    <message>
        <source>its pinned start {start} cannot be kept together with the others; it begins {late}</source>
        <translation>su inicio fijado, {start}, no cabe junto con los otros; empieza el {late}</translation>
    </message>
    <message>
        <source>pin it later, or free what stands before it</source>
        <translation>fíjelo para más tarde, o libere lo que está antes</translation>
    </message>
    <message>
        <source>it cannot come after {other} as pinned</source>
        <translation>no puede ir después de {other} como está fijado</translation>
    </message>
    <message>
        <source>Johnson&apos;s rule</source>
        <translation>regla de Johnson</translation>
    </message>
    <message>
        <source>every order</source>
        <translation>cada orden</translation>
    </message>
    <message>
        <source>every order tried</source>
        <translation>cada orden probado</translation>
    </message>
    <message>
        <source>first come, first served</source>
        <translation>primero en llegar, primero en salir</translation>
    </message>
    <message>
        <source>cut, but not in the book</source>
        <translation>cortada, pero no en el libro</translation>
    </message>
    <message>
        <source>a sheet, coil or remnant of the stock</source>
        <translation>una hoja, un rollo o un retazo de las existencias</translation>
    </message>
    <message>
        <source>no length, or a count</source>
        <translation>ningún largo, o una cantidad</translation>
    </message>
    <message>
        <source>no count, or a length</source>
        <translation>ninguna cantidad, o un largo</translation>
    </message>
    <message>
        <source>the length left on the coil</source>
        <translation>el largo que queda en el rollo</translation>
    </message>
    <message>
        <source>how many there are</source>
        <translation>cuántas hay</translation>
    </message>
    <message>
        <source>less than nothing</source>
        <translation>menos de 0</translation>
    </message>
    <message>
        <source>nothing or more</source>
        <translation>0 o más</translation>
    </message>
    <message>
        <source>coil</source>
        <translation>rollo</translation>
    </message>
    <message>
        <source>rack</source>
        <translation>estante</translation>
    </message>
    <message>
        <source>remnants</source>
        <translation>retazos</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>cortadas</translation>
    </message>
    <message>
        <source>map</source>
        <translation>mapa</translation>
    </message>
    <message>
        <source>of batch</source>
        <translation>del lote</translation>
    </message>
    <message>
        <source>no machine of the floor cuts {stock}, {length} long</source>
        <translation>ninguna máquina del taller corta {stock}, {length} de largo</translation>
    </message>
    <message>
        <source>put a machine on the floor that does, or take the stock away</source>
        <translation>ponga en el taller una máquina que sí, o quite ese artículo</translation>
    </message>
    <message>
        <source>no folding machine of the floor makes it</source>
        <translation>ninguna dobladora del taller lo hace</translation>
    </message>
    <message>
        <source>change the profile, or the floor&apos;s machines</source>
        <translation>cambie el perfil, o las máquinas del taller</translation>
    </message>
    <message>
        <source>program</source>
        <translation>programa</translation>
    </message>
    <message>
        <source>a pin names a lot, cut or machine that is not there any more; it is left out</source>
        <translation>una fijación nombra un grupo, corte o máquina que ya no está; se deja fuera</translation>
    </message>
    <message>
        <source>take the pin away</source>
        <translation>quite la fijación</translation>
    </message>
    <message>
        <source>strips</source>
        <translation>tiras</translation>
    </message>
    <message>
        <source>as</source>
        <translation>como</translation>
    </message>
    <message>
        <source>wanted</source>
        <translation>según pedido</translation>
    </message>
    <message>
        <source>changes</source>
        <translation>cambia</translation>
    </message>
    <message>
        <source>wanted before</source>
        <translation>pedidas antes</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>none begun</source>
        <translation>ninguna empezada</translation>
    </message>
    <message>
        <source>1 becomes scrap</source>
        <translation>1 pasa a chatarra</translation>
    </message>
    <message>
        <source>become scrap</source>
        <translation>pasan a chatarra</translation>
    </message>
    <message>
        <source>taken in</source>
        <translation>recibido</translation>
    </message>
    <message>
        <source>already here</source>
        <translation>ya está aquí</translation>
    </message>
    <message>
        <source>kept; a later revision counts</source>
        <translation>guardado; vale una versión posterior</translation>
    </message>
    <message>
        <source>waits for a person</source>
        <translation>espera a una persona</translation>
    </message>
    <message>
        <source>one of</source>
        <translation>uno de</translation>
    </message>
    <message>
        <source>proven least</source>
        <translation>probado que es lo mínimo</translation>
    </message>
    <message>
        <source>proven within one of the least</source>
        <translation>probado a uno de lo mínimo</translation>
    </message>
    <message>
        <source>without a proof of the least</source>
        <translation>sin prueba de lo mínimo</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>a lo más</translation>
    </message>
    <message>
        <source>could be saved</source>
        <translation>se podría ahorrar</translation>
    </message>
    <message>
        <source>of coil</source>
        <translation>del rollo</translation>
    </message>
    <message>
        <source>remnant</source>
        <translation>retazo</translation>
    </message>
    <message>
        <source>of sheet</source>
        <translation>de la hoja</translation>
    </message>
    <message>
        <source>then cut to</source>
        <translation>luego cortar a</translation>
    </message>
    <message>
        <source>slitter setup</source>
        <translation>ajuste de la cortadora</translation>
    </message>
    <message>
        <source>by</source>
        <translation>por</translation>
    </message>
    <message>
        <source>keep: remnant</source>
        <translation>guardar: retazo</translation>
    </message>
    <message>
        <source>slitter setups</source>
        <translation>ajustes de la cortadora</translation>
    </message>
    <message>
        <source>no folder</source>
        <translation>ninguna carpeta</translation>
    </message>
    <message>
        <source>a folder that can be read</source>
        <translation>una carpeta que se pueda leer</translation>
    </message>
    <message>
        <source>usual)</source>
        <translation>usual)</translation>
    </message>
    <message>
        <source>A sheet laid in and taken away</source>
        <translation>Poner y quitar una hoja</translation>
    </message>
    <message>
        <source>A slit</source>
        <translation>Un corte a lo largo</translation>
    </message>
    <message>
        <source>A crosscut</source>
        <translation>Un corte transversal</translation>
    </message>
    <message>
        <source>Another coil</source>
        <translation>Otro rollo</translation>
    </message>
    <message>
        <source>The slitter set</source>
        <translation>Ajustar la cortadora</translation>
    </message>
    <message>
        <source>A blank taken up and laid aside</source>
        <translation>Tomar y apartar una lámina plana</translation>
    </message>
    <message>
        <source>Folding, of the time the fold plan says</source>
        <translation>Doblado, del tiempo que dice el plan de doblado</translation>
    </message>
    <message>
        <source>Another program</source>
        <translation>Otro programa</translation>
    </message>
    <message>
        <source>Another beam face</source>
        <translation>Otra cara de viga</translation>
    </message>
    <message>
        <source>no piece of it that is cut</source>
        <translation>ninguna pieza de él que esté cortada</translation>
    </message>
    <message>
        <source>cut pieces that wait</source>
        <translation>piezas cortadas que esperan</translation>
    </message>
    <message>
        <source>machines of the stock document</source>
        <translation>máquinas del documento de existencias</translation>
    </message>
    <message>
        <source>a fold plan that does not pass its check</source>
        <translation>un plan de doblado que no pasa su revisión</translation>
    </message>
    <message>
        <source>a plan that does; this is a fault of the program</source>
        <translation>un plan que sí; esto es una falla del programa</translation>
    </message>
    <message>
        <source>turn over and spin</source>
        <translation>voltear y girar</translation>
    </message>
    <message>
        <source>fold down</source>
        <translation>doblar hacia abajo</translation>
    </message>
    <message>
        <source>fold partly, to</source>
        <translation>doblar en parte, a</translation>
    </message>
    <message>
        <source>fold down partly, to</source>
        <translation>doblar hacia abajo en parte, a</translation>
    </message>
    <message>
        <source>finish the fold to</source>
        <translation>terminar el doblez a</translation>
    </message>
    <message>
        <source>finish the fold down to</source>
        <translation>terminar el doblez hacia abajo a</translation>
    </message>
    <message>
        <source>pre-bend the hem to</source>
        <translation>predoblar el dobladillo a</translation>
    </message>
    <message>
        <source>press the hem to a gap of</source>
        <translation>prensar el dobladillo a una abertura de</translation>
    </message>
    <message>
        <source>flatten the hem</source>
        <translation>aplastar el dobladillo</translation>
    </message>
    <message>
        <source>first edge to the gauge</source>
        <translation>primer borde al tope</translation>
    </message>
    <message>
        <source>last edge to the gauge</source>
        <translation>último borde al tope</translation>
    </message>
    <message>
        <source>two people</source>
        <translation>dos personas</translation>
    </message>
    <message>
        <source>machine</source>
        <translation>máquina</translation>
    </message>
    <message>
        <source>handling</source>
        <translation>manejo</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>precaución</translation>
    </message>
    <message>
        <source>cannot fold this</source>
        <translation>no puede doblar esto</translation>
    </message>
    <message>
        <source>would help</source>
        <translation>ayudaría</translation>
    </message>
    <message>
        <source>also on</source>
        <translation>también en</translation>
    </message>
    <message>
        <source>not on</source>
        <translation>no en</translation>
    </message>
    <message>
        <source>order</source>
        <translation>pedido</translation>
    </message>
    <message>
        <source>is not there</source>
        <translation>no está</translation>
    </message>
    <message>
        <source>for run</source>
        <translation>para el tramo</translation>
    </message>
    <message>
        <source>longest</source>
        <translation>la más larga</translation>
    </message>
    <message>
        <source>bundle</source>
        <translation>atado</translation>
    </message>
    <message>
        <source>bundles</source>
        <translation>atados</translation>
    </message>
    <message>
        <source>a new load has an identity that is taken</source>
        <translation>una carga nueva tiene una identidad ya tomada</translation>
    </message>
    <message>
        <source>strip spoilt at the shear</source>
        <translation>tira arruinada en la cortadora</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>cut or taken back by another station</source>
        <translation>cortado o retirado por otra estación</translation>
    </message>
    <message>
        <source>a plan that waits</source>
        <translation>un plan que espere</translation>
    </message>
    <message>
        <source>no stock to cut it from</source>
        <translation>nada en existencias de donde cortarla</translation>
    </message>
    <message>
        <source>a stock in the database</source>
        <translation>existencias en la base de datos</translation>
    </message>
    <message>
        <source>no such plan waits to be cut</source>
        <translation>ningún plan así espera a ser cortado</translation>
    </message>
    <message>
        <source>a plan that is neither cut nor replaced</source>
        <translation>un plan que no esté cortado ni cambiado por otro</translation>
    </message>
    <message>
        <source>pieces that are</source>
        <translation>piezas que están</translation>
    </message>
    <message>
        <source>pieces that are cut, folded or bundled</source>
        <translation>piezas cortadas, dobladas o en atado</translation>
    </message>
    <message>
        <source>no stock</source>
        <translation>sin existencias</translation>
    </message>
    <message>
        <source>the same ones: plan again</source>
        <translation>las mismas: planee otra vez</translation>
    </message>
    <message>
        <source>a piece that is not on the load</source>
        <translation>una pieza que no está en la carga</translation>
    </message>
    <message>
        <source>a mark of one of the load&apos;s bundles</source>
        <translation>una marca de uno de los atados de la carga</translation>
    </message>
    <message>
        <source>a load of this shop</source>
        <translation>una carga de este taller</translation>
    </message>
    <message>
        <source>all done</source>
        <translation>todo listo</translation>
    </message>
    <message>
        <source>from</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>the least there is</source>
        <translation>lo mínimo que hay</translation>
    </message>
    <message>
        <source>late</source>
        <translation>tarde</translation>
    </message>
    <message>
        <source>weighted lateness</source>
        <translation>atraso ponderado</translation>
    </message>
    <message>
        <source>bound</source>
        <translation>límite</translation>
    </message>
    <message>
        <source>in the order of arrival</source>
        <translation>por orden de llegada</translation>
    </message>
    <message>
        <source>saved</source>
        <translation>menos</translation>
    </message>
    <message>
        <source>against the order of arrival</source>
        <translation>que por orden de llegada</translation>
    </message>
    <message>
        <source>is done</source>
        <translation>queda listo el</translation>
    </message>
    <message>
        <source>orders</source>
        <translation>pedidos</translation>
    </message>
    <message>
        <source>setup</source>
        <translation>ajuste</translation>
    </message>
    <message>
        <source>setups</source>
        <translation>ajustes</translation>
    </message>
    <message>
        <source>schedule in the database</source>
        <translation>calendario en la base de datos</translation>
    </message>
    <message>
        <source>floor in the database</source>
        <translation>taller en la base de datos</translation>
    </message>
    <message>
        <source>a schedule that does not pass its check; this is a fault of the program</source>
        <translation>un calendario que no pasa su revisión; esto es una falla del programa</translation>
    </message>
    <message>
        <source>a kind of document that no library has</source>
        <translation>una clase de documento que ninguna biblioteca tiene</translation>
    </message>
    <message>
        <source>a metal, a trim, rules or a machine</source>
        <translation>un metal, una moldura, reglas o una máquina</translation>
    </message>
    <message>
        <source>a place that cannot be written</source>
        <translation>un lugar donde no se puede escribir</translation>
    </message>
    <message>
        <source>room for temporary files</source>
        <translation>lugar para archivos temporales</translation>
    </message>
    <message>
        <source>nothing of that name</source>
        <translation>nada con ese nombre</translation>
    </message>
    <message>
        <source>an id of the library</source>
        <translation>un id de la biblioteca</translation>
    </message>
    <message>
        <source>at most 60 of a-z, 0-9 and -</source>
        <translation>a lo más 60 de a-z, 0-9 y -</translation>
    </message>
    <message>
        <source>no folder of the shop&apos;s own</source>
        <translation>ninguna carpeta propia del taller</translation>
    </message>
    <message>
        <source>a folder</source>
        <translation>una carpeta</translation>
    </message>
    <message>
        <source>stock in the database</source>
        <translation>existencias en la base de datos</translation>
    </message>
    <message>
        <source>a stock in the database; `lapwright plan --stock` puts it there</source>
        <translation>existencias en la base de datos; `lapwright plan --stock` las pone ahí</translation>
    </message>
    <message>
        <source>a gauge of</source>
        <translation>un calibre de</translation>
    </message>
    <message>
        <source>it was changed after a tablet signed it</source>
        <translation>fue cambiado después de que una tableta lo firmó</translation>
    </message>
    <message>
        <source>no tablet signed it</source>
        <translation>ninguna tableta lo firmó</translation>
    </message>
    <message>
        <source>it is signed by a tablet this shop does not know, whose code is</source>
        <translation>lo firmó una tableta que este taller no conoce, cuyo código es</translation>
    </message>
    <message>
        <source>it is signed by</source>
        <translation>lo firmó</translation>
    </message>
    <message>
        <source>which is trusted no longer since</source>
        <translation>en la que ya no se confía desde</translation>
    </message>
    <message>
        <source>no tablet of this code</source>
        <translation>ninguna tableta con este código</translation>
    </message>
    <message>
        <source>warns</source>
        <translation>advierte</translation>
    </message>
    <message>
        <source>Order confirmation</source>
        <translation>Confirmación de pedido</translation>
    </message>
    <message>
        <source>Made as measured on site and listed here; a change after this needs a new revision.</source>
        <translation>Se hace como se midió en obra y se lista aquí; un cambio después de esto necesita una versión nueva.</translation>
    </message>
    <message>
        <source>for the customer</source>
        <translation>por el cliente</translation>
    </message>
    <message>
        <source>for the shop</source>
        <translation>por el taller</translation>
    </message>
    <message>
        <source>wanted by</source>
        <translation>se necesita el</translation>
    </message>
    <message>
        <source>where it goes</source>
        <translation>dónde va</translation>
    </message>
    <message>
        <source>goes along</source>
        <translation>va con el pedido</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>cuántos</translation>
    </message>
    <message>
        <source>What goes along</source>
        <translation>Lo que va con el pedido</translation>
    </message>
    <message>
        <source>cut for</source>
        <translation>se corta para</translation>
    </message>
    <message>
        <source>Cutting guide: stock lengths on site, in this order</source>
        <translation>Guía de corte: largos de existencias en obra, en este orden</translation>
    </message>
    <message>
        <source>accepted because</source>
        <translation>aceptado porque</translation>
    </message>
    <message>
        <source>Accepted with a reason</source>
        <translation>Aceptado con un motivo</translation>
    </message>
    <message>
        <source>how it comes about</source>
        <translation>cómo resulta</translation>
    </message>
    <message>
        <source>material</source>
        <translation>material</translation>
    </message>
    <message>
        <source>revision</source>
        <translation>versión</translation>
    </message>
    <message>
        <source>weight</source>
        <translation>peso</translation>
    </message>
    <message>
        <source>date</source>
        <translation>fecha</translation>
    </message>
    <message>
        <source>marks</source>
        <translation>marcas</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>together</source>
        <translation>en total</translation>
    </message>
    <message>
        <source>where</source>
        <translation>dónde</translation>
    </message>
    <message>
        <source>for</source>
        <translation>por</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
    </message>
    <message>
        <source>Cut ticket</source>
        <translation>Hoja de corte</translation>
    </message>
    <message>
        <source>sheets or levels</source>
        <translation>hojas o niveles</translation>
    </message>
    <message>
        <source>order served</source>
        <translation>pedido</translation>
    </message>
    <message>
        <source>from map</source>
        <translation>del mapa</translation>
    </message>
    <message>
        <source>Remnants to label and keep</source>
        <translation>Retazos que se etiquetan y guardan</translation>
    </message>
    <message>
        <source>The stock does not suffice for</source>
        <translation>Las existencias no alcanzan para</translation>
    </message>
    <message>
        <source>Cut alike, tick each</source>
        <translation>Cortadas iguales, marque cada una</translation>
    </message>
    <message>
        <source>Cut alike, {count} in all; done so far</source>
        <translation>Cortadas iguales, {count} en total; hechas hasta ahora</translation>
    </message>
    <message>
        <source>stop at</source>
        <translation>tope en</translation>
    </message>
    <message>
        <source>knife at</source>
        <translation>cuchilla en</translation>
    </message>
    <message>
        <source>then slit to</source>
        <translation>luego cortar a lo largo a</translation>
    </message>
    <message>
        <source>trimmed to</source>
        <translation>recortada a</translation>
    </message>
    <message>
        <source>blanks</source>
        <translation>láminas planas</translation>
    </message>
    <message>
        <source>in</source>
        <translation>en</translation>
    </message>
    <message>
        <source>letter</source>
        <translation>letra</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation>Pedidos</translation>
    </message>
    <message>
        <source>labelled</source>
        <translation>etiqueta</translation>
    </message>
    <message>
        <source>pattern</source>
        <translation>patrón</translation>
    </message>
    <message>
        <source>patterns</source>
        <translation>patrones</translation>
    </message>
    <message>
        <source>TWO PEOPLE</source>
        <translation>DOS PERSONAS</translation>
    </message>
    <message>
        <source>too much for a code</source>
        <translation>demasiado para un código</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiquetas</translation>
    </message>
    <message>
        <source>no truck named</source>
        <translation>camión sin nombre</translation>
    </message>
    <message>
        <source>for two people</source>
        <translation>para dos personas</translation>
    </message>
    <message>
        <source>longest piece</source>
        <translation>pieza más larga</translation>
    </message>
    <message>
        <source>made up</source>
        <translation>preparada</translation>
    </message>
    <message>
        <source>Load list</source>
        <translation>Lista de carga</translation>
    </message>
    <message>
        <source>what is in it</source>
        <translation>qué contiene</translation>
    </message>
    <message>
        <source>carried by</source>
        <translation>lo cargan</translation>
    </message>
    <message>
        <source>loaded by</source>
        <translation>cargado por</translation>
    </message>
    <message>
        <source>date and time</source>
        <translation>fecha y hora</translation>
    </message>
    <message>
        <source>Delivery check</source>
        <translation>Revisión de entrega</translation>
    </message>
    <message>
        <source>Count at the truck. Write how many of each mark came, and of those that did not come right how many are short, damaged or wrong; together they make the number sent.</source>
        <translation>Cuente junto al camión. Escriba cuántas de cada marca llegaron y, de las que no llegaron bien, cuántas son faltantes, dañadas o equivocadas; juntas dan el número enviado.</translation>
    </message>
    <message>
        <source>crew lead</source>
        <translation>jefe de cuadrilla</translation>
    </message>
    <message>
        <source>driver</source>
        <translation>chofer</translation>
    </message>
    <message>
        <source>sent</source>
        <translation>enviado</translation>
    </message>
    <message>
        <source>received</source>
        <translation>recibidas</translation>
    </message>
    <message>
        <source>short</source>
        <translation>faltantes</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>dañadas</translation>
    </message>
    <message>
        <source>wrong</source>
        <translation>equivocadas</translation>
    </message>
    <message>
        <source>stock length, to be cut on site</source>
        <translation>largo de existencias, se corta en obra</translation>
    </message>
    <message>
        <source>left hand</source>
        <translation>mano izquierda</translation>
    </message>
    <message>
        <source>right hand</source>
        <translation>mano derecha</translation>
    </message>
    <message>
        <source>left end {start}, right end {end}</source>
        <translation>izq. {start}, der. {end}</translation>
    </message>
    <message>
        <source>spare</source>
        <translation>de repuesto</translation>
    </message>
    <message>
        <source>printed</source>
        <translation>impreso</translation>
    </message>
    <message>
        <source>keep: back to the rack</source>
        <translation>guardar: de vuelta al estante</translation>
    </message>
    <message>
        <source>label {number} of {count}</source>
        <translation>etiqueta {number} de {count}</translation>
    </message>
    <message>
        <source>each</source>
        <translation>cada una</translation>
    </message>
    <message>
        <source>Quality sheet</source>
        <translation>Hoja de calidad</translation>
    </message>
    <message>
        <source>Measure the first piece before folding the rest, and the last one. Lengths are outside lengths.</source>
        <translation>Mida la primera pieza antes de doblar las demás, y la última. Los largos son por fuera.</translation>
    </message>
    <message>
        <source>Angles are how far a bend turns from flat.</source>
        <translation>Los ángulos son cuánto gira un doblez desde plano.</translation>
    </message>
    <message>
        <source>Angles are those between the legs.</source>
        <translation>Los ángulos son los que quedan entre las alas.</translation>
    </message>
    <message>
        <source>Tolerances are the shop&apos;s own; without them common practice, no source.</source>
        <translation>Las tolerancias son las del taller; sin ellas, práctica común, sin fuente.</translation>
    </message>
    <message>
        <source>checked by</source>
        <translation>revisado por</translation>
    </message>
    <message>
        <source>may be off</source>
        <translation>puede variar</translation>
    </message>
    <message>
        <source>girth, flat</source>
        <translation>desarrollo, plano</translation>
    </message>
    <message>
        <source>bend to</source>
        <translation>doblez hacia</translation>
    </message>
    <message>
        <source>piece length</source>
        <translation>largo de la pieza</translation>
    </message>
    <message>
        <source>see mark</source>
        <translation>vea la marca</translation>
    </message>
    <message>
        <source>colour, coating</source>
        <translation>color, recubrimiento</translation>
    </message>
    <message>
        <source>measure</source>
        <translation>medida</translation>
    </message>
    <message>
        <source>last</source>
        <translation>última</translation>
    </message>
    <message>
        <source>clean</source>
        <translation>limpio</translation>
    </message>
    <message>
        <source>Cannot be folded here</source>
        <translation>No se puede doblar aquí</translation>
    </message>
    <message>
        <source>(goes on)</source>
        <translation>(continúa)</translation>
    </message>
    <message>
        <source>Sheet edges cut: wear gloves. Keep hands clear when a clamp or hem closes: stop with the clamp just open, look, then close. The machine&apos;s own manual and guards rule; Lapwright does not control a machine. Long or heavy bundles: two people.</source>
        <translation>Los bordes de la lámina cortan: use guantes. Aparte las manos cuando cierra una mordaza o un dobladillo: pare con la mordaza apenas abierta, mire y luego cierre. Mandan el manual y las guardas de la máquina; Lapwright no controla ninguna máquina. Atados largos o pesados: dos personas.</translation>
    </message>
    <message>
        <source>Lapwright does not control a machine. Long or heavy bundles: two people.</source>
        <translation>Lapwright no controla ninguna máquina. Atados largos o pesados: dos personas.</translation>
    </message>
    <message>
        <source>Sheet edges cut: wear gloves. Long or heavy bundles: two people. Fall protection on roofs by the local rule.</source>
        <translation>Los bordes de la lámina cortan: use guantes. Atados largos o pesados: dos personas. Protección contra caídas en techos según la regla local.</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>lunes</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation>martes</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation>miércoles</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation>jueves</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation>viernes</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation>sábado</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>domingo</translation>
    </message>
    <message>
        <source>January</source>
        <translation>enero</translation>
    </message>
    <message>
        <source>February</source>
        <translation>febrero</translation>
    </message>
    <message>
        <source>March</source>
        <translation>marzo</translation>
    </message>
    <message>
        <source>April</source>
        <translation>abril</translation>
    </message>
    <message>
        <source>May</source>
        <translation>mayo</translation>
    </message>
    <message>
        <source>June</source>
        <translation>junio</translation>
    </message>
    <message>
        <source>July</source>
        <translation>julio</translation>
    </message>
    <message>
        <source>August</source>
        <translation>agosto</translation>
    </message>
    <message>
        <source>September</source>
        <translation>septiembre</translation>
    </message>
    <message>
        <source>October</source>
        <translation>octubre</translation>
    </message>
    <message>
        <source>November</source>
        <translation>noviembre</translation>
    </message>
    <message>
        <source>December</source>
        <translation>diciembre</translation>
    </message>
    <message>
        <source>Mon</source>
        <translation>lun</translation>
    </message>
    <message>
        <source>Tue</source>
        <translation>mar</translation>
    </message>
    <message>
        <source>Wed</source>
        <translation>mié</translation>
    </message>
    <message>
        <source>Thu</source>
        <translation>jue</translation>
    </message>
    <message>
        <source>Fri</source>
        <translation>vie</translation>
    </message>
    <message>
        <source>Sat</source>
        <translation>sáb</translation>
    </message>
    <message>
        <source>Sun</source>
        <translation>dom</translation>
    </message>
    <message>
        <source>Jan</source>
        <translation>ene</translation>
    </message>
    <message>
        <source>Feb</source>
        <translation>feb</translation>
    </message>
    <message>
        <source>Mar</source>
        <translation>mar</translation>
    </message>
    <message>
        <source>Apr</source>
        <translation>abr</translation>
    </message>
    <message>
        <source>Jun</source>
        <translation>jun</translation>
    </message>
    <message>
        <source>Jul</source>
        <translation>jul</translation>
    </message>
    <message>
        <source>Aug</source>
        <translation>ago</translation>
    </message>
    <message>
        <source>Sep</source>
        <translation>sep</translation>
    </message>
    <message>
        <source>Oct</source>
        <translation>oct</translation>
    </message>
    <message>
        <source>Nov</source>
        <translation>nov</translation>
    </message>
    <message>
        <source>Dec</source>
        <translation>dic</translation>
    </message>
    <message>
        <source>ordered</source>
        <translation>pedidas</translation>
    </message>
    <message>
        <source>folded</source>
        <translation>dobladas</translation>
    </message>
    <message>
        <source>bundled</source>
        <translation>en atado</translation>
    </message>
    <message>
        <source>loaded</source>
        <translation>cargadas</translation>
    </message>
    <message>
        <source>from the raw edge</source>
        <translation>desde el borde crudo</translation>
    </message>
    <message>
        <source>from the hem fold</source>
        <translation>desde el doblez del dobladillo</translation>
    </message>
    <message>
        <source>from the folded corner</source>
        <translation>desde la esquina doblada</translation>
    </message>
    <message>
        <source>from the folded leg</source>
        <translation>desde el ala doblada</translation>
    </message>
    <message>
        <source>Box-and-pan folder 4 ft</source>
        <translation>Dobladora de dedos de 4 pies</translation>
    </message>
    <message>
        <source>Invented. Tall fingers on the clamp leave room for returns; hems are not pressed on the fingers.</source>
        <translation>Inventada. Dedos altos en la mordaza dejan lugar para retornos; los dobladillos no se prensan en los dedos.</translation>
    </message>
    <message>
        <source>16 mm</source>
        <translation>16 mm</translation>
    </message>
    <message>
        <source>Hand brake 8 ft</source>
        <translation>Dobladora manual de 8 pies</translation>
    </message>
    <message>
        <source>Invented. Folded to scribed marks; the clamp is closed by levers. The bed is 150 mm deep and open behind; with room beside the machine a piece is slid in and out past its open ends.</source>
        <translation>Inventada. Se dobla en marcas trazadas; la mordaza se cierra con palancas. La mesa tiene 150 mm de fondo y está abierta atrás; con lugar junto a la máquina, una pieza se mete y se saca por sus costados abiertos.</translation>
    </message>
    <message>
        <source>Long folder, up and down, 21 ft</source>
        <translation>Dobladora larga, arriba y abajo, 21 pies</translation>
    </message>
    <message>
        <source>Invented. Folds down round the edge of the bed with a second beam.</source>
        <translation>Inventada. Dobla hacia abajo alrededor del borde de la mesa con una segunda viga.</translation>
    </message>
    <message>
        <source>12 mm</source>
        <translation>12 mm</translation>
    </message>
    <message>
        <source>Long folder, up only, 10 ft 6 in</source>
        <translation>Dobladora larga, solo arriba, 10 pies 6 pulg</translation>
    </message>
    <message>
        <source>Invented. Two beam faces, 25 mm usually fitted, 10 mm on a slimmer beam for short offsets and ribs. The table behind lies 26 mm lower than the bed, so that edges already folded can hang down. The clamp halts 10 mm open before it closes.</source>
        <translation>Inventada. Dos caras de viga, la de 25 mm puesta de costumbre, la de 10 mm en una viga más delgada para desvíos cortos y nervios. La plataforma de atrás queda 26 mm más baja que la mesa, para que los bordes ya doblados puedan colgar. La mordaza para con 10 mm de abertura antes de cerrar.</translation>
    </message>
    <message>
        <source>25 mm</source>
        <translation>25 mm</translation>
    </message>
    <message>
        <source>10 mm</source>
        <translation>10 mm</translation>
    </message>
    <message>
        <source>roof kick</source>
        <translation>pestaña de techo</translation>
    </message>
    <message>
        <source>roof face</source>
        <translation>cara de techo</translation>
    </message>
    <message>
        <source>top</source>
        <translation>parte alta</translation>
    </message>
    <message>
        <source>kick</source>
        <translation>pestaña</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>junta</translation>
    </message>
    <message>
        <source>deck</source>
        <translation>tablero</translation>
    </message>
    <message>
        <source>return</source>
        <translation>retorno</translation>
    </message>
    <message>
        <source>flange</source>
        <translation>ala de clavado</translation>
    </message>
    <message>
        <source>dam</source>
        <translation>dique</translation>
    </message>
    <message>
        <source>lip</source>
        <translation>labio</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>pared</translation>
    </message>
    <message>
        <source>ledge</source>
        <translation>repisa</translation>
    </message>
    <message>
        <source>roof</source>
        <translation>techo</translation>
    </message>
    <message>
        <source>first wing</source>
        <translation>primera ala</translation>
    </message>
    <message>
        <source>second wing</source>
        <translation>segunda ala</translation>
    </message>
    <message>
        <source>first face</source>
        <translation>primera cara</translation>
    </message>
    <message>
        <source>second face</source>
        <translation>segunda cara</translation>
    </message>
    <message>
        <source>reveal</source>
        <translation>abertura</translation>
    </message>
    <message>
        <source>rib up</source>
        <translation>nervio arriba</translation>
    </message>
    <message>
        <source>rib down</source>
        <translation>nervio abajo</translation>
    </message>
    <message>
        <source>back dam</source>
        <translation>dique de atrás</translation>
    </message>
    <message>
        <source>sill</source>
        <translation>antepecho</translation>
    </message>
    <message>
        <source>upper</source>
        <translation>superior</translation>
    </message>
    <message>
        <source>lower</source>
        <translation>inferior</translation>
    </message>
    <message>
        <source>aluminium 3105</source>
        <translation>aluminio 3105</translation>
    </message>
    <message>
        <source>aluminium zinc coated steel</source>
        <translation>acero aluminio-zinc</translation>
    </message>
    <message>
        <source>copper</source>
        <translation>cobre</translation>
    </message>
    <message>
        <source>galvanised steel</source>
        <translation>acero galvanizado</translation>
    </message>
    <message>
        <source>lead</source>
        <translation>plomo</translation>
    </message>
    <message>
        <source>stainless 304</source>
        <translation>inoxidable 304</translation>
    </message>
    <message>
        <source>uncoated steel</source>
        <translation>acero sin recubrir</translation>
    </message>
    <message>
        <source>zinc</source>
        <translation>zinc</translation>
    </message>
    <message>
        <source>metals</source>
        <translation>metales</translation>
    </message>
    <message>
        <source>An order changes work that is begun, or does not come from a tablet the shop trusts; a person decides.</source>
        <translation>Un pedido cambia trabajo ya empezado, o no viene de una tableta en la que el taller confía; decide una persona.</translation>
    </message>
    <message>
        <source>Look at what changes. Accept it, do not take it, or ask the installer.</source>
        <translation>Vea lo que cambia. Acéptelo, no lo reciba o pregunte al instalador.</translation>
    </message>
    <message>
        <source>Step flashing has one piece for each course of the roofing, so the count needs what one course shows.</source>
        <translation>El tapajuntas escalonado lleva una pieza por cada hilada de la cubierta; para contarlas hace falta lo que muestra una hilada.</translation>
    </message>
    <message>
        <source>Measure from the edge of one course to the edge of the next and enter it with the run.</source>
        <translation>Mida del borde de una hilada al borde de la siguiente y escríbalo con el tramo.</translation>
    </message>
    <message>
        <source>Where two sloping runs meet, the mitre depends on both slopes, and the program does not work it out.</source>
        <translation>Donde se juntan dos tramos inclinados el inglete depende de las dos pendientes, y el programa no lo calcula.</translation>
    </message>
    <message>
        <source>Order the piece to its longest point and cut the mitre on site.</source>
        <translation>Pida la pieza hasta su punta más larga y corte el inglete en obra.</translation>
    </message>
    <message>
        <source>The corner is too sharp or too flat for this section to be cut to.</source>
        <translation>La esquina es demasiado aguda o demasiado abierta para cortar esta sección.</translation>
    </message>
    <message>
        <source>Check the corner&apos;s angle, or choose a lap or a butt end.</source>
        <translation>Revise el ángulo de la esquina, o elija un traslape o un extremo a tope.</translation>
    </message>
    <message>
        <source>A mitre is cut to a corner, and here the run meets no other.</source>
        <translation>Un inglete se corta según una esquina, y aquí el tramo no se junta con otro.</translation>
    </message>
    <message>
        <source>Choose another end, or put the runs that meet into one chain.</source>
        <translation>Elija otro extremo, o ponga en una cadena los tramos que se juntan.</translation>
    </message>
    <message>
        <source>The piece would need extra metal for this end, and the trim does not say how much.</source>
        <translation>La pieza necesitaría más metal para este extremo, y la moldura no dice cuánto.</translation>
    </message>
    <message>
        <source>Choose another end, or a trim that has a measure for it.</source>
        <translation>Elija otro extremo, o una moldura que tenga esa medida.</translation>
    </message>
    <message>
        <source>Which gauge is how thick depends on the metal; this metal has no such gauge, so nothing can be worked out.</source>
        <translation>El espesor de un calibre depende del metal; este metal no tiene ese calibre, así que no se puede calcular nada.</translation>
    </message>
    <message>
        <source>Nobody folds a million pieces for one job: a length or a limit is in the wrong unit, or someone means harm.</source>
        <translation>Nadie dobla un millón de piezas para un trabajo: un largo o un límite está en otra unidad, o alguien quiere hacer daño.</translation>
    </message>
    <message>
        <source>Check the longest runs, the piece limits and the spares; make several jobs of a very large one.</source>
        <translation>Revise los tramos más largos, los límites de las piezas y los repuestos; haga varios trabajos de uno muy grande.</translation>
    </message>
    <message>
        <source>Choose one of the gauges the metal is sold in.</source>
        <translation>Elija uno de los calibres en que se vende el metal.</translation>
    </message>
    <message>
        <source>Thickness, mass and what a bend takes up come from the metal; this one is not in the library.</source>
        <translation>El espesor, el peso y lo que consume un doblez salen del metal; este no está en la biblioteca.</translation>
    </message>
    <message>
        <source>Choose a metal of the library, or add a file for it.</source>
        <translation>Elija un metal de la biblioteca, o agregue un archivo para él.</translation>
    </message>
    <message>
        <source>The job names rules that this program does not have, so it cannot be checked against them.</source>
        <translation>El trabajo nombra reglas que este programa no tiene, así que no se puede revisar con ellas.</translation>
    </message>
    <message>
        <source>Add the file of the rules, or take them off the job.</source>
        <translation>Agregue el archivo de las reglas, o quítelas del trabajo.</translation>
    </message>
    <message>
        <source>An edge without trim stays open to water, unless that is wanted.</source>
        <translation>Un borde sin moldura queda abierto al agua, a menos que así se quiera.</translation>
    </message>
    <message>
        <source>Choose a trim, or leave the run as it is if the edge is to have none.</source>
        <translation>Elija una moldura, o deje el tramo como está si el borde no lleva ninguna.</translation>
    </message>
    <message>
        <source>A very short piece is hard to hold at the folder and to fasten on the roof.</source>
        <translation>Una pieza muy corta es difícil de sujetar en la dobladora y de fijar en el techo.</translation>
    </message>
    <message>
        <source>Check the length. If it is right, order it with the next run or cut it on site.</source>
        <translation>Revise el largo. Si está bien, pídala con el tramo siguiente o córtela en obra.</translation>
    </message>
    <message>
        <source>The flat width cannot be worked out: a bend would take up more metal than the legs beside it have.</source>
        <translation>No se puede calcular el ancho plano: un doblez consumiría más metal del que tienen las alas a su lado.</translation>
    </message>
    <message>
        <source>Make the legs longer, or choose thinner metal or another hem.</source>
        <translation>Haga las alas más largas, o elija metal más delgado u otro dobladillo.</translation>
    </message>
    <message>
        <source>The job asks for a trim that is not in this program&apos;s library.</source>
        <translation>El trabajo pide una moldura que no está en la biblioteca de este programa.</translation>
    </message>
    <message>
        <source>Choose a trim of the library, or add the shop&apos;s file of it.</source>
        <translation>Elija una moldura de la biblioteca, o agregue el archivo del taller.</translation>
    </message>
    <message>
        <source>The trim is made for other edges: its angles would not fit this one.</source>
        <translation>La moldura es para otros bordes: sus ángulos no ajustarían en este.</translation>
    </message>
    <message>
        <source>Choose a trim that suits this kind of run, or correct the kind.</source>
        <translation>Elija una moldura para esta clase de tramo, o corrija la clase.</translation>
    </message>
    <message>
        <source>A clause of the rules this job is held to is not kept.</source>
        <translation>No se cumple una cláusula de las reglas de este trabajo.</translation>
    </message>
    <message>
        <source>Change what the clause names; the local code and a licensed professional decide.</source>
        <translation>Cambie lo que nombra la cláusula; deciden el código local y un profesional con licencia.</translation>
    </message>
    <message>
        <source>Wide metal lifts between cleats that are far apart.</source>
        <translation>El metal ancho se levanta entre grapas muy separadas.</translation>
    </message>
    <message>
        <source>Water and snow pile up behind a wide chimney.</source>
        <translation>Detrás de una chimenea ancha se acumulan agua y nieve.</translation>
    </message>
    <message>
        <source>The leg on the deck must reach far enough under the roofing to keep water out, and no further than it is nailed.</source>
        <translation>El ala sobre el tablero debe entrar bastante bajo la cubierta para detener el agua, y no más de lo que se clava.</translation>
    </message>
    <message>
        <source>Change the width of the deck leg to what is asked for.</source>
        <translation>Cambie el ancho del ala sobre el tablero a lo que se pide.</translation>
    </message>
    <message>
        <source>A low face lets water behind it, a high one is pulled off or buckles in wind.</source>
        <translation>Una cara baja deja pasar agua por detrás, una alta la arranca o la pandea el viento.</translation>
    </message>
    <message>
        <source>Change the height of the face, the thickness of the metal, or divide the face.</source>
        <translation>Cambie la altura de la cara, el espesor del metal, o divida la cara.</translation>
    </message>
    <message>
        <source>One row of nails lets a flange work loose.</source>
        <translation>Una sola fila de clavos deja que un ala se afloje.</translation>
    </message>
    <message>
        <source>Nail in as many rows as are asked for, staggered.</source>
        <translation>Clave en tantas filas como se piden, alternadas.</translation>
    </message>
    <message>
        <source>Wind lifts an edge between fasteners that are far apart.</source>
        <translation>El viento levanta un borde entre fijaciones muy separadas.</translation>
    </message>
    <message>
        <source>A narrow lining lets water over its edges in heavy rain.</source>
        <translation>Un forro angosto deja pasar agua por sus bordes con lluvia fuerte.</translation>
    </message>
    <message>
        <source>Metal grows and shrinks with the temperature; without joints it buckles or tears its fasteners out.</source>
        <translation>El metal crece y se encoge con la temperatura; sin juntas se pandea o arranca sus fijaciones.</translation>
    </message>
    <message>
        <source>Water driven by wind creeps under a short lap.</source>
        <translation>El agua que empuja el viento se mete bajo un traslape corto.</translation>
    </message>
    <message>
        <source>The face must cover the flashing beneath it, or wind drives water between.</source>
        <translation>La cara debe cubrir el tapajuntas de abajo, o el viento mete agua entre los dos.</translation>
    </message>
    <message>
        <source>The flange must be covered by the roofing or the strip over it, and lie flat.</source>
        <translation>El ala debe quedar cubierta por la cubierta o la tira, y asentar plana.</translation>
    </message>
    <message>
        <source>Change the width of the flange to what is asked for.</source>
        <translation>Cambie el ancho del ala a lo que se pide.</translation>
    </message>
    <message>
        <source>The hooked edge holds the metal on its strip.</source>
        <translation>El borde enganchado sujeta el metal en su tira.</translation>
    </message>
    <message>
        <source>The turned-up edge stops water at the back of the joint.</source>
        <translation>El borde vuelto detiene el agua en el fondo de la junta.</translation>
    </message>
    <message>
        <source>A leg that hardly enters the joint works loose.</source>
        <translation>Un ala que apenas entra en la junta se afloja.</translation>
    </message>
    <message>
        <source>A low dam lets gravel and water over the edge.</source>
        <translation>Un dique bajo deja pasar grava y agua sobre el borde.</translation>
    </message>
    <message>
        <source>Long pieces move much with the temperature, short ones have many joints.</source>
        <translation>Las piezas largas se mueven mucho con la temperatura, las cortas tienen muchas juntas.</translation>
    </message>
    <message>
        <source>Set the longest piece of the order to what is asked for.</source>
        <translation>Ponga el largo máximo del pedido en lo que se pide.</translation>
    </message>
    <message>
        <source>The rib keeps water of the steeper side from shooting under the other.</source>
        <translation>El nervio evita que el agua del lado más inclinado se meta bajo el otro.</translation>
    </message>
    <message>
        <source>Make the rib higher.</source>
        <translation>Haga el nervio más alto.</translation>
    </message>
    <message>
        <source>Water that runs along the wall or valley creeps sideways under the roofing.</source>
        <translation>El agua que corre por la pared o la limahoya se mete de lado bajo la cubierta.</translation>
    </message>
    <message>
        <source>Make the roof leg or the wings wider.</source>
        <translation>Haga más anchas el ala de techo o las alas de la limahoya.</translation>
    </message>
    <message>
        <source>On a low slope water stands and backs up; the detail is made for water that runs off.</source>
        <translation>En poca pendiente el agua se queda y regresa; el detalle es para agua que corre.</translation>
    </message>
    <message>
        <source>Thin metal dents, lifts in wind and wears through; thicker than asked for is hard to form.</source>
        <translation>El metal delgado se abolla, lo levanta el viento y se gasta; más grueso de lo pedido es difícil de formar.</translation>
    </message>
    <message>
        <source>Choose a gauge by its thickness, not by its number.</source>
        <translation>Elija el calibre por su espesor, no por su número.</translation>
    </message>
    <message>
        <source>The clause speaks of something the job does not say.</source>
        <translation>La cláusula habla de algo que el trabajo no dice.</translation>
    </message>
    <message>
        <source>Give it with the job, or check it by hand.</source>
        <translation>Póngalo en el trabajo, o revíselo a mano.</translation>
    </message>
    <message>
        <source>The table ends at this wind; beyond it nobody has said that the face holds.</source>
        <translation>La tabla termina en este viento; más allá nadie ha dicho que la cara aguante.</translation>
    </message>
    <message>
        <source>Water splashes and snow lies against a wall.</source>
        <translation>Contra una pared el agua salpica y la nieve se acumula.</translation>
    </message>
    <message>
        <source>No machine on the floor takes stock of this length.</source>
        <translation>Ninguna máquina del taller toma existencias de este largo.</translation>
    </message>
    <message>
        <source>Put a machine on the floor that does, or take the stock away.</source>
        <translation>Ponga en el taller una máquina que sí, o quite esas existencias.</translation>
    </message>
    <message>
        <source>No folding machine on the floor can make this profile.</source>
        <translation>Ninguna dobladora del taller puede hacer este perfil.</translation>
    </message>
    <message>
        <source>Change the profile, or the machines of the floor.</source>
        <translation>Cambie el perfil, o las máquinas del taller.</translation>
    </message>
    <message>
        <source>The task before it is on a machine that cannot make this one, so there is no order between the two.</source>
        <translation>La tarea de antes está en una máquina que no puede hacer esta, así que no hay orden entre las dos.</translation>
    </message>
    <message>
        <source>Pin the order of tasks on one machine.</source>
        <translation>Fije el orden de tareas en una sola máquina.</translation>
    </message>
    <message>
        <source>A piece is folded when its blank is cut, and that comes later than the pin.</source>
        <translation>Una pieza se dobla cuando su lámina plana está cortada, y eso viene después de lo fijado.</translation>
    </message>
    <message>
        <source>Pin it later, or have its blanks cut earlier.</source>
        <translation>Fíjela para más tarde, o haga cortar antes sus láminas planas.</translation>
    </message>
    <message>
        <source>Two tasks are pinned to one machine at the same time.</source>
        <translation>Dos tareas están fijadas a una máquina a la misma hora.</translation>
    </message>
    <message>
        <source>Move one of the two, or pin it to another machine.</source>
        <translation>Mueva una de las dos, o fíjela a otra máquina.</translation>
    </message>
    <message>
        <source>What was pinned is done, cancelled or planned anew.</source>
        <translation>Lo que estaba fijado ya se hizo, se canceló o se planeó de nuevo.</translation>
    </message>
    <message>
        <source>Take the pin away.</source>
        <translation>Quite la fijación.</translation>
    </message>
    <message>
        <source>The machines that can make it do not work at that time.</source>
        <translation>Las máquinas que la pueden hacer no trabajan a esa hora.</translation>
    </message>
    <message>
        <source>Pin it within the hours of its machine, or change the hours of the floor.</source>
        <translation>Fíjela dentro del horario de su máquina, o cambie el horario del taller.</translation>
    </message>
    <message>
        <source>The machine is too short, too weak or of the other kind for this task.</source>
        <translation>La máquina es demasiado corta, demasiado débil o de la otra clase para esta tarea.</translation>
    </message>
    <message>
        <source>Pin it to a machine that can make it, or to none.</source>
        <translation>Fíjela a una máquina que la pueda hacer, o a ninguna.</translation>
    </message>
    <message>
        <source>What stands before it takes longer than the pin leaves.</source>
        <translation>Lo que está antes tarda más de lo que deja la fijación.</translation>
    </message>
    <message>
        <source>Pin it later, or free what stands before it.</source>
        <translation>Fíjela para más tarde, o libere lo que está antes.</translation>
    </message>
    <message>
        <source>Other pins leave no place behind that task.</source>
        <translation>Otras fijaciones no dejan lugar detrás de esa tarea.</translation>
    </message>
    <message>
        <source>Take one of the pins away.</source>
        <translation>Quite una de las fijaciones.</translation>
    </message>
    <message>
        <source>Nothing can begin before the schedule does.</source>
        <translation>Nada puede empezar antes que el calendario.</translation>
    </message>
    <message>
        <source>Pin it later.</source>
        <translation>Fíjela para más tarde.</translation>
    </message>
    <message>
        <source>Each of the tasks waits for the other.</source>
        <translation>Cada tarea espera a la otra.</translation>
    </message>
    <message>
        <source>One task cannot be in two places.</source>
        <translation>Una tarea no puede estar en dos lugares.</translation>
    </message>
    <message>
        <source>Take one of the two pins away.</source>
        <translation>Quite una de las dos fijaciones.</translation>
    </message>
    <message>
        <source>The plan is drawn from the bearing of the first run.</source>
        <translation>La planta se dibuja desde el rumbo del primer tramo.</translation>
    </message>
    <message>
        <source>Give it as an angle counter-clockwise from east, or leave it out.</source>
        <translation>Dé un ángulo desde el este en sentido contrario al reloj, o no lo dé.</translation>
    </message>
    <message>
        <source>There is one corner between each two runs that meet; a closed chain has one more.</source>
        <translation>Hay una esquina entre cada dos tramos que se juntan; una cadena cerrada tiene una más.</translation>
    </message>
    <message>
        <source>Add the corner that is missing, or take away the one too many.</source>
        <translation>Agregue la esquina que falta, o quite la que sobra.</translation>
    </message>
    <message>
        <source>A chain is the runs that meet end to end; without runs it says nothing.</source>
        <translation>Una cadena son los tramos que se juntan de punta a punta; sin tramos no dice nada.</translation>
    </message>
    <message>
        <source>Add its runs, or take the chain out.</source>
        <translation>Agregue sus tramos, o quite la cadena.</translation>
    </message>
    <message>
        <source>A sloping run is longer than its place in plan; without its slope nobody can tell whether the chain closes.</source>
        <translation>Un tramo inclinado es más largo que su lugar en planta; sin su pendiente no se sabe si la cadena cierra.</translation>
    </message>
    <message>
        <source>Measure the slope of this run.</source>
        <translation>Mida la pendiente de este tramo.</translation>
    </message>
    <message>
        <source>Two runs cannot go round a building.</source>
        <translation>Dos tramos no pueden dar la vuelta a un edificio.</translation>
    </message>
    <message>
        <source>Add the runs that are missing, or mark the chain as open.</source>
        <translation>Agregue los tramos que faltan, o marque la cadena como abierta.</translation>
    </message>
    <message>
        <source>The corners of a closed chain add up to a fixed sum, whatever the lengths; these do not.</source>
        <translation>Las esquinas de una cadena cerrada suman siempre lo mismo, sean cuales sean los largos; estas no.</translation>
    </message>
    <message>
        <source>Measure again the corner you trust least: an inside corner taken for an outside one is off by 180°.</source>
        <translation>Mida otra vez la esquina en la que menos confía: una esquina interior tomada por exterior se aparta 180°.</translation>
    </message>
    <message>
        <source>Of all single corners this one alone would explain why the chain does not close.</source>
        <translation>De todas las esquinas, esta sola explicaría por qué la cadena no cierra.</translation>
    </message>
    <message>
        <source>Measure this corner again before any other.</source>
        <translation>Mida otra vez esta esquina antes que ninguna otra.</translation>
    </message>
    <message>
        <source>Of all single lengths this one alone would explain why the chain does not close.</source>
        <translation>De todos los largos, este solo explicaría por qué la cadena no cierra.</translation>
    </message>
    <message>
        <source>Measure this run again before any other; feet or inches misread on the tape are the usual cause.</source>
        <translation>Mida otra vez este tramo antes que ninguno; lo usual son pies o pulgadas mal leídos en la cinta.</translation>
    </message>
    <message>
        <source>No single measure explains it, but this corner and this run together would.</source>
        <translation>Ninguna medida sola lo explica, pero esta esquina y este tramo juntos sí.</translation>
    </message>
    <message>
        <source>Measure the corner and the run again.</source>
        <translation>Mida otra vez la esquina y el tramo.</translation>
    </message>
    <message>
        <source>The chain comes back to its start within what a tape can do.</source>
        <translation>La cadena vuelve a su inicio dentro de lo que puede una cinta.</translation>
    </message>
    <message>
        <source>There is nothing to do. A small slip can still hide in it: repeat a length you doubt.</source>
        <translation>No hay nada que hacer. Aún puede esconder un error pequeño: repita el largo que le dé duda.</translation>
    </message>
    <message>
        <source>The edges of one roof cannot cross each other in plan.</source>
        <translation>Los bordes de un techo no se pueden cruzar en planta.</translation>
    </message>
    <message>
        <source>Look at the plan: a corner turns the wrong way, or a length is far off.</source>
        <translation>Mire la planta: una esquina gira al revés, o un largo está muy mal.</translation>
    </message>
    <message>
        <source>The chain was walked with the building on the right, or the outside angles were entered.</source>
        <translation>La cadena se caminó con el edificio a la derecha, o se escribieron los ángulos de afuera.</translation>
    </message>
    <message>
        <source>Walk with the building on the left and give the angle on the building&apos;s side.</source>
        <translation>Camine con el edificio a la izquierda y dé el ángulo del lado del edificio.</translation>
    </message>
    <message>
        <source>A closed chain must end where it began; this one misses by more than a tape can be off.</source>
        <translation>Una cadena cerrada debe terminar donde empezó; esta termina más lejos de lo que puede errar una cinta.</translation>
    </message>
    <message>
        <source>Measure again the runs named here. Nothing is changed by itself.</source>
        <translation>Mida otra vez los tramos que se nombran aquí. Nada se cambia solo.</translation>
    </message>
    <message>
        <source>In a house with square corners opposite sides add up alike; the difference shows where to look.</source>
        <translation>En una casa de esquinas a escuadra los lados opuestos suman lo mismo; la diferencia dice dónde mirar.</translation>
    </message>
    <message>
        <source>Compare the runs of the two sides with the house.</source>
        <translation>Compare con la casa los tramos de los dos lados.</translation>
    </message>
    <message>
        <source>A corner turns by more than nothing and less than all the way round.</source>
        <translation>Una esquina gira más de 0° y menos de una vuelta entera.</translation>
    </message>
    <message>
        <source>Give the angle on the building&apos;s side: 90° at a square outside corner, 270° at a square inside one.</source>
        <translation>Dé el ángulo del lado del edificio: 90° en una esquina exterior a escuadra, 270° en una interior.</translation>
    </message>
    <message>
        <source>Two sides and a diagonal make a triangle only if none is longer than the other two together.</source>
        <translation>Dos lados y una diagonal hacen un triángulo solo si ninguno es más largo que los otros dos juntos.</translation>
    </message>
    <message>
        <source>Tape the two sides and the diagonal again.</source>
        <translation>Mida otra vez los dos lados y la diagonal.</translation>
    </message>
    <message>
        <source>Corners of houses are seldom so sharp; often the outside angle was taken.</source>
        <translation>Las esquinas de las casas rara vez son tan agudas; a menudo se tomó el ángulo de afuera.</translation>
    </message>
    <message>
        <source>Check that it is the angle on the building&apos;s side.</source>
        <translation>Revise que sea el ángulo del lado del edificio.</translation>
    </message>
    <message>
        <source>The sides taped at this corner are short, so a small slip of the tape turns the corner by much.</source>
        <translation>Los lados medidos en esta esquina son cortos, así que un pequeño error de cinta gira mucho la esquina.</translation>
    </message>
    <message>
        <source>Tape longer sides, as long as the place allows.</source>
        <translation>Mida lados más largos, tan largos como deje el lugar.</translation>
    </message>
    <message>
        <source>A mitre fits another mitre; against another end it leaves a gap.</source>
        <translation>Un inglete ajusta con otro inglete; con otro extremo deja un hueco.</translation>
    </message>
    <message>
        <source>Give both runs the same end at this corner.</source>
        <translation>Dé a los dos tramos el mismo extremo en esta esquina.</translation>
    </message>
    <message>
        <source>A mitre is cut to the corner with the next run, and here there is none.</source>
        <translation>Un inglete se corta según la esquina con el tramo siguiente, y aquí no hay ninguno.</translation>
    </message>
    <message>
        <source>Choose another end, or add the run that meets it.</source>
        <translation>Elija otro extremo, o agregue el tramo que se junta.</translation>
    </message>
    <message>
        <source>An order comes from measured runs, and there are none yet.</source>
        <translation>Un pedido sale de tramos medidos, y aún no hay ninguno.</translation>
    </message>
    <message>
        <source>Start a chain and measure its first run.</source>
        <translation>Empiece una cadena y mida su primer tramo.</translation>
    </message>
    <message>
        <source>Marks of pieces come from the ids of chains and runs.</source>
        <translation>Las marcas de las piezas salen de los id de cadenas y tramos.</translation>
    </message>
    <message>
        <source>Give each chain and run an id.</source>
        <translation>Dé un id a cada cadena y tramo.</translation>
    </message>
    <message>
        <source>Two things of one name would give two pieces the same mark.</source>
        <translation>Dos cosas con un mismo nombre darían a dos piezas la misma marca.</translation>
    </message>
    <message>
        <source>Give each its own id.</source>
        <translation>Dé a cada una su propio id.</translation>
    </message>
    <message>
        <source>Two tablets can have measured one edge; it would then be made twice.</source>
        <translation>Dos tabletas pueden haber medido un mismo borde; se haría dos veces.</translation>
    </message>
    <message>
        <source>Look at both runs, and take one out if they are one edge.</source>
        <translation>Mire los dos tramos, y quite uno si son un mismo borde.</translation>
    </message>
    <message>
        <source>The two jobs say different things of the house; only one can hold.</source>
        <translation>Los dos trabajos dicen cosas distintas de la casa; solo una puede valer.</translation>
    </message>
    <message>
        <source>Compare the two, and correct the job that was kept.</source>
        <translation>Compare los dos, y corrija el trabajo que quedó.</translation>
    </message>
    <message>
        <source>A reason for going on was given for a run that has another name now.</source>
        <translation>Se dio un motivo para seguir con un tramo que ahora tiene otro nombre.</translation>
    </message>
    <message>
        <source>Give the reason again, if it still holds.</source>
        <translation>Dé otra vez el motivo, si todavía vale.</translation>
    </message>
    <message>
        <source>Two runs of one name would give two pieces the same mark.</source>
        <translation>Dos tramos con un mismo nombre darían a dos piezas la misma marca.</translation>
    </message>
    <message>
        <source>Go by the new name from now on.</source>
        <translation>Use el nombre nuevo de aquí en adelante.</translation>
    </message>
    <message>
        <source>What both jobs have alike is kept once.</source>
        <translation>Lo que los dos trabajos tienen igual queda una vez.</translation>
    </message>
    <message>
        <source>There is nothing to do.</source>
        <translation>No hay nada que hacer.</translation>
    </message>
    <message>
        <source>What one course of the roofing shows cannot be nothing.</source>
        <translation>Lo que muestra una hilada de la cubierta no puede ser 0.</translation>
    </message>
    <message>
        <source>Enter the distance from one course to the next.</source>
        <translation>Escriba la distancia de una hilada a la siguiente.</translation>
    </message>
    <message>
        <source>No edge of a house is so long: the unit or a digit is wrong.</source>
        <translation>Ningún borde de una casa es tan largo: está mal la unidad o una cifra.</translation>
    </message>
    <message>
        <source>Read the tape again, and say feet, inches or millimetres.</source>
        <translation>Lea otra vez la cinta, y diga pies, pulgadas o milímetros.</translation>
    </message>
    <message>
        <source>Of several measures of a run one counts, and the one chosen is not there.</source>
        <translation>De varias medidas de un tramo vale una, y la elegida no está.</translation>
    </message>
    <message>
        <source>Choose one of the measures there are.</source>
        <translation>Elija una de las medidas que hay.</translation>
    </message>
    <message>
        <source>The taped length and the one that follows from level run and slope differ by more than they may.</source>
        <translation>El largo medido y el que sale del largo a nivel y la pendiente difieren más de lo que pueden.</translation>
    </message>
    <message>
        <source>Measure the slope and the length again; one of the two is wrong.</source>
        <translation>Mida otra vez la pendiente y el largo; uno de los dos está mal.</translation>
    </message>
    <message>
        <source>Such long edges are rare; feet entered as inches, or a digit too many, look like this.</source>
        <translation>Bordes tan largos son raros; así se ven pulgadas escritas como pies, o una cifra de más.</translation>
    </message>
    <message>
        <source>Check the unit and the number.</source>
        <translation>Revise la unidad y el número.</translation>
    </message>
    <message>
        <source>Without a length there is no piece.</source>
        <translation>Sin largo no hay pieza.</translation>
    </message>
    <message>
        <source>Measure the run, or give level run and slope of a sloped one.</source>
        <translation>Mida el tramo, o dé el largo a nivel y la pendiente de uno inclinado.</translation>
    </message>
    <message>
        <source>A length is more than nothing.</source>
        <translation>Un largo es mayor que 0.</translation>
    </message>
    <message>
        <source>Enter the measured length.</source>
        <translation>Escriba el largo medido.</translation>
    </message>
    <message>
        <source>Such short edges are rare; often the unit is wrong.</source>
        <translation>Bordes tan cortos son raros; a menudo está mal la unidad.</translation>
    </message>
    <message>
        <source>Only a run that rises has a level run beneath it.</source>
        <translation>Solo un tramo que sube tiene un largo a nivel debajo.</translation>
    </message>
    <message>
        <source>Take the level run away, or correct the kind of the run.</source>
        <translation>Quite el largo a nivel, o corrija la clase del tramo.</translation>
    </message>
    <message>
        <source>The level distance under a run is more than nothing.</source>
        <translation>La distancia a nivel debajo de un tramo es mayor que 0.</translation>
    </message>
    <message>
        <source>Enter the level distance under the run.</source>
        <translation>Escriba la distancia a nivel debajo del tramo.</translation>
    </message>
    <message>
        <source>Here two roof planes meet, and the fold angle comes from both slopes.</source>
        <translation>Aquí se juntan dos planos del techo, y el ángulo de doblez sale de las dos pendientes.</translation>
    </message>
    <message>
        <source>Enter the slope of the other plane, even where both are the same.</source>
        <translation>Escriba la pendiente del otro plano, aunque las dos sean iguales.</translation>
    </message>
    <message>
        <source>The angle of a corner counts on the building&apos;s side; this one is unusual for a house.</source>
        <translation>El ángulo de una esquina cuenta del lado del edificio; este es raro para una casa.</translation>
    </message>
    <message>
        <source>Check it on the plan, and correct it if it was measured from outside.</source>
        <translation>Revíselo en la planta, y corríjalo si se midió desde afuera.</translation>
    </message>
    <message>
        <source>Repeated measures of one run should agree within what a tape can be off.</source>
        <translation>Las medidas repetidas de un tramo deben coincidir dentro de lo que puede errar una cinta.</translation>
    </message>
    <message>
        <source>Measure once more and choose the one that counts.</source>
        <translation>Mida una vez más y elija la que vale.</translation>
    </message>
    <message>
        <source>Between a sloped and a level plane there is no hip or valley that rises.</source>
        <translation>Entre un plano inclinado y uno a nivel no hay limatesa ni limahoya que suba.</translation>
    </message>
    <message>
        <source>Measure both slopes again.</source>
        <translation>Mida otra vez las dos pendientes.</translation>
    </message>
    <message>
        <source>The fold angle of this trim comes from the slope; without it the piece would not lie on the roof.</source>
        <translation>El ángulo de doblez de esta moldura sale de la pendiente; sin ella la pieza no asentaría en el techo.</translation>
    </message>
    <message>
        <source>Measure the slope: rise in 12 of run.</source>
        <translation>Mida la pendiente: lo que sube en 12 de avance.</translation>
    </message>
    <message>
        <source>An angle of this trim comes from the run, and the run does not have it.</source>
        <translation>Un ángulo de esta moldura sale del tramo, y el tramo no lo tiene.</translation>
    </message>
    <message>
        <source>Enter it with the run.</source>
        <translation>Escríbalo con el tramo.</translation>
    </message>
    <message>
        <source>A folding machine cannot turn a bend so far.</source>
        <translation>Una dobladora no puede girar tanto un doblez.</translation>
    </message>
    <message>
        <source>Use a hem to double an edge back, or change the angle.</source>
        <translation>Use un dobladillo para doblar un borde sobre sí mismo, o cambie el ángulo.</translation>
    </message>
    <message>
        <source>A bend that hardly turns cannot be folded to measure.</source>
        <translation>Un doblez que casi no gira no se puede doblar a medida.</translation>
    </message>
    <message>
        <source>Make one leg of the two.</source>
        <translation>Haga de las dos alas una.</translation>
    </message>
    <message>
        <source>A profile is made of legs with bends between them, and a folder takes only so many.</source>
        <translation>Un perfil se hace de alas con dobleces entre ellas, y una dobladora admite un número limitado.</translation>
    </message>
    <message>
        <source>Enter at least one leg, and no more than are taken.</source>
        <translation>Escriba por lo menos un ala, y no más de las admitidas.</translation>
    </message>
    <message>
        <source>The leg is longer than this trim is meant to have.</source>
        <translation>El ala es más larga de lo previsto en esta moldura.</translation>
    </message>
    <message>
        <source>Check the measure it comes from, or choose another trim.</source>
        <translation>Revise la medida de donde sale, o elija otra moldura.</translation>
    </message>
    <message>
        <source>A folder needs something to take hold of, and the trim has its least.</source>
        <translation>Una dobladora necesita de dónde sujetar, y la moldura tiene su mínimo.</translation>
    </message>
    <message>
        <source>Make the leg longer, or leave it out.</source>
        <translation>Haga el ala más larga, o quítela.</translation>
    </message>
    <message>
        <source>The bends beside this leg take up more than its length.</source>
        <translation>Los dobleces a su lado consumen más que el largo de esta ala.</translation>
    </message>
    <message>
        <source>Make the leg longer, or the bends beside it less sharp.</source>
        <translation>Haga el ala más larga, o menos agudos los dobleces a su lado.</translation>
    </message>
    <message>
        <source>The job sets a leg this trim does not have, so it has no effect.</source>
        <translation>El trabajo fija un ala que esta moldura no tiene, así que no hace nada.</translation>
    </message>
    <message>
        <source>Take it away, or choose the trim it was meant for.</source>
        <translation>Quítela, o elija la moldura para la que era.</translation>
    </message>
    <message>
        <source>The trim is drawn from this measure.</source>
        <translation>La moldura se dibuja a partir de esta medida.</translation>
    </message>
    <message>
        <source>Measure it on the house and enter it with the trim.</source>
        <translation>Mídala en la casa y escríbala con la moldura.</translation>
    </message>
    <message>
        <source>Outside these limits the trim does not do its work or cannot be folded.</source>
        <translation>Fuera de estos límites la moldura no cumple o no se puede doblar.</translation>
    </message>
    <message>
        <source>Measure it again, or choose another trim.</source>
        <translation>Mídala otra vez, o elija otra moldura.</translation>
    </message>
    <message>
        <source>The job gives a measure this trim does not have, so it has no effect.</source>
        <translation>El trabajo da una medida que esta moldura no tiene, así que no hace nada.</translation>
    </message>
    <message>
        <source>Two legs of the section would pass through each other; no folder can make that.</source>
        <translation>Dos alas de la sección se atravesarían; ninguna dobladora puede hacer eso.</translation>
    </message>
    <message>
        <source>Shorten one of them, or change a turn between them.</source>
        <translation>Acorte una de ellas, o cambie un giro entre ellas.</translation>
    </message>
    <message>
        <source>The file of this trim contradicts itself.</source>
        <translation>El archivo de esta moldura se contradice.</translation>
    </message>
    <message>
        <source>Correct the file; what is wrong is named here.</source>
        <translation>Corrija el archivo; aquí se nombra lo que está mal.</translation>
    </message>
    <message>
        <source>screens, SQL, PDF</source>
        <translation>pantallas, SQL, PDF</translation>
    </message>
    <message>
        <source>databases, through Qt</source>
        <translation>bases de datos, por medio de Qt</translation>
    </message>
    <message>
        <source>JSON</source>
        <translation>JSON</translation>
    </message>
    <message>
        <source>JSON schemas</source>
        <translation>esquemas de JSON</translation>
    </message>
    <message>
        <source>linear programs of the cut plans</source>
        <translation>programas lineales de los planes de corte</translation>
    </message>
    <message>
        <source>Ed25519, SHA-256</source>
        <translation>Ed25519, SHA-256</translation>
    </message>
    <message>
        <source>QR codes</source>
        <translation>códigos QR</translation>
    </message>
    <message>
        <source>orders with photos as one ZIP</source>
        <translation>pedidos con fotos en un ZIP</translation>
    </message>
    <message>
        <source>type on screens and paper</source>
        <translation>letra de pantallas y papeles</translation>
    </message>
    <message>
        <source>legs</source>
        <translation>alas</translation>
    </message>
    <message>
        <source>clause</source>
        <translation>cláusula</translation>
    </message>
    <message>
        <source>clauses</source>
        <translation>cláusulas</translation>
    </message>
    <message>
        <source>task</source>
        <translation>tarea</translation>
    </message>
    <message>
        <source>item</source>
        <translation>artículo</translation>
    </message>
    <message>
        <source>items</source>
        <translation>artículos</translation>
    </message>
    <message>
        <source>do first</source>
        <translation>antes</translation>
    </message>
    <message>
        <source>pinned</source>
        <translation>fijado</translation>
    </message>
    <message>
        <source>mild steel</source>
        <translation>acero dulce</translation>
    </message>
    <message>
        <source>order, withdraw, advance, remake, scrap or again</source>
        <translation>order, withdraw, advance, remake, scrap o again</translation>
    </message>
    <message>
        <source>once more what is</source>
        <translation>otra vez lo que está</translation>
    </message>
    <message>
        <source>folded pieces</source>
        <translation>piezas dobladas</translation>
    </message>
    <message>
        <source>it is loaded, or another station took it back</source>
        <translation>está cargada, o la devolvió otra estación</translation>
    </message>
    <message>
        <source>folded and waiting for a truck</source>
        <translation>dobladas y en espera de un camión</translation>
    </message>
    <message>
        <source>ordered again</source>
        <translation>pedidas otra vez</translation>
    </message>
    <message>
        <source>taken back to be folded again</source>
        <translation>devueltas para doblarse otra vez</translation>
    </message>
    <message>
        <source>spoilt</source>
        <translation>arruinadas</translation>
    </message>
    <message>
        <source>rates in the database</source>
        <translation>tarifas en la base de datos</translation>
    </message>
    <message>
        <source>a kilogram</source>
        <translation>por kilogramo</translation>
    </message>
    <message>
        <source>a square metre</source>
        <translation>por metro cuadrado</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Desperdicio</translation>
    </message>
    <message>
        <source>% of the blanks&apos; metal</source>
        <translation>% del metal de las láminas planas</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Mano de obra</translation>
    </message>
    <message>
        <source>For an order</source>
        <translation>Por pedido</translation>
    </message>
    <message>
        <source>For a profile</source>
        <translation>Por perfil</translation>
    </message>
    <message>
        <source>For a piece</source>
        <translation>Por pieza</translation>
    </message>
    <message>
        <source>For a bend</source>
        <translation>Por doblez</translation>
    </message>
    <message>
        <source>Tax</source>
        <translation>Impuesto</translation>
    </message>
    <message>
        <source>a whole number like 12</source>
        <translation>un número entero como 12</translation>
    </message>
    <message>
        <source>a number like 12.5</source>
        <translation>un número como 12.5</translation>
    </message>
    <message>
        <source>a length, or nothing for a heading</source>
        <translation>un largo, o nada en un encabezado</translation>
    </message>
    <message>
        <source>no object</source>
        <translation>ningún objeto</translation>
    </message>
    <message>
        <source>a document, { … }</source>
        <translation>un documento, { … }</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>un largo</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>verdadero o falso</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un número entero</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texto</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>una lista</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>un objeto</translation>
    </message>
    <message>
        <source>an object of</source>
        <translation>un objeto de</translation>
    </message>
    <message>
        <source>a list of</source>
        <translation>una lista de</translation>
    </message>
    <message>
        <source>nothing here</source>
        <translation>nada aquí</translation>
    </message>
    <message>
        <source>more than</source>
        <translation>más de</translation>
    </message>
    <message>
        <source>less than</source>
        <translation>menos de</translation>
    </message>
    <message>
        <source>a multiple of</source>
        <translation>un múltiplo de</translation>
    </message>
    <message>
        <source>a text of at least</source>
        <translation>un texto de por lo menos</translation>
    </message>
    <message>
        <source>a text of at most</source>
        <translation>un texto de a lo más</translation>
    </message>
    <message>
        <source>a text like</source>
        <translation>un texto como</translation>
    </message>
    <message>
        <source>a list of at least</source>
        <translation>una lista de por lo menos</translation>
    </message>
    <message>
        <source>a list of at most</source>
        <translation>una lista de a lo más</translation>
    </message>
    <message>
        <source>each entry once</source>
        <translation>cada entrada una sola vez</translation>
    </message>
    <message>
        <source>one of the forms the schema lists</source>
        <translation>una de las formas que da el esquema</translation>
    </message>
    <message>
        <source>exactly one of the forms the schema lists</source>
        <translation>exactamente una de las formas que da el esquema</translation>
    </message>
    <message>
        <source>another form</source>
        <translation>otra forma</translation>
    </message>
    <message>
        <source>one between each two of</source>
        <translation>uno entre cada dos de</translation>
    </message>
    <message>
        <source>at most the number of legs</source>
        <translation>a lo más el número de alas</translation>
    </message>
    <message>
        <source>more than most_degrees</source>
        <translation>más que most_degrees</translation>
    </message>
    <message>
        <source>at most most_degrees</source>
        <translation>a lo más most_degrees</translation>
    </message>
    <message>
        <source>each name once</source>
        <translation>cada nombre una sola vez</translation>
    </message>
    <message>
        <source>more than most_mm</source>
        <translation>más que most_mm</translation>
    </message>
    <message>
        <source>at most most_mm</source>
        <translation>a lo más most_mm</translation>
    </message>
    <message>
        <source>a measure declared in measures</source>
        <translation>una medida declarada entre las medidas</translation>
    </message>
    <message>
        <source>the name of a fact</source>
        <translation>el nombre de un hecho</translation>
    </message>
    <message>
        <source>a comparison by size</source>
        <translation>una comparación por tamaño</translation>
    </message>
    <message>
        <source>equal, not_equal or in</source>
        <translation>equal, not_equal o in</translation>
    </message>
    <message>
        <source>hours like &quot;07:00-12:00&quot;</source>
        <translation>horas como &quot;07:00-12:00&quot;</translation>
    </message>
    <message>
        <source>a rate by mass and one by area</source>
        <translation>un precio por peso y otro por área</translation>
    </message>
    <message>
        <source>either cents_per_kilogram or cents_per_square_metre</source>
        <translation>o cents_per_kilogram o cents_per_square_metre</translation>
    </message>
    <message>
        <source>Version of this format.</source>
        <translation>Versión de este formato.</translation>
    </message>
    <message>
        <source>Short name used in files and on the command line.</source>
        <translation>Nombre corto que se usa en archivos y en la línea de comandos.</translation>
    </message>
    <message>
        <source>Name people call the machine by.</source>
        <translation>Nombre que la gente da a la máquina.</translation>
    </message>
    <message>
        <source>Anything worth knowing about it.</source>
        <translation>Lo que valga la pena saber de ella.</translation>
    </message>
    <message>
        <source>Longest piece it folds.</source>
        <translation>La pieza más larga que dobla.</translation>
    </message>
    <message>
        <source>Thickest sheet of a reference metal over the full length. Other metals: thickness times the root of the ratio of tensile strengths, a guide only.</source>
        <translation>La lámina más gruesa de un metal de referencia en todo el largo. Otros metales: el espesor por la raíz de la razón de las resistencias a la tracción, solo como guía.</translation>
    </message>
    <message>
        <source>The reference metal as on the machine&apos;s plate.</source>
        <translation>El metal de referencia, como está en la placa de la máquina.</translation>
    </message>
    <message>
        <source>Section of the bed, below y = 0, with a corner at the origin.</source>
        <translation>Sección de la mesa, debajo de y = 0, con una esquina en el origen.</translation>
    </message>
    <message>
        <source>Section of the clamp when closed, above y = 0, nose tip at the origin, behind the line of a sheet folded by the largest fold angle.</source>
        <translation>Sección de la mordaza cerrada, encima de y = 0, con la punta en el origen, detrás de la línea de una lámina doblada con el mayor ángulo de doblez.</translation>
    </message>
    <message>
        <source>How far up the clamp nose lets a sheet be folded, springback included.</source>
        <translation>Hasta dónde deja la punta de la mordaza doblar una lámina hacia arriba, con la recuperación elástica.</translation>
    </message>
    <message>
        <source>Height the clamp opens by.</source>
        <translation>Altura que abre la mordaza.</translation>
    </message>
    <message>
        <source>Depth from the bend line back to the frame.</source>
        <translation>Fondo desde la línea de doblez hasta el bastidor.</translation>
    </message>
    <message>
        <source>Inserts of the folding beam; the first is the one usually fitted.</source>
        <translation>Insertos de la viga de doblar; el primero es el que está puesto de costumbre.</translation>
    </message>
    <message>
        <source>Left out if the machine folds up only.</source>
        <translation>Se omite si la máquina dobla solo hacia arriba.</translation>
    </message>
    <message>
        <source>The beam that folds down; its body is above y = 0.</source>
        <translation>La viga que dobla hacia abajo; su cuerpo está encima de y = 0.</translation>
    </message>
    <message>
        <source>How far down the edge of the bed lets a sheet be folded.</source>
        <translation>Hasta dónde deja el borde de la mesa doblar una lámina hacia abajo.</translation>
    </message>
    <message>
        <source>Left out if the machine is folded to marks.</source>
        <translation>Se omite si en la máquina se dobla por marcas.</translation>
    </message>
    <message>
        <source>Smallest distance from the bend line to the fingers.</source>
        <translation>La menor distancia de la línea de doblez a los dedos.</translation>
    </message>
    <message>
        <source>Largest distance from the bend line to the fingers.</source>
        <translation>La mayor distancia de la línea de doblez a los dedos.</translation>
    </message>
    <message>
        <source>Height of the fingers above the sheet&apos;s plane.</source>
        <translation>Altura de los dedos sobre el plano de la lámina.</translation>
    </message>
    <message>
        <source>Smallest step of the gauge&apos;s display, or of the rule used for marking.</source>
        <translation>El menor paso del indicador del tope, o de la regla con que se marca.</translation>
    </message>
    <message>
        <source>Shortest part in front of the bend line that the beam still folds.</source>
        <translation>La parte más corta delante de la línea de doblez que la viga todavía dobla.</translation>
    </message>
    <message>
        <source>Longest piece that is slid in or out past the end of the clamp; left out if the frame closes both ends.</source>
        <translation>La pieza más larga que se mete o se saca por el costado de la mordaza; se omite si el bastidor cierra los dos extremos.</translation>
    </message>
    <message>
        <source>The shop&apos;s own trials on this machine: what must be set for a fold angle to be left. Each wins over the formula.</source>
        <translation>Las pruebas del taller en esta máquina: qué hay que poner para que quede un ángulo de doblez. Cada una vale más que la fórmula.</translation>
    </message>
    <message>
        <source>Id of the metal.</source>
        <translation>Nombre corto del metal.</translation>
    </message>
    <message>
        <source>Angle left when the sheet is let go.</source>
        <translation>Ángulo que queda cuando se suelta la lámina.</translation>
    </message>
    <message>
        <source>Angle the beam is set to.</source>
        <translation>Ángulo al que se pone la viga.</translation>
    </message>
    <message>
        <source>The clamp may press pre-bent hems.</source>
        <translation>La mordaza puede prensar dobladillos ya comenzados.</translation>
    </message>
    <message>
        <source>Widest gap a hem can be pressed to; 0 if closed hems only.</source>
        <translation>La mayor abertura a la que se puede prensar un dobladillo; 0 si solo cerrados.</translation>
    </message>
    <message>
        <source>Corners of a closed polygon that does not cross itself, [x, y] in millimetres.</source>
        <translation>Esquinas de un polígono cerrado que no se cruza a sí mismo, [x, y] en milímetros.</translation>
    </message>
    <message>
        <source>A beam insert and the beam at rest with it; the body&apos;s edge on y = 0, from x = 0 to the width, is the face.</source>
        <translation>Un inserto de la viga y la viga en reposo con él; el borde del cuerpo en y = 0, de x = 0 hasta el ancho, es la cara.</translation>
    </message>
    <message>
        <source>What the document is.</source>
        <translation>Qué es el documento.</translation>
    </message>
    <message>
        <source>Identity of the trim; runs name it.</source>
        <translation>Nombre corto de la moldura; por él la piden los tramos.</translation>
    </message>
    <message>
        <source>Name as the trade says it.</source>
        <translation>Nombre como lo dice el oficio.</translation>
    </message>
    <message>
        <source>What the trim does and what to watch for.</source>
        <translation>Qué hace la moldura y en qué fijarse.</translation>
    </message>
    <message>
        <source>Where the value stands: standard, clause, edition; or &apos;common practice, no source&apos;.</source>
        <translation>Dónde está el valor: norma, cláusula, edición; o &apos;common practice, no source&apos;.</translation>
    </message>
    <message>
        <source>Kinds of run the trim may be put on.</source>
        <translation>Clases de tramo en que se puede poner la moldura.</translation>
    </message>
    <message>
        <source>Lengths the trim asks for. None if absent.</source>
        <translation>Largos que pide la moldura. Ninguno si falta.</translation>
    </message>
    <message>
        <source>Flat parts in path order.</source>
        <translation>Partes planas en el orden del recorrido.</translation>
    </message>
    <message>
        <source>Bends in path order, one between each two legs: one fewer than legs.</source>
        <translation>Dobleces en el orden del recorrido, uno entre cada dos alas: uno menos que alas.</translation>
    </message>
    <message>
        <source>Which point of the path stands at anchor_x, anchor_y: 0 the start of the first leg, i the apex after the i-th leg, the number of legs the end of the last. 0 if absent.</source>
        <translation>Qué punto del recorrido está en anchor_x, anchor_y: 0 el inicio de la primera ala, i el vértice después del ala i, el número de alas el final de la última. 0 si falta.</translation>
    </message>
    <message>
        <source>Left and right pieces differ because their ends do. False if absent.</source>
        <translation>Las piezas izquierdas y derechas son distintas porque lo son sus extremos. No, si falta.</translation>
    </message>
    <message>
        <source>Kind of edge.</source>
        <translation>Clase de borde.</translation>
    </message>
    <message>
        <source>Side of the path, looking along it.</source>
        <translation>Lado del recorrido, mirando a lo largo de él.</translation>
    </message>
    <message>
        <source>constant + sum of coefficient x measure. Absent members count as nothing.</source>
        <translation>constante + suma de coeficiente x medida. Lo que falta cuenta como nada.</translation>
    </message>
    <message>
        <source>Constant part.</source>
        <translation>Parte constante.</translation>
    </message>
    <message>
        <source>What is added.</source>
        <translation>Lo que se suma.</translation>
    </message>
    <message>
        <source>One term.</source>
        <translation>Un término.</translation>
    </message>
    <message>
        <source>What the measure is multiplied by.</source>
        <translation>Por cuánto se multiplica la medida.</translation>
    </message>
    <message>
        <source>Name of a measure declared in measures.</source>
        <translation>Nombre de una medida declarada entre las medidas.</translation>
    </message>
    <message>
        <source>constant + sum of coefficient x angle of the run. Absent members count as nothing.</source>
        <translation>constante + suma de coeficiente x ángulo del tramo. Lo que falta cuenta como nada.</translation>
    </message>
    <message>
        <source>What the angle is multiplied by.</source>
        <translation>Por cuánto se multiplica el ángulo.</translation>
    </message>
    <message>
        <source>slope: angle of the run&apos;s plane; other_slope: of the other plane; wall_turn: 180 minus the interior angle of a wall corner; crease_turn: turn of a hip (negative) or valley (positive) crease.</source>
        <translation>slope: ángulo del plano del tramo; other_slope: del otro plano; wall_turn: 180 menos el ángulo interior de una esquina de pared; crease_turn: giro de la arista de una limatesa (negativo) o limahoya (positivo).</translation>
    </message>
    <message>
        <source>A length asked for.</source>
        <translation>Un largo que se pide.</translation>
    </message>
    <message>
        <source>Name, unique in its list; other members refer to it.</source>
        <translation>Nombre, único en su lista; otras partes lo usan.</translation>
    </message>
    <message>
        <source>What the person is asked.</source>
        <translation>Lo que se pregunta a la persona.</translation>
    </message>
    <message>
        <source>Value if nobody says; without it the measure must be given.</source>
        <translation>Valor si nadie lo dice; sin él hay que dar la medida.</translation>
    </message>
    <message>
        <source>Smallest value accepted.</source>
        <translation>El menor valor que se acepta.</translation>
    </message>
    <message>
        <source>Largest value accepted.</source>
        <translation>El mayor valor que se acepta.</translation>
    </message>
    <message>
        <source>A flat part; its length is the outside length, to the mould-line apex of each adjoining bend.</source>
        <translation>Una parte plana; su largo es por fuera, hasta el vértice exterior de cada doblez vecino.</translation>
    </message>
    <message>
        <source>What the person sees.</source>
        <translation>Lo que ve la persona.</translation>
    </message>
    <message>
        <source>A shorter leg is a finding.</source>
        <translation>Un ala más corta es una observación.</translation>
    </message>
    <message>
        <source>A longer leg is a finding.</source>
        <translation>Un ala más larga es una observación.</translation>
    </message>
    <message>
        <source>The length is rounded up to a multiple of this.</source>
        <translation>El largo se redondea hacia arriba a un múltiplo de esto.</translation>
    </message>
    <message>
        <source>Number of the clause that sets the least value.</source>
        <translation>Número de la cláusula que fija el menor valor.</translation>
    </message>
    <message>
        <source>The line between two legs.</source>
        <translation>La línea entre dos alas.</translation>
    </message>
    <message>
        <source>Smallest signed turn that makes sense.</source>
        <translation>El menor giro, con su signo, que tiene sentido.</translation>
    </message>
    <message>
        <source>Largest signed turn that makes sense.</source>
        <translation>El mayor giro, con su signo, que tiene sentido.</translation>
    </message>
    <message>
        <source>Inside radius; the metal&apos;s own if absent.</source>
        <translation>Radio interior; el propio del metal si falta.</translation>
    </message>
    <message>
        <source>An edge folded back on itself.</source>
        <translation>Un borde doblado sobre sí mismo.</translation>
    </message>
    <message>
        <source>How it is folded.</source>
        <translation>Cómo se dobla.</translation>
    </message>
    <message>
        <source>Width of the part folded back, outside length.</source>
        <translation>Ancho de la parte doblada hacia atrás, por fuera.</translation>
    </message>
    <message>
        <source>Inside radius of the half turn: half the gap. If absent 0 for a closed hem, else the metal&apos;s own.</source>
        <translation>Radio interior de la media vuelta: la mitad de la abertura. Si falta, 0 en un dobladillo cerrado; en los demás, el propio del metal.</translation>
    </message>
    <message>
        <source>How pieces follow one another and are fixed.</source>
        <translation>Cómo se siguen las piezas y cómo se fijan.</translation>
    </message>
    <message>
        <source>How far one piece covers the next.</source>
        <translation>Cuánto cubre una pieza a la siguiente.</translation>
    </message>
    <message>
        <source>Clause or source of the lap.</source>
        <translation>Cláusula o fuente del traslape.</translation>
    </message>
    <message>
        <source>Gap left at a mitred end.</source>
        <translation>Holgura que se deja en un extremo a inglete.</translation>
    </message>
    <message>
        <source>Tab that wraps a corner.</source>
        <translation>Lengüeta que envuelve una esquina.</translation>
    </message>
    <message>
        <source>Metal folded to close an end.</source>
        <translation>Metal que se dobla para cerrar un extremo.</translation>
    </message>
    <message>
        <source>Metal turned up at an end against a wall.</source>
        <translation>Metal levantado en un extremo contra una pared.</translation>
    </message>
    <message>
        <source>Largest spacing of fasteners; no fasteners if absent.</source>
        <translation>La mayor separación de las fijaciones; sin fijaciones si falta.</translation>
    </message>
    <message>
        <source>Rows of fasteners; 1 if absent.</source>
        <translation>Filas de fijaciones; 1 si falta.</translation>
    </message>
    <message>
        <source>Clause or source of the spacing and rows of fasteners or cleats.</source>
        <translation>Cláusula o fuente de la separación y las filas de fijaciones o grapas.</translation>
    </message>
    <message>
        <source>Largest spacing of the cleats its edges hook to; no cleats if absent.</source>
        <translation>La mayor separación de las grapas en que enganchan sus bordes; sin grapas si falta.</translation>
    </message>
    <message>
        <source>Rows of cleats, one for each edge; 1 if absent.</source>
        <translation>Filas de grapas, una por borde; 1 si falta.</translation>
    </message>
    <message>
        <source>Laps get sealant; false if absent.</source>
        <translation>Los traslapes llevan sellador; no, si falta.</translation>
    </message>
    <message>
        <source>Pieces by course: piece length is the exposure plus this head lap.</source>
        <translation>Piezas por hilada: el largo de la pieza es la exposición más este traslape superior.</translation>
    </message>
    <message>
        <source>that the local code and a licensed professional decide</source>
        <translation>que deciden el código local y un profesional con licencia</translation>
    </message>
    <message>
        <source>a text, yes or no, a count, millimetres, degrees or a slope, as the fact has it</source>
        <translation>un texto, sí o no, una cantidad, milímetros, grados o una pendiente, según el hecho</translation>
    </message>
    <message>
        <source>whole seconds, at most a day</source>
        <translation>segundos enteros, a lo más un día</translation>
    </message>
    <message>
        <source>what a late second counts, by the priority of the order</source>
        <translation>cuánto cuenta un segundo de atraso, según la prioridad del pedido</translation>
    </message>
    <message>
        <source>a time of day like 07:00; left out for 07:00</source>
        <translation>una hora como 07:00; se omite si es 07:00</translation>
    </message>
    <message>
        <source>pieces moved from cutting to folding together; left out for all of a cut at once</source>
        <translation>piezas que pasan juntas del corte al doblado; se omite si pasan todas las de un corte a la vez</translation>
    </message>
    <message>
        <source>batches by the narrowest coil that takes a girth</source>
        <translation>lotes por el rollo más angosto en que cabe el desarrollo</translation>
    </message>
    <message>
        <source>hours like 07:00-12:00</source>
        <translation>horas como 07:00-12:00</translation>
    </message>
    <message>
        <source>a date like 2026-12-25</source>
        <translation>una fecha como 2026-12-25</translation>
    </message>
    <message>
        <source>of the handling time of the fold plan</source>
        <translation>del tiempo de manejo del plan de doblado</translation>
    </message>
    <message>
        <source>cut or fold</source>
        <translation>corte o doblado</translation>
    </message>
    <message>
        <source>of a folding machine: its id in the machine library</source>
        <translation>de una dobladora: su nombre corto en la biblioteca de máquinas</translation>
    </message>
    <message>
        <source>as it is printed: USD</source>
        <translation>como se imprime: USD</translation>
    </message>
    <message>
        <source>left out for every colour without a rate of its own</source>
        <translation>se omite para todos los colores sin precio propio</translation>
    </message>
    <message>
        <source>of the blanks&apos; metal, added for what cutting loses</source>
        <translation>del metal de las láminas planas, que se suma por lo que se pierde al cortar</translation>
    </message>
    <message>
        <source>825 is 8.25 %</source>
        <translation>825 es 8.25 %</translation>
    </message>
    <message>
        <source>to the second: 0.5 is half a minute</source>
        <translation>al segundo: 0.5 es medio minuto</translation>
    </message>
    <message>
        <source>{amount} kg at {price} a kg, and {waste} % waste</source>
        <translation>{amount} kg a {price} el kg, más {waste} % de desperdicio</translation>
    </message>
    <message>
        <source>{amount} kg at {price} a kg</source>
        <translation>{amount} kg a {price} el kg</translation>
    </message>
    <message>
        <source>{amount} m² at {price} a m², and {waste} % waste</source>
        <translation>{amount} m² a {price} el m², más {waste} % de desperdicio</translation>
    </message>
    <message>
        <source>{amount} m² at {price} a m²</source>
        <translation>{amount} m² a {price} el m²</translation>
    </message>
    <message>
        <source>{minutes} minutes at {price} an hour</source>
        <translation>{minutes} minutos a {price} la hora</translation>
    </message>
    <message>
        <source>left over</source>
        <translation>sobra</translation>
    </message>
    <message>
        <source>labour</source>
        <translation>mano de obra</translation>
    </message>
    <message>
        <source>tax</source>
        <translation>impuesto</translation>
    </message>
    <message>
        <source>0.019 in</source>
        <translation>0.019 pulg</translation>
    </message>
    <message>
        <source>0.024 in</source>
        <translation>0.024 pulg</translation>
    </message>
    <message>
        <source>0.025 in</source>
        <translation>0.025 pulg</translation>
    </message>
    <message>
        <source>0.027 in</source>
        <translation>0.027 pulg</translation>
    </message>
    <message>
        <source>0.032 in</source>
        <translation>0.032 pulg</translation>
    </message>
    <message>
        <source>0.040 in</source>
        <translation>0.040 pulg</translation>
    </message>
    <message>
        <source>0.050 in</source>
        <translation>0.050 pulg</translation>
    </message>
    <message>
        <source>0.063 in</source>
        <translation>0.063 pulg</translation>
    </message>
    <message>
        <source>0.080 in</source>
        <translation>0.080 pulg</translation>
    </message>
    <message>
        <source>chain {old} of the second job is chain {now} from now on</source>
        <translation>la cadena {old} del segundo trabajo es desde ahora la cadena {now}</translation>
    </message>
    <message>
        <source>run {run} has no pieces of {trim}</source>
        <translation>el tramo {run} no tiene piezas de {trim}</translation>
    </message>
    <message>
        <source>{mark} is cut from stock lengths of another profile</source>
        <translation>{mark} se corta de largos de existencias de otro perfil</translation>
    </message>
    <message>
        <source>tolerance of a chain</source>
        <translation>tolerancia de una cadena</translation>
    </message>
    <message>
        <source>tolerance of a chain, one part in</source>
        <translation>tolerancia de una cadena, una parte en</translation>
    </message>
    <message>
        <source>tolerance of a corner</source>
        <translation>tolerancia de una esquina</translation>
    </message>
    <message>
        <source>tolerance of a derived length</source>
        <translation>tolerancia de un largo derivado</translation>
    </message>
    <message>
        <source>tolerance of repeated measures</source>
        <translation>tolerancia de medidas repetidas</translation>
    </message>
    <message>
        <source>another program holds the database: nothing of this was done; try again</source>
        <translation>otro programa tiene ocupada la base de datos: nada de esto se hizo; pruebe otra vez</translation>
    </message>
    <message>
        <source>described anew</source>
        <translation>descrito de nuevo</translation>
    </message>
    <message>
        <source>changed in the meantime</source>
        <translation>que cambió mientras tanto</translation>
    </message>
    <message>
        <source>the item as it is now: open it again</source>
        <translation>el artículo como está ahora: ábralo otra vez</translation>
    </message>
    <message>
        <source>there already</source>
        <translation>que ya está ahí</translation>
    </message>
    <message>
        <source>a name that nothing else on the racks has</source>
        <translation>un nombre que no tenga ninguna otra cosa en los estantes</translation>
    </message>
    <message>
        <source>more than nothing and at most 10 km</source>
        <translation>más de 0 y a lo más 10 km</translation>
    </message>
    <message>
        <source>1: each coil and remnant has its own name</source>
        <translation>1: cada rollo y cada retazo tiene su propio nombre</translation>
    </message>
    <message>
        <source>a cost, or none where it goes by the area</source>
        <translation>un costo, o ninguno si va por el área</translation>
    </message>
    <message>
        <source>no coil</source>
        <translation>algo que no es rollo</translation>
    </message>
    <message>
        <source>a length for a coil</source>
        <translation>un largo, y solo para un rollo</translation>
    </message>
    <message>
        <source>the rack&apos;s name, the coil&apos;s number or the remnant&apos;s label: one of its own for each</source>
        <translation>el nombre del estante, el número del rollo o la etiqueta del retazo: uno propio para cada uno</translation>
    </message>
    <message>
        <source>sheet, coil or remnant</source>
        <translation>hoja, rollo o retazo</translation>
    </message>
    <message>
        <source>across; the strips are slit from it</source>
        <translation>a lo ancho; de ahí se cortan las tiras</translation>
    </message>
    <message>
        <source>how many there are; left out for as many as needed</source>
        <translation>cuántos hay; sin nada, tantos como hagan falta</translation>
    </message>
    <message>
        <source>of one sheet or remnant, or one metre of coil, in any one unit of money; left out for its area</source>
        <translation>de una hoja o un retazo, o de un metro de rollo, en una sola unidad de dinero; sin nada, va por su área</translation>
    </message>
    <message>
        <source>of a coil: the longest part the line or the table takes</source>
        <translation>de un rollo: la parte más larga que admite la línea o la mesa</translation>
    </message>
    <message>
        <source>in the plan that waits for</source>
        <translation>en el plan que espera para</translation>
    </message>
    <message>
        <source>an item that no plan waits for: cut that plan first, or plan again without it</source>
        <translation>un artículo que ningún plan espera: corte primero ese plan o planee otra vez sin él</translation>
    </message>
    <message>
        <source>strip of</source>
        <translation>tira de</translation>
    </message>
    <message>
        <source>length of</source>
        <translation>largo de</translation>
    </message>
    <message>
        <source>strips of</source>
        <translation>tiras de</translation>
    </message>
    <message>
        <source>lengths of</source>
        <translation>largos de</translation>
    </message>
    <message>
        <source>over the least (bound</source>
        <translation>sobre lo mínimo (límite</translation>
    </message>
    <message>
        <source>not to be made any more</source>
        <translation>ya no se hacen</translation>
    </message>
    <message>
        <source>made since it was scheduled</source>
        <translation>hechas desde que se programó</translation>
    </message>
    <message>
        <source>other pieces or stock after planning than before it</source>
        <translation>otras piezas u otras existencias después de planear que antes</translation>
    </message>
    <message>
        <source>another schedule after scheduling than before it</source>
        <translation>otro calendario después de calcularlo que antes</translation>
    </message>
    <message>
        <source>the same one: schedule again</source>
        <translation>el mismo: calcúlelo otra vez</translation>
    </message>
    <message>
        <source>found</source>
        <translation>se encontró</translation>
    </message>
    <message>
        <source>expected</source>
        <translation>se esperaba</translation>
    </message>
    <message>
        <source>characters</source>
        <translation>caracteres</translation>
    </message>
    <message>
        <source>members</source>
        <translation>miembros</translation>
    </message>
    <message>
        <source>a text that is not empty</source>
        <translation>un texto que no esté vacío</translation>
    </message>
    <message>
        <source>a sheet that is ticked as cut</source>
        <translation>una hoja ya marcada como cortada</translation>
    </message>
    <message>
        <source>a sheet that is being cut</source>
        <translation>una hoja que se está cortando</translation>
    </message>
    <message>
        <source>of a coil: what is left on it; with no count more of it can be had</source>
        <translation>de un rollo: lo que queda en él; sin cantidad se puede conseguir más</translation>
    </message>
</context>
<context>
    <name>lapwright::field::CheckList</name>
    <message>
        <source>reason taken back</source>
        <translation>motivo retirado</translation>
    </message>
    <message>
        <source>warning acknowledged</source>
        <translation>advertencia aceptada</translation>
    </message>
</context>
<context>
    <name>lapwright::field::DeliveryCheck</name>
    <message>
        <source>Load without a truck</source>
        <translation>Carga sin camión</translation>
    </message>
    <message>
        <source>%1 of %2 counted</source>
        <translation>%1 de %2 contadas</translation>
    </message>
    <message numerus="yes">
        <source>Only %n are left to count of this mark.</source>
        <translation>
            <numerusform>Solo queda %n por contar de esta marca.</numerusform>
            <numerusform>Solo quedan %n por contar de esta marca.</numerusform>
        </translation>
    </message>
    <message>
        <source>What a receipt has carried away cannot be taken back: count the piece again as it is.</source>
        <translation>Lo que un recibo ya se llevó no se puede retirar: cuente la pieza otra vez como está.</translation>
    </message>
    <message>
        <source>%1 goes on run %2 of %3</source>
        <translation>%1 va en el tramo %2 de %3</translation>
    </message>
    <message>
        <source>This is no load list: %1</source>
        <translation>Esto no es una lista de carga: %1</translation>
    </message>
    <message>
        <source>This is no receipt: %1</source>
        <translation>Esto no es un recibo: %1</translation>
    </message>
    <message>
        <source>This receipt is of a load that is not on this tablet. Open its load list first.</source>
        <translation>Este recibo es de una carga que no está en esta tableta. Abra primero su lista de carga.</translation>
    </message>
    <message>
        <source>Nothing is counted yet.</source>
        <translation>Todavía no se ha contado nada.</translation>
    </message>
    <message>
        <source>Another list of this load is here already, and that one counts. Ask the shop.</source>
        <translation>Ya hay aquí otra lista de esta carga, y esa es la que vale. Pregunte al taller.</translation>
    </message>
    <message>
        <source>Say first whether this load list counts.</source>
        <translation>Diga primero si esta lista de carga vale.</translation>
    </message>
    <message>
        <source>Not on this load: %1</source>
        <translation>No está en esta carga: %1</translation>
    </message>
</context>
<context>
    <name>lapwright::field::FieldApp</name>
    <message>
        <source>The file of this tablet is damaged: restore a backup under Settings. (%1)</source>
        <translation>El archivo de esta tableta está dañado: restaure un respaldo en Ajustes. (%1)</translation>
    </message>
    <message>
        <source>No backup was made: %1</source>
        <translation>No se hizo el respaldo: %1</translation>
    </message>
    <message>
        <source>Nothing was restored: %1</source>
        <translation>No se restauró nada: %1</translation>
    </message>
    <message>
        <source>%1 (from another tablet)</source>
        <translation>%1 (de otra tableta)</translation>
    </message>
    <message>
        <source>taken in</source>
        <translation>recibido</translation>
    </message>
    <message numerus="yes">
        <source>%n photos did not come with this order, or were altered on the way.</source>
        <translation>
            <numerusform>%n foto no vino con este pedido, o fue alterada en el camino.</numerusform>
            <numerusform>%n fotos no vinieron con este pedido, o fueron alteradas en el camino.</numerusform>
        </translation>
    </message>
    <message>
        <source>Sample house</source>
        <translation>Casa de muestra</translation>
    </message>
    <message>
        <source>Invented customer</source>
        <translation>Cliente inventado</translation>
    </message>
    <message>
        <source>1 Invented Lane</source>
        <translation>Callejón Inventado 1</translation>
    </message>
    <message>
        <source>Nothing on this tablet takes the file: it lies at %1</source>
        <translation>Nada en esta tableta recibe el archivo: está en %1</translation>
    </message>
    <message>
        <source>The folder cannot be shown; the file lies at %1</source>
        <translation>No se puede mostrar la carpeta; el archivo está en %1</translation>
    </message>
</context>
<context>
    <name>lapwright::field::JobEditor</name>
    <message>
        <source>%1 started</source>
        <translation>se empezó %1</translation>
    </message>
    <message>
        <source>%1 named %2</source>
        <translation>%1 se llamó %2</translation>
    </message>
    <message>
        <source>%1 removed</source>
        <translation>se quitó %1</translation>
    </message>
    <message>
        <source>run %1 changed</source>
        <translation>se cambió el tramo %1</translation>
    </message>
    <message>
        <source>run %1 added</source>
        <translation>se agregó el tramo %1</translation>
    </message>
    <message>
        <source>run %1 removed</source>
        <translation>se quitó el tramo %1</translation>
    </message>
    <message>
        <source>run %1 measured again</source>
        <translation>se midió otra vez el tramo %1</translation>
    </message>
    <message>
        <source>another measure of run %1 counts</source>
        <translation>vale otra medida del tramo %1</translation>
    </message>
    <message>
        <source>a measure of run %1 removed</source>
        <translation>se quitó una medida del tramo %1</translation>
    </message>
    <message>
        <source>%1 closed</source>
        <translation>se cerró %1</translation>
    </message>
    <message>
        <source>%1 opened</source>
        <translation>se abrió %1</translation>
    </message>
    <message>
        <source>what %1 goes round</source>
        <translation>lo que rodea %1</translation>
    </message>
    <message>
        <source>Eave line</source>
        <translation>Línea de alero</translation>
    </message>
    <message>
        <source>round the roof, corner by corner</source>
        <translation>alrededor del techo, de esquina a esquina</translation>
    </message>
    <message>
        <source>Rake</source>
        <translation>Borde de hastial</translation>
    </message>
    <message>
        <source>up a gable</source>
        <translation>subiendo un hastial</translation>
    </message>
    <message>
        <source>Ridge</source>
        <translation>Cumbrera</translation>
    </message>
    <message>
        <source>Hip</source>
        <translation>Limatesa</translation>
    </message>
    <message>
        <source>Valley</source>
        <translation>Limahoya</translation>
    </message>
    <message>
        <source>Fascia</source>
        <translation>Fascia</translation>
    </message>
    <message>
        <source>Wall line</source>
        <translation>Línea de pared</translation>
    </message>
    <message>
        <source>round the foot of the walls</source>
        <translation>alrededor del pie de las paredes</translation>
    </message>
    <message>
        <source>Wall corner</source>
        <translation>Esquina de pared</translation>
    </message>
    <message>
        <source>an upright edge</source>
        <translation>un borde vertical</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Abertura</translation>
    </message>
    <message>
        <source>head, jambs and sill</source>
        <translation>dintel, jambas y antepecho</translation>
    </message>
    <message>
        <source>Headwall</source>
        <translation>Pared frontal</translation>
    </message>
    <message>
        <source>a roof meets a wall above</source>
        <translation>un techo llega a una pared más alta</translation>
    </message>
    <message>
        <source>Sidewall</source>
        <translation>Pared lateral</translation>
    </message>
    <message>
        <source>a roof runs beside a wall</source>
        <translation>un techo corre junto a una pared</translation>
    </message>
    <message>
        <source>Slope change</source>
        <translation>Cambio de pendiente</translation>
    </message>
    <message>
        <source>Parapet</source>
        <translation>Parapeto</translation>
    </message>
    <message>
        <source>Low-slope edge</source>
        <translation>Borde de techo plano</translation>
    </message>
    <message>
        <source>started</source>
        <translation>se empezó</translation>
    </message>
    <message>
        <source>This job is not on the tablet any more.</source>
        <translation>Este trabajo ya no está en la tableta.</translation>
    </message>
    <message>
        <source>This job cannot be read: %1</source>
        <translation>No se puede leer este trabajo: %1</translation>
    </message>
    <message>
        <source>Not kept, because the job could not be opened again: %1</source>
        <translation>No se guardó, porque no se pudo abrir otra vez el trabajo: %1</translation>
    </message>
    <message>
        <source>Closes to %1 around %2</source>
        <translation>Cierra con %1 en un contorno de %2</translation>
    </message>
    <message>
        <source>Something is missing before this chain can be checked</source>
        <translation>Falta algo para poder revisar esta cadena</translation>
    </message>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n tramo</numerusform>
            <numerusform>%n tramos</numerusform>
        </translation>
    </message>
    <message>
        <source>Measure %1 again</source>
        <translation>Medir otra vez %1</translation>
    </message>
    <message>
        <source>it would close at %1</source>
        <translation>cerraría con %1</translation>
    </message>
    <message>
        <source>Check the corner after %1</source>
        <translation>Revisar la esquina después de %1</translation>
    </message>
</context>
<context>
    <name>lapwright::field::JobForm</name>
    <message>
        <source>name of the job</source>
        <translation>nombre del trabajo</translation>
    </message>
    <message>
        <source>customer</source>
        <translation>cliente</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>“%1” is no date; write it as 2026-12-10.</source>
        <translation>“%1” no es una fecha; escríbala así: 2026-12-10.</translation>
    </message>
    <message>
        <source>date wanted</source>
        <translation>fecha en que se necesita</translation>
    </message>
    <message>
        <source>who measured</source>
        <translation>quién midió</translation>
    </message>
    <message>
        <source>metal</source>
        <translation>metal</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>gauge</source>
        <translation>calibre</translation>
    </message>
    <message>
        <source>colour</source>
        <translation>color</translation>
    </message>
    <message>
        <source>rules to hold to</source>
        <translation>reglas que se deben cumplir</translation>
    </message>
    <message>
        <source>There must be a length here.</source>
        <translation>Aquí tiene que haber un largo.</translation>
    </message>
    <message>
        <source>folding length</source>
        <translation>largo de doblado</translation>
    </message>
    <message>
        <source>stock length</source>
        <translation>largo de existencias</translation>
    </message>
    <message>
        <source>transport length</source>
        <translation>largo de transporte</translation>
    </message>
    <message>
        <source>shortest piece</source>
        <translation>pieza más corta</translation>
    </message>
    <message>
        <source>“%1” is no wind pressure; write whole pounds per square foot, 1 to %2.</source>
        <translation>“%1” no es una presión de viento; escriba libras enteras por pie cuadrado, de 1 a %2.</translation>
    </message>
    <message>
        <source>wind pressure</source>
        <translation>presión del viento</translation>
    </message>
</context>
<context>
    <name>lapwright::field::JobList</name>
    <message>
        <source>Measuring</source>
        <translation>En medición</translation>
    </message>
    <message>
        <source>Sent</source>
        <translation>Enviado</translation>
    </message>
    <message>
        <source>Changed since sent</source>
        <translation>Cambiado desde el envío</translation>
    </message>
    <message>
        <source>Job without a name</source>
        <translation>Trabajo sin nombre</translation>
    </message>
    <message>
        <source>This job cannot be read any more: restore a backup.</source>
        <translation>Este trabajo ya no se puede leer: restaure un respaldo.</translation>
    </message>
    <message>
        <source>%1 (copy)</source>
        <translation>%1 (copia)</translation>
    </message>
    <message>
        <source>copied</source>
        <translation>copiado</translation>
    </message>
    <message>
        <source>%1 archived</source>
        <translation>se archivó %1</translation>
    </message>
    <message>
        <source>%1 deleted</source>
        <translation>se borró %1</translation>
    </message>
    <message>
        <source>%1 opened again</source>
        <translation>se abrió otra vez %1</translation>
    </message>
</context>
<context>
    <name>lapwright::field::OrderModel</name>
    <message>
        <source>how runs are divided</source>
        <translation>cómo se dividen los tramos</translation>
    </message>
    <message>
        <source>spare pieces</source>
        <translation>piezas de repuesto</translation>
    </message>
    <message numerus="yes">
        <source>%n findings block this order; resolve them first.</source>
        <translation>
            <numerusform>%n observación bloquea este pedido; resuélvala primero.</numerusform>
            <numerusform>%n observaciones bloquean este pedido; resuélvalas primero.</numerusform>
        </translation>
    </message>
    <message>
        <source>The order was not written: %1</source>
        <translation>No se escribió el pedido: %1</translation>
    </message>
</context>
<context>
    <name>lapwright::field::PhotoList</name>
    <message>
        <source>Photo %1</source>
        <translation>Foto %1</translation>
    </message>
    <message>
        <source>The photo was not kept: %1</source>
        <translation>No se guardó la foto: %1</translation>
    </message>
    <message>
        <source>A job holds at most %1 photos.</source>
        <translation>Un trabajo lleva a lo más %1 fotos.</translation>
    </message>
    <message>
        <source>photo of %1</source>
        <translation>foto de %1</translation>
    </message>
    <message>
        <source>photo of %1 taken again</source>
        <translation>se tomó otra vez la foto de %1</translation>
    </message>
    <message>
        <source>photo of %1 removed</source>
        <translation>se quitó la foto de %1</translation>
    </message>
</context>
<context>
    <name>lapwright::field::PieceList</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>%1, spare</source>
        <translation>%1, de repuesto</translation>
    </message>
</context>
<context>
    <name>lapwright::field::RunEntry</name>
    <message>
        <source>%1 is no corner. Enter the angle on the building&apos;s side: 90° at a square outside corner, 270° at a square inside one.</source>
        <translation>%1 no es una esquina. Escriba el ángulo del lado del edificio: 90° en una esquina exterior a escuadra, 270° en una interior.</translation>
    </message>
    <message>
        <source>straight on</source>
        <translation>recto</translation>
    </message>
    <message>
        <source>Enter the angle of the corner, on the building&apos;s side.</source>
        <translation>Escriba el ángulo de la esquina, del lado del edificio.</translation>
    </message>
    <message>
        <source>Enter both sides and the diagonal between their ends.</source>
        <translation>Escriba los dos lados y la diagonal entre sus extremos.</translation>
    </message>
    <message>
        <source>These three lengths make no triangle.</source>
        <translation>Estos tres largos no forman un triángulo.</translation>
    </message>
    <message>
        <source>Enter the length.</source>
        <translation>Escriba el largo.</translation>
    </message>
</context>
<context>
    <name>lapwright::field::RunList</name>
    <message>
        <source>square, outside</source>
        <translation>a escuadra, exterior</translation>
    </message>
    <message>
        <source>square, inside</source>
        <translation>a escuadra, interior</translation>
    </message>
    <message>
        <source>cannot be</source>
        <translation>imposible</translation>
    </message>
    <message>
        <source>no length</source>
        <translation>sin largo</translation>
    </message>
    <message numerus="yes">
        <source>%n measures</source>
        <translation>
            <numerusform>%n medida</numerusform>
            <numerusform>%n medidas</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 apart</source>
        <translation>%1 de diferencia</translation>
    </message>
</context>
<context>
    <name>lapwright::field::Settings</name>
    <message>
        <source>As the tablet</source>
        <translation>Como la tableta</translation>
    </message>
</context>
<context>
    <name>lapwright::field::TrimModel</name>
    <message numerus="yes">
        <source>%n runs</source>
        <translation>
            <numerusform>%n tramo</numerusform>
            <numerusform>%n tramos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n without trim</source>
        <translation>
            <numerusform>%1 de %n sin moldura</numerusform>
            <numerusform>%1 de %n sin moldura</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>All %n</source>
        <translation>
            <numerusform>El único</numerusform>
            <numerusform>Los %n</numerusform>
        </translation>
    </message>
    <message>
        <source>on all of them</source>
        <translation>en todos</translation>
    </message>
    <message>
        <source>on %1 of %2</source>
        <translation>en %1 de %2</translation>
    </message>
    <message>
        <source>%1 taken off</source>
        <translation>se quitó %1</translation>
    </message>
    <message>
        <source>%1 chosen</source>
        <translation>se eligió %1</translation>
    </message>
    <message>
        <source>usual trims chosen</source>
        <translation>se eligieron las molduras usuales</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>Lap of one piece over the next</source>
        <translation>Traslape sobre la siguiente</translation>
    </message>
    <message>
        <source>A lap is at most %1.</source>
        <translation>Un traslape es de %1 a lo más.</translation>
    </message>
    <message>
        <source>%1 of %2 set</source>
        <translation>se puso %1 de %2</translation>
    </message>
</context>
</TS>
