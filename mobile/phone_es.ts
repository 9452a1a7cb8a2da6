<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>AskSpacePage</name>
    <message>
        <source>In which space?</source>
        <translation>¿En qué cuarto?</translation>
    </message>
</context>
<context>
    <name>BeginPage</name>
    <message>
        <source>Begin a job</source>
        <translation>Empezar una obra</translation>
    </message>
    <message>
        <source>Street and number, or what you call it</source>
        <translation>Calle y número, o como usted la llame</translation>
    </message>
    <message>
        <source>Year it was built, where known</source>
        <translation>Año de construcción, si se sabe</translation>
    </message>
    <message>
        <source>Houses built before 1978 bring cautions about old paint; the year decides which.</source>
        <translation>Las casas de antes de 1978 traen avisos por la pintura vieja; el año decide cuáles.</translation>
    </message>
    <message>
        <source>Its rooms, as you walk them</source>
        <translation>Sus cuartos, en el orden en que se recorren</translation>
    </message>
    <message numerus="yes">
        <source>Begin with %n room(s)</source>
        <translation>
            <numerusform>Empezar con %n cuarto</numerusform>
            <numerusform>Empezar con %n cuartos</numerusform>
        </translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Empezar</translation>
    </message>
</context>
<context>
    <name>Belt</name>
    <message>
        <source>Mark</source>
        <translation>Avance</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Punch</source>
        <translation>Corregir</translation>
    </message>
    <message>
        <source>Receipt</source>
        <translation>Recibo</translation>
    </message>
</context>
<context>
    <name>CautionPanel</name>
    <message>
        <source>Caution: %1</source>
        <translation>Precaución: %1</translation>
    </message>
    <message>
        <source>Result of a test, where there is one</source>
        <translation>Resultado de una prueba, si la hay</translation>
    </message>
    <message>
        <source>I have read it</source>
        <translation>Ya lo leí</translation>
    </message>
</context>
<context>
    <name>ChangePage</name>
    <message>
        <source>Picture of it</source>
        <translation>Foto de eso</translation>
    </message>
    <message>
        <source>Sign it, out of contingency</source>
        <translation>Firmar, de la reserva</translation>
    </message>
    <message>
        <source>Sign it, with new money</source>
        <translation>Firmar, con dinero nuevo</translation>
    </message>
    <message>
        <source>Refuse it</source>
        <translation>No aceptar</translation>
    </message>
</context>
<context>
    <name>Choice</name>
    <message>
        <source>chosen</source>
        <translation>elegido</translation>
    </message>
</context>
<context>
    <name>DeliveryPage</name>
    <message>
        <source>What came?</source>
        <translation>¿Qué llegó?</translation>
    </message>
    <message>
        <source>No delivery is waited for</source>
        <translation>No se espera ninguna entrega</translation>
    </message>
    <message>
        <source>It came today</source>
        <translation>Llegó hoy</translation>
    </message>
    <message>
        <source>What is wrong or missing, if anything is</source>
        <translation>Qué está mal o falta, si algo falta</translation>
    </message>
    <message>
        <source>What was ordered is written down with its item, on the desktop.</source>
        <translation>Lo pedido se anota con su trabajo, en la computadora.</translation>
    </message>
</context>
<context>
    <name>DevicesPage</name>
    <message>
        <source>Devices</source>
        <translation>Dispositivos</translation>
    </message>
    <message>
        <source>This phone meets no peer yet.</source>
        <translation>Este teléfono todavía no se sincroniza con nadie.</translation>
    </message>
    <message>
        <source>Meeting ...</source>
        <translation>Sincronizando ...</translation>
    </message>
    <message>
        <source>Meet the peer now</source>
        <translation>Sincronizar ahora</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Unirse</translation>
    </message>
    <message>
        <source>An owner makes an invitation, which shows an address and a code of five groups. The book on this phone comes along where the invitation is an owner&apos;s.</source>
        <translation>Un dueño hace una invitación, que muestra una dirección y un código de cinco grupos. El libro de este teléfono viene con usted si la invitación es de dueño.</translation>
    </message>
    <message>
        <source>Address, or all that the picture says</source>
        <translation>Dirección, o todo lo que dice el código de imagen</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Código</translation>
    </message>
    <message>
        <source>Read the invitation from a picture</source>
        <translation>Leer la invitación de una foto</translation>
    </message>
    <message>
        <source>No invitation is read in that picture. Take it straight on and close, or type the code.</source>
        <translation>En esa foto no se lee ninguna invitación. Tómela de frente y de cerca, o escriba el código.</translation>
    </message>
    <message>
        <source>Pictures (*.png *.jpg *.jpeg)</source>
        <translation>Fotos (*.png *.jpg *.jpeg)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
</context>
<context>
    <name>DraftPage</name>
    <message>
        <source>Walk</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>Say what is to be done here, in English. Each item read can be dropped.</source>
        <translation>Diga qué hay que hacer aquí, en inglés. Cada trabajo leído se puede quitar.</translation>
    </message>
    <message>
        <source>Keep the items</source>
        <translation>Guardar los trabajos</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>se guarda</translation>
    </message>
</context>
<context>
    <name>FoundPage</name>
    <message>
        <source>Found something</source>
        <translation>Encontré algo</translation>
    </message>
    <message>
        <source>It is kept as a change that is asked for: it counts once it is signed.</source>
        <translation>Se guarda como un cambio pedido: cuenta cuando se firma.</translation>
    </message>
    <message>
        <source>It goes to the owner, who says yes or no.</source>
        <translation>Le llega al dueño, que dice sí o no.</translation>
    </message>
    <message>
        <source>Keep what was found</source>
        <translation>Guardar lo encontrado</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Qué se encontró</translation>
    </message>
    <message>
        <source>Say what it may cost</source>
        <translation>Decir cuánto puede costar</translation>
    </message>
    <message>
        <source>What it may cost</source>
        <translation>Cuánto puede costar</translation>
    </message>
</context>
<context>
    <name>HousePage</name>
    <message>
        <source>less</source>
        <translation>menos</translation>
    </message>
    <message>
        <source>more</source>
        <translation>más</translation>
    </message>
    <message>
        <source>Needs you today</source>
        <translation>Hoy le toca</translation>
    </message>
    <message>
        <source>Nothing needs you today</source>
        <translation>Hoy no hay nada pendiente</translation>
    </message>
    <message>
        <source>Rooms</source>
        <translation>Cuartos</translation>
    </message>
    <message>
        <source>This phone: light, type, hand, language</source>
        <translation>Este teléfono: luz, letra, mano, idioma</translation>
    </message>
    <message>
        <source>Devices: what waits, joining, meeting</source>
        <translation>Dispositivos: lo que espera, unirse, sincronizar</translation>
    </message>
    <message>
        <source>Your work, by day</source>
        <translation>Su trabajo, por día</translation>
    </message>
    <message>
        <source>All of your work is finished</source>
        <translation>Todo su trabajo está terminado</translation>
    </message>
</context>
<context>
    <name>HouseStrip</name>
    <message>
        <source>The whole house</source>
        <translation>Toda la casa</translation>
    </message>
    <message>
        <source>%1, on screen</source>
        <translation>%1, en pantalla</translation>
    </message>
</context>
<context>
    <name>LookPage</name>
    <message>
        <source>Accepted</source>
        <translation>Aceptado</translation>
    </message>
    <message>
        <source>It is fixed</source>
        <translation>Ya está corregido</translation>
    </message>
    <message>
        <source>Picture of it</source>
        <translation>Foto de eso</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Lo que se vio</translation>
    </message>
    <message>
        <source>Not right: fix again</source>
        <translation>No quedó: corregir otra vez</translation>
    </message>
</context>
<context>
    <name>MarkButtons</name>
    <message>
        <source>Finished</source>
        <translation>Terminado</translation>
    </message>
</context>
<context>
    <name>MarkFigure</name>
    <message>
        <source>One step less</source>
        <translation>Un paso menos</translation>
    </message>
    <message>
        <source>One step more</source>
        <translation>Un paso más</translation>
    </message>
</context>
<context>
    <name>MarkListPage</name>
    <message>
        <source>How far is it?</source>
        <translation>¿Cuánto va?</translation>
    </message>
    <message>
        <source>All of it is finished</source>
        <translation>Todo está terminado</translation>
    </message>
    <message>
        <source>Finished: %1</source>
        <translation>Terminado: %1</translation>
    </message>
</context>
<context>
    <name>MarkPage</name>
    <message>
        <source>How far it is: %1</source>
        <translation>Avance: %1</translation>
    </message>
    <message>
        <source>A word, if something stands in the way</source>
        <translation>Unas palabras, si algo estorba</translation>
    </message>
    <message>
        <source>Keep the steps</source>
        <translation>Guardar los pasos</translation>
    </message>
    <message>
        <source>Not begun</source>
        <translation>Sin empezar</translation>
    </message>
    <message>
        <source>Keep %1</source>
        <translation>Guardar %1</translation>
    </message>
    <message>
        <source>Before you: %1</source>
        <translation>Antes de usted: %1</translation>
    </message>
    <message>
        <source>After you: %1</source>
        <translation>Después de usted: %1</translation>
    </message>
    <message>
        <source>Ready to be looked at</source>
        <translation>Listo para revisar</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>Found something, or something is in the way</source>
        <translation>Encontré algo, o algo estorba</translation>
    </message>
    <message>
        <source>Looked at: accepted</source>
        <translation>Revisado: aceptado</translation>
    </message>
</context>
<context>
    <name>NotePage</name>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Only owners read notes.</source>
        <translation>Solo los dueños leen las notas.</translation>
    </message>
    <message>
        <source>Type it, or use the keyboard&apos;s microphone</source>
        <translation>Escríbala, o use el micrófono del teclado</translation>
    </message>
    <message>
        <source>Keep the note</source>
        <translation>Guardar la nota</translation>
    </message>
    <message>
        <source>Hear it</source>
        <translation>Oírla</translation>
    </message>
</context>
<context>
    <name>PageHead</name>
    <message>
        <source>Back</source>
        <translation>Atrás</translation>
    </message>
</context>
<context>
    <name>PhotoPage</name>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Touch a picture to keep it here. The original stays as it is.</source>
        <translation>Toque una foto para guardarla aquí. La original queda como está.</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>During</source>
        <translation>Durante</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>Before, from this spot: stand where it was taken.</source>
        <translation>Antes, desde este punto: párese donde se tomó.</translation>
    </message>
    <message>
        <source>No camera is open to this program here: pictures come from this device&apos;s folder.</source>
        <translation>Este programa no tiene cámara aquí: las fotos salen de la carpeta de este aparato.</translation>
    </message>
</context>
<context>
    <name>PhotoStrip</name>
    <message>
        <source>not on this phone yet</source>
        <translation>todavía no está en este teléfono</translation>
    </message>
</context>
<context>
    <name>PictureGrid</name>
    <message>
        <source>No pictures on this phone yet. Take one with its camera, then come back.</source>
        <translation>Todavía no hay fotos en este teléfono. Tome una con la cámara y regrese.</translation>
    </message>
    <message>
        <source>Look for new pictures</source>
        <translation>Buscar fotos nuevas</translation>
    </message>
    <message>
        <source>%1, taken</source>
        <translation>%1, tomada</translation>
    </message>
</context>
<context>
    <name>PictureKeeper</name>
    <message>
        <source>%1 cannot be read as a picture.</source>
        <translation>%1 no se puede leer como foto.</translation>
    </message>
</context>
<context>
    <name>PreferencesPage</name>
    <message>
        <source>This phone</source>
        <translation>Este teléfono</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Luz</translation>
    </message>
    <message>
        <source>By day</source>
        <translation>De día</translation>
    </message>
    <message>
        <source>In the dark</source>
        <translation>A oscuras</translation>
    </message>
    <message>
        <source>Out in the sun: black on white</source>
        <translation>Bajo el sol: negro sobre blanco</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Letra</translation>
    </message>
    <message>
        <source>%1 % of its size</source>
        <translation>%1 % de su tamaño</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>As the phone</source>
        <translation>Como el teléfono</translation>
    </message>
    <message>
        <source>Hand and motion</source>
        <translation>Mano y movimiento</translation>
    </message>
    <message>
        <source>For the left hand</source>
        <translation>Para la mano izquierda</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>Nothing moves by itself</source>
        <translation>Nada se mueve solo</translation>
    </message>
</context>
<context>
    <name>PresencePage</name>
    <message>
        <source>Who is here today?</source>
        <translation>¿Quién vino hoy?</translation>
    </message>
    <message>
        <source>No crew is written down yet.</source>
        <translation>Todavía no hay cuadrillas anotadas.</translation>
    </message>
    <message>
        <source>here today</source>
        <translation>vino hoy</translation>
    </message>
</context>
<context>
    <name>PunchListPage</name>
    <message>
        <source>To be put right</source>
        <translation>Por corregir</translation>
    </message>
    <message numerus="yes">
        <source>%n punch item(s) open.</source>
        <translation>
            <numerusform>%n cosa por corregir.</numerusform>
            <numerusform>%n cosas por corregir.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PunchPage</name>
    <message>
        <source>Punch item</source>
        <translation>Por corregir</translation>
    </message>
    <message>
        <source>Keep the punch item</source>
        <translation>Guardar lo que falta</translation>
    </message>
    <message>
        <source>What is to be put right</source>
        <translation>Qué hay que corregir</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>By when</source>
        <translation>Para cuándo</translation>
    </message>
</context>
<context>
    <name>ReceiptPage</name>
    <message>
        <source>Receipt</source>
        <translation>Recibo</translation>
    </message>
    <message>
        <source>Keep the receipt</source>
        <translation>Guardar el recibo</translation>
    </message>
    <message>
        <source>Where it was bought</source>
        <translation>Dónde se compró</translation>
    </message>
    <message>
        <source>Tax in it</source>
        <translation>Impuesto incluido</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Suma</translation>
    </message>
    <message>
        <source>Sum %1</source>
        <translation>Suma %1</translation>
    </message>
    <message>
        <source>Tax in it %1</source>
        <translation>Impuesto %1</translation>
    </message>
</context>
<context>
    <name>RoomsPicker</name>
    <message>
        <source>Entry</source>
        <translation>Entrada</translation>
    </message>
    <message>
        <source>Living room</source>
        <translation>Sala</translation>
    </message>
    <message>
        <source>Dining room</source>
        <translation>Comedor</translation>
    </message>
    <message>
        <source>Kitchen</source>
        <translation>Cocina</translation>
    </message>
    <message>
        <source>Hall</source>
        <translation>Pasillo</translation>
    </message>
    <message>
        <source>Hall bath</source>
        <translation>Baño del pasillo</translation>
    </message>
    <message>
        <source>Half bath</source>
        <translation>Medio baño</translation>
    </message>
    <message>
        <source>Front bedroom</source>
        <translation>Recámara del frente</translation>
    </message>
    <message>
        <source>Back bedroom</source>
        <translation>Recámara de atrás</translation>
    </message>
    <message>
        <source>Primary bedroom</source>
        <translation>Recámara principal</translation>
    </message>
    <message>
        <source>Primary bath</source>
        <translation>Baño principal</translation>
    </message>
    <message>
        <source>Laundry room</source>
        <translation>Lavandería</translation>
    </message>
    <message>
        <source>Stairs</source>
        <translation>Escalera</translation>
    </message>
    <message>
        <source>Attic</source>
        <translation>Ático</translation>
    </message>
    <message>
        <source>Basement</source>
        <translation>Sótano</translation>
    </message>
    <message>
        <source>Garage</source>
        <translation>Garaje</translation>
    </message>
    <message>
        <source>Porch</source>
        <translation>Porche</translation>
    </message>
    <message>
        <source>Outside</source>
        <translation>Afuera</translation>
    </message>
    <message>
        <source>Back yard</source>
        <translation>Patio de atrás</translation>
    </message>
    <message>
        <source>%1, room %2</source>
        <translation>%1, cuarto %2</translation>
    </message>
</context>
<context>
    <name>SaidOnPhone</name>
    <message>
        <source>something without a name</source>
        <translation>algo sin nombre</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <extracomment>How a day is written, in Qt&apos;s letters: &quot;Fri 15 May&quot;</extracomment>
        <translation>ddd d MMM</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>yesterday</source>
        <translation>ayer</translation>
    </message>
    <message>
        <source>Nobody yet</source>
        <translation>Nadie todavía</translation>
    </message>
    <message>
        <source>%1, due since %2</source>
        <translation>%1, vencido desde el %2</translation>
    </message>
    <message>
        <source>%1, by %2</source>
        <translation>%1, para %2</translation>
    </message>
</context>
<context>
    <name>SpaceDelegate</name>
    <message>
        <source>no work</source>
        <translation>sin trabajo</translation>
    </message>
</context>
<context>
    <name>SpacePage</name>
    <message>
        <source>Nothing is written down for this space. A note is a beginning.</source>
        <translation>No hay nada anotado de este cuarto. Una nota es un comienzo.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Write a note</source>
        <translation>Escribir una nota</translation>
    </message>
    <message>
        <source>To be put right</source>
        <translation>Por corregir</translation>
    </message>
    <message>
        <source>Walk it: say what is to be done</source>
        <translation>Recorrerlo: decir qué hay que hacer</translation>
    </message>
    <message>
        <source>Who is here today</source>
        <translation>Quién vino hoy</translation>
    </message>
    <message>
        <source>Something was delivered</source>
        <translation>Llegó material</translation>
    </message>
    <message numerus="yes">
        <source>All %n to be put right</source>
        <translation>
            <numerusform>Ver %n por corregir</numerusform>
            <numerusform>Ver los %n por corregir</numerusform>
        </translation>
    </message>
    <message>
        <source>Found something</source>
        <translation>Encontré algo</translation>
    </message>
    <message>
        <source>Spoken note, not typed yet</source>
        <translation>Nota hablada, sin escribir</translation>
    </message>
    <message>
        <source>Hear it and type it out</source>
        <translation>Oírla y escribirla</translation>
    </message>
    <message>
        <source>Speak a note</source>
        <translation>Decir una nota</translation>
    </message>
</context>
<context>
    <name>SpokenPage</name>
    <message>
        <source>Spoken note</source>
        <translation>Nota hablada</translation>
    </message>
    <message>
        <source>Kept as sound. What it says can be typed later.</source>
        <translation>Se guarda como sonido. Lo que dice se puede escribir después.</translation>
    </message>
    <message>
        <source>No microphone is found on this device.</source>
        <translation>Este aparato no tiene micrófono.</translation>
    </message>
    <message>
        <source>Stop and keep it</source>
        <translation>Parar y guardar</translation>
    </message>
    <message>
        <source>Speak</source>
        <translation>Hablar</translation>
    </message>
    <message>
        <source>Type a note instead</source>
        <translation>Escribir una nota</translation>
    </message>
    <message>
        <source>It was not recorded: %1</source>
        <translation>No se grabó: %1</translation>
    </message>
</context>
<context>
    <name>StartPage</name>
    <message>
        <source>The book does not open</source>
        <translation>El libro no se abre</translation>
    </message>
    <message>
        <source>Opening the book</source>
        <translation>Abriendo el libro</translation>
    </message>
    <message>
        <source>No job in this book yet</source>
        <translation>Todavía no hay obra en este libro</translation>
    </message>
    <message>
        <source>Which house?</source>
        <translation>¿Qué casa?</translation>
    </message>
    <message>
        <source>It comes with the first meeting with its peer.</source>
        <translation>Llega con la primera sincronización.</translation>
    </message>
    <message>
        <source>A job is a house under renovation, kept in a book: one file on this phone.</source>
        <translation>Una obra es una casa en remodelación, guardada en un libro: un archivo en este teléfono.</translation>
    </message>
    <message>
        <source>Begin a job</source>
        <translation>Empezar una obra</translation>
    </message>
    <message>
        <source>Open a book</source>
        <translation>Abrir un libro</translation>
    </message>
    <message>
        <source>Books (*.book)</source>
        <translation>Libros (*.book)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Meet the peer</source>
        <translation>Sincronizar</translation>
    </message>
    <message>
        <source>Join one by a code</source>
        <translation>Unirse con un código</translation>
    </message>
    <message>
        <source>Look at a house made up for show</source>
        <translation>Ver una casa inventada de muestra</translation>
    </message>
</context>
<context>
    <name>StepsPicker</name>
    <message>
        <source>done</source>
        <translation>listo</translation>
    </message>
</context>
<context>
    <name>UndoNote</name>
    <message>
        <source>Not kept. %1</source>
        <translation>No se guardó. %1</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>Viewfinder</name>
    <message>
        <source>The camera does not start: %1</source>
        <translation>La cámara no enciende: %1</translation>
    </message>
    <message>
        <source>Take the picture</source>
        <translation>Tomar la foto</translation>
    </message>
</context>
<context>
    <name>WalkPage</name>
    <message>
        <source>No rooms yet</source>
        <translation>Todavía no hay cuartos</translation>
    </message>
    <message>
        <source>Walk notes read on the desktop bring them in; so does meeting another device.</source>
        <translation>Llegan con las notas leídas en la computadora, o al sincronizar con otro dispositivo.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::ChangeDesk</name>
    <message>
        <source>Asked %1</source>
        <translation>Pedido %1</translation>
    </message>
    <message>
        <source>Asked %1 by %2</source>
        <translation>Pedido %1 por %2</translation>
    </message>
    <message>
        <source>No sum is asked yet</source>
        <translation>Todavía no se pide una suma</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Signed: %1</source>
        <translation>Firmado: %1</translation>
    </message>
    <message>
        <source>Refused: %1</source>
        <translation>No aceptado: %1</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::DayList</name>
    <message>
        <source>Late</source>
        <translation>Atrasado</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Hoy</translation>
    </message>
    <message>
        <source>Without a day yet</source>
        <translation>Todavía sin día</translation>
    </message>
    <message>
        <source>The whole house</source>
        <translation>Toda la casa</translation>
    </message>
    <message>
        <source>was to be finished %1</source>
        <translation>se iba a terminar %1</translation>
    </message>
    <message>
        <source>to be finished %1</source>
        <translation>por terminar %1</translation>
    </message>
    <message>
        <source>do not cover before it is looked at</source>
        <translation>no cubrir antes de la revisión</translation>
    </message>
    <message>
        <source>ready to be looked at</source>
        <translation>listo para revisar</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::DeliveryList</name>
    <message>
        <source>promised for %1</source>
        <translation>prometido para %1</translation>
    </message>
    <message>
        <source>It came: kept</source>
        <translation>Llegó: guardado</translation>
    </message>
    <message>
        <source>It came, and what is wrong with it: kept</source>
        <translation>Llegó, con lo que está mal: guardado</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::FoundDesk</name>
    <message>
        <source>This space</source>
        <translation>Este espacio</translation>
    </message>
    <message>
        <source>Say in a few words what was found.</source>
        <translation>Diga en pocas palabras qué se encontró.</translation>
    </message>
    <message>
        <source>Kept as a change that is asked for</source>
        <translation>Guardado como un cambio pedido</translation>
    </message>
    <message>
        <source>Kept: the owner gets it at the next meeting</source>
        <translation>Guardado: el dueño lo recibe al sincronizar</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::HouseView</name>
    <message>
        <source>%1, week %2</source>
        <translation>%1, semana %2</translation>
    </message>
    <message>
        <source>kept on this phone</source>
        <translation>guardado en este teléfono</translation>
    </message>
    <message>
        <source>nothing waits</source>
        <translation>todo enviado</translation>
    </message>
    <message numerus="yes">
        <source>%n mark(s)</source>
        <translation>
            <numerusform>%n avance</numerusform>
            <numerusform>%n avances</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n photo(s)</source>
        <translation>
            <numerusform>%n foto</numerusform>
            <numerusform>%n fotos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n cosa más</numerusform>
            <numerusform>%n cosas más</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 wait</source>
        <translation>por enviar: %1</translation>
    </message>
    <message>
        <source>will cost what was budgeted</source>
        <translation>costará lo presupuestado</translation>
    </message>
    <message>
        <source>will cost &lt;b&gt;%1 more&lt;/b&gt; than budget</source>
        <translation>costará &lt;b&gt;%1 más&lt;/b&gt; que el presupuesto</translation>
    </message>
    <message>
        <source>will cost &lt;b&gt;%1 less&lt;/b&gt; than budget</source>
        <translation>costará &lt;b&gt;%1 menos&lt;/b&gt; que el presupuesto</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::ItemList</name>
    <message>
        <source>Another crew&apos;s work</source>
        <translation>Trabajo de otra cuadrilla</translation>
    </message>
    <message>
        <source>ready to be looked at</source>
        <translation>listo para revisar</translation>
    </message>
    <message>
        <source>Plan says %1</source>
        <translation>El plan dice %1</translation>
    </message>
    <message>
        <source>Begins %1</source>
        <translation>Empieza %1</translation>
    </message>
    <message>
        <source>Do not cover before it is looked at</source>
        <translation>No cubrir hasta que se revise</translation>
    </message>
    <message>
        <source>something without a name</source>
        <translation>algo sin nombre</translation>
    </message>
    <message>
        <source>Caution: %1. Read it before work begins.</source>
        <translation>Precaución: %1. Léala antes de empezar.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::JobBook</name>
    <message>
        <source>Undone: %1</source>
        <translation>Deshecho: %1</translation>
    </message>
    <message>
        <source>demo house.book</source>
        <translation>casa de muestra.book</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::MarkDesk</name>
    <message>
        <source>%1 on %2</source>
        <translation>%1 el %2</translation>
    </message>
    <message>
        <source>plan %1</source>
        <translation>plan %1</translation>
    </message>
    <message>
        <source>Raised by: %1.</source>
        <translation>Motivo: %1.</translation>
    </message>
    <message>
        <source>Source: %1.</source>
        <translation>Fuente: %1.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>Read the caution first, and say that you have.</source>
        <translation>Primero lea la precaución y diga que la leyó.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Caution on %1: noted</source>
        <translation>Precaución de %1: anotada</translation>
    </message>
    <message>
        <source>done</source>
        <translation>listo</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>%1: ready to be looked at</source>
        <translation>%1: listo para revisar</translation>
    </message>
    <message>
        <source>%1: not ready yet</source>
        <translation>%1: todavía no está listo</translation>
    </message>
    <message>
        <source>%1: accepted</source>
        <translation>%1: aceptado</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::NeedList</name>
    <message numerus="yes">
        <source>Look at %n punch item(s) said to be fixed</source>
        <translation>
            <numerusform>Revisar %n corrección que dicen que está lista</numerusform>
            <numerusform>Revisar %n correcciones que dicen que están listas</numerusform>
        </translation>
    </message>
    <message>
        <source>Has it come: %1?</source>
        <translation>¿Llegó: %1?</translation>
    </message>
    <message>
        <source>Decide: %1</source>
        <translation>Decidir: %1</translation>
    </message>
    <message>
        <source>Say yes or no to %1, %2</source>
        <translation>Decir sí o no a %1, %2</translation>
    </message>
    <message>
        <source>Read the caution on %1</source>
        <translation>Leer la precaución de %1</translation>
    </message>
    <message>
        <source>Look at %1: the crew says it is ready</source>
        <translation>Revisar %1: la cuadrilla dice que está listo</translation>
    </message>
    <message>
        <source>%1: its insurance has ended</source>
        <translation>%1: se venció su seguro</translation>
    </message>
    <message>
        <source>Leave %1 open until it is looked at</source>
        <translation>Dejar %1 sin cubrir hasta que se revise</translation>
    </message>
    <message>
        <source>promised for %1</source>
        <translation>prometido para %1</translation>
    </message>
    <message>
        <source>was due %1</source>
        <translation>venció %1</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>para %1</translation>
    </message>
    <message>
        <source>asked %1</source>
        <translation>pedido %1</translation>
    </message>
    <message>
        <source>Since %1. No payment to them until it is renewed.</source>
        <translation>Desde %1. Sin pago hasta que lo renueven.</translation>
    </message>
    <message>
        <source>Say yes or no to %1</source>
        <translation>Diga sí o no a %1</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::NoteList</name>
    <message>
        <source>Note kept</source>
        <translation>Nota guardada</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::PeerDesk</name>
    <message>
        <source>met the peer %1</source>
        <translation>sincronizado %1</translation>
    </message>
    <message>
        <source>An owner shut this phone out. Its copy is gone; what the peer had already is not lost.</source>
        <translation>Un dueño dio de baja este teléfono. Su copia se borró; lo que ya se había enviado no se pierde.</translation>
    </message>
    <message>
        <source>Up: %1 changes, %2 photos. Down: %3 changes, %4 photos.</source>
        <translation>Enviados: %1 cambios, %2 fotos. Recibidos: %3 cambios, %4 fotos.</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n hour(s)</source>
        <translation>
            <numerusform>%n hora</numerusform>
            <numerusform>%n horas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n minuto</numerusform>
            <numerusform>%n minutos</numerusform>
        </translation>
    </message>
    <message>
        <source>This phone&apos;s clock is ahead by %1. What is kept here goes by the peer&apos;s clock.</source>
        <translation>El reloj de este teléfono está adelantado %1. Lo que se guarda aquí va con la hora de la sincronización.</translation>
    </message>
    <message>
        <source>This phone&apos;s clock is behind by %1. What is kept here goes by the peer&apos;s clock.</source>
        <translation>El reloj de este teléfono está atrasado %1. Lo que se guarda aquí va con la hora de la sincronización.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::PictureFolder</name>
    <message>
        <source>Picture of %1</source>
        <translation>Foto de %1</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::PresenceList</name>
    <message>
        <source>%1 is here today</source>
        <translation>%1 vino hoy</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::PunchItems</name>
    <message>
        <source>Said fixed on %1, not looked at yet</source>
        <translation>Dijeron que está corregido el %1, falta revisarlo</translation>
    </message>
    <message>
        <source>Looked at on %1: not right</source>
        <translation>Revisado el %1: no quedó</translation>
    </message>
    <message>
        <source>Say in a few words what is to be put right, or show it.</source>
        <translation>Diga en pocas palabras qué hay que corregir, o muéstrelo.</translation>
    </message>
    <message>
        <source>see the photo</source>
        <translation>ver la foto</translation>
    </message>
    <message>
        <source>Punch item kept</source>
        <translation>Corrección guardada</translation>
    </message>
    <message>
        <source>Punch item accepted</source>
        <translation>Corrección aceptada</translation>
    </message>
    <message>
        <source>Punch item sent back</source>
        <translation>Corrección devuelta</translation>
    </message>
    <message>
        <source>Said to be fixed</source>
        <translation>Dicho: ya está corregido</translation>
    </message>
    <message>
        <source>nothing is written down of it</source>
        <translation>no hay nada escrito de eso</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::ReceiptDesk</name>
    <message>
        <source>The whole house</source>
        <translation>Toda la casa</translation>
    </message>
    <message>
        <source>A receipt needs its picture or its amount.</source>
        <translation>Un recibo necesita su foto o su monto.</translation>
    </message>
    <message>
        <source>Receipt kept: %1</source>
        <translation>Recibo guardado: %1</translation>
    </message>
    <message>
        <source>Receipt kept; its amount is still to come</source>
        <translation>Recibo guardado; falta el monto</translation>
    </message>
    <message>
        <source>The tax is more than the whole sum.</source>
        <translation>El impuesto es más que toda la suma.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::SitePhotos</name>
    <message>
        <source>before</source>
        <translation>antes</translation>
    </message>
    <message>
        <source>after</source>
        <translation>después</translation>
    </message>
    <message>
        <source>during</source>
        <translation>durante</translation>
    </message>
    <message>
        <source>Photo kept, %1</source>
        <translation>Foto guardada, %1</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::SoundDesk</name>
    <message>
        <source>Nothing was recorded.</source>
        <translation>No se grabó nada.</translation>
    </message>
    <message>
        <source>No microphone is found on this device.</source>
        <translation>No se encuentra ningún micrófono en este aparato.</translation>
    </message>
    <message>
        <source>No loudspeaker is found on this device.</source>
        <translation>No se encuentra ningún altavoz en este aparato.</translation>
    </message>
    <message>
        <source>The microphone can't be used. Does another program have it?</source>
        <translation>No se puede usar el micrófono. ¿Lo tiene otro programa?</translation>
    </message>
    <message>
        <source>Spoken note kept, to be typed later</source>
        <translation>Nota hablada guardada, para escribirla después</translation>
    </message>
    <message>
        <source>The sound has not come yet from the phone that recorded it.</source>
        <translation>El sonido todavía no ha llegado del teléfono que lo grabó.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::SpaceList</name>
    <message>
        <source>Nothing to be done here yet.</source>
        <translation>Todavía no hay nada que hacer aquí.</translation>
    </message>
    <message>
        <source>Everything is finished.</source>
        <translation>Todo está terminado.</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) left, all begun.</source>
        <translation>
            <numerusform>Falta %n trabajo, ya empezado.</numerusform>
            <numerusform>Faltan %n trabajos, todos empezados.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) left, </source>
        <translation>
            <numerusform>Falta %n trabajo, </numerusform>
            <numerusform>Faltan %n trabajos, </numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n to start.</source>
        <translation>
            <numerusform>%n sin empezar.</numerusform>
            <numerusform>%n sin empezar.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n punch item(s) open.</source>
        <translation>
            <numerusform>%n cosa por corregir.</numerusform>
            <numerusform>%n cosas por corregir.</numerusform>
        </translation>
    </message>
    <message>
        <source>The whole house</source>
        <translation>Toda la casa</translation>
    </message>
    <message>
        <source>No name</source>
        <translation>Sin nombre</translation>
    </message>
</context>
<context>
    <name>ledgerboard::phone::WalkDraft</name>
    <message>
        <source>No work was read from that. Say what is done to what, such as &quot;replace the sink&quot;.</source>
        <translation>No se leyó ningún trabajo. Diga qué se hace a qué, en inglés, como «replace the sink».</translation>
    </message>
    <message numerus="yes">
        <source>%n word(s) learned</source>
        <translation>
            <numerusform>%n palabra aprendida</numerusform>
            <numerusform>%n palabras aprendidas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) kept</source>
        <translation>
            <numerusform>%n trabajo guardado</numerusform>
            <numerusform>%n trabajos guardados</numerusform>
        </translation>
    </message>
</context>
</TS>
