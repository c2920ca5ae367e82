<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>ArrivalsScreen</name>
    <message>
        <source>Arrivals</source>
        <translation>Llegadas</translation>
    </message>
    <message>
        <source>Waiting for a person: %1</source>
        <translation>En espera de una persona: %1</translation>
    </message>
    <message>
        <source>Drop order files anywhere on this window</source>
        <translation>Suelte archivos de pedido en cualquier parte de esta ventana</translation>
    </message>
    <message>
        <source>Papers</source>
        <translation>Papeles</translation>
    </message>
    <message>
        <source>Ask back</source>
        <translation>Preguntar</translation>
    </message>
    <message>
        <source>Do not take it</source>
        <translation>No recibirlo</translation>
    </message>
    <message>
        <source>Accept all the same</source>
        <translation>Aceptarlo de todos modos</translation>
    </message>
    <message>
        <source>Take orders in</source>
        <translation>Recibir pedidos</translation>
    </message>
    <message>
        <source>Where to write confirmation, quality sheet and labels</source>
        <translation>Dónde escribir la confirmación, la hoja de calidad y las etiquetas</translation>
    </message>
    <message>
        <source>Orders to take in</source>
        <translation>Pedidos que se reciben</translation>
    </message>
    <message>
        <source>Orders</source>
        <translation>Pedidos</translation>
    </message>
    <message>
        <source>No order yet</source>
        <translation>Aún no hay pedidos</translation>
    </message>
    <message>
        <source>Drop an order file on this window, or set a folder to watch in Settings.</source>
        <translation>Suelte un archivo de pedido en esta ventana, o elija en Ajustes una carpeta que vigilar.</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Qué ver</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planta</translation>
    </message>
    <message>
        <source>Profiles (%1)</source>
        <translation>Perfiles (%1)</translation>
    </message>
    <message>
        <source>Pieces (%1)</source>
        <translation>Piezas (%1)</translation>
    </message>
    <message>
        <source>Findings (%1)</source>
        <translation>Observaciones (%1)</translation>
    </message>
    <message>
        <source>Profiles</source>
        <translation>Perfiles</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Choose an order</source>
        <translation>Elija un pedido</translation>
    </message>
    <message>
        <source>Let it in</source>
        <translation>Dejarlo entrar</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Retener</translation>
    </message>
    <message>
        <source>Where to write the label</source>
        <translation>Dónde escribir la etiqueta</translation>
    </message>
    <message>
        <source>Print the label of %1</source>
        <translation>Imprimir la etiqueta de %1</translation>
    </message>
</context>
<context>
    <name>BatchesScreen</name>
    <message>
        <source>Batches</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>What is to be cut, by metal, gauge and colour</source>
        <translation>Lo que hay que cortar, por metal, calibre y color</translation>
    </message>
    <message>
        <source>Plan the cuts</source>
        <translation>Planear los cortes</translation>
    </message>
    <message>
        <source>Everything is cut</source>
        <translation>Todo está cortado</translation>
    </message>
    <message>
        <source>Pieces of new orders and remakes gather here.</source>
        <translation>Aquí se juntan las piezas de pedidos nuevos y reposiciones.</translation>
    </message>
    <message>
        <source>Cannot be made as it is</source>
        <translation>No se puede hacer así</translation>
    </message>
    <message>
        <source>Pieces of the batch</source>
        <translation>Piezas del lote</translation>
    </message>
    <message>
        <source>No pieces</source>
        <translation>No hay piezas</translation>
    </message>
    <message>
        <source>Let the piece in</source>
        <translation>Dejar entrar la pieza</translation>
    </message>
    <message>
        <source>Hold the piece</source>
        <translation>Retener la pieza</translation>
    </message>
    <message>
        <source>Let the order in</source>
        <translation>Dejar entrar el pedido</translation>
    </message>
    <message>
        <source>Hold the order</source>
        <translation>Retener el pedido</translation>
    </message>
    <message>
        <source>Reading what is to be cut</source>
        <translation>Leyendo lo que se va a cortar</translation>
    </message>
</context>
<context>
    <name>CuttingScreen</name>
    <message>
        <source>Cutting</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>Where to write the cut ticket and the remnants&apos; labels</source>
        <translation>Dónde escribir la hoja de corte y las etiquetas de los retazos</translation>
    </message>
    <message>
        <source>Papers: cut ticket, labels of remnants</source>
        <translation>Papeles: hoja de corte, etiquetas de retazos</translation>
    </message>
    <message>
        <source>Sheet before</source>
        <translation>Hoja anterior</translation>
    </message>
    <message>
        <source>Next sheet</source>
        <translation>Hoja siguiente</translation>
    </message>
    <message>
        <source>Strip spoilt</source>
        <translation>Tira arruinada</translation>
    </message>
    <message>
        <source>All of it is cut</source>
        <translation>Está todo cortado</translation>
    </message>
    <message>
        <source>Not cut after all</source>
        <translation>Al final no está cortada</translation>
    </message>
    <message>
        <source>This is cut</source>
        <translation>Esta está cortada</translation>
    </message>
    <message>
        <source>Sheets to cut</source>
        <translation>Hojas que cortar</translation>
    </message>
    <message>
        <source>No sheet waits</source>
        <translation>No espera ninguna hoja</translation>
    </message>
    <message>
        <source>Plan the cuts in Batches.</source>
        <translation>Planee los cortes en Lotes.</translation>
    </message>
    <message>
        <source>Strips in cutting order</source>
        <translation>Tiras en orden de corte</translation>
    </message>
    <message>
        <source>Where to write the remnants&apos; labels</source>
        <translation>Dónde escribir las etiquetas de los retazos</translation>
    </message>
    <message>
        <source>Label these now</source>
        <translation>Etiquete estos ahora</translation>
    </message>
    <message>
        <source>Remnants to label</source>
        <translation>Retazos por etiquetar</translation>
    </message>
    <message>
        <source>Print their labels</source>
        <translation>Imprimir sus etiquetas</translation>
    </message>
    <message>
        <source>They are labelled</source>
        <translation>Ya están etiquetados</translation>
    </message>
</context>
<context>
    <name>Done</name>
    <message>
        <source>%1 by %2</source>
        <translation>%1 por %2</translation>
    </message>
</context>
<context>
    <name>DraftEditor</name>
    <message>
        <source>It holds</source>
        <translation>Es válido</translation>
    </message>
    <message>
        <source>It does not hold yet</source>
        <translation>Todavía no es válido</translation>
    </message>
    <message>
        <source>How to change it</source>
        <translation>Cómo cambiarlo</translation>
    </message>
    <message>
        <source>Fields</source>
        <translation>Campos</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Texto</translation>
    </message>
    <message>
        <source>The text is no document yet. Mend it there; then its fields can be filled in again.</source>
        <translation>El texto todavía no es un documento. Corríjalo allí; después se podrán volver a llenar sus campos.</translation>
    </message>
</context>
<context>
    <name>DraftField</name>
    <message>
        <source>Add to %1</source>
        <translation>Agregar a %1</translation>
    </message>
    <message>
        <source>Take %1 out</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>not given</source>
        <translation>sin dato</translation>
    </message>
</context>
<context>
    <name>DraftFields</name>
    <message>
        <source>Fields</source>
        <translation>Campos</translation>
    </message>
</context>
<context>
    <name>DraftScreen</name>
    <message>
        <source>Leave as it was</source>
        <translation>Dejarlo como estaba</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>Guardarlo</translation>
    </message>
</context>
<context>
    <name>FileAsker</name>
    <message>
        <source>Lapwright documents (*.json *.zip)</source>
        <translation>Documentos de Lapwright (*.json *.zip)</translation>
    </message>
    <message>
        <source>Lapwright (*.%1)</source>
        <translation>Lapwright (*.%1)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
</context>
<context>
    <name>FindingsList</name>
    <message>
        <source>Findings</source>
        <translation>Observaciones</translation>
    </message>
</context>
<context>
    <name>FoldedWords</name>
    <message>
        <source>Fold: %1</source>
        <translation>Plegar: %1</translation>
    </message>
    <message>
        <source>Unfold: %1</source>
        <translation>Desplegar: %1</translation>
    </message>
</context>
<context>
    <name>FoldingScreen</name>
    <message>
        <source>Folding</source>
        <translation>Doblado</translation>
    </message>
    <message>
        <source>Hide the queue</source>
        <translation>Ocultar lista</translation>
    </message>
    <message>
        <source>Show the queue</source>
        <translation>Ver lista</translation>
    </message>
    <message>
        <source>Whole lot folded</source>
        <translation>Grupo doblado</translation>
    </message>
    <message>
        <source>Lots to fold</source>
        <translation>Grupos que doblar</translation>
    </message>
    <message>
        <source>Nothing waits to be folded</source>
        <translation>Nada por doblar</translation>
    </message>
    <message>
        <source>Pieces come here when they are cut.</source>
        <translation>Las piezas llegan aquí cuando están cortadas.</translation>
    </message>
    <message>
        <source>This cannot be folded here</source>
        <translation>Esto no se puede doblar aquí</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Tope</translation>
    </message>
    <message>
        <source>Mark being folded</source>
        <translation>Marca que se dobla</translation>
    </message>
    <message>
        <source>Stand still</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>In motion</source>
        <translation>Animar</translation>
    </message>
    <message>
        <source>Spoilt</source>
        <translation>Arruinada</translation>
    </message>
    <message>
        <source>Piece folded</source>
        <translation>Doblada</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Sigue</translation>
    </message>
    <message>
        <source>Fold the last again</source>
        <translation>Doblar la última otra vez</translation>
    </message>
    <message>
        <source>Again</source>
        <translation>Otra vez</translation>
    </message>
    <message>
        <source>This piece again from its first step</source>
        <translation>Esta pieza otra vez desde su primer paso</translation>
    </message>
    <message>
        <source>The last piece again</source>
        <translation>La última pieza otra vez</translation>
    </message>
    <message>
        <source>Step before</source>
        <translation>Paso anterior</translation>
    </message>
</context>
<context>
    <name>Form</name>
    <message>
        <source>Point that is placed</source>
        <translation>Punto que se coloca</translation>
    </message>
    <message>
        <source>Its place across</source>
        <translation>Su lugar a lo ancho</translation>
    </message>
    <message>
        <source>Its place up</source>
        <translation>Su lugar en altura</translation>
    </message>
    <message>
        <source>Where it applies</source>
        <translation>Dónde se aplica</translation>
    </message>
    <message>
        <source>Back gauge</source>
        <translation>Tope trasero</translation>
    </message>
    <message>
        <source>Beam</source>
        <translation>Viga</translation>
    </message>
    <message>
        <source>Another beam face</source>
        <translation>Otra cara de viga</translation>
    </message>
    <message>
        <source>Beam inserts</source>
        <translation>Insertos de la viga</translation>
    </message>
    <message>
        <source>Bed, corners</source>
        <translation>Mesa, esquinas</translation>
    </message>
    <message>
        <source>Bending length</source>
        <translation>Largo de doblado</translation>
    </message>
    <message>
        <source>Bends</source>
        <translation>Dobleces</translation>
    </message>
    <message>
        <source>Body, corners</source>
        <translation>Cuerpo, esquinas</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Capacidad</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>Cents a kilogram</source>
        <translation>Centavos por kilogramo</translation>
    </message>
    <message>
        <source>Cents a square metre</source>
        <translation>Centavos por metro cuadrado</translation>
    </message>
    <message>
        <source>Clamp, corners</source>
        <translation>Mordaza, esquinas</translation>
    </message>
    <message>
        <source>Clamp opening</source>
        <translation>Abertura de la mordaza</translation>
    </message>
    <message>
        <source>Clauses</source>
        <translation>Cláusulas</translation>
    </message>
    <message>
        <source>Rows of cleats</source>
        <translation>Filas de grapas</translation>
    </message>
    <message>
        <source>Cleats apart</source>
        <translation>Separación de las grapas</translation>
    </message>
    <message>
        <source>Closed end</source>
        <translation>Extremo cerrado</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Veces</translation>
    </message>
    <message>
        <source>Another coil</source>
        <translation>Otro rollo</translation>
    </message>
    <message>
        <source>Coil widths planned apart</source>
        <translation>Anchos de rollo planeados aparte</translation>
    </message>
    <message>
        <source>Takes coils</source>
        <translation>Acepta rollos</translation>
    </message>
    <message>
        <source>Colour</source>
        <translation>Color</translation>
    </message>
    <message>
        <source>Side of the colour</source>
        <translation>Lado del color</translation>
    </message>
    <message>
        <source>Degrees</source>
        <translation>Grados</translation>
    </message>
    <message>
        <source>Millimetres</source>
        <translation>Milímetros</translation>
    </message>
    <message>
        <source>Head lap of a course</source>
        <translation>Traslape superior de una hilada</translation>
    </message>
    <message>
        <source>A crosscut</source>
        <translation>Un corte transversal</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Usually</source>
        <translation>Normalmente</translation>
    </message>
    <message>
        <source>What it demands</source>
        <translation>Qué exige</translation>
    </message>
    <message>
        <source>Step of the display</source>
        <translation>Paso del indicador</translation>
    </message>
    <message>
        <source>Folding down</source>
        <translation>Dobla hacia abajo</translation>
    </message>
    <message>
        <source>Edition</source>
        <translation>Edición</translation>
    </message>
    <message>
        <source>Hem at the outer end</source>
        <translation>Dobladillo en el extremo exterior</translation>
    </message>
    <message>
        <source>Other hours</source>
        <translation>Otro horario</translation>
    </message>
    <message>
        <source>Fact</source>
        <translation>Dato</translation>
    </message>
    <message>
        <source>Rows of fasteners</source>
        <translation>Filas de fijaciones</translation>
    </message>
    <message>
        <source>Fasteners apart</source>
        <translation>Separación de las fijaciones</translation>
    </message>
    <message>
        <source>Height of the fingers</source>
        <translation>Altura de los dedos</translation>
    </message>
    <message>
        <source>Direction of the first leg</source>
        <translation>Dirección de la primera ala</translation>
    </message>
    <message>
        <source>Rule for the fixing</source>
        <translation>Regla para la fijación</translation>
    </message>
    <message>
        <source>Flat</source>
        <translation>Plano</translation>
    </message>
    <message>
        <source>Presses hems</source>
        <translation>Prensa dobladillos</translation>
    </message>
    <message>
        <source>Fold angle left</source>
        <translation>Ángulo de doblez que queda</translation>
    </message>
    <message>
        <source>Folding, of the planned time</source>
        <translation>Doblado, del tiempo planeado</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation>Viernes</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Calibre</translation>
    </message>
    <message>
        <source>Left and right differ</source>
        <translation>Izquierda y derecha son distintas</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>Horario</translation>
    </message>
    <message>
        <source>Short name</source>
        <translation>Nombre corto</translation>
    </message>
    <message>
        <source>Inside radius</source>
        <translation>Radio interior</translation>
    </message>
    <message>
        <source>Installation</source>
        <translation>Instalación</translation>
    </message>
    <message>
        <source>Is</source>
        <translation>Es</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>What it is called</source>
        <translation>Cómo se llama</translation>
    </message>
    <message>
        <source>Labour, cents an hour</source>
        <translation>Mano de obra, centavos por hora</translation>
    </message>
    <message>
        <source>Minutes of labour</source>
        <translation>Minutos de mano de obra</translation>
    </message>
    <message>
        <source>Lap</source>
        <translation>Traslape</translation>
    </message>
    <message>
        <source>Rule for the lap</source>
        <translation>Regla para el traslape</translation>
    </message>
    <message>
        <source>Largest fold angle</source>
        <translation>Mayor ángulo de doblez</translation>
    </message>
    <message>
        <source>Widest open hem</source>
        <translation>Dobladillo abierto más ancho</translation>
    </message>
    <message>
        <source>What lateness counts, by priority</source>
        <translation>Cuánto cuenta el atraso, según la prioridad</translation>
    </message>
    <message>
        <source>At least</source>
        <translation>Por lo menos</translation>
    </message>
    <message>
        <source>Shortest leg</source>
        <translation>Ala más corta</translation>
    </message>
    <message>
        <source>Legs</source>
        <translation>Alas</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Largo</translation>
    </message>
    <message>
        <source>Longest</source>
        <translation>El más largo</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Máquinas</translation>
    </message>
    <message>
        <source>Metals</source>
        <translation>Metales</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>Medida</translation>
    </message>
    <message>
        <source>Measured here</source>
        <translation>Medido aquí</translation>
    </message>
    <message>
        <source>Springback measured here</source>
        <translation>Recuperación elástica medida aquí</translation>
    </message>
    <message>
        <source>Measures it asks for</source>
        <translation>Medidas que pide</translation>
    </message>
    <message>
        <source>Metal</source>
        <translation>Metal</translation>
    </message>
    <message>
        <source>Clearance at a mitre</source>
        <translation>Holgura en un inglete</translation>
    </message>
    <message>
        <source>Model in the library</source>
        <translation>Modelo de la biblioteca</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>Lunes</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>A lo más</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Número</translation>
    </message>
    <message>
        <source>For a bend</source>
        <translation>Por doblez</translation>
    </message>
    <message>
        <source>For an order</source>
        <translation>Por pedido</translation>
    </message>
    <message>
        <source>For a piece</source>
        <translation>Por pieza</translation>
    </message>
    <message>
        <source>For a profile</source>
        <translation>Por perfil</translation>
    </message>
    <message>
        <source>A blank taken up and laid aside</source>
        <translation>Tomar y apartar una lámina plana</translation>
    </message>
    <message>
        <source>Plus</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Another program</source>
        <translation>Otro programa</translation>
    </message>
    <message>
        <source>Another rack</source>
        <translation>Otro estante</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Motivo</translation>
    </message>
    <message>
        <source>Remedy</source>
        <translation>Remedio</translation>
    </message>
    <message>
        <source>Rise</source>
        <translation>Subida</translation>
    </message>
    <message>
        <source>Rounded up to</source>
        <translation>Redondeado hacia arriba a</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regla</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Avance</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation>Sábado</translation>
    </message>
    <message>
        <source>Laps are sealed</source>
        <translation>Los traslapes se sellan</translation>
    </message>
    <message>
        <source>Angle to set</source>
        <translation>Ángulo que se ajusta</translation>
    </message>
    <message>
        <source>Making ready</source>
        <translation>Preparación</translation>
    </message>
    <message>
        <source>A sheet laid in and taken away</source>
        <translation>Poner y quitar una hoja</translation>
    </message>
    <message>
        <source>Takes sheets</source>
        <translation>Acepta hojas</translation>
    </message>
    <message>
        <source>Shifts</source>
        <translation>Turnos</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Lado</translation>
    </message>
    <message>
        <source>Slides in endways</source>
        <translation>Se mete por el costado</translation>
    </message>
    <message>
        <source>A slit</source>
        <translation>Un corte a lo largo</translation>
    </message>
    <message>
        <source>The slitter set</source>
        <translation>Ajustar la cortadora</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>Hem at the inner end</source>
        <translation>Dobladillo en el extremo interior</translation>
    </message>
    <message>
        <source>What it says</source>
        <translation>Qué dice</translation>
    </message>
    <message>
        <source>Suits</source>
        <translation>Sirve para</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>Domingo</translation>
    </message>
    <message>
        <source>Tax, hundredths of a percent</source>
        <translation>Impuesto, centésimas de un por ciento</translation>
    </message>
    <message>
        <source>Tensile strength</source>
        <translation>Resistencia a la tracción</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Espesor</translation>
    </message>
    <message>
        <source>Throat</source>
        <translation>Garganta</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation>Jueves</translation>
    </message>
    <message>
        <source>Pieces moved on together</source>
        <translation>Piezas que pasan juntas</translation>
    </message>
    <message>
        <source>The truck leaves at</source>
        <translation>El camión sale a las</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation>Martes</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Giro</translation>
    </message>
    <message>
        <source>Turn-up</source>
        <translation>Vuelta hacia arriba</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Values</source>
        <translation>Valores</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Desperdicio</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation>Miércoles</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Widest</source>
        <translation>El más ancho</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Wrap tab</source>
        <translation>Lengüeta envolvente</translation>
    </message>
    <message>
        <source>Blocks</source>
        <translation>Bloquea</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Cerrado</translation>
    </message>
    <message>
        <source>Turn of the crease</source>
        <translation>Giro de la arista</translation>
    </message>
    <message>
        <source>Cutting</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>Equal to</source>
        <translation>Igual a</translation>
    </message>
    <message>
        <source>Folding</source>
        <translation>Doblado</translation>
    </message>
    <message>
        <source>More than</source>
        <translation>Más de</translation>
    </message>
    <message>
        <source>One of</source>
        <translation>Uno de</translation>
    </message>
    <message>
        <source>Informs</source>
        <translation>Informa</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Less than</source>
        <translation>Menos de</translation>
    </message>
    <message>
        <source>Not equal to</source>
        <translation>Distinto de</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abierto</translation>
    </message>
    <message>
        <source>Slope of the other plane</source>
        <translation>Pendiente del otro plano</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>Slope of the run&apos;s plane</source>
        <translation>Pendiente del plano del tramo</translation>
    </message>
    <message>
        <source>Teardrop</source>
        <translation>De gota</translation>
    </message>
    <message>
        <source>Turn of the wall</source>
        <translation>Giro de la pared</translation>
    </message>
    <message>
        <source>Warns</source>
        <translation>Advierte</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántos</translation>
    </message>
    <message>
        <source>Name or label</source>
        <translation>Nombre o etiqueta</translation>
    </message>
    <message>
        <source>Longest crosscut</source>
        <translation>Corte transversal más largo</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Coil</source>
        <translation>Rollo</translation>
    </message>
    <message>
        <source>Remnant</source>
        <translation>Retazo</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Hojas</translation>
    </message>
    <message>
        <source>Times it takes</source>
        <translation>Tiempos</translation>
    </message>
</context>
<context>
    <name>GanttView</name>
    <message>
        <source>%1 · Return pins it there, Esc leaves it</source>
        <translation>%1 · Enter la fija ahí, Esc la deja</translation>
    </message>
</context>
<context>
    <name>LoadsScreen</name>
    <message>
        <source>Loads</source>
        <translation>Cargas</translation>
    </message>
    <message>
        <source>Folded and waiting for a truck: %1</source>
        <translation>Doblado y en espera de un camión: %1</translation>
    </message>
    <message>
        <source>Nothing waits for a truck</source>
        <translation>Nada espera un camión</translation>
    </message>
    <message>
        <source>Where to write load list, check sheet and labels</source>
        <translation>Dónde escribir la lista de carga, la hoja de revisión y las etiquetas</translation>
    </message>
    <message>
        <source>Where to write the load list</source>
        <translation>Dónde escribir la lista de carga</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Por cargar</translation>
    </message>
    <message>
        <source>Ready to load</source>
        <translation>Piezas por cargar</translation>
    </message>
    <message>
        <source>Nothing folded waits</source>
        <translation>No hay nada doblado en espera</translation>
    </message>
    <message>
        <source>Truck</source>
        <translation>Camión</translation>
    </message>
    <message>
        <source>Name or plate</source>
        <translation>Nombre o placa</translation>
    </message>
    <message>
        <source>Bundle and load</source>
        <translation>Atar y cargar</translation>
    </message>
    <message>
        <source>No load yet</source>
        <translation>Aún no hay cargas</translation>
    </message>
    <message>
        <source>Bundles</source>
        <translation>Atados</translation>
    </message>
    <message>
        <source>Papers</source>
        <translation>Papeles</translation>
    </message>
    <message>
        <source>Write the load list</source>
        <translation>Escribir la lista de carga</translation>
    </message>
    <message>
        <source>Bundles of the load</source>
        <translation>Atados de la carga</translation>
    </message>
    <message>
        <source>Choose a load</source>
        <translation>Elija una carga</translation>
    </message>
    <message>
        <source>Where to write the label</source>
        <translation>Dónde escribir la etiqueta</translation>
    </message>
    <message>
        <source>Print the label of this bundle</source>
        <translation>Imprimir la etiqueta de este atado</translation>
    </message>
</context>
<context>
    <name>Main</name>
    <message>
        <source>Arrivals</source>
        <translation>Llegadas</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Lotes</translation>
    </message>
    <message>
        <source>Cutting</source>
        <translation>Corte</translation>
    </message>
    <message>
        <source>Folding</source>
        <translation>Doblado</translation>
    </message>
    <message>
        <source>Schedule</source>
        <translation>Calendario</translation>
    </message>
    <message>
        <source>Loads</source>
        <translation>Cargas</translation>
    </message>
    <message>
        <source>Receipts</source>
        <translation>Recibos</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Existencias</translation>
    </message>
    <message>
        <source>Reference</source>
        <translation>Consulta</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>PlanningStrip</name>
    <message>
        <source>Planning</source>
        <translation>Se planea</translation>
    </message>
</context>
<context>
    <name>ReceiptsScreen</name>
    <message>
        <source>Receipts</source>
        <translation>Recibos</translation>
    </message>
    <message>
        <source>What the crew leads found, and what is made again</source>
        <translation>Lo que hallaron los jefes de cuadrilla, y lo que se hace otra vez</translation>
    </message>
    <message>
        <source>Order all again</source>
        <translation>Pedir todo otra vez</translation>
    </message>
    <message>
        <source>Take a receipt in</source>
        <translation>Recibir un recibo</translation>
    </message>
    <message>
        <source>Receipt to take in</source>
        <translation>Recibo que se recibe</translation>
    </message>
    <message>
        <source>Short, damaged or wrong</source>
        <translation>Faltantes, dañadas o equivocadas</translation>
    </message>
    <message>
        <source>Nothing has to be made again</source>
        <translation>No hay que hacer nada otra vez</translation>
    </message>
    <message>
        <source>What came short, damaged or wrong stands here until it is ordered again.</source>
        <translation>Lo que faltó, llegó dañado o equivocado está aquí hasta que se pide otra vez.</translation>
    </message>
</context>
<context>
    <name>ReferenceScreen</name>
    <message>
        <source>Reference</source>
        <translation>Consulta</translation>
    </message>
    <message>
        <source>Changing %1</source>
        <translation>Se cambia %1</translation>
    </message>
    <message>
        <source>What to look up</source>
        <translation>Qué consultar</translation>
    </message>
    <message>
        <source>Machines</source>
        <translation>Máquinas</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation>Molduras</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Reglas</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Taller</translation>
    </message>
    <message>
        <source>Export</source>
        <translation>Exportar</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Importar</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Document to import</source>
        <translation>Documento que se importa</translation>
    </message>
    <message>
        <source>Where to write it</source>
        <translation>Dónde escribirlo</translation>
    </message>
    <message>
        <source>Clauses</source>
        <translation>Cláusulas</translation>
    </message>
    <message>
        <source>An example: 6 in 12, square corners, measures without a usual value a quarter up their range.</source>
        <translation>Un ejemplo: 6 en 12, esquinas a escuadra, medidas sin valor usual a un cuarto de su rango.</translation>
    </message>
    <message>
        <source>Machines, trim, rules, the floor and its hours, and what the shop asks</source>
        <translation>Máquinas, molduras, reglas, el taller y su horario, y lo que cobra</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Rates</source>
        <translation>Tarifas</translation>
    </message>
    <message>
        <source>Give the rates</source>
        <translation>Dar las tarifas</translation>
    </message>
    <message>
        <source>No rates yet</source>
        <translation>Aún no hay tarifas</translation>
    </message>
    <message>
        <source>Nothing here</source>
        <translation>No hay nada aquí</translation>
    </message>
    <message>
        <source>Confirmations say no cost until the shop says what it asks.</source>
        <translation>Las confirmaciones no dicen el costo hasta que el taller diga lo que cobra.</translation>
    </message>
</context>
<context>
    <name>RowsList</name>
    <message>
        <source>Nothing here</source>
        <translation>No hay nada aquí</translation>
    </message>
    <message>
        <source>Nothing matches the search</source>
        <translation>Nada coincide con la búsqueda</translation>
    </message>
</context>
<context>
    <name>ScheduleScreen</name>
    <message>
        <source>Schedule</source>
        <translation>Calendario</translation>
    </message>
    <message>
        <source>Drag a task to where it must stay: the rest is planned around it</source>
        <translation>Arrastre una tarea a donde debe quedar: lo demás se planea alrededor</translation>
    </message>
    <message>
        <source>Let go</source>
        <translation>Soltar</translation>
    </message>
    <message>
        <source>Pin here</source>
        <translation>Fijar aquí</translation>
    </message>
    <message>
        <source>Schedule from now</source>
        <translation>Programar desde ahora</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Nothing is scheduled</source>
        <translation>No hay nada programado</translation>
    </message>
    <message>
        <source>Plan the cuts in Batches, or schedule from now.</source>
        <translation>Planee los cortes en Lotes, o programe desde ahora.</translation>
    </message>
    <message>
        <source>Tasks of the day</source>
        <translation>Tareas del día</translation>
    </message>
    <message>
        <source>No task</source>
        <translation>Ninguna tarea</translation>
    </message>
    <message>
        <source>Late, and why</source>
        <translation>Tarde, y por qué</translation>
    </message>
    <message>
        <source>Late tasks</source>
        <translation>Tareas tarde</translation>
    </message>
    <message>
        <source>What the schedule comes to</source>
        <translation>En qué queda el calendario</translation>
    </message>
</context>
<context>
    <name>ScreenFrame</name>
    <message>
        <source>Mark, house or customer</source>
        <translation>Marca, casa o cliente</translation>
    </message>
</context>
<context>
    <name>SettingsScreen</name>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Of this station; kept as you choose</source>
        <translation>De esta estación; se guardan al elegirlos</translation>
    </message>
    <message>
        <source>Where to copy everything to</source>
        <translation>Dónde copiarlo todo</translation>
    </message>
    <message>
        <source>The copy to restore</source>
        <translation>La copia que se restaura</translation>
    </message>
    <message>
        <source>Who and where</source>
        <translation>Quién y dónde</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Estación</translation>
    </message>
    <message>
        <source>Your name</source>
        <translation>Su nombre</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Mirar</translation>
    </message>
    <message>
        <source>Make and load</source>
        <translation>Hacer y cargar</translation>
    </message>
    <message>
        <source>Plan everything</source>
        <translation>Planearlo todo</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>Screen</source>
        <translation>Pantalla</translation>
    </message>
    <message>
        <source>Theme</source>
        <translation>Tema</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Claro</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Oscuro</translation>
    </message>
    <message>
        <source>Sunlight</source>
        <translation>Sol</translation>
    </message>
    <message>
        <source>Shop floor</source>
        <translation>Taller</translation>
    </message>
    <message>
        <source>Size of text, percent</source>
        <translation>Tamaño del texto, por ciento</translation>
    </message>
    <message>
        <source>Touch screen</source>
        <translation>Pantalla táctil</translation>
    </message>
    <message>
        <source>Tall controls for fingers and gloves</source>
        <translation>Controles altos para dedos y guantes</translation>
    </message>
    <message>
        <source>Left-handed</source>
        <translation>Zurdo</translation>
    </message>
    <message>
        <source>Actions and panels on the other side</source>
        <translation>Acciones y paneles al otro lado</translation>
    </message>
    <message>
        <source>Millimetres</source>
        <translation>Milímetros</translation>
    </message>
    <message>
        <source>Instead of feet, inches and fractions</source>
        <translation>En vez de pies, pulgadas y fracciones</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Folder to watch for orders</source>
        <translation>Carpeta vigilada para pedidos</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguna</translation>
    </message>
    <message>
        <source>Order files put there are taken in by themselves.</source>
        <translation>Los archivos de pedido puestos ahí se reciben solos.</translation>
    </message>
    <message>
        <source>Nothing is taken in from there: that is for who may plan.</source>
        <translation>De ahí no se recibe nada: eso es para quien puede planear.</translation>
    </message>
    <message>
        <source>Seconds to look for a better cut plan, for each metal</source>
        <translation>Segundos para buscar un mejor plan de corte, por cada metal</translation>
    </message>
    <message>
        <source>Seconds to look for a better cut plan</source>
        <translation>Segundos para buscar un mejor plan de corte</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiquetas</translation>
    </message>
    <message>
        <source>Sheets of labels</source>
        <translation>Hojas de etiquetas</translation>
    </message>
    <message>
        <source>Roll 100 × 50 mm</source>
        <translation>Rollo 100 × 50 mm</translation>
    </message>
    <message>
        <source>Roll 4 × 2 in</source>
        <translation>Rollo 4 × 2 pulg</translation>
    </message>
    <message>
        <source>Angles between the legs</source>
        <translation>Ángulos entre las alas</translation>
    </message>
    <message>
        <source>On quality sheets, instead of how far a bend turns from flat</source>
        <translation>En las hojas de calidad, en vez de cuánto gira un doblez desde plano</translation>
    </message>
    <message>
        <source>Backup</source>
        <translation>Respaldo</translation>
    </message>
    <message>
        <source>Copy everything to a file</source>
        <translation>Copiarlo todo a un archivo</translation>
    </message>
    <message>
        <source>Restore from a copy</source>
        <translation>Restaurar de una copia</translation>
    </message>
    <message>
        <source>Restoring puts the copy in place of everything, at every station; what stood here before is written beside the copy first.</source>
        <translation>Restaurar pone la copia en lugar de todo, en todas las estaciones; lo que había antes se escribe primero junto a la copia.</translation>
    </message>
    <message>
        <source>Database: %1</source>
        <translation>Base de datos: %1</translation>
    </message>
    <message>
        <source>Cost on confirmations</source>
        <translation>Costo en las confirmaciones</translation>
    </message>
    <message>
        <source>At the shop&apos;s rates, which stand under Reference</source>
        <translation>Según las tarifas del taller, que están en Consulta</translation>
    </message>
    <message>
        <source>This shop&apos;s code</source>
        <translation>El código de este taller</translation>
    </message>
    <message>
        <source>Who counts a load compares this once with the code on the tablet; from then on the tablet questions load lists that this shop did not sign.</source>
        <translation>Quien cuenta una carga lo compara una vez con el código de la tableta; desde entonces la tableta pone en duda las listas de carga que este taller no firmó.</translation>
    </message>
    <message>
        <source>What may be done at this station</source>
        <translation>Lo que se puede hacer en esta estación</translation>
    </message>
</context>
<context>
    <name>StockScreen</name>
    <message>
        <source>Stock</source>
        <translation>Existencias</translation>
    </message>
    <message>
        <source>%1 on the racks</source>
        <translation>%1 en los estantes</translation>
    </message>
    <message>
        <source>Write to a file</source>
        <translation>Escribir en un archivo</translation>
    </message>
    <message>
        <source>Read from a file</source>
        <translation>Leer de un archivo</translation>
    </message>
    <message>
        <source>Stock document</source>
        <translation>Documento de existencias</translation>
    </message>
    <message>
        <source>Where to write the stock</source>
        <translation>Dónde escribir las existencias</translation>
    </message>
    <message>
        <source>No stock yet</source>
        <translation>Aún no hay existencias</translation>
    </message>
    <message>
        <source>Sheets counted on the rack</source>
        <translation>Hojas contadas en el estante</translation>
    </message>
    <message>
        <source>%1 by plans that wait to be cut</source>
        <translation>%1 por planes que esperan a ser cortados</translation>
    </message>
    <message>
        <source>It is not there any more</source>
        <translation>Ya no está</translation>
    </message>
    <message>
        <source>Label, metal or colour</source>
        <translation>Etiqueta, metal o color</translation>
    </message>
    <message>
        <source>Where to write the label</source>
        <translation>Dónde escribir la etiqueta</translation>
    </message>
    <message>
        <source>Print its label</source>
        <translation>Imprimir su etiqueta</translation>
    </message>
    <message>
        <source>One item of the stock</source>
        <translation>Un artículo de las existencias</translation>
    </message>
    <message>
        <source>New item</source>
        <translation>Artículo nuevo</translation>
    </message>
    <message>
        <source>Put the first item on the racks, or read a stock document from a file.</source>
        <translation>Ponga el primer artículo en los estantes, o lea un documento de existencias de un archivo.</translation>
    </message>
    <message>
        <source>Length left on the coil</source>
        <translation>Largo que queda en el rollo</translation>
    </message>
    <message>
        <source>So much is left</source>
        <translation>Queda esto</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Take off the racks</source>
        <translation>Quitar de los estantes</translation>
    </message>
</context>
<context>
    <name>lapwright::model::Arrivals</name>
    <message>
        <source>, revision %1</source>
        <translation>, versión %1</translation>
    </message>
    <message>
        <source>revision %1 waits for a person</source>
        <translation>la versión %1 espera a una persona</translation>
    </message>
    <message>
        <source>%1, revision %2</source>
        <translation>%1, versión %2</translation>
    </message>
    <message>
        <source>%1 is not taken in, because its runs have findings that block:</source>
        <translation>%1 no se recibe, porque sus tramos tienen observaciones que bloquean:</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, revision %2: taken in</source>
        <translation>%1, versión %2: recibido</translation>
    </message>
    <message>
        <source>It still waits:</source>
        <translation>Todavía espera:</translation>
    </message>
    <message>
        <source>%1 does not wait any more</source>
        <translation>%1 ya no espera</translation>
    </message>
    <message>
        <source>%1 is not taken. It is kept, and waits again if a person takes it in again</source>
        <translation>%1 no se recibe. Queda guardado, y espera otra vez si una persona lo vuelve a recibir</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Copied: paste it into a message to the installer</source>
        <translation>Copiado: péguelo en un mensaje al instalador</translation>
    </message>
</context>
<context>
    <name>lapwright::model::Batches</name>
    <message>
        <source>not planned yet</source>
        <translation>aún no planeado</translation>
    </message>
    <message>
        <source>%1 not planned yet</source>
        <translation>%1 aún sin planear</translation>
    </message>
    <message>
        <source>first due %1</source>
        <translation>lo primero para el %1</translation>
    </message>
    <message>
        <source>%1 held</source>
        <translation>%1 retenidas</translation>
    </message>
    <message>
        <source>, its order is held</source>
        <translation>, su pedido está retenido</translation>
    </message>
    <message>
        <source>, held</source>
        <translation>, retenida</translation>
    </message>
    <message>
        <source>, made again</source>
        <translation>, hecha otra vez</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 is not in its order any more</source>
        <translation>%1 ya no está en su pedido</translation>
    </message>
    <message>
        <source>%1 is held; plan again</source>
        <translation>%1 está retenida; planee otra vez</translation>
    </message>
    <message>
        <source>%1 is let in; plan again</source>
        <translation>%1 puede entrar; planee otra vez</translation>
    </message>
    <message>
        <source>Nothing is left to cut</source>
        <translation>No queda nada que cortar</translation>
    </message>
    <message>
        <source>%1 planned</source>
        <translation>%1 planeados</translation>
    </message>
    <message>
        <source>Planned, but not everything can be made: see the list</source>
        <translation>Planeado, pero no todo se puede hacer: vea la lista</translation>
    </message>
    <message>
        <source>The stock does not suffice for %1 of %2.</source>
        <translation>Las existencias no alcanzan para %1 de %2.</translation>
    </message>
</context>
<context>
    <name>lapwright::model::CuttingDesk</name>
    <message>
        <source>× %1</source>
        <translation>× %1</translation>
    </message>
    <message>
        <source>This plan does not pass its check; plan again</source>
        <translation>Este plan no pasa su revisión; planee otra vez</translation>
    </message>
    <message>
        <source>%1, %2 cut alike</source>
        <translation>%1, %2 cortadas iguales</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1: %2 × %3</source>
        <translation>%1: %2 × %3</translation>
    </message>
    <message>
        <source>Keep and label %1</source>
        <translation>Guarde y etiquete %1</translation>
    </message>
    <message>
        <source>This plan does not wait any more: another station cut it or planned again</source>
        <translation>Este plan ya no espera: otra estación lo cortó o planeó otra vez</translation>
    </message>
    <message>
        <source>Cut: %1</source>
        <translation>Cortado: %1</translation>
    </message>
    <message>
        <source>The strip is scrapped; the rest is planned again</source>
        <translation>La tira va a la chatarra; lo demás se planea otra vez</translation>
    </message>
    <message>
        <source>The strip is scrapped, the rest is planned again</source>
        <translation>La tira va a la chatarra, lo demás está planeado otra vez</translation>
    </message>
    <message>
        <source>Planned again, but not everything can be made: see Batches</source>
        <translation>Planeado otra vez, pero no todo se puede hacer: vea Lotes</translation>
    </message>
    <message>
        <source>%1 × %2 at %3</source>
        <translation>%1 × %2 de %3</translation>
    </message>
    <message>
        <source>%1, trimmed to %2</source>
        <translation>%1, recortada a %2</translation>
    </message>
    <message>
        <source>%1   %2</source>
        <translation>%1   %2</translation>
    </message>
    <message>
        <source>left %1</source>
        <translation>queda %1</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
</context>
<context>
    <name>lapwright::model::Draft</name>
    <message>
        <source>%1 is kept as it stands now</source>
        <translation>%1 queda guardado como está ahora</translation>
    </message>
</context>
<context>
    <name>lapwright::model::DraftForm</name>
    <message>
        <source>expected %1</source>
        <translation>se esperaba %1</translation>
    </message>
    <message>
        <source>found %1, expected %2</source>
        <translation>se encontró %1, se esperaba %2</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>has to be given</source>
        <translation>hay que darlo</translation>
    </message>
</context>
<context>
    <name>lapwright::model::FoldingDesk</name>
    <message>
        <source>%1 to fold</source>
        <translation>%1 por doblar</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Paso %1 de %2</translation>
    </message>
    <message>
        <source>Colour up</source>
        <translation>Color arriba</translation>
    </message>
    <message>
        <source>Colour down</source>
        <translation>Color abajo</translation>
    </message>
    <message>
        <source>One %1 folded</source>
        <translation>Una %1 doblada</translation>
    </message>
    <message>
        <source>One %1 scrapped; it goes into the next plan</source>
        <translation>Una %1 va a la chatarra; entra en el próximo plan</translation>
    </message>
    <message>
        <source>%1 folded</source>
        <translation>%1 dobladas</translation>
    </message>
    <message>
        <source>flat</source>
        <translation>plano</translation>
    </message>
    <message>
        <source>Lay in</source>
        <translation>Colocar</translation>
    </message>
    <message>
        <source>Push on</source>
        <translation>Empujar</translation>
    </message>
    <message>
        <source>Turn over</source>
        <translation>Voltear</translation>
    </message>
    <message>
        <source>Spin end for end</source>
        <translation>Girar de punta a punta</translation>
    </message>
    <message>
        <source>Turn over and spin</source>
        <translation>Voltear y girar</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 is to be folded again</source>
        <translation>%1 se va a doblar otra vez</translation>
    </message>
    <message>
        <source>The whole lot is to be folded again</source>
        <translation>Todo el grupo se va a doblar otra vez</translation>
    </message>
</context>
<context>
    <name>lapwright::model::Loads</name>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>%1 ×%2</source>
        <translation>%1 ×%2</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1   %2</source>
        <translation>%1   %2</translation>
    </message>
    <message>
        <source>two people</source>
        <translation>dos personas</translation>
    </message>
    <message>
        <source>%1, made %2</source>
        <translation>%1, preparada %2</translation>
    </message>
    <message>
        <source>Nothing is folded and waiting to be loaded</source>
        <translation>Nada está doblado en espera de carga</translation>
    </message>
    <message>
        <source>%1 on the load</source>
        <translation>%1 en la carga</translation>
    </message>
    <message>
        <source>Load list written to %1</source>
        <translation>Lista de carga escrita en %1</translation>
    </message>
    <message>
        <source>%1: %2; nothing of it is taken</source>
        <translation>%1: %2; no se recibe nada de él</translation>
    </message>
    <message>
        <source>%1 received, %2 short, damaged or wrong</source>
        <translation>%1 recibidas, %2 faltantes, dañadas o equivocadas</translation>
    </message>
    <message>
        <source>This receipt was here before. New: %1</source>
        <translation>Este recibo ya estaba aquí. Nuevo: %1</translation>
    </message>
    <message>
        <source>%1 ordered again; plan to cut them</source>
        <translation>%1 pedidas otra vez; planee para cortarlas</translation>
    </message>
</context>
<context>
    <name>lapwright::model::OrderPreview</name>
    <message>
        <source>left hand</source>
        <translation>mano izquierda</translation>
    </message>
    <message>
        <source>right hand</source>
        <translation>mano derecha</translation>
    </message>
    <message>
        <source>girth %1</source>
        <translation>desarrollo %1</translation>
    </message>
    <message>
        <source>revision %1</source>
        <translation>versión %1</translation>
    </message>
    <message>
        <source>wanted by %1</source>
        <translation>se necesita el %1</translation>
    </message>
</context>
<context>
    <name>lapwright::model::Papers</name>
    <message>
        <source>Written to %1: %2</source>
        <translation>Escrito en %1: %2</translation>
    </message>
    <message>
        <source>This plan does not wait to be cut any more</source>
        <translation>Este plan ya no espera a ser cortado</translation>
    </message>
    <message>
        <source>This plan does not pass its check; plan again</source>
        <translation>Este plan no pasa su revisión; planee otra vez</translation>
    </message>
    <message>
        <source>Written, but the confirmation says no cost: %1</source>
        <translation>Escrito, pero la confirmación no dice el costo: %1</translation>
    </message>
    <message>
        <source>%1 is not in its order any more</source>
        <translation>%1 ya no está en su pedido</translation>
    </message>
    <message>
        <source>Remnant %1 is not on the shelf any more</source>
        <translation>El retazo %1 ya no está en el estante</translation>
    </message>
    <message>
        <source>This bundle is not on this load</source>
        <translation>Este atado no está en esta carga</translation>
    </message>
</context>
<context>
    <name>lapwright::model::PlanWorker</name>
    <message>
        <source>Gathering what is to be done</source>
        <translation>Se junta lo que hay que hacer</translation>
    </message>
    <message>
        <source>Stopping; the best plan so far is kept</source>
        <translation>Se para; queda el mejor plan hasta ahora</translation>
    </message>
    <message>
        <source>Scheduling: %1</source>
        <translation>Se programa: %1</translation>
    </message>
</context>
<context>
    <name>lapwright::model::Preferences</name>
    <message>
        <source>As the computer</source>
        <translation>Como la computadora</translation>
    </message>
</context>
<context>
    <name>lapwright::model::ReferenceShelf</name>
    <message>
        <source>The floor</source>
        <translation>El taller</translation>
    </message>
    <message>
        <source>Written to %1</source>
        <translation>Escrito en %1</translation>
    </message>
    <message>
        <source>folds up and down, %1</source>
        <translation>dobla hacia arriba y hacia abajo, %1</translation>
    </message>
    <message>
        <source>folds up, %1</source>
        <translation>dobla hacia arriba, %1</translation>
    </message>
    <message>
        <source>every colour without a rate of its own</source>
        <translation>todo color sin tarifa propia</translation>
    </message>
    <message>
        <source>The rates</source>
        <translation>Las tarifas</translation>
    </message>
</context>
<context>
    <name>lapwright::model::ScheduleDesk</name>
    <message>
        <source>to %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>para el %1</translation>
    </message>
    <message>
        <source>done %1</source>
        <translation>listo el %1</translation>
    </message>
    <message>
        <source>%1: %2, from %3</source>
        <translation>%1: %2, desde %3</translation>
    </message>
    <message>
        <source>Scheduled</source>
        <translation>Programado</translation>
    </message>
    <message>
        <source>Nothing is to be done</source>
        <translation>No hay nada que hacer</translation>
    </message>
</context>
<context>
    <name>lapwright::model::Shop</name>
    <message>
        <source>The shop</source>
        <translation>El taller</translation>
    </message>
    <message>
        <source>This is for who plans. What you may do here is chosen in Settings.</source>
        <translation>Esto es para quien planea. Lo que puede hacer aquí se elige en Ajustes.</translation>
    </message>
    <message>
        <source>This is for who makes or plans. What you may do here is chosen in Settings.</source>
        <translation>Esto es para quien hace o planea. Lo que puede hacer aquí se elige en Ajustes.</translation>
    </message>
    <message>
        <source>The database does not answer (%1). Nothing is lost that was done, and what is typed stays; it is tried again by itself.</source>
        <translation>La base de datos no responde (%1). No se pierde nada de lo hecho, y lo escrito se queda; se vuelve a intentar solo.</translation>
    </message>
    <message>
        <source>Everything is copied to %1</source>
        <translation>Todo está copiado en %1</translation>
    </message>
    <message>
        <source>Planning runs: stop it first</source>
        <translation>Se está planeando: párelo primero</translation>
    </message>
    <message>
        <source>Everything is as in %1. What stood here before is kept in %2</source>
        <translation>Todo está como en %1. Lo que había aquí antes queda en %2</translation>
    </message>
    <message>
        <source>%1 is not here any more</source>
        <translation>%1 ya no está aquí</translation>
    </message>
    <message>
        <source>%1 is held: no plan cuts it until it is let in</source>
        <translation>%1 está retenido: ningún plan lo corta hasta que se deje entrar</translation>
    </message>
    <message>
        <source>%1 is let in; plan again</source>
        <translation>%1 puede entrar; planee otra vez</translation>
    </message>
</context>
<context>
    <name>lapwright::model::ShopCode</name>
    <message>
        <source>This shop&apos;s code as a QR code</source>
        <translation>El código de este taller como código QR</translation>
    </message>
</context>
<context>
    <name>lapwright::model::StockDesk</name>
    <message>
        <source>sheets as needed</source>
        <translation>hojas según se necesiten</translation>
    </message>
    <message>
        <source>coil</source>
        <translation>rollo</translation>
    </message>
    <message>
        <source>remnant</source>
        <translation>retazo</translation>
    </message>
    <message>
        <source>%1 reserved</source>
        <translation>%1 en reserva</translation>
    </message>
    <message>
        <source>reserved</source>
        <translation>en reserva</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1: %2 counted</source>
        <translation>%1: %2 contadas</translation>
    </message>
    <message>
        <source>Remnant %1 is off the shelf</source>
        <translation>El retazo %1 ya no está en el estante</translation>
    </message>
    <message>
        <source>%1 of stock read from %2</source>
        <translation>%1 de existencias leídos de %2</translation>
    </message>
    <message>
        <source>Stock written to %1</source>
        <translation>Existencias escritas en %1</translation>
    </message>
    <message>
        <source>A plan that waits cuts from it: cut that first, or plan again without it.</source>
        <translation>Un plan que espera corta de ahí: corte eso primero o planee otra vez sin él.</translation>
    </message>
    <message>
        <source>%1: %2 left on the coil</source>
        <translation>%1: quedan %2 en el rollo</translation>
    </message>
    <message>
        <source>New item</source>
        <translation>Artículo nuevo</translation>
    </message>
    <message>
        <source>%1 is off the racks</source>
        <translation>%1 ya no está en los estantes</translation>
    </message>
</context>
</TS>
