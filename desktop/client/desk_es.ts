<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>AlternateDelegate</name>
    <message>
        <source>Decided for “%1”. Why? Enter keeps it, Esc leaves it open.</source>
        <translation>Decidido por “%1”. ¿Por qué? Intro lo guarda, Esc lo deja abierto.</translation>
    </message>
    <message>
        <source>It has no option yet: add two or more; one may be to leave things as they are.</source>
        <translation>Todavía no tiene opciones: agregue dos o más; una puede ser dejar las cosas como están.</translation>
    </message>
    <message>
        <source>It has one option: add another, so that there is something to choose.</source>
        <translation>Tiene una sola opción: agregue otra, para que haya algo que elegir.</translation>
    </message>
    <message>
        <source>New option</source>
        <translation>Nueva opción</translation>
    </message>
    <message>
        <source>All of the option</source>
        <translation>Todo de la opción</translation>
    </message>
    <message>
        <source>Its question and day</source>
        <translation>Su pregunta y su día</translation>
    </message>
    <message>
        <source>Drop the option</source>
        <translation>Quitar la opción</translation>
    </message>
    <message>
        <source>Drop it all</source>
        <translation>Quitarla entera</translation>
    </message>
</context>
<context>
    <name>AlternatesPage</name>
    <message>
        <source>Weighing the options…</source>
        <translation>Sopesando las opciones…</translation>
    </message>
    <message>
        <source>Alternates</source>
        <translation>Alternativas</translation>
    </message>
    <message>
        <source>Carry meanwhile</source>
        <translation>Contar mientras tanto</translation>
    </message>
    <message>
        <source>Decide for it</source>
        <translation>Decidirse por ella</translation>
    </message>
    <message>
        <source>There are no alternates. One is an open decision with two or more options; one of them may be to leave things as they are. They come from the walk: “either refinish the floor or lay new for about 2,400”.</source>
        <translation>No hay alternativas. Una es una decisión abierta con dos o más opciones; una de ellas puede ser dejar las cosas como están. Salen del recorrido: “either refinish the floor or lay new for about 2,400”.</translation>
    </message>
    <message>
        <source>To the walk</source>
        <translation>Al recorrido</translation>
    </message>
    <message>
        <source>Every alternate is decided.</source>
        <translation>Todas las alternativas están decididas.</translation>
    </message>
    <message>
        <source>Decided</source>
        <translation>Decididas</translation>
    </message>
    <message>
        <source>Ask for the change order</source>
        <translation>Pedir la orden de cambio</translation>
    </message>
    <message>
        <source>New alternate</source>
        <translation>Nueva alternativa</translation>
    </message>
</context>
<context>
    <name>AlternatesSum</name>
    <message>
        <source>Best together</source>
        <translation>Lo mejor en conjunto</translation>
    </message>
    <message>
        <source>Costs no more than</source>
        <translation>No cuesta más de</translation>
    </message>
    <message>
        <source>Work ends by</source>
        <translation>Acaba antes del</translation>
    </message>
    <message>
        <source>At a chance of, %</source>
        <translation>Probabilidad, %</translation>
    </message>
    <message>
        <source>What each cost earns</source>
        <translation>Lo que gana cada costo</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Dibujo</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabla</translation>
    </message>
    <message>
        <source>There is but one set to choose, so there is nothing to draw.</source>
        <translation>Solo hay un conjunto que elegir, así que no hay nada que dibujar.</translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Cuesta</translation>
    </message>
    <message>
        <source>Work ends</source>
        <translation>Acaba la obra</translation>
    </message>
    <message>
        <source>Earns</source>
        <translation>Gana</translation>
    </message>
</context>
<context>
    <name>AnswerList</name>
    <message>
        <source>Asked every week</source>
        <translation>Lo que se pregunta cada semana</translation>
    </message>
</context>
<context>
    <name>BankPanel</name>
    <message>
        <source>The file as it was downloaded (OFX, QFX); Enter looks into it</source>
        <translation>El archivo tal como se descargó (OFX, QFX); Intro lo examina</translation>
    </message>
    <message>
        <source>Choose…</source>
        <translation>Elegir…</translation>
    </message>
    <message numerus="yes">
        <source>Bring in the %n line(s)</source>
        <translation>
            <numerusform>Traer %n línea</numerusform>
            <numerusform>Traer las %n líneas</numerusform>
        </translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Bring in nothing</source>
        <translation>No traer nada</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>A bank&apos;s download</source>
        <translation>Una descarga del banco</translation>
    </message>
    <message>
        <source>Downloads (*.ofx *.OFX *.qfx *.QFX)</source>
        <translation>Descargas (*.ofx *.OFX *.qfx *.QFX)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
</context>
<context>
    <name>BankWords</name>
    <message>
        <source>the row %1</source>
        <translation>la fila %1</translation>
    </message>
    <message>
        <source>draw %1</source>
        <translation>desembolso %1</translation>
    </message>
    <message>
        <source>not ours</source>
        <translation>no es nuestro</translation>
    </message>
    <message>
        <source>the whole job</source>
        <translation>toda la obra</translation>
    </message>
    <message>
        <source>%1 for %2</source>
        <extracomment>A kind of spend and what it is for: &quot;Receipt for Kitchen/cabinets&quot;</extracomment>
        <translation>%1 para %2</translation>
    </message>
</context>
<context>
    <name>BaselinePanel</name>
    <message>
        <source>Fix the baseline?</source>
        <translation>¿Fijar la línea base?</translation>
    </message>
    <message>
        <source>Fix it</source>
        <translation>Fijarla</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Ahora no</translation>
    </message>
</context>
<context>
    <name>CautionPanel</name>
    <message>
        <source>Tested? What was found</source>
        <translation>¿Se probó? Qué se encontró</translation>
    </message>
    <message>
        <source>I have read it</source>
        <translation>Lo he leído</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>ClosingPage</name>
    <message>
        <source>Closing</source>
        <translation>Cierre</translation>
    </message>
    <message>
        <source>There is nothing to finish yet</source>
        <translation>Todavía no hay nada que terminar</translation>
    </message>
    <message>
        <source>Once there is a scope of work, what is still to be done, signed, paid and filed stands here.</source>
        <translation>Cuando haya un alcance de obra, aquí estará lo que falta por hacer, firmar, pagar y archivar.</translation>
    </message>
    <message>
        <source>What releases each crew, in this order (common practice, no source)</source>
        <translation>Qué libera a cada cuadrilla, en este orden (práctica común, sin fuente)</translation>
    </message>
    <message>
        <source>The folder of the house</source>
        <translation>La carpeta de la casa</translation>
    </message>
    <message>
        <source>Forms of waivers, retainage and leave to occupy differ by place: a local lawyer and the building office decide.</source>
        <translation>Las formas de renuncia, retención y permiso de ocupar cambian según el lugar: deciden un abogado local y la oficina de obras.</translation>
    </message>
</context>
<context>
    <name>ContractsPage</name>
    <message>
        <source>Contracts and orders</source>
        <translation>Contratos y pedidos</translation>
    </message>
    <message>
        <source>Arrived today</source>
        <translation>Llegó hoy</translation>
    </message>
    <message>
        <source>Signed today</source>
        <translation>Firmado hoy</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation>Rechazado</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Ver todo</translation>
    </message>
    <message>
        <source>New contract</source>
        <translation>Nuevo contrato</translation>
    </message>
    <message>
        <source>New change</source>
        <translation>Nuevo cambio</translation>
    </message>
    <message>
        <source>New delivery</source>
        <translation>Nueva entrega</translation>
    </message>
    <message>
        <source>Contracts</source>
        <translation>Contratos</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Cambios</translation>
    </message>
    <message>
        <source>Goods</source>
        <translation>Materiales</translation>
    </message>
    <message>
        <source>Nothing is signed yet</source>
        <translation>Todavía no hay nada firmado</translation>
    </message>
    <message>
        <source>A contract says what a crew does for which sum; an order, which goods are bought. What is signed here is committed, and bills and payments are held against it.</source>
        <translation>Un contrato dice qué hace una cuadrilla y por cuánto; un pedido, qué materiales se compran. Lo que se firma aquí queda comprometido, y con ello se comparan facturas y pagos.</translation>
    </message>
    <message>
        <source>The first contract</source>
        <translation>El primer contrato</translation>
    </message>
    <message>
        <source>No change was asked for</source>
        <translation>No se ha pedido ningún cambio</translation>
    </message>
    <message>
        <source>What is found on the way, or wished for later, is asked here with its sum and days. It counts from the day it is signed.</source>
        <translation>Lo que se encuentra en el camino, o se desea después, se pide aquí con su importe y sus días. Cuenta desde el día en que se firma.</translation>
    </message>
    <message>
        <source>The first change</source>
        <translation>El primer cambio</translation>
    </message>
    <message>
        <source>Nothing is waited for</source>
        <translation>No se espera nada</translation>
    </message>
    <message>
        <source>Items with days from order to delivery stand here with the day to order by, until their goods are there.</source>
        <translation>Aquí están los trabajos que tardan días del pedido a la entrega, con el día límite para pedir, hasta que llegan.</translation>
    </message>
</context>
<context>
    <name>DayLine</name>
    <message>
        <source>As of today</source>
        <translation>A la fecha de hoy</translation>
    </message>
    <message>
        <source>As of %1</source>
        <translation>Al %1</translation>
    </message>
    <message>
        <source>Back to today</source>
        <translation>Volver a hoy</translation>
    </message>
    <message>
        <source>As of which day? Empty: today</source>
        <translation>¿A qué día? Vacío: hoy</translation>
    </message>
</context>
<context>
    <name>DealPage</name>
    <message>
        <source>Adding up the deal…</source>
        <translation>Sumando el negocio…</translation>
    </message>
    <message>
        <source>Deal</source>
        <translation>Negocio</translation>
    </message>
    <message>
        <source>Will earn, before income tax</source>
        <translation>Ganará, antes de impuestos</translation>
    </message>
    <message>
        <source>As supposed</source>
        <translation>Según el supuesto</translation>
    </message>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>as supposed</source>
        <translation>según el supuesto</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Y si…</translation>
    </message>
    <message>
        <source>All as it stands</source>
        <translation>Todo como está</translation>
    </message>
    <message>
        <source>Profit, by finish and resale</source>
        <translation>Ganancia, según final y venta</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Terminada</translation>
    </message>
    <message>
        <source>sold</source>
        <translation>vendida</translation>
    </message>
    <message>
        <source>What it rests on</source>
        <translation>En qué se apoya</translation>
    </message>
</context>
<context>
    <name>DevicesPage</name>
    <message>
        <source>Devices</source>
        <translation>Aparatos</translation>
    </message>
    <message>
        <source>The peer</source>
        <translation>El punto de encuentro</translation>
    </message>
    <message>
        <source>Stop the peer here</source>
        <translation>Parar aquí el punto de encuentro</translation>
    </message>
    <message>
        <source>Start the peer here</source>
        <translation>Arrancar aquí el punto de encuentro</translation>
    </message>
    <message>
        <source>Meet it now</source>
        <translation>Encontrarse ahora</translation>
    </message>
    <message>
        <source>Who has what</source>
        <translation>Quién tiene qué</translation>
    </message>
    <message>
        <source> (this one)</source>
        <translation> (este)</translation>
    </message>
    <message>
        <source>Yes, shut it out: its copy is wiped when it next calls</source>
        <translation>Sí, excluirlo: su copia se borra cuando vuelva a llamar</translation>
    </message>
    <message>
        <source>Shut the device in hand out</source>
        <translation>Excluir el aparato en la mano</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Supr</translation>
    </message>
    <message>
        <source>Two values for one thing</source>
        <translation>Dos valores para una cosa</translation>
    </message>
    <message>
        <source>No two devices changed one thing apart from each other.</source>
        <translation>No hay dos aparatos que cambiaran una cosa por separado.</translation>
    </message>
    <message>
        <source>; it stands meanwhile</source>
        <translation>; vale mientras tanto</translation>
    </message>
    <message>
        <source>This is right</source>
        <translation>Este es el correcto</translation>
    </message>
    <message>
        <source>A way in</source>
        <translation>Una entrada</translation>
    </message>
    <message>
        <source>Other devices come in through a peer: start one first.</source>
        <translation>Otros aparatos entran por un punto de encuentro: arranque primero uno.</translation>
    </message>
    <message>
        <source>An owner sees everything. A crew lead sees that crew’s work, and no money. A viewer sees progress, draws and the photos meant for the lender.</source>
        <translation>Un dueño lo ve todo. Un jefe de cuadrilla ve el trabajo de esa cuadrilla, y nada de dinero. Un observador ve el avance, los desembolsos y las fotos para el prestamista.</translation>
    </message>
    <message>
        <source>Who it is, where the book does not know it</source>
        <translation>Quién es, si el libro no lo sabe</translation>
    </message>
    <message>
        <source>Open a way in</source>
        <translation>Abrir una entrada</translation>
    </message>
    <message>
        <source>The way in as a picture for a phone</source>
        <translation>La entrada como dibujo para un teléfono</translation>
    </message>
    <message>
        <source>Typed: address %1, code %2</source>
        <translation>Escrito: dirección %1, código %2</translation>
    </message>
    <message>
        <source>Set aside</source>
        <translation>Apartado</translation>
    </message>
    <message>
        <source>Nothing was set aside: every device wrote only what it may.</source>
        <translation>No se apartó nada: cada aparato escribió solo lo que puede.</translation>
    </message>
    <message>
        <source>Put it away</source>
        <translation>Guardarla</translation>
    </message>
    <message>
        <source>It listens at this address</source>
        <translation>Escucha en esta dirección</translation>
    </message>
    <message>
        <source>Port</source>
        <translation>Puerto</translation>
    </message>
</context>
<context>
    <name>Dividers</name>
    <message>
        <source>All jobs</source>
        <translation>Todas las obras</translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation>Haciendo cuentas…</translation>
    </message>
    <message>
        <source>Book: %1</source>
        <translation>Libro: %1</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
</context>
<context>
    <name>DrawsPage</name>
    <message>
        <source>The request to the lender</source>
        <translation>La solicitud al prestamista</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>Desembolsos</translation>
    </message>
    <message>
        <source>For the lender</source>
        <translation>Para el prestamista</translation>
    </message>
    <message>
        <source>Ask for it today</source>
        <translation>Pedirlo hoy</translation>
    </message>
    <message>
        <source>The request (PDF)</source>
        <translation>La solicitud (PDF)</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Ver todo</translation>
    </message>
    <message>
        <source>New line</source>
        <translation>Nuevo renglón</translation>
    </message>
    <message>
        <source>New draw</source>
        <translation>Nuevo desembolso</translation>
    </message>
    <message>
        <source>Lender&apos;s lines</source>
        <translation>Renglones del prestamista</translation>
    </message>
    <message>
        <source>Draws so far</source>
        <translation>Desembolsos hasta hoy</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Fotos</translation>
    </message>
    <message>
        <source>The lender&apos;s lines are not entered</source>
        <translation>Faltan los renglones del prestamista</translation>
    </message>
    <message>
        <source>There is no loan for the work</source>
        <translation>No hay préstamo para la obra</translation>
    </message>
    <message>
        <source>The first line</source>
        <translation>El primer renglón</translation>
    </message>
    <message>
        <source>No draw was asked for yet</source>
        <translation>Todavía no se ha pedido ningún desembolso</translation>
    </message>
    <message>
        <source>A draw is asked for when work is in place; the lender comes to look, then the money arrives.</source>
        <translation>Se pide cuando hay trabajo hecho; el prestamista viene a ver, y luego llega el dinero.</translation>
    </message>
    <message>
        <source>There are no pictures of the site</source>
        <translation>No hay fotos de la obra</translation>
    </message>
    <message>
        <source>A phone takes them, room by room. Those you let the lender see go with the request.</source>
        <translation>Las toma un teléfono, cuarto por cuarto. Las que usted deja ver al prestamista van con la solicitud.</translation>
    </message>
    <message>
        <source>The lender pays out by lines: carpentry, plumbing and so on, each with its amount and the share lent. Items of the scope point at a line: Ctrl+I in the scope, “Lender line”. The loan itself is entered on the page Deal, with Ctrl+I.</source>
        <translation>El prestamista paga por renglones: carpintería, plomería, etc., cada uno con su importe y la parte prestada. Los trabajos señalan un renglón: Ctrl+I en el alcance, «Renglón del prestamista». El préstamo mismo se anota en la página Negocio, con Ctrl+I.</translation>
    </message>
    <message>
        <source>The rest as asked</source>
        <translation>El resto, lo pedido</translation>
    </message>
    <message>
        <source>What was allowed</source>
        <translation>Lo aprobado</translation>
    </message>
    <message>
        <source>No line of a draw was asked for yet</source>
        <translation>Todavía no se ha pedido ningún renglón</translation>
    </message>
    <message>
        <source>Once a draw is asked for and the lender&apos;s inspector has been, what was allowed of each line is entered here, and why where it was less.</source>
        <translation>Cuando se ha pedido un desembolso y ha venido el inspector del prestamista, aquí se anota lo aprobado de cada renglón, y por qué cuando fue menos.</translation>
    </message>
</context>
<context>
    <name>FieldWords</name>
    <message>
        <source>Contract</source>
        <translation>Contrato</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Cuadrilla</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Deposit</source>
        <translation>Anticipo</translation>
    </message>
    <message>
        <source>Retainage</source>
        <translation>Retención</translation>
    </message>
    <message>
        <source>Retainage until</source>
        <translation>Retención hasta</translation>
    </message>
    <message>
        <source>Payment steps</source>
        <translation>Pasos de pago</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Firmado</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Fin</translation>
    </message>
    <message>
        <source>Who buys what</source>
        <translation>Quién compra qué</translation>
    </message>
    <message>
        <source>Insurance seen</source>
        <translation>Seguro visto</translation>
    </message>
    <message>
        <source>Waiver received</source>
        <translation>Renuncia recibida</translation>
    </message>
    <message>
        <source>Accepted</source>
        <translation>Aceptado</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>Items</source>
        <translation>Trabajos</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Paid from</source>
        <translation>Se paga de</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation>Rechazado</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Reparto</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Payee</source>
        <translation>A quién</translation>
    </message>
    <message>
        <source>Tax</source>
        <translation>Impuesto</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Partida</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Vence</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>Pays</source>
        <translation>Paga</translation>
    </message>
    <message>
        <source>Paper seen</source>
        <translation>Papel visto</translation>
    </message>
    <message>
        <source>Draw</source>
        <translation>Desembolso</translation>
    </message>
    <message>
        <source>Inspected</source>
        <translation>Inspeccionado</translation>
    </message>
    <message>
        <source>Funded</source>
        <translation>Recibido</translation>
    </message>
    <message>
        <source>Held back</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>Fee</source>
        <translation>Cargo</translation>
    </message>
    <message>
        <source>Lender line</source>
        <translation>Renglón del prestamista</translation>
    </message>
    <message>
        <source>Allowed</source>
        <translation>Permitido</translation>
    </message>
    <message>
        <source>Why refused</source>
        <translation>Por qué se negó</translation>
    </message>
    <message>
        <source>Share lent</source>
        <translation>Parte prestada</translation>
    </message>
    <message>
        <source>Ordered</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Promised</source>
        <translation>Prometido</translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation>Llegó</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>Revisado</translation>
    </message>
    <message>
        <source>Wrong or missing</source>
        <translation>Mal o falta</translation>
    </message>
    <message>
        <source>Bank writes</source>
        <translation>El banco escribe</translation>
    </message>
    <message>
        <source>Not ours</source>
        <translation>No es nuestro</translation>
    </message>
    <message>
        <source>Subcontract</source>
        <translation>Subcontrato</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Invoice</source>
        <translation>Factura</translation>
    </message>
    <message>
        <source>Payment</source>
        <translation>Pago</translation>
    </message>
    <message>
        <source>Receipt</source>
        <translation>Recibo</translation>
    </message>
    <message>
        <source>Refund</source>
        <translation>Reembolso</translation>
    </message>
    <message>
        <source>Contingency</source>
        <translation>Imprevistos</translation>
    </message>
    <message>
        <source>New money</source>
        <translation>Dinero nuevo</translation>
    </message>
    <message>
        <source>Contract or order</source>
        <translation>Contrato o pedido</translation>
    </message>
    <message>
        <source>Change order</source>
        <translation>Orden de cambio</translation>
    </message>
    <message>
        <source>Bill, receipt or payment</source>
        <translation>Factura, recibo o pago</translation>
    </message>
    <message>
        <source>Line of a draw</source>
        <translation>Renglón de un desembolso</translation>
    </message>
    <message>
        <source>Delivery</source>
        <translation>Entrega</translation>
    </message>
    <message>
        <source>Payee rule</source>
        <translation>Regla de beneficiario</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Cuarto</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Hasta el</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Encontrado</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
    </message>
    <message>
        <source>Charge back to</source>
        <translation>A cargo de</translation>
    </message>
    <message>
        <source>Charge back</source>
        <translation>A cargo</translation>
    </message>
    <message>
        <source>Object</source>
        <translation>Objeto</translation>
    </message>
    <message>
        <source>Treatment</source>
        <translation>Tratamiento</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Mano de obra</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Bajo</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Merma</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Paquete</translation>
    </message>
    <message>
        <source>Lead days</source>
        <translation>Días de entrega</translation>
    </message>
    <message>
        <source>Trade</source>
        <translation>Oficio</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>As of</source>
        <translation>De fecha</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Dejar</translation>
    </message>
    <message>
        <source>Inspect</source>
        <translation>Revisar</translation>
    </message>
    <message>
        <source>Clean</source>
        <translation>Limpiar</translation>
    </message>
    <message>
        <source>Repair</source>
        <translation>Reparar</translation>
    </message>
    <message>
        <source>Refinish</source>
        <translation>Renovar</translation>
    </message>
    <message>
        <source>Replace</source>
        <translation>Cambiar</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Agregar</translation>
    </message>
    <message>
        <source>Relocate</source>
        <translation>Mover</translation>
    </message>
    <message>
        <source>Punch item</source>
        <translation>Remate</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Order on</source>
        <translation>Pedir el</translation>
    </message>
    <message>
        <source>Cost low</source>
        <translation>Costo bajo</translation>
    </message>
    <message>
        <source>Cost high</source>
        <translation>Costo alto</translation>
    </message>
    <message>
        <source>Built</source>
        <translation>Construida</translation>
    </message>
    <message>
        <source>Purchase price</source>
        <translation>Precio de compra</translation>
    </message>
    <message>
        <source>Purchased</source>
        <translation>Comprada el</translation>
    </message>
    <message>
        <source>Resale</source>
        <translation>Reventa</translation>
    </message>
    <message>
        <source>Resale low</source>
        <translation>Reventa baja</translation>
    </message>
    <message>
        <source>Resale high</source>
        <translation>Reventa alta</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Presupuesto</translation>
    </message>
    <message>
        <source>Wanted profit</source>
        <translation>Ganancia deseada</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Comienzo</translation>
    </message>
    <message>
        <source>Days to resale</source>
        <translation>Días a la reventa</translation>
    </message>
    <message>
        <source>Buying costs</source>
        <translation>Gastos de compra</translation>
    </message>
    <message>
        <source>Selling costs</source>
        <translation>Gastos de venta</translation>
    </message>
    <message>
        <source>Commission</source>
        <translation>Comisión</translation>
    </message>
    <message>
        <source>Holding costs</source>
        <translation>Gastos de tenencia</translation>
    </message>
    <message>
        <source>Cash at start</source>
        <translation>Efectivo inicial</translation>
    </message>
    <message>
        <source>Purchase loan</source>
        <translation>Préstamo, compra</translation>
    </message>
    <message>
        <source>Work loan</source>
        <translation>Préstamo de obra</translation>
    </message>
    <message>
        <source>Loan rate</source>
        <translation>Tasa del préstamo</translation>
    </message>
    <message>
        <source>Lender fees</source>
        <translation>Cargos, préstamo</translation>
    </message>
    <message>
        <source>Draw limit</source>
        <translation>Tope desembolsos</translation>
    </message>
    <message>
        <source>Holdback</source>
        <translation>Retención</translation>
    </message>
    <message>
        <source>Fee per visit</source>
        <translation>Cargo por visita</translation>
    </message>
    <message>
        <source>Term end</source>
        <translation>Fin del plazo</translation>
    </message>
    <message>
        <source>Extension fee</source>
        <translation>Cargo por prórroga</translation>
    </message>
    <message>
        <source>Street&apos;s ceiling</source>
        <translation>Techo de la calle</translation>
    </message>
    <message>
        <source>Points, purchase</source>
        <translation>Puntos, compra</translation>
    </message>
    <message>
        <source>Points, work</source>
        <translation>Puntos, obra</translation>
    </message>
    <message>
        <source>Days to visit</source>
        <translation>Días a la visita</translation>
    </message>
    <message>
        <source>Days to money</source>
        <translation>Días al dinero</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Pregunta</translation>
    </message>
    <message>
        <source>Decide by</source>
        <translation>Decidir antes de</translation>
    </message>
    <message>
        <source>Option</source>
        <translation>Opción</translation>
    </message>
    <message>
        <source>Value low</source>
        <translation>Valor bajo</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Value high</source>
        <translation>Valor alto</translation>
    </message>
    <message>
        <source>Needs</source>
        <translation>Necesita</translation>
    </message>
    <message>
        <source>Excludes</source>
        <translation>Excluye</translation>
    </message>
    <message>
        <source>Alternate</source>
        <translation>Alternativa</translation>
    </message>
</context>
<context>
    <name>FilterNote</name>
    <message>
        <source>Only with:</source>
        <translation>Solo con:</translation>
    </message>
    <message>
        <source>All rows</source>
        <translation>Todas las filas</translation>
    </message>
</context>
<context>
    <name>FrontierPlot</name>
    <message>
        <source>, the work ends %1</source>
        <translation>, la obra acaba el %1</translation>
    </message>
    <message>
        <source>earns</source>
        <translation>gana</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como mucho %1</translation>
    </message>
    <message>
        <source>carried now</source>
        <translation>contado ahora</translation>
    </message>
    <message>
        <source>What each cost earns: </source>
        <translation>Lo que gana cada costo: </translation>
    </message>
</context>
<context>
    <name>JobDelegate</name>
    <message>
        <source>…</source>
        <translation>…</translation>
    </message>
    <message>
        <source>no items yet</source>
        <translation>sin trabajos todavía</translation>
    </message>
</context>
<context>
    <name>JobsPage</name>
    <message>
        <source>A book without a job</source>
        <translation>Un libro sin obra</translation>
    </message>
    <message>
        <source>Jobs</source>
        <translation>Obras</translation>
    </message>
    <message>
        <source>Another book…</source>
        <translation>Otro libro…</translation>
    </message>
    <message>
        <source>A new job</source>
        <translation>Obra nueva</translation>
    </message>
    <message>
        <source>It has not met its peer yet, or nothing was begun in it. Begin a job below.</source>
        <translation>Todavía no se ha sincronizado, o no se ha empezado nada en él. Empiece una obra abajo.</translation>
    </message>
    <message>
        <source>All of it will cost</source>
        <translation>Todo costará</translation>
    </message>
    <message>
        <source>Spent so far</source>
        <translation>Gastado hasta ahora</translation>
    </message>
    <message>
        <source>Still to go</source>
        <translation>Falta por gastar</translation>
    </message>
    <message>
        <source>Will earn, before income tax</source>
        <translation>Ganará, antes de impuestos</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Avance</translation>
    </message>
    <message>
        <source>Will cost</source>
        <translation>Costará</translation>
    </message>
    <message>
        <source>Will finish</source>
        <translation>Terminará</translation>
    </message>
    <message>
        <source>Will earn</source>
        <translation>Ganará</translation>
    </message>
    <message>
        <source>Against budget</source>
        <translation>Contra el presupuesto</translation>
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
</context>
<context>
    <name>KeptNote</name>
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
    <name>KeysPanel</name>
    <message>
        <source>a page of the folder</source>
        <translation>una página de la carpeta</translation>
    </message>
    <message>
        <source>the list of jobs</source>
        <translation>la lista de obras</translation>
    </message>
    <message>
        <source>takes back what was done last</source>
        <translation>deshace lo último</translation>
    </message>
    <message>
        <source>does it again</source>
        <translation>lo vuelve a hacer</translation>
    </message>
    <message>
        <source>as of another day</source>
        <translation>a otra fecha</translation>
    </message>
    <message>
        <source>the next part of the page</source>
        <translation>la siguiente parte de la página</translation>
    </message>
    <message>
        <source>these keys</source>
        <translation>estas teclas</translation>
    </message>
    <message>
        <source>another job</source>
        <translation>otra obra</translation>
    </message>
    <message>
        <source>opens its folder</source>
        <translation>abre su carpeta</translation>
    </message>
    <message>
        <source>a new job</source>
        <translation>una obra nueva</translation>
    </message>
    <message>
        <source>another book</source>
        <translation>otro libro</translation>
    </message>
    <message>
        <source>on the curve: another day</source>
        <translation>en la curva: otro día</translation>
    </message>
    <message>
        <source>on the curve: its table, and back</source>
        <translation>en la curva: su tabla, y de vuelta</translation>
    </message>
    <message>
        <source>up and down the page; in a list, another line</source>
        <translation>sube y baja por la página; en una lista, otra línea</translation>
    </message>
    <message>
        <source>on a line: the page it leads to</source>
        <translation>en una línea: la página a la que lleva</translation>
    </message>
    <message>
        <source>the page as one sheet (PDF)</source>
        <translation>la página en una hoja (PDF)</translation>
    </message>
    <message>
        <source>keeps it as this week&apos;s review</source>
        <translation>la guarda como revisión de la semana</translation>
    </message>
    <message>
        <source>another cell; with Shift, several rows</source>
        <translation>otra celda; con Mayús, varias filas</translation>
    </message>
    <message>
        <source>edits the cell; Enter keeps, Esc leaves it</source>
        <translation>edita la celda; Intro guarda, Esc la deja</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Letras</translation>
    </message>
    <message>
        <source>filter the rows; Backspace and Esc undo that</source>
        <translation>filtran las filas; Retroceso y Esc lo quitan</translation>
    </message>
    <message>
        <source>groups by space, trade, crew, or not</source>
        <translation>agrupa por cuarto, oficio, cuadrilla, o no</translation>
    </message>
    <message>
        <source>fills the rows chosen with the top one&apos;s cell</source>
        <translation>llena las filas elegidas con la celda de arriba</translation>
    </message>
    <message>
        <source>copies the rows for a spreadsheet</source>
        <translation>copia las filas para una hoja de cálculo</translation>
    </message>
    <message>
        <source>brings in rows copied from a spreadsheet</source>
        <translation>trae filas copiadas de una hoja de cálculo</translation>
    </message>
    <message>
        <source>a new item in this space</source>
        <translation>un trabajo nuevo en este cuarto</translation>
    </message>
    <message>
        <source>clears the cell</source>
        <translation>vacía la celda</translation>
    </message>
    <message>
        <source>drops the item</source>
        <translation>quita el trabajo</translation>
    </message>
    <message>
        <source>take-off: the quantity from sizes</source>
        <translation>medidas: la cantidad a partir de ellas</translation>
    </message>
    <message>
        <source>On this page</source>
        <translation>En esta página</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>En todas partes</translation>
    </message>
    <message>
        <source>the price book&apos;s price, not its own</source>
        <translation>el precio del libro de precios, no el suyo</translation>
    </message>
    <message>
        <source>from the notes to the draft, and back with Shift</source>
        <translation>de las notas al borrador, y de vuelta con Mayús</translation>
    </message>
    <message>
        <source>another row; its sentence shows in the notes</source>
        <translation>otra fila; su frase se ve en las notas</translation>
    </message>
    <message>
        <source>corrects the row</source>
        <translation>corrige la fila</translation>
    </message>
    <message>
        <source>Space, Del</source>
        <translation>Espacio, Supr</translation>
    </message>
    <message>
        <source>drops the row, or takes it back in</source>
        <translation>quita la fila, o la vuelve a incluir</translation>
    </message>
    <message>
        <source>keeps what was not dropped</source>
        <translation>guarda lo que no se quitó</translation>
    </message>
    <message>
        <source>a file of notes</source>
        <translation>un archivo de notas</translation>
    </message>
    <message>
        <source>the next thing to suppose</source>
        <translation>el siguiente supuesto</translation>
    </message>
    <message>
        <source>supposes a little less or more</source>
        <translation>supone un poco menos o más</translation>
    </message>
    <message>
        <source>puts that one back as it stands</source>
        <translation>lo deja como está</translation>
    </message>
    <message>
        <source>everything as it stands</source>
        <translation>todo como está</translation>
    </message>
    <message>
        <source>another item; its days stand at the foot</source>
        <translation>otro trabajo; sus días están al pie</translation>
    </message>
    <message>
        <source>takes the item in hand, and lets it go</source>
        <translation>toma el trabajo en la mano, y lo suelta</translation>
    </message>
    <message>
        <source>in hand: a day sooner or later; with Shift, five</source>
        <translation>en la mano: un día antes o después; con Mayús, cinco</translation>
    </message>
    <message>
        <source>in hand: puts it back; else every row</source>
        <translation>en la mano: lo devuelve a su sitio; si no, todas las filas</translation>
    </message>
    <message>
        <source>by space or by crew</source>
        <translation>por cuarto o por cuadrilla</translation>
    </message>
    <message>
        <source>open work only, and all of it</source>
        <translation>solo lo que falta, y todo</translation>
    </message>
    <message>
        <source>the table behind the lines, and back</source>
        <translation>la tabla detrás de las líneas, y de vuelta</translation>
    </message>
    <message>
        <source>links items in the usual order of the trades</source>
        <translation>enlaza los trabajos en el orden usual de los oficios</translation>
    </message>
    <message>
        <source>keeps these days as the planned ones</source>
        <translation>guarda estos días como los previstos</translation>
    </message>
    <message>
        <source>Ctrl and +, −</source>
        <translation>Ctrl y +, −</translation>
    </message>
    <message>
        <source>wider and narrower days</source>
        <translation>días más anchos y más estrechos</translation>
    </message>
    <message>
        <source>contracts, changes, goods</source>
        <translation>contratos, cambios, materiales</translation>
    </message>
    <message>
        <source>edits the cell; on a figure, all of the row</source>
        <translation>edita la celda; en una cifra, toda la fila</translation>
    </message>
    <message>
        <source>all of the row, field by field</source>
        <translation>toda la fila, campo por campo</translation>
    </message>
    <message>
        <source>a new one</source>
        <translation>una nueva</translation>
    </message>
    <message>
        <source>signed today; goods: arrived today</source>
        <translation>firmado hoy; materiales: llegó hoy</translation>
    </message>
    <message>
        <source>a change: refused today</source>
        <translation>un cambio: rechazado hoy</translation>
    </message>
    <message>
        <source>drops the row</source>
        <translation>quita la fila</translation>
    </message>
    <message>
        <source>another alternate</source>
        <translation>otra alternativa</translation>
    </message>
    <message>
        <source>another of its options</source>
        <translation>otra de sus opciones</translation>
    </message>
    <message>
        <source>decides for the option in hand; then say why</source>
        <translation>se decide por la opción en la mano; luego diga por qué</translation>
    </message>
    <message>
        <source>carries it: it counts until it is decided</source>
        <translation>la cuenta mientras no se decida</translation>
    </message>
    <message>
        <source>asks for the change order a decision wants</source>
        <translation>pide la orden de cambio que quiere una decisión</translation>
    </message>
    <message>
        <source>the table behind the picture, and back</source>
        <translation>la tabla detrás del dibujo, y de vuelta</translation>
    </message>
    <message>
        <source>a new price</source>
        <translation>un precio nuevo</translation>
    </message>
    <message>
        <source>all that is known of it</source>
        <translation>todo lo que se sabe de él</translation>
    </message>
    <message>
        <source>drops the price</source>
        <translation>quita el precio</translation>
    </message>
    <message>
        <source>accepts it: it was looked at and is right</source>
        <translation>lo acepta: se miró y está bien</translation>
    </message>
    <message>
        <source>sends it back, with what is not right</source>
        <translation>lo devuelve, con lo que no está bien</translation>
    </message>
    <message>
        <source>open only, and all of it</source>
        <translation>solo lo abierto, y todo</translation>
    </message>
    <message>
        <source>a new punch item</source>
        <translation>un remate nuevo</translation>
    </message>
    <message>
        <source>the sheets for the crew leads (PDF)</source>
        <translation>las hojas para los jefes de cuadrilla (PDF)</translation>
    </message>
    <message>
        <source>bills and receipts, the bank, payee rules</source>
        <translation>facturas y recibos, el banco, reglas</translation>
    </message>
    <message>
        <source>a new entry; Ctrl+Enter keeps it</source>
        <translation>una entrada nueva; Ctrl+Enter la guarda</translation>
    </message>
    <message>
        <source>an invoice: enters its payment</source>
        <translation>una factura: anota su pago</translation>
    </message>
    <message>
        <source>its paper was seen, or was not</source>
        <translation>su papel se vio, o no</translation>
    </message>
    <message>
        <source>the bank: takes the guess</source>
        <translation>el banco: acepta lo supuesto</translation>
    </message>
    <message>
        <source>the bank: files the line to what you name</source>
        <translation>el banco: asigna la línea a lo que usted nombre</translation>
    </message>
    <message>
        <source>the bank: a new row of the line</source>
        <translation>el banco: una fila nueva de la línea</translation>
    </message>
    <message>
        <source>the bank: the line is not ours</source>
        <translation>el banco: la línea no es nuestra</translation>
    </message>
    <message>
        <source>the request to the lender (PDF)</source>
        <translation>la solicitud al prestamista (PDF)</translation>
    </message>
    <message>
        <source>another device</source>
        <translation>otro aparato</translation>
    </message>
    <message>
        <source>starts or stops the peer on this computer</source>
        <translation>arranca o para el punto de encuentro en esta computadora</translation>
    </message>
    <message>
        <source>meets the peer now</source>
        <translation>se encuentra ahora con el punto de encuentro</translation>
    </message>
    <message>
        <source>opens a way in for another device</source>
        <translation>abre una entrada para otro aparato</translation>
    </message>
    <message>
        <source>shuts the device in hand out; twice, to be sure</source>
        <translation>excluye el aparato en la mano; dos veces, para estar seguro</translation>
    </message>
    <message>
        <source>puts the way in away</source>
        <translation>guarda la entrada</translation>
    </message>
    <message>
        <source>what it rests on: price, resale, loans, days</source>
        <translation>en qué se apoya: precio, reventa, préstamos, días</translation>
    </message>
    <message>
        <source>more of the item: contract, lender line, lead days</source>
        <translation>más del trabajo: contrato, renglón del prestamista, días de entrega</translation>
    </message>
    <message>
        <source>finished today</source>
        <translation>terminado hoy</translation>
    </message>
    <message>
        <source>the caution that is open on the item</source>
        <translation>la advertencia abierta del trabajo</translation>
    </message>
    <message>
        <source>a new alternate; then its options, until Esc</source>
        <translation>una alternativa nueva; luego sus opciones, hasta Esc</translation>
    </message>
    <message>
        <source>an option more</source>
        <translation>una opción más</translation>
    </message>
    <message>
        <source>all of the option; with Shift, of the alternate</source>
        <translation>todo de la opción; con Mayús, de la alternativa</translation>
    </message>
    <message>
        <source>drops the option; with Shift, the alternate</source>
        <translation>quita la opción; con Mayús, la alternativa</translation>
    </message>
    <message>
        <source>links what starts after it; with the mouse, pull the end of its line</source>
        <translation>enlaza lo que empieza después; con el ratón, tire del extremo de su línea</translation>
    </message>
    <message>
        <source>its links: days between, another kind, or none</source>
        <translation>sus enlaces: días entre medio, otra clase o ninguno</translation>
    </message>
    <message>
        <source>the bank: brings in a download (OFX, QFX)</source>
        <translation>el banco: trae una descarga (OFX, QFX)</translation>
    </message>
    <message>
        <source>the lender&apos;s lines, draws so far, what was allowed, pictures</source>
        <translation>renglones del prestamista, desembolsos, lo aprobado, fotos</translation>
    </message>
    <message>
        <source>asks for what can be drawn; what was allowed: the rest as asked; a picture: for the lender, or not</source>
        <translation>pide lo que se puede; lo aprobado: el resto, lo pedido; una foto: para el prestamista, o no</translation>
    </message>
    <message>
        <source>how far it is: a percent, a count, its steps</source>
        <translation>cuánto lleva: un porcentaje, una cuenta, sus pasos</translation>
    </message>
    <message>
        <source>fixes the baseline, which the week compares with</source>
        <translation>fija la línea base, con la que compara la semana</translation>
    </message>
</context>
<context>
    <name>LinksPanel</name>
    <message>
        <source>It waits for nothing, and nothing waits for it.</source>
        <translation>No espera a nada, y nada la espera.</translation>
    </message>
    <message>
        <source>A day sooner</source>
        <translation>Un día antes</translation>
    </message>
    <message>
        <source>A day later</source>
        <translation>Un día después</translation>
    </message>
    <message>
        <source>Wait otherwise</source>
        <translation>Esperar de otro modo</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>Unlink</source>
        <translation>Desenlazar</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Supr</translation>
    </message>
    <message>
        <source>Something after it</source>
        <translation>Algo después</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>MarkPanel</name>
    <message>
        <source>Done</source>
        <translation>Hecho</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>aún no</translation>
    </message>
    <message>
        <source>Seen on</source>
        <translation>Visto el</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Qué se vio</translation>
    </message>
    <message>
        <source>Mark it</source>
        <translation>Marcarlo</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>NewJobForm</name>
    <message>
        <source>Name of the job, such as street and number</source>
        <translation>Nombre de la obra, como calle y número</translation>
    </message>
    <message>
        <source>Built (where known)</source>
        <translation>Año (si se sabe)</translation>
    </message>
    <message>
        <source>Begin this job</source>
        <translation>Empezar esta obra</translation>
    </message>
</context>
<context>
    <name>PastePanel</name>
    <message>
        <source>Can come in: %1.</source>
        <translation>Puede entrar: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) with something wrong:</source>
        <translation>
            <numerusform>%n fila con algo mal:</numerusform>
            <numerusform>%n filas con algo mal:</numerusform>
        </translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Bring in nothing</source>
        <translation>No traer nada</translation>
    </message>
    <message>
        <source>Bring them in</source>
        <translation>Traerlas</translation>
    </message>
    <message numerus="yes">
        <source>Bring in the %n that are right</source>
        <translation>
            <numerusform>Traer la %n que está bien</numerusform>
            <numerusform>Traer las %n que están bien</numerusform>
        </translation>
    </message>
    <message>
        <source>Copy the wrong rows</source>
        <translation>Copiar las filas malas</translation>
    </message>
</context>
<context>
    <name>PricesPage</name>
    <message>
        <source>Price book</source>
        <translation>Libro de precios</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>New price</source>
        <translation>Precio nuevo</translation>
    </message>
    <message>
        <source>Paste rows</source>
        <translation>Pegar filas</translation>
    </message>
    <message>
        <source>There is no price yet</source>
        <translation>Todavía no hay precios</translation>
    </message>
    <message>
        <source>A price says what a unit of some work costs, in material and labour, and where that was heard. Items of every job in this book without a price of their own are priced by it.</source>
        <translation>Un precio dice lo que cuesta una unidad de un trabajo, en material y mano de obra, y de dónde se supo. Los trabajos de todas las obras de este libro sin precio propio se valoran con él.</translation>
    </message>
    <message>
        <source>The first price</source>
        <translation>El primer precio</translation>
    </message>
</context>
<context>
    <name>PunchPage</name>
    <message>
        <source>Punch list</source>
        <translation>Lista de remates</translation>
    </message>
    <message>
        <source>Accepted</source>
        <translation>Aceptado</translation>
    </message>
    <message>
        <source>Not right</source>
        <translation>No está bien</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>Open only</source>
        <translation>Solo abiertos</translation>
    </message>
    <message>
        <source>New</source>
        <translation>Nuevo</translation>
    </message>
    <message>
        <source>For the crews</source>
        <translation>Para las cuadrillas</translation>
    </message>
    <message>
        <source>What is not right yet? Enter sends it back, Esc leaves it.</source>
        <translation>¿Qué no está bien todavía? Intro lo devuelve, Esc lo deja.</translation>
    </message>
    <message>
        <source>The sheets for the crew leads</source>
        <translation>Las hojas para los jefes de cuadrilla</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Nothing is left to put right</source>
        <translation>No queda nada por rematar</translation>
    </message>
    <message>
        <source>Nothing was found yet</source>
        <translation>Todavía no se encontró nada</translation>
    </message>
    <message>
        <source>What is found on a walk through the rooms stands here, with who puts it right and by when, until a look accepts it. Ctrl+O shows what was accepted.</source>
        <translation>Lo que se encuentra al recorrer los cuartos está aquí, con quién lo remata y hasta cuándo, hasta que una mirada lo acepta. Ctrl+O muestra lo aceptado.</translation>
    </message>
    <message>
        <source>What is found on a walk through the rooms stands here, with who puts it right and by when, until a look accepts it.</source>
        <translation>Lo que se encuentra al recorrer los cuartos está aquí, con quién lo remata y hasta cuándo, hasta que una mirada lo acepta.</translation>
    </message>
    <message>
        <source>A punch item</source>
        <translation>Un remate</translation>
    </message>
</context>
<context>
    <name>RecordPanel</name>
    <message>
        <source>Keep</source>
        <translation>Guardar</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Dejarlo</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
</context>
<context>
    <name>RoomList</name>
    <message>
        <source>By room</source>
        <translation>Por cuarto</translation>
    </message>
</context>
<context>
    <name>ScheduleChart</name>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
</context>
<context>
    <name>ScheduleDelegate</name>
    <message>
        <source>Pull to the item that starts after it</source>
        <translation>Tire hasta lo que empieza después</translation>
    </message>
</context>
<context>
    <name>ScheduleKey</name>
    <message>
        <source>no float</source>
        <translation>sin holgura</translation>
    </message>
    <message>
        <source>2 days or less</source>
        <translation>2 días o menos</translation>
    </message>
    <message>
        <source>more</source>
        <translation>más</translation>
    </message>
    <message>
        <source>may slip</source>
        <translation>puede correrse</translation>
    </message>
    <message>
        <source>was done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>previsto</translation>
    </message>
    <message>
        <source>order by</source>
        <translation>pedir antes de</translation>
    </message>
    <message>
        <source>goods come</source>
        <translation>llega el material</translation>
    </message>
</context>
<context>
    <name>SchedulePage</name>
    <message>
        <source>Laying out the days…</source>
        <translation>Repartiendo los días…</translation>
    </message>
    <message>
        <source>Schedule</source>
        <translation>Calendario</translation>
    </message>
    <message>
        <source>Only with:</source>
        <translation>Solo con:</translation>
    </message>
    <message>
        <source>All rows</source>
        <translation>Todas las filas</translation>
    </message>
    <message>
        <source>All work</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>Open work only</source>
        <translation>Solo lo que falta</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabla</translation>
    </message>
    <message>
        <source>Usual order</source>
        <translation>Orden usual</translation>
    </message>
    <message>
        <source>Keep as planned</source>
        <translation>Guardar como previsto</translation>
    </message>
    <message>
        <source>Will finish</source>
        <translation>Terminará</translation>
    </message>
    <message>
        <source>Nothing to lay out yet. Items come from the walk or are entered in the scope of work; with days on them, and the order they come in, this page tells when each is on site and when it all ends.</source>
        <translation>Todavía no hay nada que repartir. Los trabajos salen del recorrido o se escriben en el alcance; con sus días y el orden en que van, esta página dice cuándo se está en cada uno y cuándo termina todo.</translation>
    </message>
    <message>
        <source>To the scope of work</source>
        <translation>Al alcance</translation>
    </message>
    <message>
        <source>All of it is finished. Ctrl+O shows every row.</source>
        <translation>Todo está terminado. Ctrl+O muestra todas las filas.</translation>
    </message>
    <message>
        <source>No row has all of “%1”. Esc shows every row.</source>
        <translation>Ninguna fila tiene todo “%1”. Esc muestra todas las filas.</translation>
    </message>
    <message>
        <source>Arrows move it by a day, with Shift by five. Enter lets it go, Esc puts it back.</source>
        <translation>Las flechas lo mueven un día, con Mayús cinco. Intro lo suelta, Esc lo devuelve a su sitio.</translation>
    </message>
    <message>
        <source>↑ ↓ and letters go to it, ← → change the days between. Enter links them, Esc leaves it.</source>
        <translation>↑ ↓ y letras van hasta él, ← → cambian los días entre medio. Intro los enlaza, Esc lo deja.</translation>
    </message>
    <message>
        <source>Something after it</source>
        <translation>Algo después</translation>
    </message>
    <message>
        <source>Its links</source>
        <translation>Sus enlaces</translation>
    </message>
</context>
<context>
    <name>ScheduleWords</name>
    <message>
        <source>1 day</source>
        <translation>1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>%1 is finished: it stays where it was.</source>
        <translation>%1 está terminado: se queda donde estuvo.</translation>
    </message>
    <message>
        <source>%1 is under way: what is left of it goes on from the next day worked. Its days are changed in the scope.</source>
        <translation>%1 está en marcha: lo que queda sigue desde el próximo día de trabajo. Sus días se cambian en el alcance.</translation>
    </message>
    <message>
        <source>%1 is an open alternate without items of its own: it can be moved once it is decided.</source>
        <translation>%1 es una alternativa abierta sin trabajos propios: se puede mover cuando esté decidida.</translation>
    </message>
    <message>
        <source>%1 has no days, so it takes no time in the plan: enter its days in the scope first.</source>
        <translation>%1 no tiene días, así que no ocupa tiempo en el plan: escriba primero sus días en el alcance.</translation>
    </message>
    <message>
        <source>Items wait for each other in a ring, so the plan has no days to move %1 from.</source>
        <translation>Hay trabajos que se esperan en círculo, así que el plan no tiene días desde los que mover %1.</translation>
    </message>
    <message>
        <source>%1 waits for finished items whose day is not known, so nothing tells how far it could move.</source>
        <translation>%1 espera a trabajos terminados cuyo día no se conoce, así que nada dice hasta dónde podría moverse.</translation>
    </message>
    <message>
        <source>no item has days</source>
        <translation>ningún trabajo tiene días</translation>
    </message>
    <message>
        <source>items wait for each other in a ring</source>
        <translation>hay trabajos que se esperan en círculo</translation>
    </message>
    <message>
        <source>no finish was planned to compare with</source>
        <translation>no se previó un final con el que comparar</translation>
    </message>
    <message>
        <source>on the target of %1</source>
        <translation>en la meta del %1</translation>
    </message>
    <message numerus="yes">
        <source>%n working day(s) after the target of %1</source>
        <translation>
            <numerusform>%n día laborable después de la meta del %1</numerusform>
            <numerusform>%n días laborables después de la meta del %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n working day(s) before the target of %1</source>
        <translation>
            <numerusform>%n día laborable antes de la meta del %1</numerusform>
            <numerusform>%n días laborables antes de la meta del %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n trabajo</numerusform>
            <numerusform>%n trabajos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n finished</source>
        <translation>
            <numerusform>%n terminado</numerusform>
            <numerusform>%n terminados</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n under way</source>
        <translation>
            <numerusform>%n en marcha</numerusform>
            <numerusform>%n en marcha</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without float</source>
        <translation>
            <numerusform>%n sin holgura</numerusform>
            <numerusform>%n sin holgura</numerusform>
        </translation>
    </message>
    <message>
        <source>No dates can be told, for these items wait for each other in a ring: %1.</source>
        <translation>No se puede decir ninguna fecha, porque estos trabajos se esperan en círculo: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) without days take no time here.</source>
        <translation>
            <numerusform>%n trabajo sin días no ocupa tiempo aquí.</numerusform>
            <numerusform>%n trabajos sin días no ocupan tiempo aquí.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>For %n item(s) goods are ordered and no day tells when they come.</source>
        <translation>
            <numerusform>Para %n trabajo hay material pedido y nada dice cuándo llega.</numerusform>
            <numerusform>Para %n trabajos hay material pedido y nada dice cuándo llega.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) wait for an inspection, which holds up nothing here.</source>
        <translation>
            <numerusform>%n trabajo espera una inspección, que aquí no detiene nada.</numerusform>
            <numerusform>%n trabajos esperan una inspección, que aquí no detiene nada.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of signed changes name no item.</source>
        <translation>%1 de cambios firmados no nombran ningún trabajo.</translation>
    </message>
    <message>
        <source>No item waits for another yet: everything starts as soon as it may.</source>
        <translation>Ningún trabajo espera a otro todavía: todo empieza en cuanto puede.</translation>
    </message>
    <message>
        <source>Finished; no mark tells when</source>
        <translation>Terminado; ninguna marca dice cuándo</translation>
    </message>
    <message>
        <source>Finished: on site %1 to %2</source>
        <translation>Terminado: en obra del %1 al %2</translation>
    </message>
    <message>
        <source>Finished %1</source>
        <translation>Terminado el %1</translation>
    </message>
    <message>
        <source>No dates</source>
        <translation>Sin fechas</translation>
    </message>
    <message>
        <source>No days entered; falls on %1</source>
        <translation>Sin días escritos; cae el %1</translation>
    </message>
    <message>
        <source>Under way since %1; goes on %2 to %3, %4 left</source>
        <translation>En marcha desde el %1; sigue del %2 al %3, quedan %4</translation>
    </message>
    <message>
        <source>On site %1, %2</source>
        <translation>En obra el %1, %2</translation>
    </message>
    <message>
        <source>On site %1 to %2, %3</source>
        <translation>En obra del %1 al %2, %3</translation>
    </message>
    <message>
        <source>No float: a day late here is a day late at the end.</source>
        <translation>Sin holgura: un día de retraso aquí es un día de retraso al final.</translation>
    </message>
    <message>
        <source>May slip %1 and nothing else moves.</source>
        <translation>Puede correrse %1 y nada más se mueve.</translation>
    </message>
    <message>
        <source>May slip %1 before the finish moves, but others move at once.</source>
        <translation>Puede correrse %1 antes de que se mueva el final, pero otros se mueven enseguida.</translation>
    </message>
    <message>
        <source>May slip %1 before the finish moves, %2 before others do.</source>
        <translation>Puede correrse %1 antes de que se mueva el final, %2 antes de que se muevan otros.</translation>
    </message>
    <message>
        <source>Waits for %1.</source>
        <translation>Espera a %1.</translation>
    </message>
    <message>
        <source>Waits for goods that are not ordered yet.</source>
        <translation>Espera material que aún no está pedido.</translation>
    </message>
    <message>
        <source>Waits for goods that are ordered.</source>
        <translation>Espera material que está pedido.</translation>
    </message>
    <message>
        <source>Waits for the day agreed with its crew.</source>
        <translation>Espera el día acordado con su cuadrilla.</translation>
    </message>
    <message>
        <source>Waits for the day planned for it.</source>
        <translation>Espera el día previsto para él.</translation>
    </message>
    <message>
        <source>goods, not ordered</source>
        <translation>material, sin pedir</translation>
    </message>
    <message>
        <source>goods, ordered</source>
        <translation>material, pedido</translation>
    </message>
    <message>
        <source>the day agreed</source>
        <translation>el día acordado</translation>
    </message>
    <message>
        <source>the day planned</source>
        <translation>el día previsto</translation>
    </message>
    <message>
        <source>No planned dates.</source>
        <translation>Sin fechas previstas.</translation>
    </message>
    <message>
        <source>Planned %1 to %2</source>
        <translation>Previsto del %1 al %2</translation>
    </message>
    <message>
        <source>Planned %1</source>
        <translation>Previsto el %1</translation>
    </message>
    <message>
        <source>it was on time</source>
        <translation>fue a tiempo</translation>
    </message>
    <message>
        <source>it is on time</source>
        <translation>va a tiempo</translation>
    </message>
    <message numerus="yes">
        <source>it was %n working day(s) late</source>
        <translation>
            <numerusform>se retrasó %n día laborable</numerusform>
            <numerusform>se retrasó %n días laborables</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>it will be %n working day(s) late</source>
        <translation>
            <numerusform>se retrasará %n día laborable</numerusform>
            <numerusform>se retrasará %n días laborables</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>it was %n working day(s) early</source>
        <translation>
            <numerusform>se adelantó %n día laborable</numerusform>
            <numerusform>se adelantó %n días laborables</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>it will be %n working day(s) early</source>
        <translation>
            <numerusform>se adelantará %n día laborable</numerusform>
            <numerusform>se adelantará %n días laborables</numerusform>
        </translation>
    </message>
    <message>
        <source>Order by %1.</source>
        <translation>Pedir antes del %1.</translation>
    </message>
    <message>
        <source>Goods come %1.</source>
        <translation>El material llega el %1.</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Empieza</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Termina</translation>
    </message>
    <message>
        <source>Days left</source>
        <translation>Quedan</translation>
    </message>
    <message>
        <source>Float</source>
        <translation>Holgura</translation>
    </message>
    <message>
        <source>Order by</source>
        <translation>Pedir antes</translation>
    </message>
    <message>
        <source>Goods</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Planned start</source>
        <translation>Inicio prev.</translation>
    </message>
    <message>
        <source>Planned finish</source>
        <translation>Final prev.</translation>
    </message>
    <message>
        <source>Late</source>
        <translation>Retraso</translation>
    </message>
    <message>
        <source>Waits for</source>
        <translation>Espera a</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>terminado</translation>
    </message>
    <message>
        <source>It follows %1 at once.</source>
        <translation>Sigue a %1 enseguida.</translation>
    </message>
    <message>
        <source>It follows %1 after %2.</source>
        <translation>Sigue a %1 tras %2.</translation>
    </message>
    <message>
        <source>%1 can&apos;t start before %2. %3</source>
        <translation>%1 no puede empezar antes del %2. %3</translation>
    </message>
    <message>
        <source>%1 starts %2, as it stands.</source>
        <translation>%1 empieza el %2, como está.</translation>
    </message>
    <message>
        <source>%1: from %2 to %3, ending %4.</source>
        <translation>%1: del %2 al %3, hasta el %4.</translation>
    </message>
    <message>
        <source>No sooner: %1</source>
        <translation>Antes no: %1</translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n más</numerusform>
            <numerusform>%n más</numerusform>
        </translation>
    </message>
    <message>
        <source>It pushes nothing.</source>
        <translation>No empuja nada.</translation>
    </message>
    <message numerus="yes">
        <source>It pushes %n: </source>
        <translation>
            <numerusform>Empuja %n: </numerusform>
            <numerusform>Empuja %n: </numerusform>
        </translation>
    </message>
    <message>
        <source>The finish stays %1.</source>
        <translation>El final sigue el %1.</translation>
    </message>
    <message numerus="yes">
        <source>The finish moves to %1, %n working day(s) later.</source>
        <translation>
            <numerusform>El final pasa al %1, %n día laborable más tarde.</numerusform>
            <numerusform>El final pasa al %1, %n días laborables más tarde.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The finish moves to %1, %n working day(s) sooner.</source>
        <translation>
            <numerusform>El final pasa al %1, %n día laborable antes.</numerusform>
            <numerusform>El final pasa al %1, %n días laborables antes.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ScopeEmpty</name>
    <message>
        <source>Nothing is to be done yet</source>
        <translation>Todavía no hay nada que hacer</translation>
    </message>
    <message>
        <source>Say what is to be done and where, such as “Kitchen: replace faucet”, or copy the rows of a spreadsheet and paste them here: you see what is wrong with them before anything comes in.</source>
        <translation>Diga qué hay que hacer y dónde, en inglés, como “Kitchen: replace faucet”, o copie filas de una hoja de cálculo y péguelas aquí: verá qué tienen mal antes de que entre nada.</translation>
    </message>
    <message>
        <source>The first item</source>
        <translation>El primer trabajo</translation>
    </message>
    <message>
        <source>Paste rows</source>
        <translation>Pegar filas</translation>
    </message>
</context>
<context>
    <name>ScopeFoot</name>
    <message>
        <source>Lines by today&apos;s prices</source>
        <translation>Líneas a precios de hoy</translation>
    </message>
    <message>
        <source>Budget now</source>
        <translation>Presupuesto actual</translation>
    </message>
    <message>
        <source>Finished today</source>
        <translation>Terminado hoy</translation>
    </message>
    <message>
        <source>More of it</source>
        <translation>Más del trabajo</translation>
    </message>
    <message>
        <source>How far</source>
        <translation>Cuánto lleva</translation>
    </message>
    <message>
        <source>Fix the baseline</source>
        <translation>Fijar la línea base</translation>
    </message>
</context>
<context>
    <name>ScopePage</name>
    <message>
        <source>Scope of work</source>
        <translation>Alcance de la obra</translation>
    </message>
    <message>
        <source>New item</source>
        <translation>Trabajo nuevo</translation>
    </message>
    <message>
        <source>Paste rows</source>
        <translation>Pegar filas</translation>
    </message>
    <message>
        <source>Take-off</source>
        <translation>Medidas</translation>
    </message>
    <message>
        <source>What is to be done? Such as “replace faucet”; in another space: “Hall bath: replace faucet”</source>
        <translation>¿Qué hay que hacer? En inglés, como “replace faucet”; en otro cuarto: “Hall bath: replace faucet”</translation>
    </message>
</context>
<context>
    <name>SheetView</name>
    <message>
        <source>No row has all of “%1”. Esc shows every row.</source>
        <translation>Ninguna fila tiene todo “%1”. Esc muestra todas.</translation>
    </message>
</context>
<context>
    <name>SpendPage</name>
    <message>
        <source>Spend</source>
        <translation>Gastos</translation>
    </message>
    <message>
        <source>Pay it</source>
        <translation>Pagarla</translation>
    </message>
    <message>
        <source>Paper seen</source>
        <translation>Papel visto</translation>
    </message>
    <message>
        <source>Take the guess</source>
        <translation>Aceptar lo supuesto</translation>
    </message>
    <message>
        <source>File it</source>
        <translation>Asignarla</translation>
    </message>
    <message>
        <source>A new row of it</source>
        <translation>Una fila nueva</translation>
    </message>
    <message>
        <source>Not ours</source>
        <translation>No es nuestro</translation>
    </message>
    <message>
        <source>All of it</source>
        <translation>Ver todo</translation>
    </message>
    <message>
        <source>New rule</source>
        <translation>Nueva regla</translation>
    </message>
    <message>
        <source>New entry</source>
        <translation>Nueva entrada</translation>
    </message>
    <message>
        <source>Bills and receipts</source>
        <translation>Facturas y recibos</translation>
    </message>
    <message>
        <source>The bank (%1 wait)</source>
        <translation>El banco (%1 esperan)</translation>
    </message>
    <message>
        <source>The bank</source>
        <translation>El banco</translation>
    </message>
    <message>
        <source>Payee rules</source>
        <translation>Reglas de beneficiarios</translation>
    </message>
    <message>
        <source>What is it for? An item, a contract, a crew, an invoice it pays, a draw, or “job”; Shift+Enter learns no rule</source>
        <translation>¿Para qué es? Un trabajo, un contrato, una cuadrilla, una factura que paga, un desembolso, u «obra»; Mayús+Enter no aprende regla</translation>
    </message>
    <message>
        <source>Lines of the bank that may be its payment; a click lets one go with it</source>
        <translation>Líneas del banco que pueden ser su pago; con un clic una va con ella</translation>
    </message>
    <message>
        <source>goes with it: %1</source>
        <translation>va con ella: %1</translation>
    </message>
    <message>
        <source>Picture of the paper</source>
        <translation>Foto del papel</translation>
    </message>
    <message>
        <source>Nothing was spent yet</source>
        <translation>Todavía no se ha gastado nada</translation>
    </message>
    <message>
        <source>A bill is what is owed, a payment what left the account, a receipt both at once. Enter the first here; those a phone begins on site come in by themselves.</source>
        <translation>Una factura es lo que se debe, un pago lo que salió de la cuenta, un recibo las dos cosas. Anote aquí lo primero; lo que un teléfono empieza en obra llega solo.</translation>
    </message>
    <message>
        <source>The first entry</source>
        <translation>La primera entrada</translation>
    </message>
    <message>
        <source>No line of the bank waits</source>
        <translation>Ninguna línea del banco espera</translation>
    </message>
    <message>
        <source>No rule was learnt yet</source>
        <translation>Todavía no se ha aprendido ninguna regla</translation>
    </message>
    <message>
        <source>When a line of the bank is filed, lines of the same payee are taken for the same from then on. Such rules stand here, to be changed or dropped.</source>
        <translation>Cuando se asigna una línea del banco, las del mismo beneficiario se toman por lo mismo desde entonces. Aquí están esas reglas, para cambiarlas o quitarlas.</translation>
    </message>
    <message>
        <source>A download…</source>
        <translation>Una descarga…</translation>
    </message>
    <message>
        <source>Lines of a bank&apos;s download (OFX or QFX) that nobody has said what they are for stand here.</source>
        <translation>Aquí están las líneas de una descarga del banco (OFX o QFX) de las que nadie ha dicho para qué son.</translation>
    </message>
    <message>
        <source>Bring in a download…</source>
        <translation>Traer una descarga…</translation>
    </message>
</context>
<context>
    <name>StartPage</name>
    <message>
        <source>The numbers of a house under renovation, from the first walk to the sale: one book for all your jobs, one file on this computer.</source>
        <translation>Los números de una casa en remodelación, del primer recorrido a la venta: un libro para todas sus obras, un archivo en esta computadora.</translation>
    </message>
    <message>
        <source>Nothing in it was changed.</source>
        <translation>No se cambió nada en él.</translation>
    </message>
    <message>
        <source>Try again</source>
        <translation>Intentar de nuevo</translation>
    </message>
    <message>
        <source>Open a book…</source>
        <translation>Abrir un libro…</translation>
    </message>
    <message>
        <source>Look at a house made up for show</source>
        <translation>Ver una casa inventada de muestra</translation>
    </message>
    <message>
        <source>Begin another</source>
        <translation>Empezar otro</translation>
    </message>
    <message>
        <source>Opening the book…</source>
        <translation>Abriendo el libro…</translation>
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
</context>
<context>
    <name>TakeOffPanel</name>
    <message>
        <source>Take-off</source>
        <translation>Medidas</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Use it</source>
        <translation>Usar</translation>
    </message>
    <message>
        <source>Buy %1: %2 (%3)</source>
        <translation>Comprar %1: %2 (%3)</translation>
    </message>
    <message>
        <source>Arithmetic: %1.</source>
        <translation>Cálculo: %1.</translation>
    </message>
</context>
<context>
    <name>ThemeLink</name>
    <message>
        <source>Light pages</source>
        <translation>Páginas claras</translation>
    </message>
    <message>
        <source>Dark pages</source>
        <translation>Páginas oscuras</translation>
    </message>
</context>
<context>
    <name>TradeTable</name>
    <message>
        <source>Budget now</source>
        <translation>Presupuesto actual</translation>
    </message>
    <message>
        <source>Committed</source>
        <translation>Comprometido</translation>
    </message>
    <message>
        <source>Billed</source>
        <translation>Facturado</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>Pagado</translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation>Pronóstico</translation>
    </message>
    <message>
        <source>Over or early</source>
        <translation>De más o antes</translation>
    </message>
    <message>
        <source>Money by trade</source>
        <translation>Dinero por oficio</translation>
    </message>
    <message>
        <source>Trade</source>
        <translation>Oficio</translation>
    </message>
</context>
<context>
    <name>WalkDelegate</name>
    <message>
        <source>Take in</source>
        <translation>Incluir</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Quitar</translation>
    </message>
</context>
<context>
    <name>WalkFix</name>
    <message>
        <source>Space</source>
        <translation>Cuarto</translation>
    </message>
    <message>
        <source>Treatment</source>
        <translation>Qué se hace</translation>
    </message>
    <message>
        <source>Object</source>
        <translation>A qué</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
    </message>
</context>
<context>
    <name>WalkPage</name>
    <message>
        <source>Your own words; Delete forgets one</source>
        <translation>Sus propias palabras; Supr olvida una</translation>
    </message>
    <message>
        <source>Forget</source>
        <translation>Olvidar</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>A file of notes…</source>
        <translation>Un archivo de notas…</translation>
    </message>
    <message>
        <source>Wipe the notes</source>
        <translation>Borrar las notas</translation>
    </message>
    <message>
        <source>Keep what is not dropped</source>
        <translation>Guardar lo no quitado</translation>
    </message>
    <message>
        <source>What was said, in English</source>
        <translation>Lo que se dijo, en inglés</translation>
    </message>
    <message>
        <source>Type or paste what you said on the walk, room by room: “Kitchen. Replace the cabinets, about twelve feet. The floor stays. Outside: the porch steps are rotten.” Or open a file of it. Nothing comes into the job before you keep it.</source>
        <translation>Escriba o pegue lo que dijo en el recorrido, cuarto por cuarto, en inglés: “Kitchen. Replace the cabinets, about twelve feet. The floor stays. Outside: the porch steps are rotten.” O abra un archivo. Nada entra en la obra antes de guardarlo.</translation>
    </message>
    <message>
        <source>Reading…</source>
        <translation>Leyendo…</translation>
    </message>
    <message>
        <source>No work was read from that.</source>
        <translation>No se leyó ningún trabajo.</translation>
    </message>
    <message>
        <source>A file of notes</source>
        <translation>Un archivo de notas</translation>
    </message>
    <message>
        <source>Text (*.txt *.md)</source>
        <translation>Texto (*.txt *.md)</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Todos los archivos (*)</translation>
    </message>
</context>
<context>
    <name>WeekCurve</name>
    <message>
        <source>Planned, earned, spent</source>
        <translation>Planeado, ganado, gastado</translation>
    </message>
    <message>
        <source>Curve</source>
        <translation>Curva</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabla</translation>
    </message>
    <message>
        <source>Nothing to draw yet: no item has planned dates, and nothing was marked or billed.</source>
        <translation>Nada que dibujar todavía: ningún trabajo tiene fechas y nada se ha marcado ni facturado.</translation>
    </message>
</context>
<context>
    <name>WeekEmpty</name>
    <message>
        <source>There is nothing to add up yet</source>
        <translation>Todavía no hay nada que sumar</translation>
    </message>
    <message>
        <source>Enter what is to be done in each room, or paste it from a spreadsheet; then the page says what it will cost, when it will finish and what it will earn.</source>
        <translation>Anote qué hay que hacer en cada cuarto, o péguelo de una hoja de cálculo; entonces la página dice cuánto costará, cuándo terminará y cuánto ganará.</translation>
    </message>
    <message>
        <source>To the scope of work</source>
        <translation>Al alcance de la obra</translation>
    </message>
</context>
<context>
    <name>WeekPage</name>
    <message>
        <source>Adding up the week…</source>
        <translation>Sumando la semana…</translation>
    </message>
    <message>
        <source>One sheet</source>
        <translation>Una hoja</translation>
    </message>
    <message>
        <source>Keep as review</source>
        <translation>Guardar revisión</translation>
    </message>
    <message>
        <source>What moved it</source>
        <translation>Qué lo movió</translation>
    </message>
    <message>
        <source>Nothing to compare with until a baseline is set.</source>
        <translation>Nada con qué comparar hasta fijar una línea base.</translation>
    </message>
    <message>
        <source>On Monday</source>
        <translation>El lunes</translation>
    </message>
    <message>
        <source>Nothing stands out.</source>
        <translation>Nada llama la atención.</translation>
    </message>
    <message>
        <source>Next 14 days</source>
        <translation>Próximos 14 días</translation>
    </message>
    <message>
        <source>Nothing is due in the next 14 days.</source>
        <translation>No hay nada para los próximos 14 días.</translation>
    </message>
    <message>
        <source>Papers missing (%1)</source>
        <translation>Papeles que faltan (%1)</translation>
    </message>
    <message>
        <source>Papers missing</source>
        <translation>Papeles que faltan</translation>
    </message>
    <message>
        <source>None is missing.</source>
        <translation>No falta ninguno.</translation>
    </message>
    <message>
        <source>The page as one sheet</source>
        <translation>La página en una hoja</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
</context>
<context>
    <name>WeekPlot</name>
    <message>
        <source>planned</source>
        <translation>planeado</translation>
    </message>
    <message>
        <source>spent</source>
        <translation>gastado</translation>
    </message>
    <message>
        <source>earned</source>
        <translation>ganado</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>Money over time: </source>
        <translation>Dinero en el tiempo: </translation>
    </message>
</context>
<context>
    <name>WeekSheet</name>
    <message>
        <source>Planned, earned, spent</source>
        <translation>Planeado, ganado, gastado</translation>
    </message>
    <message>
        <source>What moved it</source>
        <translation>Qué lo movió</translation>
    </message>
    <message>
        <source>All others</source>
        <translation>Los demás</translation>
    </message>
    <message>
        <source>Money by trade</source>
        <translation>Dinero por oficio</translation>
    </message>
    <message>
        <source>Budget now</source>
        <translation>Presupuesto actual</translation>
    </message>
    <message>
        <source>Committed</source>
        <translation>Comprometido</translation>
    </message>
    <message>
        <source>Billed</source>
        <translation>Facturado</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>Pagado</translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation>Pronóstico</translation>
    </message>
    <message>
        <source>Over or early</source>
        <translation>De más o antes</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>By room</source>
        <translation>Por cuarto</translation>
    </message>
    <message>
        <source>On Monday</source>
        <translation>El lunes</translation>
    </message>
    <message>
        <source>and %1 more, on the screen</source>
        <translation>y %1 más, en la pantalla</translation>
    </message>
    <message>
        <source>Next 14 days</source>
        <translation>Próximos 14 días</translation>
    </message>
    <message>
        <source>no day yet</source>
        <translation>sin fecha</translation>
    </message>
    <message>
        <source>late</source>
        <translation>atrasado</translation>
    </message>
    <message>
        <source>Papers missing</source>
        <translation>Papeles que faltan</translation>
    </message>
    <message>
        <source>Reminders only: rules change by place; ask your building office and a licensed trade.</source>
        <translation>Solo recordatorios: las reglas cambian según el lugar; pregunte en su oficina de construcción y a un oficio con licencia.</translation>
    </message>
</context>
<context>
    <name>WeekWords</name>
    <message>
        <source>on time</source>
        <translation>a tiempo</translation>
    </message>
    <message numerus="yes">
        <source>%n working day(s) late</source>
        <translation>
            <numerusform>%n día hábil tarde</numerusform>
            <numerusform>%n días hábiles tarde</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n working day(s) early</source>
        <translation>
            <numerusform>%n día hábil antes</numerusform>
            <numerusform>%n días hábiles antes</numerusform>
        </translation>
    </message>
    <message>
        <source>on budget</source>
        <translation>en presupuesto</translation>
    </message>
    <message>
        <source>%1 over budget</source>
        <translation>%1 sobre presupuesto</translation>
    </message>
    <message>
        <source>%1 under budget</source>
        <translation>%1 bajo presupuesto</translation>
    </message>
    <message>
        <source>on it</source>
        <translation>en presupuesto</translation>
    </message>
    <message>
        <source>%1 over</source>
        <translation>%1 de más</translation>
    </message>
    <message>
        <source>%1 under</source>
        <translation>%1 de menos</translation>
    </message>
    <message>
        <source>8 in 10 between %1 and %2</source>
        <translation>8 de 10 entre %1 y %2</translation>
    </message>
    <message>
        <source>Will cost</source>
        <translation>Costará</translation>
    </message>
    <message>
        <source>, was %1</source>
        <translation>, antes %1</translation>
    </message>
    <message>
        <source>Finished</source>
        <translation>Terminada</translation>
    </message>
    <message>
        <source>Will finish</source>
        <translation>Terminará</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>items wait for each other in a ring: no day can be told</source>
        <translation>los trabajos se esperan en círculo: no se puede decir el día</translation>
    </message>
    <message>
        <source>enter days or planned dates of the items to see it</source>
        <translation>anote días o fechas de los trabajos para verlo</translation>
    </message>
    <message>
        <source>no finish was planned to compare with</source>
        <translation>no se planeó un final con qué comparar</translation>
    </message>
    <message>
        <source>Will earn</source>
        <translation>Ganará</translation>
    </message>
    <message>
        <source>a loss</source>
        <translation>pérdida</translation>
    </message>
    <message>
        <source>%1 of resale</source>
        <translation>%1 de la venta</translation>
    </message>
    <message>
        <source>was %1</source>
        <translation>antes %1</translation>
    </message>
    <message>
        <source>; a day costs %1</source>
        <translation>; un día cuesta %1</translation>
    </message>
    <message>
        <source>Cash, lowest</source>
        <translation>Efectivo, lo más bajo</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>el %1</translation>
    </message>
    <message>
        <source>short</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>%1 leaves in 14 days</source>
        <translation>%1 sale en 14 días</translation>
    </message>
    <message>
        <source>a draw of %1 lands about %2</source>
        <translation>un desembolso de %1 llega hacia el %2</translation>
    </message>
    <message>
        <source>a draw lands about %1</source>
        <translation>un desembolso llega hacia el %1</translation>
    </message>
    <message>
        <source>This week, to %1</source>
        <translation>Esta semana, al %1</translation>
    </message>
    <message>
        <source>Week %1 of %2.</source>
        <translation>Semana %1 de %2.</translation>
    </message>
    <message>
        <source>Week %1, planned for %2.</source>
        <translation>Semana %1, planeada para %2.</translation>
    </message>
    <message>
        <source>Week %1.</source>
        <translation>Semana %1.</translation>
    </message>
    <message>
        <source>Work has not begun.</source>
        <translation>La obra no ha empezado.</translation>
    </message>
    <message>
        <source>No baseline yet, so nothing to compare with.</source>
        <translation>Sin línea base todavía: nada con qué comparar.</translation>
    </message>
    <message>
        <source>Last review %1.</source>
        <translation>Última revisión %1.</translation>
    </message>
    <message>
        <source>Beside the baseline of %1.</source>
        <translation>Junto a la línea base del %1.</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>En total</translation>
    </message>
    <message>
        <source>Since the baseline of %1</source>
        <translation>Desde la línea base del %1</translation>
    </message>
    <message>
        <source>Since %1</source>
        <translation>Desde el %1</translation>
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
    <message>
        <source>Done %1</source>
        <translation>Hecho %1</translation>
    </message>
    <message>
        <source>planned %1</source>
        <translation>planeado %1</translation>
    </message>
    <message>
        <source>spent %1</source>
        <translation>gastado %1</translation>
    </message>
    <message>
        <source>paid %1</source>
        <translation>pagado %1</translation>
    </message>
    <message>
        <source>%1 of budget.</source>
        <translation>%1 del presupuesto.</translation>
    </message>
    <message numerus="yes">
        <source>If the %n unsigned change(s) are signed: %1.</source>
        <translation>
            <numerusform>Si se firma el cambio pendiente: %1.</numerusform>
            <numerusform>Si se firman los %n cambios pendientes: %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Unknowns expected: %1.</source>
        <translation>Imprevistos esperados: %1.</translation>
    </message>
    <message>
        <source>Contingency left %1 of %2.</source>
        <translation>Reserva que queda: %1 de %2.</translation>
    </message>
    <message>
        <source>Contingency left %1 of %2, against unknowns of %3.</source>
        <translation>Reserva que queda: %1 de %2, contra imprevistos de %3.</translation>
    </message>
    <message>
        <source>A buyer with a government-insured loan may sign from day 91, %1. Double the price: no.</source>
        <translation>Un comprador con préstamo asegurado por el gobierno puede firmar desde el día 91, %1. Doble del precio: no.</translation>
    </message>
    <message>
        <source>A buyer with a government-insured loan may sign from day 91, %1. Double the price: yes, so a second appraisal up to %2.</source>
        <translation>Un comprador con préstamo asegurado por el gobierno puede firmar desde el día 91, %1. Doble del precio: sí, con segundo avalúo hasta el %2.</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) without planned dates are left out of what is planned.</source>
        <translation>
            <numerusform>%n trabajo sin fechas queda fuera de lo planeado.</numerusform>
            <numerusform>%n trabajos sin fechas quedan fuera de lo planeado.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) without days or dates take no time in the plan.</source>
        <translation>
            <numerusform>%n trabajo sin días ni fechas no toma tiempo en el plan.</numerusform>
            <numerusform>%n trabajos sin días ni fechas no toman tiempo en el plan.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) without a price count as nothing.</source>
        <translation>
            <numerusform>%n trabajo sin precio cuenta como nada.</numerusform>
            <numerusform>%n trabajos sin precio cuentan como nada.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n bill(s) without an amount count nowhere.</source>
        <translation>
            <numerusform>%n factura sin monto no cuenta.</numerusform>
            <numerusform>%n facturas sin monto no cuentan.</numerusform>
        </translation>
    </message>
    <message>
        <source>Not entered, so nothing in will earn: %1.</source>
        <translation>Sin anotar, así que no cuenta en lo que ganará: %1.</translation>
    </message>
    <message>
        <source>over %1</source>
        <translation>%1 de más</translation>
    </message>
    <message>
        <source>early %1</source>
        <translation>%1 antes</translation>
    </message>
    <message>
        <source>under %1</source>
        <translation>%1 de menos</translation>
    </message>
    <message>
        <source>Order %1</source>
        <translation>Pedir %1</translation>
    </message>
    <message>
        <source>Delivery of %1</source>
        <translation>Entrega de %1</translation>
    </message>
    <message>
        <source>Decide: %1</source>
        <translation>Decidir: %1</translation>
    </message>
    <message>
        <source>Inspection: %1</source>
        <translation>Inspección: %1</translation>
    </message>
    <message>
        <source>Pay %1</source>
        <translation>Pagar a %1</translation>
    </message>
    <message>
        <source>%1, money expected</source>
        <translation>%1, dinero esperado</translation>
    </message>
    <message>
        <source>enter “Cash at start” of the job to see it</source>
        <translation>anote “Cash at start” de la obra para verlo</translation>
    </message>
    <message>
        <source>hairlines at ±2&#xa0;% of budget, ends at the contingency left</source>
        <translation>rayas a ±2&#xa0;% del presupuesto, extremos en la reserva que queda</translation>
    </message>
    <message>
        <source>hairlines at ±2&#xa0;% of budget, ends at ±%1, for the contingency left is less than the hairlines</source>
        <translation>rayas a ±2&#xa0;% del presupuesto, extremos en ±%1, pues la reserva que queda es menor que las rayas</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::AlternateForm</name>
    <message>
        <source>%1 is more than %2: put one of them right</source>
        <translation>%1 es más que %2: corrija uno de los dos</translation>
    </message>
    <message>
        <source>New option: %1</source>
        <extracomment>Over a new option: what it answers</extracomment>
        <translation>Nueva opción: %1</translation>
    </message>
    <message>
        <source>New alternate: what is to be decided?</source>
        <translation>Nueva alternativa: ¿qué hay que decidir?</translation>
    </message>
    <message>
        <source>Question: say what is to be decided, such as “floor: refinish or new”</source>
        <translation>Pregunta: diga qué hay que decidir, como «piso: pulir o nuevo»</translation>
    </message>
    <message>
        <source>Option: say what would be done, such as “lay new oak”</source>
        <translation>Opción: diga qué se haría, como «poner roble nuevo»</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) of the scope belong to “%1”: drop them there first (Ctrl+3).</source>
        <translation>
            <numerusform>%n trabajo del alcance es de «%1»: quítelo allí primero (Ctrl+3).</numerusform>
            <numerusform>%n trabajos del alcance son de «%1»: quítelos allí primero (Ctrl+3).</numerusform>
        </translation>
    </message>
    <message>
        <source>Dropped: %1</source>
        <translation>Quitada: %1</translation>
    </message>
    <message>
        <source>Dropped with its options: %1</source>
        <translation>Quitada con sus opciones: %1</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::AlternatesView</name>
    <message>
        <source>The money can&apos;t be below 0.</source>
        <translation>El dinero no puede ser menos de 0.</translation>
    </message>
    <message>
        <source>The chance is between 0 and 100, such as 80.</source>
        <translation>La probabilidad está entre 0 y 100, como 80.</translation>
    </message>
    <message>
        <source>Say why: it is kept beside the decision, for when you ask yourself later.</source>
        <translation>Diga por qué: se guarda junto a la decisión, para cuando se lo pregunte más tarde.</translation>
    </message>
    <message>
        <source>%1 can&apos;t be chosen: %2. Decide that one anew first.</source>
        <translation>%1 no se puede elegir: %2. Decida primero aquella de nuevo.</translation>
    </message>
    <message>
        <source>Decided: %1</source>
        <translation>Decidido: %1</translation>
    </message>
    <message>
        <source>%1 is the one that is carried.</source>
        <translation>%1 es la que ya se cuenta.</translation>
    </message>
    <message>
        <source>Carried meanwhile: %1</source>
        <translation>Se cuenta mientras tanto: %1</translation>
    </message>
    <message>
        <source>Change order asked for: %1. It counts once it is signed.</source>
        <translation>Orden de cambio pedida: %1. Cuenta cuando esté firmada.</translation>
    </message>
    <message numerus="yes">
        <source>%n open</source>
        <translation>
            <numerusform>%n abierta</numerusform>
            <numerusform>%n abiertas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n decided</source>
        <translation>
            <numerusform>%n decidida</numerusform>
            <numerusform>%n decididas</numerusform>
        </translation>
    </message>
    <message>
        <source>Costs</source>
        <translation>Cuesta</translation>
    </message>
    <message>
        <source>Moves the finish</source>
        <translation>Mueve el final</translation>
    </message>
    <message>
        <source>Adds to the sale</source>
        <translation>Suma a la venta</translation>
    </message>
    <message>
        <source>Profit, likely</source>
        <translation>Ganancia, probable</translation>
    </message>
    <message>
        <source>at the low value</source>
        <translation>con el valor bajo</translation>
    </message>
    <message>
        <source>at the high value</source>
        <translation>con el valor alto</translation>
    </message>
    <message>
        <source>Worth it from</source>
        <translation>Vale la pena desde</translation>
    </message>
    <message>
        <source>best</source>
        <translation>la mejor</translation>
    </message>
    <message>
        <source>carried meanwhile</source>
        <translation>se cuenta mientras tanto</translation>
    </message>
    <message>
        <source>in no set</source>
        <translation>en ningún conjunto</translation>
    </message>
    <message>
        <source>not at all</source>
        <translation>nada</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) later</source>
        <translation>
            <numerusform>%n día más tarde</numerusform>
            <numerusform>%n días más tarde</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) sooner</source>
        <translation>
            <numerusform>%n día antes</numerusform>
            <numerusform>%n días antes</numerusform>
        </translation>
    </message>
    <message>
        <source>It has no cost yet.</source>
        <translation>Todavía no tiene costo.</translation>
    </message>
    <message>
        <source>Nobody said what it adds to the sale.</source>
        <translation>Nadie dijo cuánto suma a la venta.</translation>
    </message>
    <message>
        <source>The ceiling of the street cuts %1 off.</source>
        <translation>El techo de la calle le quita %1.</translation>
    </message>
    <message>
        <source>else it becomes “%1”</source>
        <translation>si no, queda “%1”</translation>
    </message>
    <message>
        <source>else nothing is done</source>
        <translation>si no, no se hace nada</translation>
    </message>
    <message>
        <source>No day to decide by is known; undecided, %1.</source>
        <translation>No se sabe hasta qué día decidir; %1.</translation>
    </message>
    <message>
        <source>Was to be decided by %1; %2.</source>
        <translation>Había que decidir antes del %1; %2.</translation>
    </message>
    <message>
        <source>Decide by %1; %2.</source>
        <translation>Decidir antes del %1; %2.</translation>
    </message>
    <message>
        <source>Each day after that costs %1: it holds up the finish.</source>
        <translation>Cada día después cuesta %1: retrasa el final.</translation>
    </message>
    <message numerus="yes">
        <source>It can wait %n working day(s) beyond that before the finish moves; from then a day costs %1.</source>
        <translation>
            <numerusform>Puede esperar %n día laborable más antes de que se mueva el final; desde entonces un día cuesta %1.</numerusform>
            <numerusform>Puede esperar %n días laborables más antes de que se mueva el final; desde entonces un día cuesta %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>Each day after that costs up to %1, if it holds up the finish: no plan tells.</source>
        <translation>Cada día después cuesta hasta %1, si retrasa el final: ningún plan lo dice.</translation>
    </message>
    <message>
        <source>because %1</source>
        <translation>porque %1</translation>
    </message>
    <message>
        <source>%1 of it is not in the budget: the baseline stays as it was frozen, and a change order carries the difference.</source>
        <translation>%1 no está en el presupuesto: la línea base queda como se fijó, y una orden de cambio lleva la diferencia.</translation>
    </message>
    <message>
        <source>Its change order is asked for and counts once it is signed.</source>
        <translation>Su orden de cambio está pedida y cuenta cuando esté firmada.</translation>
    </message>
    <message>
        <source>none of them</source>
        <translation>ninguna de ellas</translation>
    </message>
    <message>
        <source>costs %1, ends the work on %2 and earns %3</source>
        <translation>cuesta %1, acaba la obra el %2 y gana %3</translation>
    </message>
    <message>
        <source>costs %1 and earns %2</source>
        <translation>cuesta %1 y gana %2</translation>
    </message>
    <message>
        <source>, %1 at that chance</source>
        <translation>, %1 con esa probabilidad</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>There is none: %1.</source>
        <translation>No hay ninguno: %1.</translation>
    </message>
    <message>
        <source>It %1.</source>
        <translation>Lo mejor %1.</translation>
    </message>
    <message>
        <source>It is what is carried now.</source>
        <translation>Es lo que se cuenta ahora.</translation>
    </message>
    <message>
        <source>What is carried now %1: %2 less.</source>
        <translation>Lo que se cuenta ahora %1: %2 menos.</translation>
    </message>
    <message>
        <source>%1: with “%2” instead, the best that can be had earns %3 less.</source>
        <translation>%1: con “%2” en su lugar, lo mejor que se puede tener gana %3 menos.</translation>
    </message>
    <message>
        <source>%1: without it, the best that can be had earns %2 less.</source>
        <translation>%1: sin ella, lo mejor que se puede tener gana %2 menos.</translation>
    </message>
    <message>
        <source>The search was stopped before it was sure: a better set may exist. Decide some first.</source>
        <translation>La búsqueda se detuvo antes de estar segura: puede haber un conjunto mejor. Decida primero algunas.</translation>
    </message>
    <message>
        <source>carried</source>
        <translation>se cuenta</translation>
    </message>
    <message>
        <source>The resale of %1 is the house with none of these; together no more than the street&apos;s ceiling of %2.</source>
        <translation>La reventa de %1 es la casa sin ninguna de estas; juntas no más que el techo de la calle, %2.</translation>
    </message>
    <message>
        <source>The resale of %1 is the house with none of these.</source>
        <translation>La reventa de %1 es la casa sin ninguna de estas.</translation>
    </message>
    <message>
        <source>Selling takes %1 of what is added; a day costs %2. Before income tax.</source>
        <translation>Vender se lleva %1 de lo que se suma; un día cuesta %2. Antes del impuesto sobre la renta.</translation>
    </message>
    <message>
        <source>Days are those by which the finish of the plan moves.</source>
        <translation>Los días son los que se mueve el final del plan.</translation>
    </message>
    <message>
        <source>No plan tells: days are those of the options, as if the finish waited.</source>
        <translation>Ningún plan lo dice: los días son los de las opciones, como si el final esperara.</translation>
    </message>
    <message>
        <source>Not entered, so counted as nothing: %1.</source>
        <translation>Sin escribir, así que no cuenta: %1.</translation>
    </message>
    <message>
        <source>There are too many sets to list: some that are missing may beat some that are here.</source>
        <translation>Hay demasiados conjuntos: alguno que falta puede ser mejor que alguno que está.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::BankDesk</name>
    <message>
        <source>Nothing is at %1: choose the file as it was downloaded.</source>
        <translation>No hay nada en %1: elija el archivo tal como se descargó.</translation>
    </message>
    <message>
        <source>%1 is a folder: choose a file in it.</source>
        <translation>%1 es una carpeta: elija un archivo de ella.</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2.</source>
        <translation>%1 no se puede leer: %2.</translation>
    </message>
    <message>
        <source>%1 is no bank&apos;s download. Banks offer one as OFX, QFX or “for an accounting program”; its file mostly ends in .ofx or .qfx.</source>
        <translation>%1 no es una descarga del banco. Los bancos la ofrecen como OFX, QFX o «para un programa de contabilidad»; su archivo suele terminar en .ofx o .qfx.</translation>
    </message>
    <message>
        <source>Name the file, or choose it.</source>
        <translation>Nombre el archivo, o elíjalo.</translation>
    </message>
    <message>
        <source>%1: %2 filed, %3 waiting for a decision</source>
        <translation>%1: %2 asignadas, %3 esperan una decisión</translation>
    </message>
    <message>
        <source>Stopped: nothing of it came in.</source>
        <translation>Parado: no se trajo nada.</translation>
    </message>
    <message>
        <source>Reading %1…</source>
        <translation>Leyendo %1…</translation>
    </message>
    <message>
        <source>A bank&apos;s download</source>
        <translation>Una descarga del banco</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n line(s) of the bank</source>
        <translation>
            <numerusform>%1: %n línea del banco</numerusform>
            <numerusform>%1: %n líneas del banco</numerusform>
        </translation>
    </message>
    <message>
        <source>What is it for? Line %1 of %2.</source>
        <translation>¿Para qué es? Línea %1 de %2.</translation>
    </message>
    <message>
        <source>There is no line in it: choose other days at the bank.</source>
        <translation>No contiene ninguna línea: elija otros días en el banco.</translation>
    </message>
    <message>
        <source>All of it is in the book already.</source>
        <translation>Todo está ya en el libro.</translation>
    </message>
    <message>
        <source>Nothing is in the book yet. What is sure enough would be filed; what waits counts nowhere until you say what it is for. Ctrl+Z takes all of it back.</source>
        <translation>Todavía no hay nada en el libro. Lo bastante seguro se asignaría; lo que espera no cuenta en ninguna parte hasta que usted diga para qué es. Ctrl+Z lo deshace todo.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>nothing in the book says what it is for</source>
        <translation>nada en el libro dice para qué es</translation>
    </message>
    <message>
        <source>sure by %1</source>
        <translation>seguridad %1</translation>
    </message>
    <message>
        <source>Would be filed at once: %1</source>
        <translation>Se asignarían enseguida: %1</translation>
    </message>
    <message>
        <source>Would wait for you: %1</source>
        <translation>Le esperarían a usted: %1</translation>
    </message>
    <message>
        <source>In the book already: %1</source>
        <translation>Ya en el libro: %1</translation>
    </message>
    <message>
        <source>The file is being read.</source>
        <translation>Se está leyendo el archivo.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::BankSheet</name>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>The bank writes</source>
        <translation>El banco escribe</translation>
    </message>
    <message>
        <source>Taken for</source>
        <translation>Se toma por</translation>
    </message>
    <message>
        <source>Sure</source>
        <translation>Seguro</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Nothing in the book says what it is for: name it, or make it a new row.</source>
        <translation>Nada en el libro dice para qué es: nómbrelo, o haga una fila nueva.</translation>
    </message>
    <message>
        <source>%1, sure by %2 of 100: %3</source>
        <translation>%1, seguro en %2 de 100: %3</translation>
    </message>
    <message>
        <source>The bank notes: %1</source>
        <translation>El banco anota: %1</translation>
    </message>
    <message>
        <source>It counts nowhere until it is filed or left out.</source>
        <translation>No cuenta en ninguna parte hasta que se asigne o se deje fuera.</translation>
    </message>
    <message>
        <source>Left out: it is not ours</source>
        <translation>Dejada fuera: no es nuestra</translation>
    </message>
    <message>
        <source>Filed: %1</source>
        <translation>Asignada: %1</translation>
    </message>
    <message>
        <source>From now on “%1” is taken for the same</source>
        <translation>Desde ahora «%1» se toma por lo mismo</translation>
    </message>
    <message numerus="yes">
        <source>%n other line(s) filed with it</source>
        <translation>
            <numerusform>%n línea más asignada con ella</numerusform>
            <numerusform>%n líneas más asignadas con ella</numerusform>
        </translation>
    </message>
    <message>
        <source>Name what it is for: an item, a contract, a crew, an invoice it pays, another row, a draw, or “job”.</source>
        <translation>Nombre para qué es: un trabajo, un contrato, una cuadrilla, una factura que paga, otra fila, un desembolso, u «obra».</translation>
    </message>
    <message>
        <source>job</source>
        <translation>obra</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::BaselineForm</name>
    <message>
        <source>The job is still being read: try again.</source>
        <translation>La obra todavía se está leyendo: inténtelo otra vez.</translation>
    </message>
    <message>
        <source>The baseline of today is fixed already. Ctrl+Z takes it back, if it was the last thing done.</source>
        <translation>La línea base de hoy ya está fijada. Ctrl+Z la deshace, si fue lo último que se hizo.</translation>
    </message>
    <message>
        <source>There is no scope to fix yet: enter what is to be done first.</source>
        <translation>Todavía no hay alcance que fijar: anote primero qué hay que hacer.</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n trabajo</numerusform>
            <numerusform>%n trabajos</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 at %2, contingency %3, as of %4.</source>
        <translation>%1 por %2, imprevistos %3, al %4.</translation>
    </message>
    <message>
        <source>The last of it is planned to finish on %1.</source>
        <translation>Lo último está previsto para el %1.</translation>
    </message>
    <message>
        <source>Nothing in it is planned yet: there is no finish to compare with.</source>
        <translation>Nada de ello está previsto todavía: no hay final con qué comparar.</translation>
    </message>
    <message numerus="yes">
        <source>%n of them have no price and count as 0.</source>
        <translation>
            <numerusform>%n no tiene precio y cuenta como 0.</numerusform>
            <numerusform>%n no tienen precio y cuentan como 0.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them have no planned dates and are left out of the plan; the schedule can keep its days first (Ctrl+5, then Ctrl+K).</source>
        <translation>
            <numerusform>%n no tiene fechas previstas y queda fuera del plan; el calendario puede guardar antes sus días (Ctrl+5, luego Ctrl+K).</numerusform>
            <numerusform>%n no tienen fechas previstas y quedan fuera del plan; el calendario puede guardar antes sus días (Ctrl+5, luego Ctrl+K).</numerusform>
        </translation>
    </message>
    <message>
        <source>The week then compares with this one. The baseline of %1 stays in the book.</source>
        <translation>La semana compara desde entonces con esta. La línea base del %1 queda en el libro.</translation>
    </message>
    <message>
        <source>The week then compares with it. From there on, more or less money comes by signed changes.</source>
        <translation>La semana compara desde entonces con ella. A partir de ahí, más o menos dinero viene por cambios firmados.</translation>
    </message>
    <message>
        <source>The baseline is fixed: %1</source>
        <translation>Línea base fijada: %1</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::ChangeSheet</name>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>Contract</source>
        <translation>Contrato</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Firmado</translation>
    </message>
    <message>
        <source>Refused</source>
        <translation>Rechazado</translation>
    </message>
    <message>
        <source>Paid from</source>
        <translation>Se paga de</translation>
    </message>
    <message>
        <source>Asked, neither signed nor refused</source>
        <translation>Pedidos, ni firmados ni rechazados</translation>
    </message>
    <message>
        <source>That change is signed already: Ctrl+Z takes it back, or clear the day it was signed.</source>
        <translation>Ese cambio ya está firmado: Ctrl+Z lo deshace, o borre el día de la firma.</translation>
    </message>
    <message>
        <source>Enter what the change adds before it is signed; 0 where nothing.</source>
        <translation>Escriba lo que suma el cambio antes de firmarlo; 0 si nada.</translation>
    </message>
    <message>
        <source>Signed: %1, %2</source>
        <translation>Firmado: %1, %2</translation>
    </message>
    <message>
        <source>That change is signed: what was signed is not refused. Clear the day it was signed first.</source>
        <translation>Ese cambio está firmado: lo firmado no se rechaza. Borre primero el día de la firma.</translation>
    </message>
    <message>
        <source>Refused: %1</source>
        <translation>Rechazado: %1</translation>
    </message>
    <message>
        <source>For %1.</source>
        <translation>Para %1.</translation>
    </message>
    <message>
        <source>It counts nowhere until it is signed.</source>
        <translation>No cuenta en ninguna parte hasta que se firme.</translation>
    </message>
    <message>
        <source>Say what it is to be paid from.</source>
        <translation>Diga de qué se va a pagar.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::ClosingView</name>
    <message>
        <source>Scope items</source>
        <translation>Trabajos</translation>
    </message>
    <message>
        <source>Open decisions</source>
        <translation>Decisiones abiertas</translation>
    </message>
    <message>
        <source>Changes neither signed nor refused</source>
        <translation>Cambios ni firmados ni rechazados</translation>
    </message>
    <message>
        <source>Open cautions</source>
        <translation>Precauciones abiertas</translation>
    </message>
    <message>
        <source>Punch items</source>
        <translation>Lista de remates</translation>
    </message>
    <message>
        <source>Inspections</source>
        <translation>Inspecciones</translation>
    </message>
    <message>
        <source>Missing papers</source>
        <translation>Papeles que faltan</translation>
    </message>
    <message>
        <source>Receipts without an amount</source>
        <translation>Recibos sin importe</translation>
    </message>
    <message>
        <source>Held back or owed</source>
        <translation>Retenido o debido</translation>
    </message>
    <message>
        <source>Lender&apos;s draws</source>
        <translation>Desembolsos del prestamista</translation>
    </message>
    <message>
        <source>have you?</source>
        <translation>¿lo tiene?</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>todavía no</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n item(s) finished.</source>
        <translation>
            <numerusform>%1 de %n trabajo terminado.</numerusform>
            <numerusform>%1 de %n trabajos terminados.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing that the book knows of stands between this job and finished.</source>
        <translation>Nada que el libro sepa separa esta obra de estar terminada.</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) stand between this job and finished.</source>
        <translation>
            <numerusform>%n cosa separa esta obra de estar terminada.</numerusform>
            <numerusform>%n cosas separan esta obra de estar terminada.</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: held %2, left to pay %3</source>
        <translation>%1: retenido %2, por pagar %3</translation>
    </message>
    <message>
        <source>%1 of %2 %3</source>
        <translation>%1 de %2 %3</translation>
    </message>
    <message>
        <source>Keep back %1 to %2, 1.5 to 2 times the %3 left to do.</source>
        <translation>Retenga de %1 a %2, de 1.5 a 2 veces los %3 por hacer.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::ContractSheet</name>
    <message>
        <source>Contract</source>
        <translation>Contrato</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Cuadrilla</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Changes</source>
        <translation>Cambios</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>Billed</source>
        <translation>Facturado</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>Pagado</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>To bill</source>
        <translation>Por facturar</translation>
    </message>
    <message>
        <source>Pay today</source>
        <translation>Pagar hoy</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Firmado</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Orders of goods</source>
        <translation>Pedidos de materiales</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>sin firmar</translation>
    </message>
    <message>
        <source>barred</source>
        <translation>vedado</translation>
    </message>
    <message>
        <source>the insurance of %1 lapsed on %2</source>
        <translation>el seguro de %1 venció el %2</translation>
    </message>
    <message>
        <source>a lien waiver of %1 has not come</source>
        <translation>no ha llegado una renuncia de gravamen de %1</translation>
    </message>
    <message>
        <source>the work was accepted and the final lien waiver has not come</source>
        <translation>el trabajo se aceptó y no ha llegado la renuncia final de gravamen</translation>
    </message>
    <message>
        <source>Nothing may be paid: %1.</source>
        <translation>No se debe pagar nada: %1.</translation>
    </message>
    <message>
        <source>Once that is cleared, %1 can be paid.</source>
        <translation>Resuelto eso, se pueden pagar %1.</translation>
    </message>
    <message>
        <source>Billed %1, paid %2, held %3, owed %4.</source>
        <translation>Facturado %1, pagado %2, retenido %3, se debe %4.</translation>
    </message>
    <message>
        <source>Paid ahead of work seen: %1, %2 of the contract.</source>
        <translation>Pagado por delante del trabajo visto: %1, el %2 del contrato.</translation>
    </message>
    <message>
        <source>Billed beyond the contract: %1.</source>
        <translation>Facturado de más sobre el contrato: %1.</translation>
    </message>
    <message>
        <source>Its deposit is %1 beyond the limit set for the job.</source>
        <translation>Su anticipo pasa en %1 del límite fijado para la obra.</translation>
    </message>
    <message>
        <source>Insured until %1.</source>
        <translation>Asegurado hasta el %1.</translation>
    </message>
    <message>
        <source>No insurance date was entered.</source>
        <translation>No se anotó fecha del seguro.</translation>
    </message>
    <message>
        <source>%1 held back of each bill.</source>
        <translation>Se retiene %1 de cada factura.</translation>
    </message>
    <message>
        <source>Accepted %1.</source>
        <translation>Aceptado el %1.</translation>
    </message>
    <message>
        <source>Final lien waiver of %1.</source>
        <translation>Renuncia final de gravamen del %1.</translation>
    </message>
    <message>
        <source>%1 %2, %3</source>
        <translation>%1 %2, %3</translation>
    </message>
    <message>
        <source>signed</source>
        <translation>firmado</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>rechazado</translation>
    </message>
    <message>
        <source>asked, not signed</source>
        <translation>pedido, sin firmar</translation>
    </message>
    <message>
        <source>Changes: %1.</source>
        <translation>Cambios: %1.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::DealView</name>
    <message>
        <source>Resale</source>
        <translation>Venta</translation>
    </message>
    <message>
        <source>Work</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Final</translation>
    </message>
    <message>
        <source>Loan rate</source>
        <translation>Tasa del préstamo</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>8 in 10 between %1 and %2</source>
        <translation>8 de 10 entre %1 y %2</translation>
    </message>
    <message>
        <source>Resale, likely</source>
        <translation>Venta, probable</translation>
    </message>
    <message>
        <source>Season drop, for a sale that late</source>
        <translation>Baja de temporada, por vender tan tarde</translation>
    </message>
    <message>
        <source>Purchase price</source>
        <translation>Precio de compra</translation>
    </message>
    <message>
        <source>Buying costs</source>
        <translation>Gastos de compra</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Puntos</translation>
    </message>
    <message>
        <source>Lender fees</source>
        <translation>Cargos del prestamista</translation>
    </message>
    <message>
        <source>Lender&apos;s visits</source>
        <translation>Visitas del prestamista</translation>
    </message>
    <message>
        <source>Interest</source>
        <translation>Intereses</translation>
    </message>
    <message>
        <source>Extension fee</source>
        <translation>Cargo por prórroga</translation>
    </message>
    <message>
        <source>Holding</source>
        <translation>Tenencia</translation>
    </message>
    <message>
        <source>Work, forecast</source>
        <translation>Obra, pronóstico</translation>
    </message>
    <message>
        <source>Selling</source>
        <translation>Gastos de venta</translation>
    </message>
    <message>
        <source>All in</source>
        <translation>En total</translation>
    </message>
    <message>
        <source>Profit, before income tax</source>
        <translation>Ganancia, antes de impuestos</translation>
    </message>
    <message>
        <source>at the low resale</source>
        <translation>con la venta baja</translation>
    </message>
    <message>
        <source>at the high resale</source>
        <translation>con la venta alta</translation>
    </message>
    <message>
        <source>Break-even resale</source>
        <translation>Venta de equilibrio</translation>
    </message>
    <message>
        <source>Cash at closing</source>
        <translation>Efectivo al cierre</translation>
    </message>
    <message>
        <source>A day costs</source>
        <translation>Un día cuesta</translation>
    </message>
    <message>
        <source>70 % of resale less work (common practice)</source>
        <translation>70 % de la venta menos obra (práctica común)</translation>
    </message>
    <message>
        <source>Top offer for the wanted profit</source>
        <translation>Oferta máxima para la ganancia deseada</translation>
    </message>
    <message>
        <source>as it stands</source>
        <translation>como está</translation>
    </message>
    <message numerus="yes">
        <source>%n week(s) later</source>
        <translation>
            <numerusform>%n semana después</numerusform>
            <numerusform>%n semanas después</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n week(s) earlier</source>
        <translation>
            <numerusform>%n semana antes</numerusform>
            <numerusform>%n semanas antes</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 a year</source>
        <translation>%1 al año</translation>
    </message>
    <message>
        <source>as supposed</source>
        <translation>según el supuesto</translation>
    </message>
    <message>
        <source>as forecast</source>
        <translation>según el pronóstico</translation>
    </message>
    <message>
        <source>Margin %1 of resale.</source>
        <translation>Margen: %1 de la venta.</translation>
    </message>
    <message>
        <source>A resale lower by %1 eats the profit.</source>
        <translation>Una venta %1 más baja se come la ganancia.</translation>
    </message>
    <message>
        <source>Return on cash %1 of the %2 of own money in at the peak.</source>
        <translation>Rendimiento: %1 de los %2 de dinero propio en el punto más alto.</translation>
    </message>
    <message>
        <source>A year, simple: %1.</source>
        <translation>Al año, simple: %1.</translation>
    </message>
    <message>
        <source>Money from the sale by %1.</source>
        <translation>Dinero de la venta para el %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) of float to the term end of the loan.</source>
        <translation>
            <numerusform>%n día de holgura hasta el fin del plazo.</numerusform>
            <numerusform>%n días de holgura hasta el fin del plazo.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The sale comes %n day(s) after the term end: the extension fee is counted.</source>
        <translation>
            <numerusform>La venta llega %n día después del plazo: se cuenta el cargo por prórroga.</numerusform>
            <numerusform>La venta llega %n días después del plazo: se cuenta el cargo por prórroga.</numerusform>
        </translation>
    </message>
    <message>
        <source>No profit can be told without: %1.</source>
        <translation>No se puede decir la ganancia sin: %1.</translation>
    </message>
    <message>
        <source>Not entered, so counted as nothing: %1.</source>
        <translation>Sin anotar, así que cuenta como nada: %1.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::Desk</name>
    <message numerus="yes">
        <source>%n word(s) learned</source>
        <translation>
            <numerusform>%n palabra aprendida</numerusform>
            <numerusform>%n palabras aprendidas</numerusform>
        </translation>
    </message>
    <message>
        <source>This week</source>
        <translation>Esta semana</translation>
    </message>
    <message>
        <source>Nothing is at %1. It may have been moved or renamed: open it where it is now.</source>
        <translation>No hay nada en %1. Tal vez se movió o cambió de nombre: ábralo donde está ahora.</translation>
    </message>
    <message>
        <source>%1 is a file of another kind. A book&apos;s file mostly ends in “.book”.</source>
        <translation>%1 es un archivo de otra clase. El archivo de un libro casi siempre termina en “.book”.</translation>
    </message>
    <message>
        <source>Begun: %1</source>
        <translation>Empezada: %1</translation>
    </message>
    <message>
        <source>demo house.book</source>
        <translation>casa de muestra.book</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Deshecho: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Hecho de nuevo: %1</translation>
    </message>
    <message>
        <source>There is no book here</source>
        <translation>Aquí no hay ningún libro</translation>
    </message>
    <message>
        <source>This book was written by a newer program</source>
        <translation>Este libro lo escribió un programa más nuevo</translation>
    </message>
    <message>
        <source>This book can only be read</source>
        <translation>Este libro solo se puede leer</translation>
    </message>
    <message>
        <source>This is no book</source>
        <translation>Esto no es un libro</translation>
    </message>
    <message>
        <source>This book is damaged</source>
        <translation>Este libro está dañado</translation>
    </message>
    <message>
        <source>Kept on this computer; it has met no peer.</source>
        <translation>Guardado en esta computadora; no se ha sincronizado.</translation>
    </message>
    <message numerus="yes">
        <source>%n other device(s).</source>
        <translation>
            <numerusform>%n otro aparato.</numerusform>
            <numerusform>%n otros aparatos.</numerusform>
        </translation>
    </message>
    <message>
        <source>The peer has all that was written here.</source>
        <translation>Todo lo escrito aquí ya se envió.</translation>
    </message>
    <message numerus="yes">
        <source>%n change(s) wait for the peer.</source>
        <translation>
            <numerusform>%n cambio espera para enviarse.</numerusform>
            <numerusform>%n cambios esperan para enviarse.</numerusform>
        </translation>
    </message>
    <message>
        <source>Scope of work</source>
        <translation>Alcance de la obra</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>Deal</source>
        <translation>Negocio</translation>
    </message>
    <message>
        <source>Schedule</source>
        <translation>Calendario</translation>
    </message>
    <message>
        <source>Contracts and orders</source>
        <translation>Contratos y pedidos</translation>
    </message>
    <message>
        <source>Alternates</source>
        <translation>Alternativas</translation>
    </message>
    <message>
        <source>Punch list</source>
        <translation>Lista de remates</translation>
    </message>
    <message>
        <source>Price book</source>
        <translation>Libro de precios</translation>
    </message>
    <message>
        <source>Spend</source>
        <translation>Gastos</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>Desembolsos</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation>Cierre</translation>
    </message>
    <message>
        <source>Devices</source>
        <translation>Aparatos</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::DevicesView</name>
    <message>
        <source>Asking the peer…</source>
        <translation>Preguntando al punto de encuentro…</translation>
    </message>
    <message>
        <source>This book has met no peer yet: start one here.</source>
        <translation>Este libro aún no tiene punto de encuentro: arranque uno aquí.</translation>
    </message>
    <message>
        <source>Meeting the peer…</source>
        <translation>Encontrándose…</translation>
    </message>
    <message>
        <source>Met the peer: %1 sent, %2 received.</source>
        <translation>Encuentro hecho: %1 enviados, %2 recibidos.</translation>
    </message>
    <message>
        <source>This book meets the peer at %1, which runs elsewhere.</source>
        <translation>Este libro se encuentra en %1, que corre en otro sitio.</translation>
    </message>
    <message>
        <source>The peer runs and has this book.</source>
        <translation>El punto de encuentro corre y tiene este libro.</translation>
    </message>
    <message>
        <source>a device of your own</source>
        <translation>un aparato propio</translation>
    </message>
    <message>
        <source>the lead of %1</source>
        <translation>el jefe de %1</translation>
    </message>
    <message>
        <source>a viewer of %1, as for the lender</source>
        <translation>un observador de %1, como para el prestamista</translation>
    </message>
    <message>
        <source>Asking the peer for a way in…</source>
        <translation>Pidiendo una entrada…</translation>
    </message>
    <message>
        <source>For %1, within ten minutes. Show it to nobody else.</source>
        <translation>Para %1, en diez minutos. No se la enseñe a nadie más.</translation>
    </message>
    <message>
        <source>That device is shut out already.</source>
        <translation>Ese aparato ya está excluido.</translation>
    </message>
    <message>
        <source>Telling the peer…</source>
        <translation>Avisando al punto de encuentro…</translation>
    </message>
    <message>
        <source>Shut out: %1. Its copy is wiped when it next calls.</source>
        <translation>Excluido: %1. Su copia se borra cuando vuelva a llamar.</translation>
    </message>
    <message>
        <source>%1 is shut out here; the next meeting tells the peer.</source>
        <translation>%1 está excluido aquí; el próximo encuentro lo avisa.</translation>
    </message>
    <message>
        <source>%1 is %2</source>
        <translation>%1 es %2</translation>
    </message>
    <message>
        <source>This book meets the peer at %1.</source>
        <translation>Este libro se encuentra en %1.</translation>
    </message>
    <message>
        <source>This book has met no peer yet. A peer keeps a whole copy of it, and phones meet through it. It can run on this computer, while this program is open.</source>
        <translation>Este libro aún no tiene punto de encuentro. Guarda una copia entera, y los teléfonos se encuentran en él. Puede correr en esta computadora mientras este programa esté abierto.</translation>
    </message>
    <message>
        <source>The peer runs on this computer.</source>
        <translation>El punto de encuentro corre en esta computadora.</translation>
    </message>
    <message>
        <source>It does not run on this computer now.</source>
        <translation>Ahora no corre en esta computadora.</translation>
    </message>
    <message>
        <source>It runs elsewhere.</source>
        <translation>Corre en otro sitio.</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nunca</translation>
    </message>
    <message>
        <source>a device without a name</source>
        <translation>un aparato sin nombre</translation>
    </message>
    <message>
        <source>shut out</source>
        <translation>excluido</translation>
    </message>
    <message>
        <source>owner</source>
        <translation>dueño</translation>
    </message>
    <message>
        <source>crew lead</source>
        <translation>jefe de cuadrilla</translation>
    </message>
    <message>
        <source>viewer</source>
        <translation>observador</translation>
    </message>
    <message>
        <source>This is what the book knows; when each last met the peer, the peer would say: %1</source>
        <translation>Esto es lo que sabe el libro; cuándo se encontró cada uno lo diría el punto de encuentro: %1</translation>
    </message>
    <message>
        <source>(a newer field)</source>
        <translation>(un campo más nuevo)</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>Address: “%1” is no address of a computer. 127.0.0.1 is this one alone, 0.0.0.0 all of its networks.</source>
        <translation>Dirección: «%1» no es la dirección de una computadora. 127.0.0.1 es solo esta, 0.0.0.0 todas sus redes.</translation>
    </message>
    <message>
        <source>Port: “%1” is none. It is a number from %2 to %3.</source>
        <translation>Puerto: «%1» no lo es. Es un número de %2 a %3.</translation>
    </message>
    <message>
        <source>The peer listens at %1 now. Devices that came in at %2 must be told.</source>
        <translation>El punto de encuentro escucha ahora en %1. Hay que decírselo a los aparatos que entraron por %2.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::DrawSheet</name>
    <message>
        <source>Draw</source>
        <translation>Desembolso</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Visited</source>
        <translation>Visita</translation>
    </message>
    <message>
        <source>Funded</source>
        <translation>Recibido</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Recibido</translation>
    </message>
    <message>
        <source>Held back</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>Fee</source>
        <translation>Cargo</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Asked for</source>
        <translation>Pedidos</translation>
    </message>
    <message>
        <source>Draw %1</source>
        <translation>Desembolso %1</translation>
    </message>
    <message>
        <source>%1 %2 asked</source>
        <translation>%1 %2 pedido</translation>
    </message>
    <message>
        <source>, %1 allowed</source>
        <translation>, %1 permitido</translation>
    </message>
    <message>
        <source>It does not say its lines.</source>
        <translation>No dice sus renglones.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::DrawsView</name>
    <message>
        <source>Can be asked for now</source>
        <translation>Se puede pedir ahora</translation>
    </message>
    <message>
        <source>the final draw</source>
        <translation>el desembolso final</translation>
    </message>
    <message>
        <source>by what you have seen</source>
        <translation>por lo que usted ha visto</translation>
    </message>
    <message>
        <source>Would arrive</source>
        <translation>Llegaría</translation>
    </message>
    <message>
        <source>less the fee of %1</source>
        <translation>menos el cargo de %1</translation>
    </message>
    <message>
        <source>Held back</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>this draw with it</source>
        <translation>con este incluido</translation>
    </message>
    <message>
        <source>Paid or asked before</source>
        <translation>Pagado o pedido antes</translation>
    </message>
    <message>
        <source>before fees</source>
        <translation>antes de cargos</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Límite</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>cuts %1 of this draw</source>
        <translation>quita %1 de este</translation>
    </message>
    <message>
        <source>of all draws</source>
        <translation>de todos</translation>
    </message>
    <message>
        <source>Nothing can be asked for now.</source>
        <translation>Ahora no se puede pedir nada.</translation>
    </message>
    <message>
        <source>The fee eats it: wait.</source>
        <translation>El cargo se lo come: espere.</translation>
    </message>
    <message>
        <source>By the plan, ask next on %1 for %2; the money comes %3.</source>
        <translation>Según el plan, pida el %1 por %2; el dinero llega el %3.</translation>
    </message>
    <message>
        <source>There are no lender lines, so the whole loan stands as one; a draw is asked for by the lender&apos;s lines.</source>
        <translation>No hay renglones del prestamista, así que todo el préstamo cuenta como uno; se pide por renglones.</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) point at no lender line: nothing is lent on them.</source>
        <translation>
            <numerusform>%n trabajo no señala renglón: no se presta nada por él.</numerusform>
            <numerusform>%n trabajos no señalan renglón: no se presta nada por ellos.</numerusform>
        </translation>
    </message>
    <message>
        <source>Seen is what you marked yourself. A visit often allows 5 to 15 points less (common practice, no source).</source>
        <translation>Visto es lo que usted mismo marcó. Una visita suele permitir de 5 a 15 puntos menos (práctica común, sin fuente).</translation>
    </message>
    <message>
        <source>A draw is asked for by the lender&apos;s lines, and there are none: enter them first.</source>
        <translation>Se pide por los renglones del prestamista, y no hay: anótelos primero.</translation>
    </message>
    <message>
        <source>Nothing can be asked for now; the lines say why.</source>
        <translation>Ahora no se puede pedir nada; los renglones dicen por qué.</translation>
    </message>
    <message numerus="yes">
        <source>Draw %1 asked for: %2 over %n line(s)</source>
        <translation>
            <numerusform>Desembolso %1 pedido: %2 en %n renglón</numerusform>
            <numerusform>Desembolso %1 pedido: %2 en %n renglones</numerusform>
        </translation>
    </message>
    <message>
        <source>draw request %1.pdf</source>
        <translation>solicitud de desembolso %1.pdf</translation>
    </message>
    <message>
        <source>There is nothing to ask the lender for now.</source>
        <translation>Ahora no hay nada que pedir al prestamista.</translation>
    </message>
    <message>
        <source>%1 could not be written: %2</source>
        <translation>No se pudo escribir %1: %2</translation>
    </message>
    <message>
        <source>The request is in %1</source>
        <translation>La solicitud está en %1</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::GoodsSheet</name>
    <message>
        <source>Goods for</source>
        <translation>Materiales para</translation>
    </message>
    <message>
        <source>Under</source>
        <translation>Bajo</translation>
    </message>
    <message>
        <source>Order by</source>
        <translation>Pedir antes del</translation>
    </message>
    <message>
        <source>Ordered</source>
        <translation>Pedido</translation>
    </message>
    <message>
        <source>Promised</source>
        <translation>Prometido</translation>
    </message>
    <message>
        <source>Arrived</source>
        <translation>Llegó</translation>
    </message>
    <message>
        <source>Wrong or missing</source>
        <translation>Mal o falta</translation>
    </message>
    <message>
        <source>To be ordered</source>
        <translation>Por pedir</translation>
    </message>
    <message>
        <source>Ordered, not there yet</source>
        <translation>Pedido, aún no llega</translation>
    </message>
    <message>
        <source>There</source>
        <translation>Aquí</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>hacia el %1</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from order to delivery.</source>
        <translation>
            <numerusform>%n día del pedido a la entrega.</numerusform>
            <numerusform>%n días del pedido a la entrega.</numerusform>
        </translation>
    </message>
    <message>
        <source>Planned on site from %1.</source>
        <translation>Planeado en obra desde el %1.</translation>
    </message>
    <message>
        <source>Quoted at %1.</source>
        <translation>Cotizado en %1.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::JobList</name>
    <message>
        <source>The sums are too large to be added up.</source>
        <translation>Las sumas son demasiado grandes.</translation>
    </message>
    <message>
        <source>%1 of %2 jobs added up so far.</source>
        <translation>%1 de %2 obras sumadas hasta ahora.</translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) not in the sums.</source>
        <translation>
            <numerusform>%n obra fuera de las sumas.</numerusform>
            <numerusform>%n obras fuera de las sumas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n job(s) cannot say yet what they will earn.</source>
        <translation>
            <numerusform>%n obra no puede decir aún cuánto ganará.</numerusform>
            <numerusform>%n obras no pueden decir aún cuánto ganarán.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::LenderSheet</name>
    <message>
        <source>Line</source>
        <translation>Renglón</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Lent, %</source>
        <translation>Prestado, %</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Visto</translation>
    </message>
    <message>
        <source>Held back</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>This draw</source>
        <translation>Este pedido</translation>
    </message>
    <message>
        <source>Why not</source>
        <translation>Por qué no</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>No item that counts points at this line.</source>
        <translation>Ningún trabajo que cuenta señala este renglón.</translation>
    </message>
    <message>
        <source>Seen: %1.</source>
        <translation>Visto: %1.</translation>
    </message>
    <message>
        <source>Asked for and not yet funded: %1.</source>
        <translation>Pedido y aún no recibido: %1.</translation>
    </message>
    <message>
        <source>Refused before: %1 asked, %2 allowed%3.</source>
        <translation>Negado antes: %1 pedido, %2 permitido%3.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::MarkForm</name>
    <message>
        <source>%1 is kept as it is: there is nothing to mark.</source>
        <translation>%1 se queda como está: no hay nada que marcar.</translation>
    </message>
    <message>
        <source>Seen on: %1</source>
        <translation>Visto el: %1</translation>
    </message>
    <message>
        <source>%1 is not marked while a caution of it is open: %2. Ctrl+K to read it.</source>
        <translation>%1 no se marca mientras tenga abierta una advertencia: %2. Ctrl+K para leerla.</translation>
    </message>
    <message>
        <source>That is finished already.</source>
        <translation>Eso ya está terminado.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Measured as none or done: it earns nothing until it is finished.</source>
        <translation>Se mide como nada o hecho: no gana nada hasta estar terminado.</translation>
    </message>
    <message>
        <source>Measured half and half: 50 % once it is begun, 100 % at finished.</source>
        <translation>Se mide mitad y mitad: 50 % al empezar, 100 % al terminar.</translation>
    </message>
    <message>
        <source>Measured by its steps: which of them are done?</source>
        <translation>Se mide por sus pasos: ¿cuáles están hechos?</translation>
    </message>
    <message>
        <source>Measured by steps, and has none yet: only not begun or finished can be said.</source>
        <translation>Se mide por pasos y aún no tiene: solo se puede decir sin empezar o terminado.</translation>
    </message>
    <message>
        <source>Measured by counting: how many of %1 %2 are done?</source>
        <translation>Se mide contando: ¿cuántos de %1 %2 están hechos?</translation>
    </message>
    <message>
        <source>Measured by counting, and has no quantity yet: only not begun or finished can be said.</source>
        <translation>Se mide contando y aún no tiene cantidad: solo se puede decir sin empezar o terminado.</translation>
    </message>
    <message>
        <source>Judged by eye: how far is it, in percent?</source>
        <translation>A ojo: ¿cuánto lleva, en porcentaje?</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <extracomment>A step of the work and its share of the whole: &quot;set tile, 60 %&quot;</extracomment>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>stands at %1</source>
        <translation>está en %1</translation>
    </message>
    <message>
        <source>How many are done: %1</source>
        <translation>Cuántos están hechos: %1</translation>
    </message>
    <message>
        <source>How far it is: %1</source>
        <translation>Cuánto lleva: %1</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::MoneyHead</name>
    <message>
        <source>Committed</source>
        <translation>Comprometido</translation>
    </message>
    <message>
        <source>signed, with changes</source>
        <translation>firmado, con cambios</translation>
    </message>
    <message>
        <source>Billed</source>
        <translation>Facturado</translation>
    </message>
    <message>
        <source>bills, receipts and fees</source>
        <translation>facturas, recibos y cargos</translation>
    </message>
    <message>
        <source>Paid</source>
        <translation>Pagado</translation>
    </message>
    <message>
        <source>that left the account</source>
        <translation>lo que salió de la cuenta</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>retainage not yet released</source>
        <translation>retención aún no liberada</translation>
    </message>
    <message>
        <source>Owed</source>
        <translation>Se debe</translation>
    </message>
    <message>
        <source>billed less held and paid</source>
        <translation>facturado menos retenido y pagado</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 por %2</translation>
    </message>
    <message>
        <source>Paid ahead of work seen: %1.</source>
        <translation>Pagado por delante del trabajo visto: %1.</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Owed and barred: %1.</source>
        <translation>Se debe y está vedado: %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n change(s) asked and not decided; if signed %1.</source>
        <translation>
            <numerusform>%n cambio pedido y sin decidir; si se firma %1.</numerusform>
            <numerusform>%n cambios pedidos y sin decidir; si se firman %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) without an amount: counted nowhere until it is entered.</source>
        <translation>
            <numerusform>%n fila sin importe: no cuenta hasta que se anote.</numerusform>
            <numerusform>%n filas sin importe: no cuentan hasta que se anoten.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::PasteDesk</name>
    <message>
        <source>There is nothing on the clipboard: copy rows in a spreadsheet first.</source>
        <translation>No hay nada copiado: copie primero filas de una hoja de cálculo.</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) brought in</source>
        <translation>
            <numerusform>%n fila traída</numerusform>
            <numerusform>%n filas traídas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) copied</source>
        <translation>
            <numerusform>%n fila copiada</numerusform>
            <numerusform>%n filas copiadas</numerusform>
        </translation>
    </message>
    <message>
        <source>Looking at the rows…</source>
        <translation>Mirando las filas…</translation>
    </message>
    <message>
        <source>These rows cannot be read</source>
        <translation>Estas filas no se pueden leer</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) from a spreadsheet</source>
        <translation>
            <numerusform>%n fila de una hoja de cálculo</numerusform>
            <numerusform>%n filas de una hoja de cálculo</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n new item(s)</source>
        <translation>
            <numerusform>%n trabajo nuevo</numerusform>
            <numerusform>%n trabajos nuevos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n change(s) to items that are there</source>
        <translation>
            <numerusform>%n cambio a trabajos que ya están</numerusform>
            <numerusform>%n cambios a trabajos que ya están</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n already there as they are</source>
        <translation>
            <numerusform>%n ya está tal cual</numerusform>
            <numerusform>%n ya están tal cual</numerusform>
        </translation>
    </message>
    <message>
        <source>; new spaces: %1</source>
        <translation>; cuartos nuevos: %1</translation>
    </message>
    <message>
        <source>No row of headings was copied, so the columns are taken as those of the sheet: %1.</source>
        <translation>No se copió una fila de títulos, así que las columnas se toman como las de la hoja: %1.</translation>
    </message>
    <message>
        <source>row %1</source>
        <translation>fila %1</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::PeerRun</name>
    <message>
        <source>The program %1 could not be started: %2.</source>
        <translation>No se pudo arrancar el programa %1: %2.</translation>
    </message>
    <message>
        <source>The peer ended by itself: %1</source>
        <translation>El punto de encuentro terminó solo: %1</translation>
    </message>
    <message>
        <source>Port %1 is taken: something else listens there already, another peer perhaps. Stop that, or name another port.</source>
        <translation>El puerto %1 está ocupado: otra cosa escucha ya ahí, quizá otro punto de encuentro. Párela, o nombre otro puerto.</translation>
    </message>
    <message>
        <source>The peer cannot listen at %1, port %2: that address may not be of this computer. 0.0.0.0 is all of its own.</source>
        <translation>El punto de encuentro no puede escuchar en %1, puerto %2: quizá esa dirección no es de esta computadora. 0.0.0.0 son todas las suyas.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::PhotoSheet</name>
    <message>
        <source>For the lender</source>
        <translation>Para el prestamista</translation>
    </message>
    <message>
        <source>Shows</source>
        <translation>Muestra</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation>Leyenda</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Tomada</translation>
    </message>
    <message>
        <source>Not for the lender</source>
        <translation>No son para el prestamista</translation>
    </message>
    <message>
        <source>Picture</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>It goes with the request, where a line is asked for that it shows.</source>
        <translation>Va con la solicitud, donde se pide un renglón que muestra.</translation>
    </message>
    <message>
        <source>Only the owner sees it; Ctrl+S lets it go with the request.</source>
        <translation>Solo el dueño la ve; Ctrl+S la deja ir con la solicitud.</translation>
    </message>
    <message>
        <source>No longer for the lender: %1</source>
        <translation>Ya no es para el prestamista: %1</translation>
    </message>
    <message>
        <source>For the lender: %1</source>
        <translation>Para el prestamista: %1</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::PriceSheet</name>
    <message>
        <source>No trade</source>
        <translation>Sin oficio</translation>
    </message>
    <message numerus="yes">
        <source>%n price(s)</source>
        <translation>
            <numerusform>%n precio</numerusform>
            <numerusform>%n precios</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n of them price items of this job</source>
        <translation>
            <numerusform>%n de ellos valora trabajos de esta obra</numerusform>
            <numerusform>%n de ellos valoran trabajos de esta obra</numerusform>
        </translation>
    </message>
    <message>
        <source>It prices no item of this job.</source>
        <translation>No valora ningún trabajo de esta obra.</translation>
    </message>
    <message numerus="yes">
        <source>%n more</source>
        <translation>
            <numerusform>%n más</numerusform>
            <numerusform>%n más</numerusform>
        </translation>
    </message>
    <message>
        <source>Used by %1.</source>
        <translation>Lo usan %1.</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s) from order to delivery.</source>
        <translation>
            <numerusform>%n día del pedido a la entrega.</numerusform>
            <numerusform>%n días del pedido a la entrega.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nobody said where this price came from.</source>
        <translation>Nadie dijo de dónde salió este precio.</translation>
    </message>
    <message>
        <source>Object</source>
        <translation>Objeto</translation>
    </message>
    <message>
        <source>Treatment</source>
        <translation>Tratamiento</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Mano de obra</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>Bajo</translation>
    </message>
    <message>
        <source>High</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Waste</source>
        <translation>Merma</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>As of</source>
        <translation>De fecha</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Usado</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::PunchSheet</name>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Cuarto</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Cuadrilla</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Hasta el</translation>
    </message>
    <message>
        <source>Stands</source>
        <translation>Está</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
    </message>
    <message>
        <source>By crew</source>
        <translation>Por cuadrilla</translation>
    </message>
    <message>
        <source>By space</source>
        <translation>Por cuarto</translation>
    </message>
    <message>
        <source>Nobody yet</source>
        <translation>Nadie todavía</translation>
    </message>
    <message>
        <source>No space</source>
        <translation>Sin cuarto</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceptado</translation>
    </message>
    <message>
        <source>said fixed</source>
        <translation>dicen que está</translation>
    </message>
    <message>
        <source>not right, late</source>
        <translation>no está bien, con retraso</translation>
    </message>
    <message>
        <source>not right</source>
        <translation>no está bien</translation>
    </message>
    <message>
        <source>open, late</source>
        <translation>abierto, con retraso</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message numerus="yes">
        <source>%n late</source>
        <translation>
            <numerusform>%n con retraso</numerusform>
            <numerusform>%n con retraso</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without a cost</source>
        <translation>
            <numerusform>%n sin costo</numerusform>
            <numerusform>%n sin costo</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 charged back to %2</source>
        <translation>%1 a cargo de %2</translation>
    </message>
    <message>
        <source>too many to walk it yet</source>
        <translation>demasiados para recorrerla todavía</translation>
    </message>
    <message>
        <source>Found %1.</source>
        <translation>Encontrado el %1.</translation>
    </message>
    <message>
        <source>%1 is charged back to %2.</source>
        <translation>%1 va a cargo de %2.</translation>
    </message>
    <message>
        <source>No day</source>
        <translation>Sin día</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>That is accepted already: Ctrl+Z takes it back, or send it back.</source>
        <translation>Eso ya está aceptado: Ctrl+Z lo deshace, o devuélvalo.</translation>
    </message>
    <message>
        <source>Accepted: %1</source>
        <translation>Aceptado: %1</translation>
    </message>
    <message>
        <source>Sent back: %1</source>
        <translation>Devuelto: %1</translation>
    </message>
    <message>
        <source>Say what is not right yet: the crew reads it.</source>
        <translation>Diga qué no está bien todavía: la cuadrilla lo lee.</translation>
    </message>
    <message>
        <source>punch list</source>
        <translation>lista de remates</translation>
    </message>
    <message>
        <source>punch list, %1</source>
        <translation>lista de remates, %1</translation>
    </message>
    <message>
        <source>%1 can&apos;t be written: %2.</source>
        <translation>No se puede escribir %1: %2.</translation>
    </message>
    <message>
        <source>Written: %1</source>
        <translation>Escrito: %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>before</source>
        <translation>antes</translation>
    </message>
    <message>
        <source>after</source>
        <translation>después</translation>
    </message>
    <message numerus="yes">
        <source>%n to put right</source>
        <translation>
            <numerusform>%n por rematar</numerusform>
            <numerusform>%n por rematar</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of cost</source>
        <translation>%1 de costo</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::RecordForm</name>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Nothing is filled in yet: Enter on a line, or begin to type.</source>
        <translation>Todavía no hay nada anotado: Enter en una línea, o empiece a escribir.</translation>
    </message>
    <message>
        <source>Added: %1</source>
        <translation>Añadido: %1</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Cómo es</translation>
    </message>
    <message>
        <source>One of: %1</source>
        <translation>Uno de: %1</translation>
    </message>
    <message>
        <source>A day: 2026-05-22, or 22 May 2026</source>
        <translation>Un día: 2026-05-22</translation>
    </message>
    <message>
        <source>“yes”, or nothing</source>
        <translation>«sí», o nada</translation>
    </message>
    <message>
        <source>Name and percent, with semicolons between: rough passed 45; done 55</source>
        <translation>Nombre y porcentaje, separados por punto y coma: rough passed 45; done 55</translation>
    </message>
    <message>
        <source>Item = sum, with semicolons between: Kitchen/outlets=830; Attic/insulation=120</source>
        <translation>Partida = importe, separados por punto y coma: Kitchen/outlets=830; Attic/insulation=120</translation>
    </message>
    <message>
        <source>Items with semicolons between: Kitchen/outlets; Attic/insulation</source>
        <translation>Partidas separadas por punto y coma: Kitchen/outlets; Attic/insulation</translation>
    </message>
    <message>
        <source>A percent: 10</source>
        <translation>Un porcentaje: 10</translation>
    </message>
    <message>
        <source>New: %1</source>
        <translation>Nuevo: %1</translation>
    </message>
    <message>
        <source>Name and sum, with semicolons between: taxes 210; insurance 95</source>
        <translation>Nombre e importe, con punto y coma entre ellos: impuestos 210; seguro 95</translation>
    </message>
    <message>
        <source>Options with semicolons between, as they are named here</source>
        <translation>Opciones separadas por punto y coma, como se llaman aquí</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::RecordSheet</name>
    <message numerus="yes">
        <source>%n row(s)</source>
        <translation>
            <numerusform>%n fila</numerusform>
            <numerusform>%n filas</numerusform>
        </translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) dropped</source>
        <translation>
            <numerusform>%n fila quitada</numerusform>
            <numerusform>%n filas quitadas</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::RuleSheet</name>
    <message>
        <source>The bank writes</source>
        <translation>El banco escribe</translation>
    </message>
    <message>
        <source>Payee</source>
        <translation>A quién</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Partida</translation>
    </message>
    <message>
        <source>Contract</source>
        <translation>Contrato</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Cuadrilla</translation>
    </message>
    <message>
        <source>Not ours</source>
        <translation>No es nuestro</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::ScheduleLinks</name>
    <message>
        <source>1 working day</source>
        <translation>1 día laborable</translation>
    </message>
    <message>
        <source>%1 working days</source>
        <translation>%1 días laborables</translation>
    </message>
    <message>
        <source>starts once that one has started</source>
        <translation>empieza cuando aquel ha empezado</translation>
    </message>
    <message>
        <source>starts once this one has started</source>
        <translation>empieza cuando este ha empezado</translation>
    </message>
    <message>
        <source>finishes once that one is finished</source>
        <translation>termina cuando aquel está terminado</translation>
    </message>
    <message>
        <source>finishes once this one is finished</source>
        <translation>termina cuando este está terminado</translation>
    </message>
    <message>
        <source>finishes once that one has started</source>
        <translation>termina cuando aquel ha empezado</translation>
    </message>
    <message>
        <source>finishes once this one has started</source>
        <translation>termina cuando este ha empezado</translation>
    </message>
    <message>
        <source>starts once that one is finished</source>
        <translation>empieza cuando aquel está terminado</translation>
    </message>
    <message>
        <source>starts once this one is finished</source>
        <translation>empieza cuando este está terminado</translation>
    </message>
    <message>
        <source>%1, %2 later</source>
        <translation>%1, %2 después</translation>
    </message>
    <message>
        <source>%1, %2 sooner</source>
        <translation>%1, %2 antes</translation>
    </message>
    <message>
        <source>Only items of the scope are linked: an option gets its own once it is chosen.</source>
        <translation>Solo se enlazan trabajos del alcance: una opción tiene los suyos cuando se elige.</translation>
    </message>
    <message>
        <source>They would wait for each other in a ring: %1.</source>
        <translation>Se esperarían unos a otros en círculo: %1.</translation>
    </message>
    <message>
        <source>The finish stays at %1.</source>
        <translation>El final sigue el %1.</translation>
    </message>
    <message>
        <source>The finish moves to %1.</source>
        <translation>El final pasa al %1.</translation>
    </message>
    <message>
        <source>What starts after %1? Go to it.</source>
        <translation>¿Qué empieza después de %1? Vaya hasta ello.</translation>
    </message>
    <message>
        <source>%1 starts once %2 is finished</source>
        <extracomment>An item, how it starts: &quot;Kitchen/backsplash starts once Kitchen/counter top is finished&quot;</extracomment>
        <translation>%1 empieza cuando %2 está terminado</translation>
    </message>
    <message>
        <source>%1, %2 later.</source>
        <translation>%1, %2 después.</translation>
    </message>
    <message>
        <source>%1, %2 sooner.</source>
        <translation>%1, %2 antes.</translation>
    </message>
    <message>
        <source>Go to the item that starts after %1 first.</source>
        <translation>Vaya primero hasta lo que empieza después de %1.</translation>
    </message>
    <message>
        <source>%1 waits for %2 already: Ctrl+I changes how.</source>
        <translation>%1 ya espera a %2: Ctrl+I cambia cómo.</translation>
    </message>
    <message>
        <source>It waits for</source>
        <translation>Espera a</translation>
    </message>
    <message>
        <source>After it</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>%1 no longer waits for %2</source>
        <translation>%1 ya no espera a %2</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::ScheduleView</name>
    <message>
        <source>%1 starts %2</source>
        <translation>%1 empieza el %2</translation>
    </message>
    <message>
        <source>The planned dates are these already.</source>
        <translation>Las fechas previstas ya son estas.</translation>
    </message>
    <message numerus="yes">
        <source>Planned dates of %n item(s) kept</source>
        <translation>
            <numerusform>Guardadas las fechas previstas de %n trabajo</numerusform>
            <numerusform>Guardadas las fechas previstas de %n trabajos</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing to link: every unfinished item whose place in the usual order is known has a link already, or nothing before it in its space.</source>
        <translation>Nada que enlazar: todo trabajo sin terminar cuyo lugar en el orden usual se conoce ya tiene un enlace, o nada antes en su cuarto.</translation>
    </message>
    <message numerus="yes">
        <source>%n link(s) in the usual order of the trades</source>
        <translation>
            <numerusform>%n enlace en el orden usual de los oficios</numerusform>
            <numerusform>%n enlaces en el orden usual de los oficios</numerusform>
        </translation>
    </message>
    <message>
        <source>No crew</source>
        <translation>Sin cuadrilla</translation>
    </message>
    <message>
        <source>No space</source>
        <translation>Sin cuarto</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n trabajo</numerusform>
            <numerusform>%n trabajos</numerusform>
        </translation>
    </message>
    <message>
        <source>By crew</source>
        <translation>Por cuadrilla</translation>
    </message>
    <message>
        <source>By space</source>
        <translation>Por cuarto</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>meta %1</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::ScopeSheet</name>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Choose several rows first: Shift with the arrow down, from the cell to be filled down.</source>
        <translation>Elija primero varias filas: Mayús con la flecha abajo, desde la celda que se va a repetir.</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) filled</source>
        <translation>
            <numerusform>%n fila llenada</numerusform>
            <numerusform>%n filas llenadas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) dropped</source>
        <translation>
            <numerusform>%n trabajo quitado</numerusform>
            <numerusform>%n trabajos quitados</numerusform>
        </translation>
    </message>
    <message>
        <source>Priced from the price book</source>
        <translation>Con precio del libro de precios</translation>
    </message>
    <message>
        <source>Added: %1</source>
        <translation>Agregado: %1</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <translation>%1: %2 %3</translation>
    </message>
    <message numerus="yes">
        <source>%n row(s) copied</source>
        <translation>
            <numerusform>%n fila copiada</numerusform>
            <numerusform>%n filas copiadas</numerusform>
        </translation>
    </message>
    <message>
        <source>kept</source>
        <translation>se deja</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierto</translation>
    </message>
    <message>
        <source>no price</source>
        <translation>sin precio</translation>
    </message>
    <message>
        <source>No space</source>
        <translation>Sin cuarto</translation>
    </message>
    <message>
        <source>No trade</source>
        <translation>Sin oficio</translation>
    </message>
    <message>
        <source>No crew</source>
        <translation>Sin cuadrilla</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n trabajo</numerusform>
            <numerusform>%n trabajos</numerusform>
        </translation>
    </message>
    <message>
        <source>By space</source>
        <translation>Por cuarto</translation>
    </message>
    <message>
        <source>By trade</source>
        <translation>Por oficio</translation>
    </message>
    <message>
        <source>By crew</source>
        <translation>Por cuadrilla</translation>
    </message>
    <message>
        <source>In one list</source>
        <translation>En una lista</translation>
    </message>
    <message numerus="yes">
        <source>%n kept or open, in no sum</source>
        <translation>
            <numerusform>%n que se deja o está abierto, en ninguna suma</numerusform>
            <numerusform>%n que se dejan o están abiertos, en ninguna suma</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without a price</source>
        <translation>
            <numerusform>%n sin precio</numerusform>
            <numerusform>%n sin precio</numerusform>
        </translation>
    </message>
    <message>
        <source>Priced by its own lump sum.</source>
        <translation>Con su propio precio alzado.</translation>
    </message>
    <message>
        <source>Priced by its own costs a unit.</source>
        <translation>Con sus propios costos por unidad.</translation>
    </message>
    <message>
        <source>Not priced: %1.</source>
        <translation>Sin precio: %1.</translation>
    </message>
    <message>
        <source>Priced from the price book, a %1: material %2, labour %3</source>
        <translation>Del libro de precios, por %1: material %2, mano de obra %3</translation>
    </message>
    <message>
        <source>, waste %1</source>
        <translation>, desperdicio %1</translation>
    </message>
    <message>
        <source>; no source was entered</source>
        <translation>; sin fuente anotada</translation>
    </message>
    <message>
        <source>; source: %1</source>
        <translation>; fuente: %1</translation>
    </message>
    <message>
        <source>, as of %1</source>
        <translation>, al %1</translation>
    </message>
    <message>
        <source>Priced from the price book.</source>
        <translation>Con precio del libro de precios.</translation>
    </message>
    <message>
        <source>Between %1 and %2.</source>
        <translation>Entre %1 y %2.</translation>
    </message>
    <message>
        <source>Budget now %1, billed %2, forecast %3.</source>
        <translation>Presupuesto actual %1, facturado %2, pronóstico %3.</translation>
    </message>
    <message>
        <source>Kept as it is: in no count.</source>
        <translation>Se deja como está: no cuenta.</translation>
    </message>
    <message>
        <source>Kept as it is: %1</source>
        <translation>Se deja como está: %1</translation>
    </message>
    <message>
        <source>Belongs to an option that is not the one carried: in no sum.</source>
        <translation>Es de una opción que no es la que se lleva: en ninguna suma.</translation>
    </message>
    <message>
        <source>Read from: “%1”</source>
        <translation>Leído de: “%1”</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Cuarto</translation>
    </message>
    <message>
        <source>Treatment</source>
        <translation>Qué se hace</translation>
    </message>
    <message>
        <source>Object</source>
        <translation>A qué</translation>
    </message>
    <message>
        <source>Trade</source>
        <translation>Oficio</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Labour</source>
        <translation>Mano obra</translation>
    </message>
    <message>
        <source>Lump sum</source>
        <translation>Alzado</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Línea</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Cuadrilla</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>That is finished already.</source>
        <translation>Eso ya está terminado.</translation>
    </message>
    <message>
        <source>%1: finished</source>
        <translation>%1: terminado</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) finished</source>
        <translation>
            <numerusform>%n trabajo terminado</numerusform>
            <numerusform>%n trabajos terminados</numerusform>
        </translation>
    </message>
    <message>
        <source>Finished.</source>
        <translation>Terminado.</translation>
    </message>
    <message>
        <source>Done %1.</source>
        <translation>Hecho: %1.</translation>
    </message>
    <message>
        <source>%1 is not marked while a caution of it is open: %2. Read it first.</source>
        <translation>%1 no se marca mientras tenga abierta una advertencia: %2. Léala primero.</translation>
    </message>
    <message>
        <source>%1, read: %2</source>
        <translation>%1, leído: %2</translation>
    </message>
    <message>
        <source>Raised by: %1.</source>
        <translation>La motiva: %1.</translation>
    </message>
    <message>
        <source>Source: %1.</source>
        <translation>Fuente: %1.</translation>
    </message>
    <message>
        <source>A caution is open: %1. Ctrl+K to read it; until then its work is not marked.</source>
        <translation>Hay una advertencia abierta: %1. Ctrl+K para leerla; hasta entonces el trabajo no se marca.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::Sheet</name>
    <message numerus="yes">
        <source>%n row(s) copied</source>
        <translation>
            <numerusform>%n fila copiada</numerusform>
            <numerusform>%n filas copiadas</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::SpendForm</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>the same sum and payee</source>
        <translation>el mismo importe y beneficiario</translation>
    </message>
    <message>
        <source>the same sum</source>
        <translation>el mismo importe</translation>
    </message>
    <message>
        <source>the same payee, another sum</source>
        <translation>el mismo beneficiario, otro importe</translation>
    </message>
    <message>
        <source>another sum</source>
        <translation>otro importe</translation>
    </message>
    <message>
        <source>Kind: say whether it is an invoice, a payment, a receipt, a fee or a refund</source>
        <translation>Tipo: diga si es factura, pago, recibo, cargo o reembolso</translation>
    </message>
    <message>
        <source>Tax: it is more than the whole sum</source>
        <translation>Impuesto: es más que todo el importe</translation>
    </message>
    <message>
        <source>The bank&apos;s line is of another sum: leave it out of this row, or put the sum right</source>
        <translation>La línea del banco es de otro importe: déjela fuera de esta fila, o corrija el importe</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::SpendSheet</name>
    <message>
        <source>Date</source>
        <translation>Fecha</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Payee</source>
        <translation>A quién</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Para</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Vence</translation>
    </message>
    <message>
        <source>To pay</source>
        <translation>Por pagar</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>To be completed</source>
        <translation>Por completar</translation>
    </message>
    <message>
        <source>Without a day, billed</source>
        <translation>Sin día, facturado</translation>
    </message>
    <message>
        <source>%1, billed</source>
        <extracomment>A month and its year, in Qt&apos;s letters</extracomment>
        <translation>%1, facturado</translation>
    </message>
    <message>
        <source>MMMM yyyy</source>
        <translation>MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n trabajo</numerusform>
            <numerusform>%n trabajos</numerusform>
        </translation>
    </message>
    <message>
        <source>the whole job</source>
        <translation>toda la obra</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>no visto</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>por venir</translation>
    </message>
    <message>
        <source>Paper not seen: %1</source>
        <translation>Papel no visto: %1</translation>
    </message>
    <message>
        <source>Paper seen: %1</source>
        <translation>Papel visto: %1</translation>
    </message>
    <message>
        <source>A payment is entered from an invoice of which something is still to be paid.</source>
        <translation>Un pago se anota desde una factura de la que aún queda algo por pagar.</translation>
    </message>
    <message>
        <source>Its amount is still to come; until then it counts nowhere.</source>
        <translation>Su importe está por venir; hasta entonces no cuenta.</translation>
    </message>
    <message>
        <source>Begun with a picture; enter its amount: until then it counts nowhere.</source>
        <translation>Empezado con una foto; anote su importe: hasta entonces no cuenta.</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>, tax in it %1</source>
        <translation>, impuesto incluido %1</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Still to be paid: %1.</source>
        <translation>Por pagar todavía: %1.</translation>
    </message>
    <message>
        <source>The bank&apos;s line: %1.</source>
        <translation>La línea del banco: %1.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::TakeOffDesk</name>
    <message>
        <source>%1: “%2” is no number.</source>
        <translation>%1: “%2” no es un número.</translation>
    </message>
    <message>
        <source>else %1</source>
        <translation>si no, %1</translation>
    </message>
    <message>
        <source>needs %1</source>
        <translation>se necesitan %1</translation>
    </message>
    <message>
        <source>waste %1&#xa0;%</source>
        <translation>desperdicio&#xa0;%1&#xa0;%</translation>
    </message>
    <message>
        <source>%1: %2 (%3)</source>
        <translation>%1: %2 (%3)</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::VisitSheet</name>
    <message>
        <source>Line</source>
        <translation>Renglón</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Asked, %</source>
        <translation>Pedido, %</translation>
    </message>
    <message>
        <source>Allowed, %</source>
        <translation>Aprobado, %</translation>
    </message>
    <message>
        <source>Why refused</source>
        <translation>Por qué no</translation>
    </message>
    <message>
        <source>Draw %1</source>
        <translation>Desembolso %1</translation>
    </message>
    <message>
        <source>%1, funded %2</source>
        <translation>%1, pagado el %2</translation>
    </message>
    <message>
        <source>%1, asked %2</source>
        <translation>%1, pedido el %2</translation>
    </message>
    <message>
        <source>to come</source>
        <translation>por venir</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>no se dijo</translation>
    </message>
    <message>
        <source>What the inspector allowed is not entered yet: a percent of the line, in “Allowed”.</source>
        <translation>Falta lo que aprobó el inspector: un porcentaje del renglón, en «Aprobado».</translation>
    </message>
    <message>
        <source>%1 was asked and %2 allowed: the rest can be asked for with another draw, once what is missing is put right.</source>
        <translation>Se pidió %1 y se aprobó %2: el resto se puede pedir con otro desembolso, cuando esté corregido lo que falta.</translation>
    </message>
    <message>
        <source>Allowed as it was asked.</source>
        <translation>Aprobado como se pidió.</translation>
    </message>
    <message>
        <source>Each line of this draw says what was allowed.</source>
        <translation>Cada renglón de este desembolso dice lo aprobado.</translation>
    </message>
    <message numerus="yes">
        <source>%n line(s) allowed as asked</source>
        <translation>
            <numerusform>%n renglón aprobado como se pidió</numerusform>
            <numerusform>%n renglones aprobados como se pidió</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::WalkDesk</name>
    <message>
        <source>“%1” means %2</source>
        <translation>«%1» quiere decir %2</translation>
    </message>
    <message>
        <source>“%1” means the space %2</source>
        <translation>«%1» quiere decir el espacio %2</translation>
    </message>
    <message>
        <source>“%1” was dropped once</source>
        <translation>«%1» se quitó una vez</translation>
    </message>
    <message>
        <source>“%1” is an object</source>
        <translation>«%1» es un objeto</translation>
    </message>
    <message>
        <source>“%1” is no object</source>
        <translation>«%1» no es ningún objeto</translation>
    </message>
    <message>
        <source>Forgotten: “%1”</source>
        <translation>Olvidado: «%1»</translation>
    </message>
    <message numerus="yes">
        <source>%n word(s) learned</source>
        <translation>
            <numerusform>%n palabra aprendida</numerusform>
            <numerusform>%n palabras aprendidas</numerusform>
        </translation>
    </message>
    <message>
        <source>No space</source>
        <translation>Sin cuarto</translation>
    </message>
    <message>
        <source>Open choices</source>
        <translation>Decisiones abiertas</translation>
    </message>
    <message>
        <source>Facts of the deal</source>
        <translation>Datos del negocio</translation>
    </message>
    <message>
        <source>Hazards named</source>
        <translation>Peligros nombrados</translation>
    </message>
    <message>
        <source>“%1” is no treatment: it is keep, inspect, clean, repair, refinish, replace, remove, add or relocate.</source>
        <translation>“%1” no es nada que se haga: es keep, inspect, clean, repair, refinish, replace, remove, add o relocate.</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n trabajo</numerusform>
            <numerusform>%n trabajos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n open choice(s)</source>
        <translation>
            <numerusform>%n decisión abierta</numerusform>
            <numerusform>%n decisiones abiertas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fact(s)</source>
        <translation>
            <numerusform>%n dato</numerusform>
            <numerusform>%n datos</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n were there already</source>
        <translation>
            <numerusform>%n ya estaba</numerusform>
            <numerusform>%n ya estaban</numerusform>
        </translation>
    </message>
    <message>
        <source>Kept from the notes: %1</source>
        <translation>Guardado de las notas: %1</translation>
    </message>
    <message>
        <source>%1 cannot be read: choose a text file.</source>
        <translation>No se puede leer %1: elija un archivo de texto.</translation>
    </message>
    <message numerus="yes">
        <source>%n to be looked at</source>
        <translation>
            <numerusform>%n por revisar</numerusform>
            <numerusform>%n por revisar</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n dropped</source>
        <translation>
            <numerusform>%n quitado</numerusform>
            <numerusform>%n quitados</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 sure</source>
        <translation>%1 seguro</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>%1 days to come</source>
        <translation>%1 días en llegar</translation>
    </message>
    <message>
        <source> or </source>
        <translation> o </translation>
    </message>
    <message>
        <source>All of it was there already.</source>
        <translation>Todo estaba ya.</translation>
    </message>
</context>
<context>
    <name>ledgerboard::desk::WeekView</name>
    <message>
        <source>Scope of work</source>
        <translation>Alcance de la obra</translation>
    </message>
    <message>
        <source>Alternates</source>
        <translation>Alternativas</translation>
    </message>
    <message>
        <source>Schedule</source>
        <translation>Calendario</translation>
    </message>
    <message>
        <source>Contracts and orders</source>
        <translation>Contratos y pedidos</translation>
    </message>
    <message>
        <source>Spend</source>
        <translation>Gastos</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>Desembolsos</translation>
    </message>
    <message>
        <source>Deal</source>
        <translation>Negocio</translation>
    </message>
    <message>
        <source>Punch list</source>
        <translation>Por corregir</translation>
    </message>
    <message>
        <source>Closing</source>
        <translation>Cierre</translation>
    </message>
    <message>
        <source>This week</source>
        <translation>Esta semana</translation>
    </message>
    <message>
        <source>%1 less</source>
        <translation>%1 menos</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 más</translation>
    </message>
    <message>
        <source>All others (%1)</source>
        <translation>Los demás (%1)</translation>
    </message>
    <message>
        <source>All others</source>
        <translation>Los demás</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>plan %1</source>
        <translation>plan %1</translation>
    </message>
    <message>
        <source>no day yet</source>
        <translation>sin fecha</translation>
    </message>
    <message>
        <source>late</source>
        <translation>atrasado</translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n día</numerusform>
            <numerusform>%n días</numerusform>
        </translation>
    </message>
    <message>
        <source>Reminders only: rules change by place; ask your building office and a licensed trade.</source>
        <translation>Solo recordatorios: las reglas cambian según el lugar; pregunte en su oficina de construcción y a un oficio con licencia.</translation>
    </message>
    <message>
        <source>The review of %1 is kept already: a review stays as it was that day.</source>
        <translation>La revisión del %1 ya está guardada: una revisión queda como estaba ese día.</translation>
    </message>
    <message>
        <source>Kept as the review of %1</source>
        <translation>Guardada como revisión del %1</translation>
    </message>
    <message>
        <source>%1 cannot be written: check the folder and the disk.</source>
        <translation>No se puede escribir %1: revise la carpeta y el disco.</translation>
    </message>
    <message>
        <source>The sheet is at %1</source>
        <translation>La hoja está en %1</translation>
    </message>
</context>
</TS>
