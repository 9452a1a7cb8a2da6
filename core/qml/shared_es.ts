<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>Caution</name>
    <message>
        <source>Reminder only. Rules change by place. Ask your building office and a licensed trade.</source>
        <translation>Solo es un recordatorio. Las reglas cambian según el lugar. Pregunte a la oficina de construcción y a un oficio con licencia.</translation>
    </message>
    <message>
        <source>lead paint</source>
        <translation>pintura con plomo</translation>
    </message>
    <message>
        <source>Paint in a house built before 1978 may hold lead: have it tested, or treat it as lead. Paid work that disturbs it calls for a lead-safe certified firm, and records kept. Outside that federal rule is minor work alone: up to 6 sq ft of painted surface a room inside, up to 20 sq ft outside. A part taken out counts whole, work in one room within 30 days adds up, and replacing windows or tearing out painted surfaces is never minor. Local rules may ask for more.</source>
        <translation>La pintura de una casa construida antes de 1978 puede tener plomo: mándela analizar o trátela como plomo. El trabajo pagado que la toca pide una empresa certificada en plomo, y guardar los registros. Fuera de esa regla federal solo queda el trabajo menor: hasta 6 pies cuadrados de superficie pintada por cuarto adentro, hasta 20 afuera. Una pieza que se quita cuenta entera, el trabajo de un cuarto dentro de 30 días se suma, y cambiar ventanas o tumbar superficies pintadas nunca es menor. Las reglas locales pueden pedir más.</translation>
    </message>
    <message>
        <source>Lead dust poisons, children worst of all. Paid work beyond the minor size by a firm without certification breaks the federal rule.</source>
        <translation>El polvo de plomo envenena, sobre todo a los niños. El trabajo pagado que pasa del tamaño menor, hecho por una empresa sin certificado, rompe la regla federal.</translation>
    </message>
    <message>
        <source>asbestos</source>
        <translation>asbesto</translation>
    </message>
    <message>
        <source>Test before touching. Material put in up to 1980 is presumed to hold asbestos (from memory); more than 1 % by a laboratory makes it so. Leave it, seal it, or have licensed people take it out. Some places want a survey before any renovation, even where the federal rule leaves lone homes of up to four units out. Local rules and licensed practice decide.</source>
        <translation>Analice antes de tocar. Del material puesto hasta 1980 se supone que tiene asbesto (de memoria); con más de 1 % según un laboratorio, lo es. Déjelo, séllelo o que lo saque gente con licencia. Algunos lugares piden una revisión antes de cualquier obra, aun donde la regla federal deja fuera las casas sueltas de hasta cuatro viviendas. Deciden las reglas locales y el oficio con licencia.</translation>
    </message>
    <message>
        <source>Fibres spread through the house and cannot be seen. Work stops until licensed people have cleaned and cleared it.</source>
        <translation>Las fibras se riegan por la casa y no se ven. La obra se para hasta que gente con licencia limpie y dé el visto bueno.</translation>
    </message>
    <message>
        <source>notice of asbestos work</source>
        <translation>aviso de trabajo con asbesto</translation>
    </message>
    <message>
        <source>The federal rule asks for notice, ten working days ahead (from memory), where at least 260 lin ft of pipe, 160 sq ft of other parts or 35 cu ft of asbestos material come out. Lone homes of up to four units are outside that rule, often not outside local ones: ask the air or health office before work is asked for.</source>
        <translation>La regla federal pide aviso, diez días hábiles antes (de memoria), donde salen al menos 260 pies lineales de tubo, 160 pies cuadrados de otras partes o 35 pies cúbicos de material con asbesto. Las casas sueltas de hasta cuatro viviendas quedan fuera de esa regla, muchas veces no de las locales: pregunte a la oficina del aire o de salud antes de pedir el trabajo.</translation>
    </message>
    <message>
        <source>Work without the notice a place asks for is stopped and fined there.</source>
        <translation>El trabajo sin el aviso que pide el lugar se para y se multa.</translation>
    </message>
    <message>
        <source>bearing wall</source>
        <translation>muro de carga</translation>
    </message>
    <message>
        <source>It may carry the house. Have an engineer or designer look and draw it, shore before anything is cut, and get a permit. Local codes and licensed practice decide.</source>
        <translation>Puede estar cargando la casa. Que un ingeniero o proyectista lo vea y lo dibuje, apuntale antes de cortar nada y saque permiso. Deciden los códigos locales y el oficio con licencia.</translation>
    </message>
    <message>
        <source>What it carried sags, or falls on whoever stands below.</source>
        <translation>Lo que cargaba se pandea, o cae sobre quien esté abajo.</translation>
    </message>
    <message>
        <source>structure</source>
        <translation>estructura</translation>
    </message>
    <message>
        <source>What carries load is found out before it is cut: shore it first, follow a drawing where one is asked for, leave it open until it has been looked at. Local codes and licensed practice decide.</source>
        <translation>Lo que carga se averigua antes de cortarlo: apuntale primero, siga un plano donde lo pidan, déjelo abierto hasta que lo hayan revisado. Deciden los códigos locales y el oficio con licencia.</translation>
    </message>
    <message>
        <source>A floor or porch gives way under people; covered work has to be opened again.</source>
        <translation>Un piso o un porche se hunde con gente encima; lo tapado se tiene que volver a abrir.</translation>
    </message>
    <message>
        <source>electrical work</source>
        <translation>electricidad</translation>
    </message>
    <message>
        <source>Licensed electrician, and usually a permit. Power off and tested dead before anything is opened; by the utility where it is the service. Knob and tube, fuse boxes and aluminum wire are looked at before they are covered. Local codes and licensed practice decide.</source>
        <translation>Electricista con licencia, y casi siempre permiso. Corte la corriente y compruebe que no hay antes de abrir nada; si es la acometida, la corta la compañía. El cableado de perilla y tubo, las cajas de fusibles y el cable de aluminio se revisan antes de taparlos. Deciden los códigos locales y el oficio con licencia.</translation>
    </message>
    <message>
        <source>Shock and fire; wiring covered before it is inspected has to be opened, and insurers ask.</source>
        <translation>Descargas e incendio; el cableado tapado antes de la inspección se tiene que abrir, y el seguro pregunta.</translation>
    </message>
    <message>
        <source>gas</source>
        <translation>gas</translation>
    </message>
    <message>
        <source>Where it burns gas: licensed work, a leak test, the vent and the air it needs checked, a carbon monoxide alarm. Where it is electric, say so and it is done. Local codes and licensed practice decide.</source>
        <translation>Si quema gas: trabajo con licencia, prueba de fugas, revisar el tiro y el aire que necesita, una alarma de monóxido de carbono. Si es eléctrico, dígalo y listo. Deciden los códigos locales y el oficio con licencia.</translation>
    </message>
    <message>
        <source>Leaks explode, and bad vents fill bedrooms with carbon monoxide.</source>
        <translation>Las fugas explotan, y un tiro malo llena las recámaras de monóxido de carbono.</translation>
    </message>
    <message>
        <source>work at height</source>
        <translation>trabajo en altura</translation>
    </message>
    <message>
        <source>Roof, ladder and porch edge: fall protection, commonly from 6 ft up in house building (from memory), sound ladders tied off, power lines kept clear, nobody alone. Local rules decide.</source>
        <translation>Techo, escalera y orilla del porche: protección contra caídas, por lo común desde 6 pies en casas (de memoria), escaleras buenas y amarradas, lejos de los cables de luz, nadie solo. Deciden las reglas locales.</translation>
    </message>
    <message>
        <source>Falls maim and kill, and a claim may land on the owner.</source>
        <translation>Las caídas lisian y matan, y la demanda puede caerle al dueño.</translation>
    </message>
    <message>
        <source>digging and sewers</source>
        <translation>excavación y drenaje</translation>
    </message>
    <message>
        <source>Have buried lines located before digging, by the local one-call service, and support trenches (protective system from 5 ft deep, from memory). A licensed plumber makes the sewer connection. Local codes and licensed practice decide.</source>
        <translation>Antes de cavar, que el servicio local de localización marque las líneas enterradas, y ademe las zanjas (sistema de protección desde 5 pies de hondo, de memoria). La conexión del drenaje la hace un plomero con licencia. Deciden los códigos locales y el oficio con licencia.</translation>
    </message>
    <message>
        <source>A cut gas or power line, a trench that falls in, a street that has to be opened twice.</source>
        <translation>Una línea de gas o de luz cortada, una zanja que se derrumba, una calle que se abre dos veces.</translation>
    </message>
    <message>
        <source>dust of brick, tile and stone</source>
        <translation>polvo de ladrillo, azulejo y piedra</translation>
    </message>
    <message>
        <source>Cut wet or with a vacuum at the blade, outdoors where it can be, and wear a fitted mask; no dry sweeping. Local rules and licensed practice decide.</source>
        <translation>Corte con agua o con aspiradora en el disco, afuera si se puede, y con mascarilla ajustada; no barra en seco. Deciden las reglas locales y el oficio con licencia.</translation>
    </message>
    <message>
        <source>The dust scars lungs for good, and settles in every room and duct.</source>
        <translation>El polvo daña los pulmones para siempre y se asienta en todos los cuartos y ductos.</translation>
    </message>
    <message>
        <source>mold or animal waste</source>
        <translation>moho o desechos de animales</translation>
    </message>
    <message>
        <source>Stop the water first. Gloves, eye cover and a fitted mask; keep the air of the room apart from the house. Above a size that places set it is licensed work, and sewage always calls for care. Local rules decide.</source>
        <translation>Primero pare el agua. Guantes, lentes y mascarilla ajustada; aísle el aire del cuarto del resto de la casa. Arriba del tamaño que fija cada lugar es trabajo con licencia, y las aguas negras siempre piden cuidado. Deciden las reglas locales.</translation>
    </message>
    <message>
        <source>It makes people ill, comes back behind new wallboard, and has to be told to buyers in many places.</source>
        <translation>Enferma a la gente, vuelve a salir detrás de la tablaroca nueva, y en muchos lugares hay que decírselo a los compradores.</translation>
    </message>
    <message>
        <source>way out of a room</source>
        <translation>salida de emergencia de un cuarto</translation>
    </message>
    <message>
        <source>A new window that is the way out of a bedroom: at least 5.7 sq ft open, 24 in high and 20 in wide, sill no more than 44 in above the floor. Which edition counts, and whether a like-for-like replacement is let off, the building office says before windows are ordered.</source>
        <translation>Una ventana nueva que es la salida de una recámara: al menos 5.7 pies cuadrados libres, 24 pulgadas de alto y 20 de ancho, el antepecho a no más de 44 pulgadas del piso. Qué edición cuenta, y si un cambio igual por igual queda libre, lo dice la oficina de construcción antes de pedir las ventanas.</translation>
    </message>
    <message>
        <source>Nobody gets out in a fire; the room may not be sold as a bedroom, and windows are bought twice.</source>
        <translation>Nadie sale en un incendio; el cuarto no se puede vender como recámara, y las ventanas se compran dos veces.</translation>
    </message>
    <message>
        <source>stairs, rails and safety glass</source>
        <translation>escaleras, barandales y vidrio de seguridad</translation>
    </message>
    <message>
        <source>Code sets rise and run, the height of rails and guards, the gaps between spindles, and where glass must be safety glass. Measure and ask the building office before parts are turned or ordered.</source>
        <translation>El código fija el peralte y la huella, la altura de pasamanos y barandales, el hueco entre balaustres, y dónde el vidrio debe ser de seguridad. Mida y pregunte a la oficina de construcción antes de tornear o pedir piezas.</translation>
    </message>
    <message>
        <source>Falls, and a final inspection that fails on the last day.</source>
        <translation>Caídas, y una inspección final que no pasa el último día.</translation>
    </message>
    <message>
        <source>floor finishes and strippers</source>
        <translation>barnices de piso y removedores</translation>
    </message>
    <message>
        <source>Fumes and fire: pilot lights and flames out, windows open, nobody else in while it dries; oily rags laid flat outdoors or under water. Read the label, and follow local rules.</source>
        <translation>Vapores y fuego: pilotos y llamas apagados, ventanas abiertas, nadie más adentro mientras seca; los trapos con aceite, extendidos afuera o bajo el agua. Lea la etiqueta y siga las reglas locales.</translation>
    </message>
    <message>
        <source>Vapour finds a pilot light and burns; rags left in a heap light themselves.</source>
        <translation>El vapor llega a un piloto y se prende; los trapos amontonados se prenden solos.</translation>
    </message>
    <message>
        <source>permits</source>
        <translation>permisos</translation>
    </message>
    <message>
        <source>Ask the building office which of this work needs a permit before it begins, who may draw it, and which inspections stand before covering. Keep each card open to see until its final.</source>
        <translation>Pregunte a la oficina de construcción qué trabajo necesita permiso antes de empezar, quién puede sacarlo y qué inspecciones van antes de tapar. Tenga cada tarjeta a la vista hasta la final.</translation>
    </message>
    <message>
        <source>Work is stopped or opened again, and unpermitted work has to be told to buyers and may not be insured.</source>
        <translation>La obra se para o se vuelve a abrir, y el trabajo sin permiso hay que decírselo a los compradores y puede quedar sin seguro.</translation>
    </message>
    <message>
        <source>smoke and carbon monoxide alarms</source>
        <translation>alarmas de humo y de monóxido de carbono</translation>
    </message>
    <message>
        <source>Most work under a permit calls for alarms in the whole house: smoke in each bedroom, outside each sleeping area and on each storey; carbon monoxide outside sleeping areas where fuel is burned or a garage is attached. The building office says which edition holds, and which must be wired together.</source>
        <translation>Casi todo trabajo con permiso pide alarmas en toda la casa: de humo en cada recámara, afuera de cada zona de dormir y en cada piso; de monóxido de carbono afuera de las zonas de dormir donde se quema combustible o hay garaje pegado. La oficina de construcción dice qué edición vale y cuáles van conectadas entre sí.</translation>
    </message>
    <message>
        <source>Nobody wakes up; the final inspection fails.</source>
        <translation>Nadie despierta; la inspección final no pasa.</translation>
    </message>
    <message>
        <source>crew without licence or insurance</source>
        <translation>cuadrilla sin licencia o sin seguro</translation>
    </message>
    <message>
        <source>See the licence where the trade or place asks for one, and the insurance paper, before it begins. Local law and a lawyer say who answers for what.</source>
        <translation>Vea la licencia donde el oficio o el lugar la piden, y el papel del seguro, antes de que empiece. La ley local y un abogado dicen quién responde de qué.</translation>
    </message>
    <message>
        <source>Some claims and permits fail, and an injury may land on the owner.</source>
        <translation>Fallan reclamos y permisos, y un accidente puede caerle al dueño.</translation>
    </message>
    <message>
        <source>what buyers must be told</source>
        <translation>lo que hay que decir a los compradores</translation>
    </message>
    <message>
        <source>Known lead, asbestos, leaks, mold and unpermitted work are told to buyers as federal and local law ask; before 1978 the lead paper and its records go with the sale (from memory). Keep results, permits and a list of the work. A licensed agent or lawyer says what the place asks for.</source>
        <translation>El plomo, el asbesto, las goteras, el moho y el trabajo sin permiso que se conocen se dicen a los compradores como lo piden la ley federal y la local; antes de 1978 el papel del plomo y sus registros van con la venta (de memoria). Guarde resultados, permisos y una lista de lo hecho. Un agente con licencia o un abogado dice qué pide el lugar.</translation>
    </message>
    <message>
        <source>What was known and not told comes back after the sale.</source>
        <translation>Lo que se sabía y no se dijo regresa después de la venta.</translation>
    </message>
</context>
<context>
    <name>Core</name>
    <message>
        <source>the disk is full: nothing was written; free some space and do it again</source>
        <translation>el disco está lleno: no se guardó nada; haga lugar y hágalo otra vez</translation>
    </message>
    <message>
        <source>another program is writing to this book: try again in a moment</source>
        <translation>otro programa está escribiendo en este libro: intente de nuevo en un momento</translation>
    </message>
    <message>
        <source>the book cannot be written: make the file and its folder writable</source>
        <translation>no se puede escribir en el libro: dé permiso de escritura al archivo y a su carpeta</translation>
    </message>
    <message>
        <source>the book is damaged: run &apos;ledgerboard verify --mend&apos;, or restore a backup</source>
        <translation>el libro está dañado: corra &apos;ledgerboard verify --mend&apos; o recupere una copia</translation>
    </message>
</context>
<context>
    <name>KeyPad</name>
    <message>
        <source>Rub out the last digit</source>
        <translation>Borrar la última cifra</translation>
    </message>
</context>
<context>
    <name>NewJob</name>
    <message>
        <source>Give the house a name, such as its street and number.</source>
        <translation>Póngale un nombre a la casa, como su calle y número.</translation>
    </message>
    <message>
        <source>The year it was built has four digits, such as 1936; leave it empty where nobody knows.</source>
        <translation>El año de construcción lleva cuatro cifras, como 1936; déjelo vacío si nadie lo sabe.</translation>
    </message>
    <message>
        <source>There is a job of that name in the book: give this one another.</source>
        <translation>Ya hay una obra con ese nombre en el libro: póngale otro a esta.</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Dueño</translation>
    </message>
</context>
<context>
    <name>PlotTable</name>
    <message>
        <source>Week to</source>
        <translation>Semana al</translation>
    </message>
</context>
<context>
    <name>Said</name>
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
        <translation>Poner</translation>
    </message>
    <message>
        <source>Relocate</source>
        <translation>Mover</translation>
    </message>
    <message>
        <source>done</source>
        <translation>listo</translation>
    </message>
    <message>
        <source>ddd d MMM</source>
        <extracomment>How a day is written, in Qt&apos;s letters: &quot;Fri 15 May&quot;</extracomment>
        <translation>ddd d MMM</translation>
    </message>
    <message>
        <source>ddd d MMM yyyy</source>
        <translation>ddd d MMM yyyy</translation>
    </message>
    <message>
        <source>dddd d MMMM yyyy</source>
        <extracomment>A day in full, in Qt&apos;s letters: &quot;Friday 15 May 2026&quot;</extracomment>
        <translation>dddd d &apos;de&apos; MMMM &apos;de&apos; yyyy</translation>
    </message>
    <message>
        <source>d MMM</source>
        <extracomment>A day along an axis, in Qt&apos;s letters: &quot;15 May&quot;</extracomment>
        <translation>d MMM</translation>
    </message>
    <message>
        <source>in English: %1</source>
        <extracomment>Before words of the program that only exist in English</extracomment>
        <translation>en inglés: %1</translation>
    </message>
</context>
</TS>
