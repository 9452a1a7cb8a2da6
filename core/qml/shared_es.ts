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
    <message>
        <source>40 CFR 745.83 and EPA&apos;s answers on it; air at work 29 CFR 1926.62 (action at 30, limit 50 micrograms a cubic metre over 8 hours)</source>
        <translation>40 CFR 745.83 y las respuestas de la EPA sobre él; el aire en el trabajo, 29 CFR 1926.62 (acción desde 30, límite 50 microgramos por metro cúbico en 8 horas)</translation>
    </message>
    <message>
        <source>40 CFR 61.141 and 61.145; air at work 29 CFR 1926.1101 (0.1 fibre a cubic centimetre over 8 hours, 1.0 over 30 minutes); presumed up to 1980 from memory</source>
        <translation>40 CFR 61.141 y 61.145; el aire en el trabajo, 29 CFR 1926.1101 (0.1 fibra por centímetro cúbico en 8 horas, 1.0 en 30 minutos); se presume hasta 1980, de memoria</translation>
    </message>
    <message>
        <source>40 CFR 61.145(a)(1) for demolition, (a)(4) for renovation</source>
        <translation>40 CFR 61.145(a)(1) para demolición, (a)(4) para renovación</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>29 CFR 1926.501(b)(13), from memory; ladders common practice, no source</source>
        <translation>29 CFR 1926.501(b)(13), de memoria; las escaleras, práctica común, sin fuente</translation>
    </message>
    <message>
        <source>29 CFR 1926.652(a)(1), from memory; locating common practice, no source</source>
        <translation>29 CFR 1926.652(a)(1), de memoria; la localización de servicios, práctica común, sin fuente</translation>
    </message>
    <message>
        <source>29 CFR 1926.1153, from memory</source>
        <translation>29 CFR 1926.1153, de memoria</translation>
    </message>
    <message>
        <source>IRC R310.1, as city copies print it (edition not checked: ask which one holds)</source>
        <translation>IRC R310.1, como lo imprimen las copias de las ciudades (edición sin comprobar: pregunte cuál rige)</translation>
    </message>
    <message>
        <source>IRC R314 and R315, as city copies print them (edition not checked: ask which one holds)</source>
        <translation>IRC R314 y R315, como los imprimen las copias de las ciudades (edición sin comprobar: pregunte cuál rige)</translation>
    </message>
    <message>
        <source>common practice, no source; 40 CFR 745 subpart F, from memory</source>
        <translation>práctica común, sin fuente; 40 CFR 745 subparte F, de memoria</translation>
    </message>
    <message>
        <source>In a house built before 1978 paint may hold lead. Paid work that disturbs it usually calls for a lead-safe certified firm; have it tested first. Follow local rules.</source>
        <translation>En una casa construida antes de 1978 la pintura puede tener plomo. El trabajo pagado que la toca suele pedir una empresa certificada en plomo; mándela analizar primero. Siga las reglas locales.</translation>
    </message>
    <message>
        <source>Test before touching. Leave it, seal it, or use licensed removal; some places want a survey before any renovation.</source>
        <translation>Analice antes de tocar. Déjelo, séllelo o que lo saque gente con licencia; algunos lugares piden una revisión antes de cualquier obra.</translation>
    </message>
    <message>
        <source>old wiring</source>
        <translation>cableado viejo</translation>
    </message>
    <message>
        <source>A licensed electrician&apos;s work: power off by the utility where needed, and a permit.</source>
        <translation>Trabajo de electricista con licencia: corte de luz por la compañía donde haga falta, y un permiso.</translation>
    </message>
    <message>
        <source>It may carry the house. Have an engineer or designer look, shore first, and get a permit.</source>
        <translation>Puede cargar la casa. Que la vea un ingeniero o diseñador, apuntale primero y saque un permiso.</translation>
    </message>
    <message>
        <source>Licensed work: leak test, vent and air check, carbon monoxide alarm.</source>
        <translation>Trabajo con licencia: prueba de fugas, revisión del escape y del aire, alarma de monóxido de carbono.</translation>
    </message>
    <message>
        <source>Falls hurt most: use fall protection on roofs, ladders and porch edges, as local rules ask.</source>
        <translation>Las caídas son lo que más hiere: use protección contra caídas en techos, escaleras y orillas de porches, como pidan las reglas locales.</translation>
    </message>
    <message>
        <source>Have lines located before digging; support trenches; a licensed plumber for the connection.</source>
        <translation>Que le marquen las líneas enterradas antes de cavar; apuntale las zanjas; plomero con licencia para la conexión.</translation>
    </message>
    <message>
        <source>Local code sets the size of windows that are a way out; ask the building office first.</source>
        <translation>El código local fija el tamaño de las ventanas que son salida; pregunte primero a la oficina de construcción.</translation>
    </message>
    <message>
        <source>Often required as soon as a permit is drawn; ask the building office.</source>
        <translation>A menudo son obligatorias en cuanto se saca un permiso; pregunte a la oficina de construcción.</translation>
    </message>
    <message>
        <source>Fumes and fire: air the rooms, put out pilot lights, keep others out while it dries.</source>
        <translation>Vapores y fuego: ventile los cuartos, apague los pilotos y no deje entrar a nadie mientras seca.</translation>
    </message>
    <message>
        <source>Cut wet or with a vacuum, and wear a fitted mask.</source>
        <translation>Corte en mojado o con aspiradora, y use mascarilla ajustada.</translation>
    </message>
    <message>
        <source>Wear protection and stop the water first; above a local size limit it is licensed work.</source>
        <translation>Use protección y pare el agua primero; por encima de un tamaño que fija el lugar es trabajo con licencia.</translation>
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
    <message>
        <source>replacing windows is never minor</source>
        <translation>cambiar ventanas nunca es trabajo menor</translation>
    </message>
    <message>
        <source>tearing out painted surfaces is never minor</source>
        <translation>arrancar superficies pintadas nunca es trabajo menor</translation>
    </message>
    <message>
        <source>how much paint it disturbs isn&apos;t entered as an area</source>
        <translation>no está anotada en superficie cuánta pintura se toca</translation>
    </message>
    <message>
        <source>%1 sq ft outside</source>
        <translation>%1 pies² afuera</translation>
    </message>
    <message>
        <source>%1 sq ft a room</source>
        <translation>%1 pies² por cuarto</translation>
    </message>
    <message>
        <source>%1 sq ft, more than the %2 that are minor</source>
        <translation>%1 pies², más que los %2 que son trabajo menor</translation>
    </message>
    <message>
        <source>%1 sq ft; other work outside within 30 days isn&apos;t minor</source>
        <translation>%1 pies²; otro trabajo afuera dentro de 30 días no es menor</translation>
    </message>
    <message>
        <source>%1 sq ft; other work in the same room within 30 days isn&apos;t minor</source>
        <translation>%1 pies²; otro trabajo en el mismo cuarto dentro de 30 días no es menor</translation>
    </message>
    <message>
        <source>%1 sq ft, with other work outside within 30 days %2, more than the %3 that are minor</source>
        <translation>%1 pies², con otros trabajos afuera dentro de 30 días %2, más que los %3 que son trabajo menor</translation>
    </message>
    <message>
        <source>%1 sq ft, with other work in the same room within 30 days %2, more than the %3 that are minor</source>
        <translation>%1 pies², con otros trabajos en el mismo cuarto dentro de 30 días %2, más que los %3 que son trabajo menor</translation>
    </message>
    <message>
        <source>%1 sq ft, within the %2 that are minor</source>
        <translation>%1 pies², dentro de los %2 que son trabajo menor</translation>
    </message>
    <message>
        <source>%1 may hold it, and notice begins at %2</source>
        <translation>%1 pueden contenerlo, y hay que dar aviso desde %2</translation>
    </message>
    <message>
        <source>%1 lin ft of pipe</source>
        <translation>%1 pies lineales de tubería</translation>
    </message>
    <message>
        <source>%1 sq ft</source>
        <translation>%1 pies²</translation>
    </message>
    <message>
        <source>%1 cu ft</source>
        <translation>%1 pies³</translation>
    </message>
    <message>
        <source>built %1</source>
        <translation>construida en %1</translation>
    </message>
    <message>
        <source>the year it was built isn&apos;t entered</source>
        <translation>no está anotado el año de construcción</translation>
    </message>
    <message>
        <source>condition: %1</source>
        <translation>estado: %1</translation>
    </message>
    <message>
        <source>hazards: %1</source>
        <translation>peligros: %1</translation>
    </message>
    <message>
        <source>every sale</source>
        <translation>toda venta</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 y %2 más</translation>
    </message>
    <message>
        <source>no licence number is entered</source>
        <translation>no hay número de licencia anotado</translation>
    </message>
    <message>
        <source>its insurance ended on %1</source>
        <translation>su seguro venció el %1</translation>
    </message>
    <message>
        <source>no insurance paper is entered</source>
        <translation>no hay póliza de seguro anotada</translation>
    </message>
    <message>
        <source>it needs an option that is no longer in the job</source>
        <translation>necesita una opción que ya no está en la obra</translation>
    </message>
    <message>
        <source>it needs &quot;%1&quot;, and &quot;%2&quot; was decided on</source>
        <translation>necesita “%1”, y se decidió por “%2”</translation>
    </message>
    <message>
        <source>it does not go with &quot;%1&quot;, which was decided on</source>
        <translation>no va con “%1”, por la que se decidió</translation>
    </message>
    <message>
        <source>&quot;%1&quot;, which was decided on, needs &quot;%2&quot;</source>
        <translation>“%1”, por la que se decidió, necesita “%2”</translation>
    </message>
    <message>
        <source>a chance of %1 % tells nothing: give one between 0 and 100, such as 80</source>
        <translation>una probabilidad de %1 % no dice nada: dé una entre 0 y 100, como 80</translation>
    </message>
    <message>
        <source>option &quot;%1&quot;: its %2 is more than its %3: mend one with &apos;ledgerboard set&apos;</source>
        <translation>opción “%1”: su %2 es mayor que su %3: corrija uno con &apos;ledgerboard set&apos;</translation>
    </message>
    <message>
        <source>it has no cost yet</source>
        <translation>aún no tiene costo</translation>
    </message>
    <message>
        <source>its item has no price yet</source>
        <translation>su trabajo aún no tiene precio</translation>
    </message>
    <message>
        <source>%1 of its %2 items have no price yet</source>
        <translation>%1 de sus %2 trabajos aún no tienen precio</translation>
    </message>
    <message>
        <source>it needs &quot;%1&quot;, which can&apos;t be chosen yet</source>
        <translation>necesita “%1”, que aún no se puede elegir</translation>
    </message>
    <message>
        <source>the search was stopped before a set was found: decide some alternates first</source>
        <translation>la búsqueda se detuvo antes de hallar una combinación: decida primero algunas alternativas</translation>
    </message>
    <message>
        <source>no options go together: what they need and exclude contradicts itself whatever is chosen</source>
        <translation>ninguna combinación de opciones es posible: lo que necesitan y excluyen se contradice, se elija lo que se elija</translation>
    </message>
    <message>
        <source>the cheapest set that goes together costs %1, more than %2</source>
        <translation>la combinación más barata posible cuesta %1, más que %2</translation>
    </message>
    <message>
        <source>even the quickest set that goes together ends on %1, after %2</source>
        <translation>hasta la combinación más rápida posible termina el %1, después del %2</translation>
    </message>
    <message>
        <source>no set keeps the cash and the finish at once: the cheapest that ends in time costs %1</source>
        <translation>ninguna combinación respeta a la vez el efectivo y el final: la más barata que termina a tiempo cuesta %1</translation>
    </message>
    <message>
        <source>nothing tells when the work ends, so no finish can be kept: give scope items their Days, or the job its Finish</source>
        <translation>nada dice cuándo termina el trabajo, así que no se puede respetar un final: dé a los trabajos sus Días, o a la obra su Fin</translation>
    </message>
    <message>
        <source>there are more than %1 alternates: choose among fewer at a time</source>
        <translation>hay más de %1 alternativas: elija entre menos a la vez</translation>
    </message>
    <message>
        <source>the amounts or days of the alternates together are larger than can be counted: check them for a slip</source>
        <translation>los importes o días de las alternativas juntos son más de lo que se puede contar: busque un error de dedo</translation>
    </message>
    <message>
        <source>%1 % shown</source>
        <translation>%1 % según las marcas</translation>
    </message>
    <message>
        <source>decide by %1</source>
        <translation>decidir a más tardar el %1</translation>
    </message>
    <message>
        <source>nobody has decided</source>
        <translation>nadie ha decidido</translation>
    </message>
    <message>
        <source>asked %1, not signed</source>
        <translation>pedido el %1, sin firmar</translation>
    </message>
    <message>
        <source>not signed</source>
        <translation>sin firmar</translation>
    </message>
    <message>
        <source>%1, begun in spite of it</source>
        <translation>%1, empezado a pesar de ello</translation>
    </message>
    <message>
        <source>%1, nobody has acknowledged it</source>
        <translation>%1, nadie ha dicho que la leyó</translation>
    </message>
    <message>
        <source>not held yet</source>
        <translation>aún no se ha hecho</translation>
    </message>
    <message>
        <source>corrections %1</source>
        <translation>correcciones el %1</translation>
    </message>
    <message>
        <source>corrections %1: %2</source>
        <translation>correcciones el %1: %2</translation>
    </message>
    <message>
        <source>held %1, no outcome entered</source>
        <translation>hecha el %1, sin resultado anotado</translation>
    </message>
    <message>
        <source>no amount entered, so it counts nowhere</source>
        <translation>sin importe, así que no cuenta</translation>
    </message>
    <message>
        <source>not seen yet</source>
        <translation>aún no visto</translation>
    </message>
    <message>
        <source>held</source>
        <translation>retenido</translation>
    </message>
    <message>
        <source>left to pay</source>
        <translation>por pagar</translation>
    </message>
    <message>
        <source>%1; next: %2</source>
        <translation>%1; sigue: %2</translation>
    </message>
    <message>
        <source>Draw %1</source>
        <translation>Desembolso %1</translation>
    </message>
    <message>
        <source>A draw</source>
        <translation>Un desembolso</translation>
    </message>
    <message>
        <source>asked for, not funded</source>
        <translation>pedido, no recibido</translation>
    </message>
    <message>
        <source>Final draw</source>
        <translation>Desembolso final</translation>
    </message>
    <message>
        <source>the lender holds this back until permit finals, waivers and punch are in</source>
        <translation>el prestamista lo retiene hasta tener permisos finales, renuncias y remates</translation>
    </message>
    <message>
        <source>its debris gone</source>
        <translation>sus escombros retirados</translation>
    </message>
    <message>
        <source>have you seen the place swept?</source>
        <translation>¿vio el lugar barrido?</translation>
    </message>
    <message>
        <source>its final waiver, unconditional</source>
        <translation>su renuncia final, incondicional</translation>
    </message>
    <message>
        <source>only after the money has cleared; from its suppliers too</source>
        <translation>solo cuando el dinero se haya cobrado; también de sus proveedores</translation>
    </message>
    <message>
        <source>its work finished</source>
        <translation>su trabajo terminado</translation>
    </message>
    <message>
        <source>no scope item is under it: is it done?</source>
        <translation>no tiene trabajos debajo: ¿está hecho?</translation>
    </message>
    <message>
        <source>%1 of %2 item finished</source>
        <translation>%1 de %2 trabajo terminado</translation>
    </message>
    <message>
        <source>%1 of %2 items finished</source>
        <translation>%1 de %2 trabajos terminados</translation>
    </message>
    <message>
        <source>its punch items looked at</source>
        <translation>sus remates revisados</translation>
    </message>
    <message>
        <source>none is open</source>
        <translation>ninguno abierto</translation>
    </message>
    <message>
        <source>%1 is open</source>
        <translation>%1 abierto</translation>
    </message>
    <message>
        <source>%1 are open</source>
        <translation>%1 abiertos</translation>
    </message>
    <message>
        <source>its final inspections passed</source>
        <translation>sus inspecciones finales aprobadas</translation>
    </message>
    <message>
        <source>none is entered for it: did it need one?</source>
        <translation>no hay ninguna anotada: ¿la necesitaba?</translation>
    </message>
    <message>
        <source>%1 passed</source>
        <translation>aprobadas: %1</translation>
    </message>
    <message>
        <source>%1 not passed</source>
        <translation>sin aprobar: %1</translation>
    </message>
    <message>
        <source>its work accepted</source>
        <translation>su trabajo aceptado</translation>
    </message>
    <message>
        <source>accepted %1</source>
        <translation>aceptado el %1</translation>
    </message>
    <message>
        <source>billed, charge-backs taken off</source>
        <translation>facturado, descontados los cargos</translation>
    </message>
    <message>
        <source>billed</source>
        <translation>facturado</translation>
    </message>
    <message>
        <source>its last bill agreed</source>
        <translation>su última factura acordada</translation>
    </message>
    <message>
        <source>%1: more than was agreed</source>
        <translation>%1: más de lo acordado</translation>
    </message>
    <message>
        <source>its final waiver, conditional</source>
        <translation>su renuncia final, condicional</translation>
    </message>
    <message>
        <source>came %1</source>
        <translation>llegó el %1</translation>
    </message>
    <message>
        <source>not in</source>
        <translation>no ha llegado</translation>
    </message>
    <message>
        <source>the last payment, retainage with it</source>
        <translation>el último pago, con la retención</translation>
    </message>
    <message>
        <source>paid</source>
        <translation>pagado</translation>
    </message>
    <message>
        <source>warranty papers</source>
        <translation>papeles de garantía</translation>
    </message>
    <message>
        <source>none is entered: is there one?</source>
        <translation>no hay ninguno anotado: ¿existe?</translation>
    </message>
    <message>
        <source>the book has none</source>
        <translation>el libro no tiene</translation>
    </message>
    <message>
        <source>every permit closed, with its final card</source>
        <translation>cada permiso cerrado, con su tarjeta final</translation>
    </message>
    <message>
        <source>%1 permit is in the book; the office says which are closed</source>
        <translation>hay %1 permiso en el libro; la oficina dice cuáles están cerrados</translation>
    </message>
    <message>
        <source>%1 permits are in the book; the office says which are closed</source>
        <translation>hay %1 permisos en el libro; la oficina dice cuáles están cerrados</translation>
    </message>
    <message>
        <source>leave to occupy, where the town gives one</source>
        <translation>permiso de ocupar, donde la ciudad lo da</translation>
    </message>
    <message>
        <source>towns differ: ask the building office</source>
        <translation>cambia según la ciudad: pregunte en la oficina de obras</translation>
    </message>
    <message>
        <source>lead-work records from the certified firm</source>
        <translation>registros del trabajo con plomo de la firma certificada</translation>
    </message>
    <message>
        <source>kept three years (from memory)</source>
        <translation>se guardan tres años (de memoria)</translation>
    </message>
    <message>
        <source>clearance letters after removal</source>
        <translation>cartas de liberación tras la remoción</translation>
    </message>
    <message>
        <source>%1 is in</source>
        <translation>ya llegó: %1</translation>
    </message>
    <message>
        <source>%1 are in</source>
        <translation>ya llegaron: %1</translation>
    </message>
    <message>
        <source>warranties</source>
        <translation>garantías</translation>
    </message>
    <message>
        <source>manuals of what was put in</source>
        <translation>manuales de lo instalado</translation>
    </message>
    <message>
        <source>paint colours, tile lots, models</source>
        <translation>colores de pintura, lotes de azulejo, modelos</translation>
    </message>
    <message>
        <source>%1 item has its selection entered</source>
        <translation>%1 trabajo tiene anotada su selección</translation>
    </message>
    <message>
        <source>%1 items have their selection entered</source>
        <translation>%1 trabajos tienen anotada su selección</translation>
    </message>
    <message>
        <source>the survey</source>
        <translation>el plano topográfico</translation>
    </message>
    <message>
        <source>keys, openers and codes</source>
        <translation>llaves, controles y códigos</translation>
    </message>
    <message>
        <source>utilities handed over, meters read</source>
        <translation>servicios traspasados, medidores leídos</translation>
    </message>
    <message>
        <source>before and after from the same spots</source>
        <translation>antes y después desde los mismos puntos</translation>
    </message>
    <message>
        <source>%1 pair</source>
        <translation>%1 par</translation>
    </message>
    <message>
        <source>%1 pairs</source>
        <translation>%1 pares</translation>
    </message>
    <message>
        <source>the list of work, for what buyers are told</source>
        <translation>la lista de trabajos, para lo que se dice a los compradores</translation>
    </message>
    <message>
        <source>&apos;ledgerboard give scope csv FILE&apos; writes one</source>
        <translation>&apos;ledgerboard give scope csv ARCHIVO&apos; escribe una</translation>
    </message>
    <message>
        <source>%1 day</source>
        <translation>%1 día</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>over</source>
        <translation>por encima</translation>
    </message>
    <message>
        <source>whole job over</source>
        <translation>toda la obra por encima</translation>
    </message>
    <message>
        <source>contingency runs down</source>
        <translation>los imprevistos se agotan</translation>
    </message>
    <message>
        <source>paid ahead</source>
        <translation>pagado por adelantado</translation>
    </message>
    <message>
        <source>beyond contract</source>
        <translation>más que el contrato</translation>
    </message>
    <message>
        <source>unsigned change</source>
        <translation>cambio sin firmar</translation>
    </message>
    <message>
        <source>order</source>
        <translation>pedido</translation>
    </message>
    <message>
        <source>arrives late</source>
        <translation>llega tarde</translation>
    </message>
    <message>
        <source>no amount</source>
        <translation>sin importe</translation>
    </message>
    <message>
        <source>bank line waits</source>
        <translation>línea del banco en espera</translation>
    </message>
    <message>
        <source>paper not seen</source>
        <translation>papel sin ver</translation>
    </message>
    <message>
        <source>waiver missing</source>
        <translation>falta la renuncia</translation>
    </message>
    <message>
        <source>insurance</source>
        <translation>seguro</translation>
    </message>
    <message>
        <source>not marked</source>
        <translation>sin marcar</translation>
    </message>
    <message>
        <source>outside the baseline</source>
        <translation>fuera de la línea base</translation>
    </message>
    <message>
        <source>finish slips</source>
        <translation>el final se atrasa</translation>
    </message>
    <message>
        <source>did not come</source>
        <translation>no vino</translation>
    </message>
    <message>
        <source>in two places at once</source>
        <translation>en dos lugares a la vez</translation>
    </message>
    <message>
        <source>cash low</source>
        <translation>poco efectivo</translation>
    </message>
    <message>
        <source>forecast over budget now by %1 % or %2</source>
        <translation>el pronóstico pasa del presupuesto actual en %1 % o %2</translation>
    </message>
    <message>
        <source>The whole job</source>
        <translation>Toda la obra</translation>
    </message>
    <message>
        <source>forecast over the first budget and its contingency</source>
        <translation>el pronóstico pasa del primer presupuesto y sus imprevistos</translation>
    </message>
    <message>
        <source>forecast over the first budget</source>
        <translation>el pronóstico pasa del primer presupuesto</translation>
    </message>
    <message>
        <source>Contingency</source>
        <translation>Imprevistos</translation>
    </message>
    <message>
        <source>share used is more than %1 points beyond the share of work done</source>
        <translation>la parte usada va más de %1 puntos por delante del trabajo hecho</translation>
    </message>
    <message>
        <source>share used is beyond the share of work done</source>
        <translation>la parte usada va por delante del trabajo hecho</translation>
    </message>
    <message>
        <source>paid ahead of work seen by more than %1 points or %2</source>
        <translation>pagado por delante del trabajo visto en más de %1 puntos o %2</translation>
    </message>
    <message>
        <source>paid ahead of work seen</source>
        <translation>pagado por delante del trabajo visto</translation>
    </message>
    <message>
        <source>billed beyond its sum and signed changes</source>
        <translation>facturado más que su suma y los cambios firmados</translation>
    </message>
    <message>
        <source>billed, and not signed</source>
        <translation>facturado y sin firmar</translation>
    </message>
    <message>
        <source>final waiver missing while a payment is due</source>
        <translation>falta la renuncia final y hay un pago vencido</translation>
    </message>
    <message>
        <source>final waiver missing for %1 or more</source>
        <translation>falta la renuncia final desde hace %1 o más</translation>
    </message>
    <message>
        <source>work begun on a change that is not signed</source>
        <translation>trabajo empezado de un cambio sin firmar</translation>
    </message>
    <message>
        <source>change not signed after %1</source>
        <translation>cambio sin firmar después de %1</translation>
    </message>
    <message>
        <source>%1 spend</source>
        <translation>%1 gasto</translation>
    </message>
    <message>
        <source>%1 spends</source>
        <translation>%1 gastos</translation>
    </message>
    <message>
        <source>without an amount, so counted nowhere</source>
        <translation>sin importe, así que no cuenta</translation>
    </message>
    <message>
        <source>%1 paper</source>
        <translation>%1 papel</translation>
    </message>
    <message>
        <source>%1 papers</source>
        <translation>%1 papeles</translation>
    </message>
    <message>
        <source>bill or receipt not seen for %1 or more</source>
        <translation>factura o recibo sin ver desde hace %1 o más</translation>
    </message>
    <message>
        <source>%1 bank line</source>
        <translation>%1 línea del banco</translation>
    </message>
    <message>
        <source>%1 bank lines</source>
        <translation>%1 líneas del banco</translation>
    </message>
    <message>
        <source>nobody has said what for, so counted nowhere</source>
        <translation>nadie ha dicho para qué, así que no cuenta</translation>
    </message>
    <message>
        <source>insurance has lapsed and work is left</source>
        <translation>el seguro venció y queda trabajo</translation>
    </message>
    <message>
        <source>insurance lapses within %1</source>
        <translation>el seguro vence dentro de %1</translation>
    </message>
    <message>
        <source>priced after the baseline, and no signed change holds its cost</source>
        <translation>con precio puesto después de la línea base, y ningún cambio firmado lleva su costo</translation>
    </message>
    <message>
        <source>added after the baseline, and no signed change holds its cost</source>
        <translation>añadida después de la línea base, y ningún cambio firmado lleva su costo</translation>
    </message>
    <message>
        <source>Cash</source>
        <translation>Efectivo</translation>
    </message>
    <message>
        <source>cash runs under zero</source>
        <translation>el efectivo baja de cero</translation>
    </message>
    <message>
        <source>cash runs under the bills of the next %1</source>
        <translation>el efectivo no alcanza para las facturas de los próximos %1</translation>
    </message>
    <message>
        <source>comes after its planned start</source>
        <translation>llega después de su inicio previsto</translation>
    </message>
    <message>
        <source>the day to order by has passed</source>
        <translation>ya pasó el día límite para pedirlo</translation>
    </message>
    <message>
        <source>to be ordered within %1</source>
        <translation>hay que pedirlo dentro de %1</translation>
    </message>
    <message>
        <source>%1, %2 to look it over in it</source>
        <translation>%1, con %2 para revisarlo incluidos</translation>
    </message>
    <message>
        <source>not marked for %1 or more while work should go on</source>
        <translation>sin marcar desde hace %1 o más cuando debería haber trabajo</translation>
    </message>
    <message>
        <source>The finish</source>
        <translation>El final</translation>
    </message>
    <message>
        <source>it leaves less than %1 to the term end</source>
        <translation>deja menos de %1 hasta el fin del plazo</translation>
    </message>
    <message>
        <source>it slips by %1 working days or more</source>
        <translation>se atrasa %1 días laborables o más</translation>
    </message>
    <message>
        <source>did not come for %1 in a row</source>
        <translation>no vino durante %1 seguidos</translation>
    </message>
    <message>
        <source>did not come though work was planned</source>
        <translation>no vino aunque había trabajo previsto</translation>
    </message>
    <message>
        <source>the plan has it in %1 places at once and it can be in %2</source>
        <translation>el plan la pone en %1 lugares a la vez y puede estar en %2</translation>
    </message>
    <message>
        <source>the plan has %1 crews in it at once and it takes one</source>
        <translation>el plan mete %1 cuadrillas a la vez y solo cabe una</translation>
    </message>
    <message>
        <source>%1 uses a crew that is not there</source>
        <translation>%1 usa una cuadrilla que no existe</translation>
    </message>
    <message>
        <source>%1 uses %2 twice: add the two up</source>
        <translation>%1 usa %2 dos veces: sume las dos</translation>
    </message>
    <message>
        <source>%1 uses %2 of %3: it must be 1 or more</source>
        <translation>%1 usa %2 de %3: debe ser 1 o más</translation>
    </message>
    <message>
        <source>%1 uses %2 of %3, which has only %4: lower the one or raise the other</source>
        <translation>%1 usa %2 de %3, que solo tiene %4: baje lo uno o suba lo otro</translation>
    </message>
    <message>
        <source>%1 is in a space that is not there</source>
        <translation>%1 está en un espacio que no existe</translation>
    </message>
    <message>
        <source>the items wait for each other in a loop: %1%2: take one of these links out</source>
        <translation>los trabajos se esperan unos a otros en círculo: %1%2: quite uno de estos enlaces</translation>
    </message>
    <message>
        <source>%1 has fewer than 0 days</source>
        <translation>%1 tiene menos de 0 días</translation>
    </message>
    <message>
        <source>a crew plan takes at most %1 items; these are %2</source>
        <translation>un plan de cuadrillas admite %1 trabajos como mucho; estos son %2</translation>
    </message>
    <message>
        <source>the capacity of %1 is %2: it must be from 0 to %3</source>
        <translation>la capacidad de %1 es %2: debe ser de 0 a %3</translation>
    </message>
    <message>
        <source>a link names an item that is not there</source>
        <translation>un enlace nombra un trabajo que no existe</translation>
    </message>
    <message>
        <source>the days and lags are too long to add up: shorten them</source>
        <translation>los días y las esperas son demasiado largos para sumarse: acórtelos</translation>
    </message>
    <message>
        <source>the sale (%1) comes before Purchased (%2): check Purchased, Finish and Days to resale</source>
        <translation>la venta (%1) es anterior a la compra (%2): revise Comprada el, Fin y Días a la reventa</translation>
    </message>
    <message>
        <source>Selling costs and Commission together are 100 % or more: set them to what they are</source>
        <translation>Gastos de venta y Comisión juntos son 100 % o más: póngalos como son</translation>
    </message>
    <message>
        <source>%1 is below 0: set it to what it is</source>
        <translation>%1 está por debajo de 0: póngalo como es</translation>
    </message>
    <message>
        <source>Season drop names &quot;%1&quot;, which is no day: write the last good day of the season and what a later sale brings less, as 2026-08-31 6000</source>
        <translation>La baja de temporada nombra “%1”, que no es una fecha: escriba el último día bueno de la temporada y cuánto menos da una venta posterior, como 2026-08-31 6000</translation>
    </message>
    <message>
        <source>crew %1 has work left and a capacity of 0: &apos;ledgerboard set %2 Capacity 1&apos; says it can be in one place at a time</source>
        <translation>a la cuadrilla %1 le queda trabajo y su capacidad es 0: &apos;ledgerboard set %2 Capacity 1&apos; dice que puede estar en un lugar a la vez</translation>
    </message>
    <message>
        <source>items wait for each other in a loop: %1: drop one of these links (&apos;ledgerboard list links&apos;)</source>
        <translation>hay trabajos que se esperan unos a otros en círculo: %1: quite uno de estos enlaces (&apos;ledgerboard list links&apos;)</translation>
    </message>
    <message>
        <source>it has no amount</source>
        <translation>no tiene importe</translation>
    </message>
    <message>
        <source>no item points at it</source>
        <translation>ningún trabajo apunta a él</translation>
    </message>
    <message>
        <source>nothing of it is lent</source>
        <translation>nada de él se presta</translation>
    </message>
    <message>
        <source>nothing of it has been seen in place</source>
        <translation>aún no se ha visto nada de él en obra</translation>
    </message>
    <message>
        <source>asked for already</source>
        <translation>ya pedido</translation>
    </message>
    <message>
        <source>paid as far as it has been seen</source>
        <translation>pagado hasta donde se ha visto</translation>
    </message>
    <message>
        <source>the draw limit is reached</source>
        <translation>se alcanzó el tope de desembolsos</translation>
    </message>
    <message>
        <source>From and To are both %1: an item does not wait for itself</source>
        <translation>Desde y Hasta son %1 los dos: un trabajo no se espera a sí mismo</translation>
    </message>
    <message>
        <source>To: with this link items would wait for each other in a loop: %1: leave it out, or drop one of these</source>
        <translation>Hasta: con este enlace los trabajos se esperarían unos a otros en círculo: %1: déjelo fuera, o quite uno de estos</translation>
    </message>
    <message>
        <source>change signed: %1</source>
        <translation>cambio firmado: %1</translation>
    </message>
    <message>
        <source>the owner&apos;s own estimate</source>
        <translation>estimación del propio dueño</translation>
    </message>
    <message>
        <source>the owner&apos;s own estimate: %1</source>
        <translation>estimación del propio dueño: %1</translation>
    </message>
    <message>
        <source>it is kept now</source>
        <translation>ahora se queda como está</translation>
    </message>
    <message>
        <source>another option counts</source>
        <translation>cuenta otra opción</translation>
    </message>
    <message>
        <source>billed beyond its contract</source>
        <translation>facturado más que su contrato</translation>
    </message>
    <message>
        <source>at its contract now</source>
        <translation>según su contrato actual</translation>
    </message>
    <message>
        <source>billed beyond its budget</source>
        <translation>facturado más que su presupuesto</translation>
    </message>
    <message>
        <source>finished, at what was billed</source>
        <translation>terminado, por lo facturado</translation>
    </message>
    <message>
        <source>work left at what its trade has cost so far</source>
        <translation>lo que falta, a lo que ha costado su oficio hasta ahora</translation>
    </message>
    <message>
        <source>work left at what %1 has cost so far</source>
        <translation>lo que falta, a lo que ha costado %1 hasta ahora</translation>
    </message>
    <message>
        <source>it was not there then</source>
        <translation>entonces no estaba</translation>
    </message>
    <message>
        <source>Invoice</source>
        <translation>Factura</translation>
    </message>
    <message>
        <source>Receipt</source>
        <translation>Recibo</translation>
    </message>
    <message>
        <source>Payment</source>
        <translation>Pago</translation>
    </message>
    <message>
        <source>Refund</source>
        <translation>Reembolso</translation>
    </message>
    <message>
        <source>Fee</source>
        <translation>Cargo</translation>
    </message>
    <message>
        <source>Permit</source>
        <translation>Permiso</translation>
    </message>
    <message>
        <source>Insurance</source>
        <translation>Seguro</translation>
    </message>
    <message>
        <source>Licence</source>
        <translation>Licencia</translation>
    </message>
    <message>
        <source>Tax form</source>
        <translation>Formulario de impuestos</translation>
    </message>
    <message>
        <source>Lien waiver</source>
        <translation>Renuncia de gravamen</translation>
    </message>
    <message>
        <source>Warranty</source>
        <translation>Garantía</translation>
    </message>
    <message>
        <source>Clearance</source>
        <translation>Carta de liberación</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Insurance, %1</source>
        <translation>Seguro, %1</translation>
    </message>
    <message>
        <source>Final waiver, %1</source>
        <translation>Renuncia final, %1</translation>
    </message>
    <message>
        <source>no unit</source>
        <translation>ninguna unidad</translation>
    </message>
    <message>
        <source>the price book has no such object and treatment</source>
        <translation>el libro de precios no tiene ese objeto con ese tratamiento</translation>
    </message>
    <message>
        <source>the price book has it by %1, not by %2</source>
        <translation>el libro de precios lo tiene por %1, no por %2</translation>
    </message>
    <message>
        <source>its row of the price book has no material and no labour</source>
        <translation>su fila del libro de precios no tiene material ni mano de obra</translation>
    </message>
    <message>
        <source>the waste in its row of the price book is below 0</source>
        <translation>la merma en su fila del libro de precios está por debajo de 0</translation>
    </message>
    <message>
        <source>it is kept</source>
        <translation>se queda como está</translation>
    </message>
    <message>
        <source>it has no quantity</source>
        <translation>no tiene cantidad</translation>
    </message>
    <message>
        <source>its quantity or waste is below 0</source>
        <translation>su cantidad o su merma está por debajo de 0</translation>
    </message>
    <message>
        <source>the cost of a line is larger than can be kept</source>
        <translation>el costo de un renglón es más grande de lo que se puede guardar</translation>
    </message>
    <message>
        <source>%1 is kept, so there is nothing to mark: change its treatment first if work is to be done on it</source>
        <translation>%1 se queda como está, así que no hay nada que marcar: cambie primero su tratamiento si se le va a hacer algo</translation>
    </message>
    <message>
        <source>%1 is measured by counted units and has no quantity: set its quantity, then mark the count</source>
        <translation>%1 se mide contando unidades y no tiene cantidad: ponga su cantidad y luego marque la cuenta</translation>
    </message>
    <message>
        <source>that mark cannot be made on %1: give %2</source>
        <translation>esa marca no se puede poner en %1: dé %2</translation>
    </message>
    <message>
        <source>Nobody yet</source>
        <translation>Nadie todavía</translation>
    </message>
    <message>
        <source>%1 (said fixed %2, not looked at yet)</source>
        <translation>%1 (dicen que quedó el %2, falta revisarlo)</translation>
    </message>
    <message>
        <source>%1 (said fixed, not looked at yet)</source>
        <translation>%1 (dicen que quedó, falta revisarlo)</translation>
    </message>
    <message>
        <source>%1 (looked at %2, not right)</source>
        <translation>%1 (revisado el %2, no quedó)</translation>
    </message>
    <message>
        <source>%1 (looked at, not right)</source>
        <translation>%1 (revisado, no quedó)</translation>
    </message>
    <message>
        <source>%1, due since %2: %3</source>
        <translation>%1, vencido desde el %2: %3</translation>
    </message>
    <message>
        <source>%1, today: %2</source>
        <translation>%1, hoy: %2</translation>
    </message>
    <message>
        <source>%1, by %2: %3</source>
        <translation>%1, para el %2: %3</translation>
    </message>
    <message>
        <source>the flows change sign %1 times, more than 60: add up the flows of a week or a month</source>
        <translation>los flujos cambian de signo %1 veces, más de 60: sume los de una semana o un mes</translation>
    </message>
    <message>
        <source>the flows have no sign change: money must both go out (below 0) and come back (above 0), on different days, for there to be a return</source>
        <translation>los flujos no cambian de signo: tiene que salir dinero (menos de 0) y volver (más de 0), en días distintos, para que haya un rendimiento</translation>
    </message>
    <message>
        <source>no yearly rate from -99.9999 % to 100,000,000 % makes these flows worth nothing: there is no return to show</source>
        <translation>ninguna tasa anual de -99.9999 % a 100,000,000 % deja estos flujos en cero: no hay rendimiento que mostrar</translation>
    </message>
    <message>
        <source>%1, or volume_cuft</source>
        <translation>%1, o volume_cuft</translation>
    </message>
    <message>
        <source>thickness_in is missing: say how thick the slab is, in inches</source>
        <translation>falta thickness_in: diga el grueso de la losa, en pulgadas</translation>
    </message>
    <message>
        <source>depth_in is missing: say how deep the gravel lies, in inches</source>
        <translation>falta depth_in: diga cuánta grava hay de fondo, en pulgadas</translation>
    </message>
    <message>
        <source>rise_in is missing: say how many inches it rises over 12 of run</source>
        <translation>falta rise_in: diga cuántas pulgadas sube por cada 12 de largo</translation>
    </message>
    <message>
        <source>doors take up all of the walls: check doors and door_width_ft</source>
        <translation>las puertas ocupan toda la pared: revise doors y door_width_ft</translation>
    </message>
    <message>
        <source>%1 is %2: it must be from %3 to %4</source>
        <translation>%1 es %2: debe ser de %3 a %4</translation>
    </message>
    <message>
        <source>%1 is %2: it must be a whole number</source>
        <translation>%1 es %2: debe ser un número entero</translation>
    </message>
    <message>
        <source>%1 must be one of these words: %2</source>
        <translation>%1 debe ser una de estas palabras: %2</translation>
    </message>
    <message>
        <source>%1 must be a number</source>
        <translation>%1 debe ser un número</translation>
    </message>
    <message>
        <source>%1 must be one number, not a list</source>
        <translation>%1 debe ser un solo número, no una lista</translation>
    </message>
    <message>
        <source>%1 has more than 1000 numbers: give their sum</source>
        <translation>%1 tiene más de 1000 números: dé su suma</translation>
    </message>
    <message>
        <source>unknown key %1: %2 takes %3</source>
        <translation>medida desconocida %1: %2 usa %3</translation>
    </message>
    <message>
        <source>%1 is given twice: give it once</source>
        <translation>%1 está dos veces: déla una vez</translation>
    </message>
    <message>
        <source>give %1 or %2, not both: take off walls and ceiling one by one</source>
        <translation>dé %1 o %2, no las dos: mida paredes y techo por separado</translation>
    </message>
    <message>
        <source>give area_sqft, or length_ft with %1, not both</source>
        <translation>dé area_sqft, o length_ft con %1, no las dos cosas</translation>
    </message>
    <message>
        <source>length_ft is missing: give length_ft with %1, or area_sqft</source>
        <translation>falta length_ft: dé length_ft con %1, o area_sqft</translation>
    </message>
    <message>
        <source>%1 is missing: give length_ft with %2, or area_sqft</source>
        <translation>falta %1: dé length_ft con %2, o area_sqft</translation>
    </message>
    <message>
        <source>%1 is missing: give %2</source>
        <translation>falta %1: dé %2</translation>
    </message>
    <message>
        <source>give %1 or %2, not both</source>
        <translation>dé %1 o %2, no los dos</translation>
    </message>
    <message>
        <source>openings_sqft takes up all of the area: check it</source>
        <translation>openings_sqft ocupa toda la superficie: revíselo</translation>
    </message>
    <message>
        <source>doors and windows take up all of the walls: check doors, windows, door_sqft and window_sqft</source>
        <translation>puertas y ventanas ocupan toda la pared: revise doors, windows, door_sqft y window_sqft</translation>
    </message>
    <message>
        <source>a plan is longer than a calendar can hold</source>
        <translation>un plan es más largo de lo que cabe en un calendario</translation>
    </message>
    <message>
        <source>is no id</source>
        <translation>no es un identificador</translation>
    </message>
    <message>
        <source>the calendar could not be written: memory ran out</source>
        <translation>no se pudo escribir el calendario: se acabó la memoria</translation>
    </message>
    <message>
        <source>the spreadsheet could not be written: the folder for temporary files can&apos;t be written (TMPDIR says which it is)</source>
        <translation>no se pudo escribir la hoja de cálculo: no se puede escribir en la carpeta de archivos temporales (TMPDIR dice cuál es)</translation>
    </message>
    <message>
        <source>%1: its amounts are in %2, the job&apos;s in %3</source>
        <translation>%1: sus importes están en %2, los de la obra en %3</translation>
    </message>
    <message>
        <source>a bank line is for an item, a contract, a crew, a row of spend or a draw, not for a %1</source>
        <translation>una línea del banco es de un trabajo, un contrato, una cuadrilla, un gasto o un desembolso, no de: %1</translation>
    </message>
    <message>
        <source>that row of spend is dropped or was replaced</source>
        <translation>ese gasto se quitó o se cambió por otro</translation>
    </message>
    <message>
        <source>money left the account with this line: it is no draw</source>
        <translation>con esta línea salió dinero de la cuenta: no es un desembolso</translation>
    </message>
    <message>
        <source>nothing in the book says what that line is: name what it is for</source>
        <translation>nada en el libro dice qué es esa línea: nombre para qué es</translation>
    </message>
    <message>
        <source>that line is settled already: to take it back, &apos;ledgerboard undo&apos;, or drop its row of spend and it waits again</source>
        <translation>esa línea ya está resuelta: para echarlo atrás, &apos;ledgerboard undo&apos;, o quite su gasto y vuelve a esperar</translation>
    </message>
    <message>
        <source>%1can&apos;t be read</source>
        <translation>%1no se puede leer</translation>
    </message>
    <message>
        <source>%1has no id of the bank (FITID): without one it could come in twice. Ask the bank for another download, or bring it as CSV</source>
        <translation>%1no trae identificador del banco (FITID): sin él podría entrar dos veces. Pida al banco otra descarga, o tráigalo como CSV</translation>
    </message>
    <message>
        <source>%1date (DTPOSTED): %2</source>
        <translation>%1fecha (DTPOSTED): %2</translation>
    </message>
    <message>
        <source>%1amount (TRNAMT): %2</source>
        <translation>%1importe (TRNAMT): %2</translation>
    </message>
    <message>
        <source>%1: ledgerboard-ofx printed nothing that can be read</source>
        <translation>%1: ledgerboard-ofx no escribió nada que se pueda leer</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is no lag: write working days up to 3650, such as +2 or -1</source>
        <translation>“%1” no es una espera: escriba días laborables, hasta 3650, como +2 o -1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; names no item: write it like &quot;Hall bath/tile SS+2&quot;</source>
        <translation>“%1” no nombra un trabajo: escríbalo como &quot;Hall bath/tile SS+2&quot;</translation>
    </message>
    <message>
        <source>names the row&apos;s own item, %1: an item does not wait for itself</source>
        <translation>nombra el mismo trabajo de la fila, %1: un trabajo no se espera a sí mismo</translation>
    </message>
    <message>
        <source>names %1 twice with one kind of link: take one out</source>
        <translation>nombra %1 dos veces con el mismo tipo de enlace: quite uno</translation>
    </message>
    <message>
        <source>items would wait for each other in a loop: %1: take one of these out</source>
        <translation>los trabajos se esperarían unos a otros en círculo: %1: quite uno de estos</translation>
    </message>
    <message>
        <source>%1 belongs to a job: say which with --job NAME</source>
        <translation>%1 pertenece a una obra: diga cuál con --job NOMBRE</translation>
    </message>
    <message>
        <source>%1:%2: a quotation mark opened in this row is never closed: close it, or take it out</source>
        <translation>%1:%2: unas comillas abiertas en esta fila no se cierran: ciérrelas o quítelas</translation>
    </message>
    <message>
        <source>%1:%2: a quotation mark inside a quoted cell must be written twice, as in &quot;3/4&quot;&quot; trim&quot; (the row begins on line %3)</source>
        <translation>%1:%2: unas comillas dentro de una celda entre comillas se escriben dos veces, como en &quot;3/4&quot;&quot; trim&quot; (la fila empieza en la línea %3)</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read as two different days, and the column writes some dates day first and others month first: write all of them like 2026-05-15</source>
        <translation>“%1” se puede leer como dos días distintos, y la columna pone en unas fechas primero el día y en otras el mes: escríbalas todas como 2026-05-15</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read as two different days, and no other row of the column shows which number is the month: write it like 2026-05-15</source>
        <translation>“%1” se puede leer como dos días distintos, y ninguna otra fila de la columna muestra qué número es el mes: escríbalo como 2026-05-15</translation>
    </message>
    <message>
        <source>there is no %1 %2, nor any other yet: %3</source>
        <translation>no hay %1 %2, ni ninguna otra cosa así todavía: %3</translation>
    </message>
    <message>
        <source>none of its headings is known: the first line must name the columns (%1)</source>
        <translation>no se conoce ninguno de sus títulos: la primera línea debe nombrar las columnas (%1)</translation>
    </message>
    <message>
        <source>is missing: %1 needs it; add it, or say which column it is with --match theirs=%2</source>
        <translation>falta: %1 la necesita; añádala, o diga qué columna es con --match suya=%2</translation>
    </message>
    <message>
        <source>--match: %1 is not of the form theirs=ours: write it like --match &quot;Paid to=Payee,Ref=-&quot;; a heading that holds a comma stands in double quotes</source>
        <translation>--match: %1 no tiene la forma suya=nuestra: escríbalo como --match &quot;Paid to=Payee,Ref=-&quot;; un título con coma va entre comillas</translation>
    </message>
    <message>
        <source>&quot;%1&quot; stands in line %2 too: take out one of the two rows</source>
        <translation>“%1” está también en la línea %2: quite una de las dos filas</translation>
    </message>
    <message>
        <source>the bank id &quot;%1&quot; is already in the book with other facts (%2), and spend is never edited: mend the row, or drop the one in the book and give this one another bank id</source>
        <translation>el identificador de banco “%1” ya está en el libro con otros datos (%2), y un gasto no se edita: corrija la fila, o quite la del libro y dé a esta otro identificador</translation>
    </message>
    <message>
        <source>says again what line %1 says (%2 are the same): make one row of the two, or tell them apart there</source>
        <translation>dice otra vez lo que dice la línea %1 (%2 iguales): haga de las dos una fila, o distíngalas ahí</translation>
    </message>
    <message>
        <source>may mean %1 records (%2): tell them apart in the book first, or drop one</source>
        <translation>puede referirse a %1 registros (%2): distíngalos primero en el libro, o quite uno</translation>
    </message>
    <message>
        <source>is empty: say %1</source>
        <translation>está vacía: diga %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is what a spreadsheet shows for a cell it could not work out: mend the sheet</source>
        <translation>“%1” es lo que muestra una hoja de cálculo cuando no pudo calcular una celda: corrija la hoja</translation>
    </message>
    <message>
        <source>is more than 100 percent: write 0 to 100</source>
        <translation>es más de 100 por ciento: escriba de 0 a 100</translation>
    </message>
    <message>
        <source>is no number of a draw: count them from 1</source>
        <translation>no es el número de un desembolso: cuéntelos desde 1</translation>
    </message>
    <message>
        <source>no record</source>
        <translation>ningún registro</translation>
    </message>
    <message>
        <source>The notes are %1 bytes long and at most %2 are read at once: part them into smaller files.</source>
        <translation>Las notas tienen %1 bytes y se leen %2 a la vez como mucho: pártalas en archivos más chicos.</translation>
    </message>
    <message>
        <source>Of %1 words in the notes only %2 are known: the reader understands English alone. Translate the notes first.</source>
        <translation>De %1 palabras en las notas solo se conocen %2: el lector solo entiende inglés. Traduzca primero las notas.</translation>
    </message>
    <message>
        <source>The notes are not plain text in UTF-8: save them as a text file and read that.</source>
        <translation>Las notas no son texto simple en UTF-8: guárdelas como archivo de texto y lea ese.</translation>
    </message>
    <message>
        <source>%1: there is no such folder or picture: check its name</source>
        <translation>%1: no existe esa carpeta o foto: revise el nombre</translation>
    </message>
    <message>
        <source>%1 has no pictures in JPEG and no photos.csv</source>
        <translation>%1 no tiene fotos en JPEG ni un photos.csv</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not say when it was taken: write it into a photos.csv beside it, under File, Space, Stage and Taken at</source>
        <translation>“%1” no dice cuándo se tomó: escríbalo en un photos.csv a su lado, bajo File, Space, Stage y Taken at</translation>
    </message>
    <message>
        <source>%1 is %2: check the year</source>
        <translation>%1 es %2: revise el año</translation>
    </message>
    <message>
        <source>is %1, but the book has this picture with %2, which is not edited: drop the photo and bring it anew</source>
        <translation>es %1, pero el libro tiene esta foto con %2, que no se edita: quite la foto y tráigala de nuevo</translation>
    </message>
    <message>
        <source>%1 was changed while it was brought: bring it again</source>
        <translation>%1 cambió mientras se traía: tráigala otra vez</translation>
    </message>
    <message>
        <source>--match names columns of a photos.csv, and there is none</source>
        <translation>--match nombra columnas de un photos.csv, y no hay ninguno</translation>
    </message>
    <message>
        <source>photos belong to a job: say which with --job NAME</source>
        <translation>las fotos pertenecen a una obra: diga cuál con --job NOMBRE</translation>
    </message>
    <message>
        <source>the picture is damaged, cut short or of a kind that is not read here: save it as JPEG</source>
        <translation>la foto está dañada, cortada o es de un tipo que aquí no se lee: guárdela como JPEG</translation>
    </message>
    <message>
        <source>the picture is damaged or cut short</source>
        <translation>la foto está dañada o cortada</translation>
    </message>
    <message>
        <source>the picture is larger than a camera makes</source>
        <translation>la foto es más grande que las de una cámara</translation>
    </message>
    <message>
        <source>%1: photos are JPEG or HEIC; save it as JPEG</source>
        <translation>%1: las fotos son JPEG o HEIC; guárdela como JPEG</translation>
    </message>
    <message>
        <source>leads out of the folder: %1</source>
        <translation>sale de la carpeta: %1</translation>
    </message>
    <message>
        <source>is a link that leads out of the folder: %1</source>
        <translation>es un enlace que sale de la carpeta: %1</translation>
    </message>
    <message>
        <source>is larger than %1 MB: save it smaller first</source>
        <translation>pasa de %1 MB: guárdela antes más chica</translation>
    </message>
    <message>
        <source>means the same as column &quot;%1&quot;: take one out, or leave it out with --match &quot;%2=-&quot;</source>
        <translation>significa lo mismo que la columna “%1”: quite una, o déjela fuera con --match &quot;%2=-&quot;</translation>
    </message>
    <message>
        <source>is not a file: name a picture</source>
        <translation>no es un archivo: nombre una foto</translation>
    </message>
    <message>
        <source>the JPEG library could not make a smaller copy</source>
        <translation>la biblioteca JPEG no pudo hacer una copia más chica</translation>
    </message>
    <message>
        <source>%1 is not a date: write it like 2026-05-15</source>
        <translation>%1 no es una fecha: escríbala como 2026-05-15</translation>
    </message>
    <message>
        <source>%1 has a two-digit year: write it like 2026-05-15</source>
        <translation>%1 tiene el año con dos cifras: escríbala como 2026-05-15</translation>
    </message>
    <message>
        <source>%1 can be read as two different days: write it like 2026-05-15</source>
        <translation>%1 se puede leer como dos días distintos: escríbala como 2026-05-15</translation>
    </message>
    <message>
        <source>there is no day %1 in the calendar: check the day and the month</source>
        <translation>no hay un día %1 en el calendario: revise el día y el mes</translation>
    </message>
    <message>
        <source>%1 is not an instant: write it like 2026-05-15T18:03:00Z or 2026-05-15T18:03:00-05:00</source>
        <translation>%1 no es un instante: escríbalo como 2026-05-15T18:03:00Z o 2026-05-15T18:03:00-05:00</translation>
    </message>
    <message>
        <source>%1 is not a number: write it like 1250 or 1,250.50</source>
        <translation>%1 no es un número: escríbalo como 1250 o 1,250.50</translation>
    </message>
    <message>
        <source>%1 has a comma where none belongs: write 1,250.50, with a point for decimals</source>
        <translation>%1 tiene una coma donde no va: escriba 1,250.50, con punto para los decimales</translation>
    </message>
    <message>
        <source>%1 is too large to be kept</source>
        <translation>%1 es demasiado grande para guardarse</translation>
    </message>
    <message>
        <source>%1 is not a whole number: round it</source>
        <translation>%1 no es un número entero: redondéelo</translation>
    </message>
    <message>
        <source>%1 has more than %2 decimals: round it to that many</source>
        <translation>%1 tiene más de %2 decimales: redondéelo a esos</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not an id</source>
        <translation>“%1” no es un identificador</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a work week: write it like Mon Tue Wed Thu Fri, or Mon-Sat</source>
        <translation>“%1” no es una semana laboral: escríbala como Mon Tue Wed Thu Fri, o Mon-Sat</translation>
    </message>
    <message>
        <source>an amount to be split is larger than can be kept</source>
        <translation>un importe por repartir es más grande de lo que se puede guardar</translation>
    </message>
    <message>
        <source>a sum is larger than can be kept</source>
        <translation>una suma es más grande de lo que se puede guardar</translation>
    </message>
    <message>
        <source>a difference is larger than can be kept</source>
        <translation>una diferencia es más grande de lo que se puede guardar</translation>
    </message>
    <message>
        <source>a product is larger than can be kept</source>
        <translation>un producto es más grande de lo que se puede guardar</translation>
    </message>
    <message>
        <source>a figure is larger than can be kept</source>
        <translation>una cifra es más grande de lo que se puede guardar</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is neither yes nor no</source>
        <translation>“%1” no es ni sí ni no</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of: %2</source>
        <translation>“%1” no es ninguna de: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; needs a name and a figure: write it like taxes 210; insurance 95</source>
        <translation>“%1” necesita un nombre y una cifra: escríbalo como impuestos 210; seguro 95</translation>
    </message>
    <message>
        <source>neither yes nor no</source>
        <translation>ni sí ni no</translation>
    </message>
    <message>
        <source>a date outside the years 1600 to 2999</source>
        <translation>una fecha fuera de los años 1600 a 2999</translation>
    </message>
    <message>
        <source>not a work week</source>
        <translation>no es una semana laboral</translation>
    </message>
    <message>
        <source>an instant outside the years 1600 to 2999</source>
        <translation>un instante fuera de los años 1600 a 2999</translation>
    </message>
    <message>
        <source>%1 is not within 0 to 100 percent</source>
        <translation>%1 no está entre 0 y 100 por ciento</translation>
    </message>
    <message>
        <source>too large to be kept</source>
        <translation>demasiado grande para guardarse</translation>
    </message>
    <message>
        <source>it can&apos;t be below 0</source>
        <translation>no puede ser menos de 0</translation>
    </message>
    <message>
        <source>a number where none belongs</source>
        <translation>un número donde no va</translation>
    </message>
    <message>
        <source>not a list of what belongs there</source>
        <translation>no es una lista de lo que va ahí</translation>
    </message>
    <message>
        <source>an empty text is kept as no value</source>
        <translation>un texto vacío se guarda como sin valor</translation>
    </message>
    <message>
        <source>a text longer than 100,000 bytes</source>
        <translation>un texto de más de 100,000 bytes</translation>
    </message>
    <message>
        <source>a text with bytes in it that are not UTF-8 text</source>
        <translation>un texto con bytes que no son texto UTF-8</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not one of its words</source>
        <translation>“%1” no es una de sus palabras</translation>
    </message>
    <message>
        <source>a text where none belongs</source>
        <translation>un texto donde no va</translation>
    </message>
    <message>
        <source>an id where none belongs</source>
        <translation>un identificador donde no va</translation>
    </message>
    <message>
        <source>a text with bytes in it that are not UTF-8: save the file as UTF-8</source>
        <translation>un texto con bytes que no son UTF-8: guarde el archivo como UTF-8</translation>
    </message>
    <message>
        <source>the PDF could not be made: %1</source>
        <translation>no se pudo hacer el PDF: %1</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Dueño</translation>
    </message>
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
        <source>Pay nothing more on %1 yet: %2 ahead of its work</source>
        <translation>No pague más de %1 todavía: va %2 por delante de su trabajo</translation>
    </message>
    <message>
        <source>Watch %1: paid %2 ahead of its work</source>
        <translation>Vigile %1: pagado %2 por delante de su trabajo</translation>
    </message>
    <message>
        <source>Pay on %1 only what is signed: %2 is billed beyond it</source>
        <translation>De %1 pague solo lo firmado: hay %2 facturados de más</translation>
    </message>
    <message>
        <source>Pay nothing more on %1 before its final waiver is in</source>
        <translation>No pague más de %1 antes de tener su renuncia final</translation>
    </message>
    <message>
        <source>Get the final waiver for %1</source>
        <translation>Consiga la renuncia final de %1</translation>
    </message>
    <message>
        <source>Pay %1 nothing until its insurance is renewed</source>
        <translation>No pague nada a %1 hasta que renueve su seguro</translation>
    </message>
    <message>
        <source>Have %1 renew its insurance: %2 left</source>
        <translation>Que %1 renueve su seguro: quedan %2</translation>
    </message>
    <message>
        <source>Order %1</source>
        <translation>Pedir %1</translation>
    </message>
    <message>
        <source>Hurry or put off %1: it comes %2 after its planned start</source>
        <translation>Apure o posponga %1: llega %2 después de su inicio previsto</translation>
    </message>
    <message>
        <source>Look at %1: not marked for %2</source>
        <translation>Revise %1: sin marcar desde hace %2</translation>
    </message>
    <message>
        <source>Win back time: the finish slips by %1 working days</source>
        <translation>Recupere tiempo: el final se atrasa %1 días laborables</translation>
    </message>
    <message>
        <source>Win back time: the finish slips by %1 working day</source>
        <translation>Recupere tiempo: el final se atrasa %1 día laborable</translation>
    </message>
    <message>
        <source>Keep clear of the term end, or ask for an extension</source>
        <translation>Aléjese del fin del plazo, o pida una prórroga</translation>
    </message>
    <message>
        <source>Call %1: it did not come on %2</source>
        <translation>Llame a %1: no vino en %2</translation>
    </message>
    <message>
        <source>Spread out %1: in several places at once for %2</source>
        <translation>Reparta a %1: en varios lugares a la vez durante %2</translation>
    </message>
    <message>
        <source>Keep %1 to one crew at a time: several in it for %2</source>
        <translation>Deje %1 a una cuadrilla a la vez: hay varias durante %2</translation>
    </message>
    <message>
        <source>Look into %1: %2 over budget</source>
        <translation>Mire %1: %2 sobre el presupuesto</translation>
    </message>
    <message>
        <source>The whole job is %1 over its first budget, changes included</source>
        <translation>Toda la obra va %1 sobre su primer presupuesto, con los cambios</translation>
    </message>
    <message>
        <source>Contingency goes faster than the work: %1 left</source>
        <translation>Los imprevistos se gastan más rápido que el trabajo: quedan %1</translation>
    </message>
    <message>
        <source>Sign or refuse %1: %2</source>
        <translation>Firme o rechace %1: %2</translation>
    </message>
    <message>
        <source>Fill in the amount of %1</source>
        <translation>Complete el importe de %1</translation>
    </message>
    <message>
        <source>Say what %1 paid for: %2 in all</source>
        <translation>Diga qué se pagó con %1: %2 en total</translation>
    </message>
    <message>
        <source>Find %1: %2 in all</source>
        <translation>Busque %1: %2 en total</translation>
    </message>
    <message>
        <source>Have a change signed for %1: %2</source>
        <translation>Haga firmar un cambio por %1: %2</translation>
    </message>
    <message>
        <source>Ask for a draw or put off a payment: cash falls to %1 in %2</source>
        <translation>Pida un desembolso o posponga un pago: el efectivo baja a %1 en %2</translation>
    </message>
    <message>
        <source>Watch the cash: it falls to %1 in %2</source>
        <translation>Vigile el efectivo: baja a %1 en %2</translation>
    </message>
    <message>
        <source>%1; asked %2 ago</source>
        <translation>%1; pedido hace %2</translation>
    </message>
    <message>
        <source>%1, %2 ago</source>
        <translation>%1, hace %2</translation>
    </message>
    <message>
        <source>%1; %2 left</source>
        <translation>%1; quedan %2</translation>
    </message>
    <message>
        <source>And %1 more of the same: %2</source>
        <translation>Y %1 más de lo mismo: %2</translation>
    </message>
    <message>
        <source>Before it is touched: %1, %2</source>
        <translation>Antes de tocarlo: %1, %2</translation>
    </message>
    <message>
        <source>local codes and licensed practice decide</source>
        <translation>deciden los códigos locales y un oficio con licencia</translation>
    </message>
    <message>
        <source>%1 hazard of later work is not acknowledged yet</source>
        <translation>%1 peligro de un trabajo posterior aún no se ha leído</translation>
    </message>
    <message>
        <source>%1 hazards of later work are not acknowledged yet</source>
        <translation>%1 peligros de trabajos posteriores aún no se han leído</translation>
    </message>
    <message>
        <source>not enough is entered to tell</source>
        <translation>no hay bastante anotado para decirlo</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>not entered: %1</source>
        <translation>sin anotar: %1</translation>
    </message>
    <message>
        <source>there is already something at %1: name another file with --book</source>
        <translation>ya hay algo en %1: nombre otro archivo con --book</translation>
    </message>
    <message>
        <source>the book cannot be made at %1: %2</source>
        <translation>no se puede hacer el libro en %1: %2</translation>
    </message>
    <message>
        <source>%1 has no device in it: it is damaged, restore a backup</source>
        <translation>%1 no tiene ningún aparato dentro: está dañado, recupere una copia</translation>
    </message>
    <message>
        <source>what the book knew before %1 is not kept any more: ask for a later day</source>
        <translation>lo que el libro sabía antes del %1 ya no se guarda: pida un día posterior</translation>
    </message>
    <message>
        <source>there is a book in that database already</source>
        <translation>ya hay un libro en esa base de datos</translation>
    </message>
    <message>
        <source>there is no book in that database</source>
        <translation>no hay ningún libro en esa base de datos</translation>
    </message>
    <message>
        <source>there is no such job in the book</source>
        <translation>no hay tal obra en el libro</translation>
    </message>
    <message>
        <source>there is already something at %1: name another file</source>
        <translation>ya hay algo en %1: nombre otro archivo</translation>
    </message>
    <message>
        <source>there is no folder %1: make it first, or name another</source>
        <translation>no hay una carpeta %1: hágala primero, o nombre otra</translation>
    </message>
    <message>
        <source>the backup cannot be made at %1: %2</source>
        <translation>no se puede hacer la copia en %1: %2</translation>
    </message>
    <message>
        <source>there is no such %1</source>
        <translation>no existe: %1</translation>
    </message>
    <message>
        <source>&quot;%1&quot; was too long ago to be undone</source>
        <translation>“%1” fue hace demasiado tiempo para deshacerlo</translation>
    </message>
    <message>
        <source>&quot;%1&quot; was too long ago to be done again</source>
        <translation>“%1” fue hace demasiado tiempo para rehacerlo</translation>
    </message>
    <message>
        <source>an edit names a record or a field that the catalog does not know</source>
        <translation>un cambio nombra un registro o un campo que el catálogo no conoce</translation>
    </message>
    <message>
        <source>it is a kept fact and is not edited; drop the row and add it anew</source>
        <translation>es un hecho guardado y no se edita; quite la fila y añádala de nuevo</translation>
    </message>
    <message>
        <source>there is nothing to undo</source>
        <translation>no hay nada que deshacer</translation>
    </message>
    <message>
        <source>there is nothing to redo</source>
        <translation>no hay nada que rehacer</translation>
    </message>
    <message>
        <source>another program wrote to the book meanwhile, so nothing was written: do it again</source>
        <translation>otro programa escribió en el libro mientras tanto, así que no se guardó nada: hágalo otra vez</translation>
    </message>
    <message>
        <source>%1 cannot be %2: %3; check the folder and the disk</source>
        <translation>no se pudo con %1 (%2): %3; revise la carpeta y el disco</translation>
    </message>
    <message>
        <source>the picture is larger than %1 MB: save it smaller first</source>
        <translation>la foto pasa de %1 MB: guárdela antes más chica</translation>
    </message>
    <message>
        <source>%1 cannot be made: %2</source>
        <translation>no se puede hacer %1: %2</translation>
    </message>
    <message>
        <source>%1 cannot be written: %2</source>
        <translation>no se puede escribir %1: %2</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not the digest of a photo</source>
        <translation>“%1” no es la huella de una foto</translation>
    </message>
    <message>
        <source>%1 is missing: copy it back from a backup of the photos</source>
        <translation>falta %1: cópiela de nuevo de un respaldo de las fotos</translation>
    </message>
    <message>
        <source>%1 is not the picture that was kept: its bytes differ from its digest; copy it back from a backup of the photos</source>
        <translation>%1 no es la foto que se guardó: sus bytes no son los de su huella; cópiela de nuevo de un respaldo de las fotos</translation>
    </message>
    <message>
        <source>there is no book at %1: make one with &apos;ledgerboard start NAME&apos;, or name another with --book</source>
        <translation>no hay ningún libro en %1: haga uno con &apos;ledgerboard start NOMBRE&apos;, o nombre otro con --book</translation>
    </message>
    <message>
        <source>%1 is not a file: name the book&apos;s file with --book</source>
        <translation>%1 no es un archivo: nombre el archivo del libro con --book</translation>
    </message>
    <message>
        <source>%1 is not a Ledgerboard book: name the book&apos;s file with --book</source>
        <translation>%1 no es un libro de Ledgerboard: nombre el archivo del libro con --book</translation>
    </message>
    <message>
        <source>%1 is a database of another program, not a Ledgerboard book</source>
        <translation>%1 es una base de datos de otro programa, no un libro de Ledgerboard</translation>
    </message>
    <message>
        <source>%1 was written by a newer Ledgerboard (layout %2, this program knows %3): use the newer program</source>
        <translation>%1 lo escribió un Ledgerboard más nuevo (formato %2, este programa conoce %3): use el programa nuevo</translation>
    </message>
    <message>
        <source>%1 is cut short (%2 of %3 bytes): restore a backup</source>
        <translation>%1 está cortado (%2 de %3 bytes): recupere una copia</translation>
    </message>
    <message>
        <source>%1 is read-only: make it writable, or copy it and use the copy</source>
        <translation>%1 es de solo lectura: dé permiso de escritura, o cópielo y use la copia</translation>
    </message>
    <message>
        <source>the book cannot be opened: check that its folder exists and can be written</source>
        <translation>no se puede abrir el libro: revise que su carpeta exista y se pueda escribir en ella</translation>
    </message>
    <message>
        <source>the disk failed while reading or writing the book (%1)</source>
        <translation>el disco falló al leer o escribir el libro (%1)</translation>
    </message>
    <message>
        <source>the book cannot be used (%1)</source>
        <translation>no se puede usar el libro (%1)</translation>
    </message>
    <message>
        <source>the book was opened by another version of the program: use one version</source>
        <translation>el libro lo abrió otra versión del programa: use una sola versión</translation>
    </message>
    <message>
        <source>a clash is settled in a field that the catalog knows</source>
        <translation>un choque se resuelve en un campo que el catálogo conoce</translation>
    </message>
    <message>
        <source>a device&apos;s name has at most %1 characters, in one line</source>
        <translation>el nombre de un aparato tiene %1 letras como mucho, en una línea</translation>
    </message>
    <message>
        <source>%1 has joined the peer at %2 already, and a book has one peer: &apos;ledgerboard sync&apos; meets it</source>
        <translation>%1 ya se unió al punto de encuentro en %2, y un libro tiene uno solo: &apos;ledgerboard sync&apos; se encuentra con él</translation>
    </message>
    <message>
        <source>%1 does not say which peer this book meets, or a newer program wrote it: join again with &apos;ledgerboard join --again&apos;</source>
        <translation>%1 no dice con qué punto de encuentro se sincroniza este libro, o lo escribió un programa más nuevo: únase otra vez con &apos;ledgerboard join --again&apos;</translation>
    </message>
    <message>
        <source>%1 does not know the code: it is not the peer that gave it. This device has joined nothing; check the address</source>
        <translation>%1 no conoce el código: no es el punto de encuentro que lo dio. Este aparato no se unió a nada; revise la dirección</translation>
    </message>
    <message>
        <source>%1 could not be removed: remove it, and all beside it</source>
        <translation>no se pudo borrar %1: bórrelo, y todo lo que está a su lado</translation>
    </message>
    <message>
        <source>%1 is not a peer&apos;s certificate with its key: put it back from a backup; a new one means that every device joins anew</source>
        <translation>%1 no es el certificado de un punto de encuentro con su llave: póngalo de nuevo desde un respaldo; uno nuevo obliga a cada aparato a unirse otra vez</translation>
    </message>
    <message>
        <source>the peer&apos;s certificate cannot be made: OpenSSL refuses</source>
        <translation>no se puede hacer el certificado del punto de encuentro: OpenSSL se niega</translation>
    </message>
    <message>
        <source>%1 is not the key of a device: put it back from a backup, or remove it and join anew</source>
        <translation>%1 no es la llave de un aparato: póngala de nuevo desde un respaldo, o bórrela y únase otra vez</translation>
    </message>
    <message>
        <source>address: write it as host:port, such as 192.0.2.7:7440 or [2001:db8::7]:7440</source>
        <translation>dirección: escríbala como equipo:puerto, como 192.0.2.7:7440 o [2001:db8::7]:7440</translation>
    </message>
    <message>
        <source>invitation: this is not the text of a Ledgerboard invitation; type the address and the code instead</source>
        <translation>invitación: este no es el texto de una invitación de Ledgerboard; escriba la dirección y el código</translation>
    </message>
    <message>
        <source>%1 invitations are open: wait ten minutes for them to lapse</source>
        <translation>hay %1 invitaciones abiertas: espere diez minutos a que venzan</translation>
    </message>
    <message>
        <source>code: group %1 has a character that no code has; codes are of digits and letters without I, L, O and U</source>
        <translation>código: el grupo %1 tiene un carácter que ningún código lleva; los códigos son de cifras y letras sin I, L, O ni U</translation>
    </message>
    <message>
        <source>code: it has %1 characters of 25; a code has five groups of five</source>
        <translation>código: tiene %1 caracteres de 25; un código son cinco grupos de cinco</translation>
    </message>
    <message>
        <source>code: it is too long; a code has five groups of five</source>
        <translation>código: es demasiado largo; un código son cinco grupos de cinco</translation>
    </message>
    <message>
        <source>code: a character is wrong or two are swapped; compare it group by group</source>
        <translation>código: hay un carácter mal o dos cambiados de lugar; compárelo grupo por grupo</translation>
    </message>
    <message>
        <source>%1 is not the file that was written there: remove it</source>
        <translation>%1 no es el archivo que se escribió ahí: bórrelo</translation>
    </message>
    <message>
        <source>%1 holds a secret and others can reach it: chmod 600 %2, and where others have used this computer, remove the file and join anew</source>
        <translation>%1 guarda un secreto y otros pueden alcanzarlo: chmod 600 %2, y si otros han usado esta computadora, borre el archivo y únase otra vez</translation>
    </message>
    <message>
        <source>the invitation is too long for a picture: type the code</source>
        <translation>la invitación es demasiado larga para una imagen: escriba el código</translation>
    </message>
    <message>
        <source>%1 cannot be written: check the folder and the disk</source>
        <translation>no se puede escribir %1: revise la carpeta y el disco</translation>
    </message>
    <message>
        <source>the peer&apos;s answer about photos can&apos;t be read</source>
        <translation>la respuesta del punto de encuentro sobre las fotos no se puede leer</translation>
    </message>
    <message>
        <source>the peer&apos;s answer about a photo can&apos;t be read</source>
        <translation>la respuesta del punto de encuentro sobre una foto no se puede leer</translation>
    </message>
    <message>
        <source>a photo came three times with other bytes than its digest: try again</source>
        <translation>una foto llegó tres veces con otros bytes que los de su huella: intente de nuevo</translation>
    </message>
    <message>
        <source>the peer acknowledged nothing of what was sent: try again later</source>
        <translation>el punto de encuentro no confirmó nada de lo enviado: intente más tarde</translation>
    </message>
    <message>
        <source>there is no copy</source>
        <translation>no hay copia</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>an entry of the log is missing</source>
        <translation>falta un apunte del registro</translation>
    </message>
    <message>
        <source>the book does not know its peer any more</source>
        <translation>el libro ya no conoce su punto de encuentro</translation>
    </message>
    <message>
        <source>the message is larger than it may be</source>
        <translation>el mensaje es más grande de lo permitido</translation>
    </message>
    <message>
        <source>the message is no JSON object, or nests too deep</source>
        <translation>el mensaje no es un objeto JSON, o anida demasiado</translation>
    </message>
    <message>
        <source>this book has met no peer yet</source>
        <translation>este libro aún no se ha sincronizado con nadie</translation>
    </message>
    <message>
        <source>the peer&apos;s answer does not read: use programs of one version</source>
        <translation>la respuesta del punto de encuentro no se entiende: use programas de la misma versión</translation>
    </message>
    <message>
        <source>that is this very device: shut it out from another owner&apos;s, so that one is left</source>
        <translation>es este mismo aparato: exclúyalo desde el de otro dueño, para que quede uno</translation>
    </message>
    <message>
        <source>say what is to be done, such as &quot;replace faucet&quot; or &quot;Hall bath: replace faucet&quot;</source>
        <translation>diga qué se hace, como &quot;replace faucet&quot; o &quot;Hall bath: replace faucet&quot;</translation>
    </message>
    <message>
        <source>job</source>
        <translation>obra</translation>
    </message>
    <message>
        <source>Job</source>
        <translation>Obra</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Dirección</translation>
    </message>
    <message>
        <source>Built</source>
        <translation>Construida</translation>
    </message>
    <message>
        <source>Living area</source>
        <translation>Superficie habitable</translation>
    </message>
    <message>
        <source>Rooms</source>
        <translation>Cuartos</translation>
    </message>
    <message>
        <source>Bedrooms</source>
        <translation>Recámaras</translation>
    </message>
    <message>
        <source>Baths</source>
        <translation>Baños</translation>
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
        <source>Resale low</source>
        <translation>Reventa baja</translation>
    </message>
    <message>
        <source>Resale</source>
        <translation>Reventa</translation>
    </message>
    <message>
        <source>Resale high</source>
        <translation>Reventa alta</translation>
    </message>
    <message>
        <source>Ceiling of the street</source>
        <translation>Tope de la calle</translation>
    </message>
    <message>
        <source>Budget</source>
        <translation>Presupuesto</translation>
    </message>
    <message>
        <source>Begin</source>
        <translation>Inicio</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Fin</translation>
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
        <source>Points on the purchase loan</source>
        <translation>Puntos del préstamo de compra</translation>
    </message>
    <message>
        <source>Points on the work loan</source>
        <translation>Puntos del préstamo de obra</translation>
    </message>
    <message>
        <source>Lender fees</source>
        <translation>Cargos, préstamo</translation>
    </message>
    <message>
        <source>Interest basis</source>
        <translation>Base de intereses</translation>
    </message>
    <message>
        <source>Interest charged on</source>
        <translation>Intereses sobre</translation>
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
        <source>Days from ask to visit</source>
        <translation>Días de pedir a visita</translation>
    </message>
    <message>
        <source>Days from visit to money</source>
        <translation>Días de visita a dinero</translation>
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
        <source>Holding costs</source>
        <translation>Gastos de tenencia</translation>
    </message>
    <message>
        <source>Wanted profit</source>
        <translation>Ganancia deseada</translation>
    </message>
    <message>
        <source>Work week</source>
        <translation>Semana laboral</translation>
    </message>
    <message>
        <source>Holidays</source>
        <translation>Días festivos</translation>
    </message>
    <message>
        <source>Currency</source>
        <translation>Moneda</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zona horaria</translation>
    </message>
    <message>
        <source>Access</source>
        <translation>Acceso</translation>
    </message>
    <message>
        <source>Concern levels</source>
        <translation>Niveles de aviso</translation>
    </message>
    <message>
        <source>Cash at start</source>
        <translation>Efectivo inicial</translation>
    </message>
    <message>
        <source>Deposit limit</source>
        <translation>Tope de anticipo</translation>
    </message>
    <message>
        <source>Season drop</source>
        <translation>Baja de temporada</translation>
    </message>
    <message>
        <source>Half days</source>
        <translation>Medios días</translation>
    </message>
    <message>
        <source>space</source>
        <translation>espacio</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>Short name</source>
        <translation>Nombre corto</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Piso</translation>
    </message>
    <message>
        <source>Order</source>
        <translation>Orden</translation>
    </message>
    <message>
        <source>Swatch</source>
        <translation>Muestra</translation>
    </message>
    <message>
        <source>Floor area</source>
        <translation>Superficie de piso</translation>
    </message>
    <message>
        <source>Wall area</source>
        <translation>Superficie de pared</translation>
    </message>
    <message>
        <source>Ceiling height</source>
        <translation>Altura del techo</translation>
    </message>
    <message>
        <source>One crew at a time</source>
        <translation>Una cuadrilla a la vez</translation>
    </message>
    <message>
        <source>Space note</source>
        <translation>Nota del espacio</translation>
    </message>
    <message>
        <source>scope item</source>
        <translation>trabajo</translation>
    </message>
    <message>
        <source>Treatment</source>
        <translation>Tratamiento</translation>
    </message>
    <message>
        <source>Object</source>
        <translation>Objeto</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
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
        <source>Material per unit</source>
        <translation>Material por unidad</translation>
    </message>
    <message>
        <source>Labour per unit</source>
        <translation>Mano de obra por unidad</translation>
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
        <source>Lump sum</source>
        <translation>Alzado</translation>
    </message>
    <message>
        <source>Allowance</source>
        <translation>Asignación</translation>
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
        <source>Crew</source>
        <translation>Cuadrilla</translation>
    </message>
    <message>
        <source>Contract</source>
        <translation>Contrato</translation>
    </message>
    <message>
        <source>Days low</source>
        <translation>Días, bajo</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Días</translation>
    </message>
    <message>
        <source>Days high</source>
        <translation>Días, alto</translation>
    </message>
    <message>
        <source>Lead days</source>
        <translation>Días de entrega</translation>
    </message>
    <message>
        <source>Order on</source>
        <translation>Pedir el</translation>
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
        <source>Actual start</source>
        <translation>Inicio real</translation>
    </message>
    <message>
        <source>Actual finish</source>
        <translation>Final real</translation>
    </message>
    <message>
        <source>Measured by</source>
        <translation>Se mide por</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Pasos</translation>
    </message>
    <message>
        <source>Estimate to finish</source>
        <translation>Estimación para terminar</translation>
    </message>
    <message>
        <source>Estimate reason</source>
        <translation>Razón de la estimación</translation>
    </message>
    <message>
        <source>Option</source>
        <translation>Opción</translation>
    </message>
    <message>
        <source>Condition before</source>
        <translation>Estado anterior</translation>
    </message>
    <message>
        <source>Hazards</source>
        <translation>Peligros</translation>
    </message>
    <message>
        <source>Accepted</source>
        <translation>Aceptado</translation>
    </message>
    <message>
        <source>Selection</source>
        <translation>Selección</translation>
    </message>
    <message>
        <source>Instructions</source>
        <translation>Instrucciones</translation>
    </message>
    <message>
        <source>Do not cover</source>
        <translation>No cubrir</translation>
    </message>
    <message>
        <source>Ready to look</source>
        <translation>Listo para revisar</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Razón</translation>
    </message>
    <message>
        <source>Lender line</source>
        <translation>Renglón del prestamista</translation>
    </message>
    <message>
        <source>Read from</source>
        <translation>Leído de</translation>
    </message>
    <message>
        <source>Quote</source>
        <translation>Cotización</translation>
    </message>
    <message>
        <source>Bought goods</source>
        <translation>Material comprado</translation>
    </message>
    <message>
        <source>link</source>
        <translation>enlace</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Desde</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Link</source>
        <translation>Enlace</translation>
    </message>
    <message>
        <source>Lag</source>
        <translation>Espera</translation>
    </message>
    <message>
        <source>alternate</source>
        <translation>alternativa</translation>
    </message>
    <message>
        <source>Question</source>
        <translation>Pregunta</translation>
    </message>
    <message>
        <source>Decide by</source>
        <translation>Decidir antes del</translation>
    </message>
    <message>
        <source>Carried</source>
        <translation>Contada</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Elegida</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
    <message>
        <source>option</source>
        <translation>opción</translation>
    </message>
    <message>
        <source>Alternate</source>
        <translation>Alternativa</translation>
    </message>
    <message>
        <source>Cost</source>
        <translation>Costo</translation>
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
        <source>unknown</source>
        <translation>incógnita</translation>
    </message>
    <message>
        <source>Unknown</source>
        <translation>Incógnita</translation>
    </message>
    <message>
        <source>Chance</source>
        <translation>Probabilidad</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>Trabajo</translation>
    </message>
    <message>
        <source>Came true</source>
        <translation>Se cumplió</translation>
    </message>
    <message>
        <source>crew</source>
        <translation>cuadrilla</translation>
    </message>
    <message>
        <source>Lead</source>
        <translation>Jefe</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Teléfono</translation>
    </message>
    <message>
        <source>Insured until</source>
        <translation>Asegurada hasta</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Capacidad</translation>
    </message>
    <message>
        <source>Daily rate</source>
        <translation>Tarifa diaria</translation>
    </message>
    <message>
        <source>contract</source>
        <translation>contrato</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Sum</source>
        <translation>Suma</translation>
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
        <source>change order</source>
        <translation>orden de cambio</translation>
    </message>
    <message>
        <source>Items</source>
        <translation>Trabajos</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Importe</translation>
    </message>
    <message>
        <source>Split</source>
        <translation>Reparto</translation>
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
        <source>Paid from</source>
        <translation>Se paga de</translation>
    </message>
    <message>
        <source>Photo</source>
        <translation>Foto</translation>
    </message>
    <message>
        <source>Asked by</source>
        <translation>Pedido por</translation>
    </message>
    <message>
        <source>spend</source>
        <translation>gasto</translation>
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
        <source>Held</source>
        <translation>Retenido</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Vence</translation>
    </message>
    <message>
        <source>Pays</source>
        <translation>Paga</translation>
    </message>
    <message>
        <source>Bank id</source>
        <translation>Identificador de banco</translation>
    </message>
    <message>
        <source>Voids</source>
        <translation>Anula</translation>
    </message>
    <message>
        <source>Paper seen</source>
        <translation>Papel visto</translation>
    </message>
    <message>
        <source>draw</source>
        <translation>desembolso</translation>
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
        <source>draw line</source>
        <translation>renglón de desembolso</translation>
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
        <source>lender line</source>
        <translation>renglón del prestamista</translation>
    </message>
    <message>
        <source>Share lent</source>
        <translation>Parte prestada</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>marca</translation>
    </message>
    <message>
        <source>Percent</source>
        <translation>Porcentaje</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>Cuenta</translation>
    </message>
    <message>
        <source>Steps done</source>
        <translation>Pasos hechos</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Por</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>Aparato</translation>
    </message>
    <message>
        <source>In spite of a caution</source>
        <translation>A pesar de una precaución</translation>
    </message>
    <message>
        <source>photo</source>
        <translation>foto</translation>
    </message>
    <message>
        <source>Punch item</source>
        <translation>Por corregir</translation>
    </message>
    <message>
        <source>Digest</source>
        <translation>Huella</translation>
    </message>
    <message>
        <source>Taken at</source>
        <translation>Tomada el</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Para qué</translation>
    </message>
    <message>
        <source>Pairs with</source>
        <translation>Pareja de</translation>
    </message>
    <message>
        <source>Spot</source>
        <translation>Punto</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Bytes</source>
        <translation>Bytes</translation>
    </message>
    <message>
        <source>Caption</source>
        <translation>Leyenda</translation>
    </message>
    <message>
        <source>For the lender</source>
        <translation>Para el prestamista</translation>
    </message>
    <message>
        <source>For crews</source>
        <translation>Para cuadrillas</translation>
    </message>
    <message>
        <source>punch item</source>
        <translation>por corregir</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Encontrado</translation>
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
        <source>look</source>
        <translation>revisión</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Dijo</translation>
    </message>
    <message>
        <source>visit</source>
        <translation>visita</translation>
    </message>
    <message>
        <source>Who was there</source>
        <translation>Quién estaba</translation>
    </message>
    <message>
        <source>Checklist</source>
        <translation>Lista</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>Grabación</translation>
    </message>
    <message>
        <source>inspection</source>
        <translation>inspección</translation>
    </message>
    <message>
        <source>Inspection</source>
        <translation>Inspección</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Corrections</source>
        <translation>Correcciones</translation>
    </message>
    <message>
        <source>Holds up</source>
        <translation>Detiene</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>papel</translation>
    </message>
    <message>
        <source>For what</source>
        <translation>Para qué</translation>
    </message>
    <message>
        <source>Received</source>
        <translation>Recibido</translation>
    </message>
    <message>
        <source>Valid until</source>
        <translation>Válido hasta</translation>
    </message>
    <message>
        <source>delivery</source>
        <translation>entrega</translation>
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
        <source>price</source>
        <translation>precio</translation>
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
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>As of</source>
        <translation>De fecha</translation>
    </message>
    <message>
        <source>Days per unit</source>
        <translation>Días por unidad</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>precaución</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Precaución</translation>
    </message>
    <message>
        <source>Acknowledged by</source>
        <translation>Leída por</translation>
    </message>
    <message>
        <source>Acknowledged</source>
        <translation>Leída</translation>
    </message>
    <message>
        <source>Test result</source>
        <translation>Resultado de la prueba</translation>
    </message>
    <message>
        <source>review</source>
        <translation>revisión semanal</translation>
    </message>
    <message>
        <source>Figures</source>
        <translation>Cifras</translation>
    </message>
    <message>
        <source>Will finish</source>
        <translation>Terminará</translation>
    </message>
    <message>
        <source>Forecasts</source>
        <translation>Pronósticos</translation>
    </message>
    <message>
        <source>baseline</source>
        <translation>línea base</translation>
    </message>
    <message>
        <source>baseline item</source>
        <translation>trabajo de línea base</translation>
    </message>
    <message>
        <source>Baseline</source>
        <translation>Línea base</translation>
    </message>
    <message>
        <source>person</source>
        <translation>persona</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Idioma</translation>
    </message>
    <message>
        <source>device</source>
        <translation>aparato</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Persona</translation>
    </message>
    <message>
        <source>Revoked</source>
        <translation>Excluido</translation>
    </message>
    <message>
        <source>presence</source>
        <translation>presencia</translation>
    </message>
    <message>
        <source>nearby sale</source>
        <translation>venta cercana</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Price</source>
        <translation>Precio</translation>
    </message>
    <message>
        <source>Sold on</source>
        <translation>Vendida el</translation>
    </message>
    <message>
        <source>Area</source>
        <translation>Superficie</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distancia</translation>
    </message>
    <message>
        <source>Adjusted</source>
        <translation>Ajustada</translation>
    </message>
    <message>
        <source>bid</source>
        <translation>presupuesto de cuadrilla</translation>
    </message>
    <message>
        <source>Excluded</source>
        <translation>No incluido</translation>
    </message>
    <message>
        <source>offer</source>
        <translation>oferta</translation>
    </message>
    <message>
        <source>Requests</source>
        <translation>Peticiones</translation>
    </message>
    <message>
        <source>Credits</source>
        <translation>Créditos</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>Typed</source>
        <translation>Escrito</translation>
    </message>
    <message>
        <source>bank line</source>
        <translation>línea del banco</translation>
    </message>
    <message>
        <source>Account</source>
        <translation>Cuenta</translation>
    </message>
    <message>
        <source>Memo</source>
        <translation>Concepto</translation>
    </message>
    <message>
        <source>Spend</source>
        <translation>Gastos</translation>
    </message>
    <message>
        <source>Not ours</source>
        <translation>No es nuestro</translation>
    </message>
    <message>
        <source>Sure</source>
        <translation>Seguridad</translation>
    </message>
    <message>
        <source>payee rule</source>
        <translation>regla de pagado a</translation>
    </message>
    <message>
        <source>Bank writes</source>
        <translation>El banco escribe</translation>
    </message>
    <message>
        <source>keep</source>
        <translation>dejar</translation>
    </message>
    <message>
        <source>inspect</source>
        <translation>revisar</translation>
    </message>
    <message>
        <source>clean</source>
        <translation>limpiar</translation>
    </message>
    <message>
        <source>repair</source>
        <translation>reparar</translation>
    </message>
    <message>
        <source>refinish</source>
        <translation>renovar</translation>
    </message>
    <message>
        <source>replace</source>
        <translation>cambiar</translation>
    </message>
    <message>
        <source>remove</source>
        <translation>quitar</translation>
    </message>
    <message>
        <source>add</source>
        <translation>poner</translation>
    </message>
    <message>
        <source>relocate</source>
        <translation>mover</translation>
    </message>
    <message>
        <source>none or done</source>
        <translation>nada o hecho</translation>
    </message>
    <message>
        <source>half and half</source>
        <translation>mitad y mitad</translation>
    </message>
    <message>
        <source>weighted steps</source>
        <translation>pasos con peso</translation>
    </message>
    <message>
        <source>counted units</source>
        <translation>unidades contadas</translation>
    </message>
    <message>
        <source>judged percent</source>
        <translation>porcentaje a ojo</translation>
    </message>
    <message>
        <source>finish to start</source>
        <translation>final a inicio</translation>
    </message>
    <message>
        <source>start to start</source>
        <translation>inicio a inicio</translation>
    </message>
    <message>
        <source>finish to finish</source>
        <translation>final a final</translation>
    </message>
    <message>
        <source>start to finish</source>
        <translation>inicio a final</translation>
    </message>
    <message>
        <source>subcontract</source>
        <translation>subcontrato</translation>
    </message>
    <message>
        <source>invoice</source>
        <translation>factura</translation>
    </message>
    <message>
        <source>payment</source>
        <translation>pago</translation>
    </message>
    <message>
        <source>receipt</source>
        <translation>recibo</translation>
    </message>
    <message>
        <source>fee</source>
        <translation>cargo</translation>
    </message>
    <message>
        <source>refund</source>
        <translation>reembolso</translation>
    </message>
    <message>
        <source>contingency</source>
        <translation>imprevistos</translation>
    </message>
    <message>
        <source>new money</source>
        <translation>dinero nuevo</translation>
    </message>
    <message>
        <source>before</source>
        <translation>antes</translation>
    </message>
    <message>
        <source>during</source>
        <translation>durante</translation>
    </message>
    <message>
        <source>after</source>
        <translation>después</translation>
    </message>
    <message>
        <source>site</source>
        <translation>obra</translation>
    </message>
    <message>
        <source>said fixed</source>
        <translation>dicen que está</translation>
    </message>
    <message>
        <source>accepted</source>
        <translation>aceptado</translation>
    </message>
    <message>
        <source>not right</source>
        <translation>no está bien</translation>
    </message>
    <message>
        <source>permit</source>
        <translation>permiso</translation>
    </message>
    <message>
        <source>licence</source>
        <translation>licencia</translation>
    </message>
    <message>
        <source>tax form</source>
        <translation>formulario de impuestos</translation>
    </message>
    <message>
        <source>lien waiver</source>
        <translation>renuncia de gravamen</translation>
    </message>
    <message>
        <source>warranty</source>
        <translation>garantía</translation>
    </message>
    <message>
        <source>clearance</source>
        <translation>carta de liberación</translation>
    </message>
    <message>
        <source>passed</source>
        <translation>aprobada</translation>
    </message>
    <message>
        <source>corrections</source>
        <translation>correcciones</translation>
    </message>
    <message>
        <source>actual/360</source>
        <translation>actual/360</translation>
    </message>
    <message>
        <source>actual/365</source>
        <translation>actual/365</translation>
    </message>
    <message>
        <source>actual/actual</source>
        <translation>actual/actual</translation>
    </message>
    <message>
        <source>drawn</source>
        <translation>lo desembolsado</translation>
    </message>
    <message>
        <source>whole</source>
        <translation>el total</translation>
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
        <source>en</source>
        <translation>inglés</translation>
    </message>
    <message>
        <source>es</source>
        <translation>español</translation>
    </message>
    <message>
        <source>a mark on %1 says nothing: give %2</source>
        <translation>una marca de %1 no dice nada: dé %2</translation>
    </message>
    <message>
        <source>a mark on %1 says more than one thing: give %2</source>
        <translation>una marca de %1 dice más de una cosa: dé %2</translation>
    </message>
    <message>
        <source>the bank says %1 and the row of spend says %2: put the row right first, or let the line be a row of its own</source>
        <translation>el banco dice %1 y el gasto dice %2: corrija primero el gasto, o deje que la línea sea un gasto aparte</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>has %1 cells under %2 headings: put quotation marks around a cell that holds a comma</source>
        <translation>tiene %1 celdas bajo %2 títulos: ponga entre comillas la celda que lleva una coma</translation>
    </message>
    <message>
        <source>has %1 cells under %2 headings: put quotation marks around a cell that holds a separator</source>
        <translation>tiene %1 celdas bajo %2 títulos: ponga entre comillas la celda que lleva un separador</translation>
    </message>
    <message>
        <source>record</source>
        <translation>registro</translation>
    </message>
    <message>
        <source>name it as list shows it, or by four or more digits of its id</source>
        <translation>nómbrelo como lo muestra la lista, o con cuatro o más cifras de su identificador</translation>
    </message>
    <message>
        <source>write it as SPACE/OBJECT, as list scope shows it, or add it to the scope first</source>
        <translation>escríbala como ESPACIO/OBJETO, como la muestra el alcance, o añádala primero al alcance</translation>
    </message>
    <message>
        <source>begin it with &apos;ledgerboard start NAME&apos;</source>
        <translation>empiécela con &apos;ledgerboard start NOMBRE&apos;</translation>
    </message>
    <message>
        <source>add it first with add crew, or bring crews</source>
        <translation>añádala primero con add crew, o traiga cuadrillas</translation>
    </message>
    <message>
        <source>add it first with add contract, or bring contracts</source>
        <translation>añádalo primero con add contract, o traiga contratos</translation>
    </message>
    <message>
        <source>add it first with add lender-line, or bring lender-lines</source>
        <translation>añádalo primero con add lender-line, o traiga renglones del prestamista</translation>
    </message>
    <message>
        <source>name it by its bank id or its id</source>
        <translation>nómbrelo por su identificador de banco o el suyo propio</translation>
    </message>
    <message>
        <source>add it first with add %1</source>
        <translation>añádalo primero con add %1</translation>
    </message>
    <message>
        <source>%1 %2 (id ending %3)</source>
        <translation>%1 %2 (identificador que acaba en %3)</translation>
    </message>
    <message>
        <source>%1 may mean %2 records: %3: write the longer name, or the id</source>
        <translation>%1 puede ser %2 registros: %3: escriba el nombre más largo, o el identificador</translation>
    </message>
    <message>
        <source>there is no %1 %2: %3</source>
        <translation>no hay %1 %2: %3</translation>
    </message>
    <message>
        <source>there is no %1 %2; did you mean %3? Otherwise %4</source>
        <translation>no hay %1 %2; ¿quiso decir %3? Si no, %4</translation>
    </message>
    <message>
        <source>%1 is before &quot;%2&quot; (%3): mend one of the two</source>
        <translation>%1 es anterior a “%2” (%3): corrija uno de los dos</translation>
    </message>
    <message>
        <source>%1 is less than &quot;%2&quot; (%3): mend one of the two</source>
        <translation>%1 es menos que “%2” (%3): corrija uno de los dos</translation>
    </message>
    <message>
        <source>&quot;%1&quot; has a share of %2: each share is above 0</source>
        <translation>“%1” tiene una parte de %2: cada parte es más de 0</translation>
    </message>
    <message>
        <source>its shares add up to %1, not to 100</source>
        <translation>sus partes suman %1, no 100</translation>
    </message>
    <message>
        <source>its parts add up to %1, not to &quot;%2&quot; (%3)</source>
        <translation>sus partes suman %1, no “%2” (%3)</translation>
    </message>
    <message>
        <source>what is kept has no cost, days or crew: leave the cell empty, or write another treatment than keep</source>
        <translation>lo que se deja como está no tiene costo, días ni cuadrilla: deje vacía la celda, o escriba otro tratamiento que no sea keep</translation>
    </message>
    <message>
        <source>is empty, and the item is measured by weighted steps: write them like prep 20; set 60; grout 20</source>
        <translation>está vacía, y el trabajo se mide por pasos con peso: escríbalos como prep 20; set 60; grout 20</translation>
    </message>
    <message>
        <source>is empty, and the item is measured by counted units: say how many there are</source>
        <translation>está vacía, y el trabajo se mide contando unidades: diga cuántas hay</translation>
    </message>
    <message>
        <source>a change is either signed or refused: leave one of the two empty</source>
        <translation>un cambio está firmado o rechazado: deje vacío uno de los dos</translation>
    </message>
    <message>
        <source>is empty: say how much; only a receipt may come in without an amount</source>
        <translation>está vacía: diga cuánto; solo un recibo puede entrar sin importe</translation>
    </message>
    <message>
        <source>a spend is for one item or split over several: leave one of &quot;Item&quot; and &quot;Split&quot; empty</source>
        <translation>un gasto es de un trabajo o se reparte entre varios: deje vacía una de “Item” y “Split”</translation>
    </message>
    <message>
        <source>retainage is held from invoices, and this is a %1: leave the cell empty, or write the kind invoice</source>
        <translation>la retención se hace de facturas, y esto es: %1; deje vacía la celda, o escriba el tipo invoice</translation>
    </message>
    <message>
        <source>only a payment pays an invoice, and this is a %1: leave the cell empty, or write the kind payment</source>
        <translation>solo un pago paga una factura, y esto es: %1; deje vacía la celda, o escriba el tipo payment</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is a %2, and only invoices are paid: name the invoice</source>
        <translation>“%1” es: %2, y solo se pagan facturas: nombre la factura</translation>
    </message>
    <message>
        <source>is empty, and there is an amount to charge back: name the crew that pays</source>
        <translation>está vacía, y hay un importe a cargo: nombre la cuadrilla que paga</translation>
    </message>
    <message>
        <source>%1 is before 1900: check the year</source>
        <translation>%1 es anterior a 1900: revise el año</translation>
    </message>
    <message>
        <source>is below 0: write amounts without a minus; money that came back has the kind refund</source>
        <translation>es menos de 0: escriba los importes sin signo menos; el dinero devuelto tiene el tipo refund</translation>
    </message>
    <message>
        <source>is below 0: write it without a minus</source>
        <translation>es menos de 0: escríbalo sin signo menos</translation>
    </message>
    <message>
        <source>names a space and the row names no item: spend is for an item or for the whole job; name the item, or leave both empty</source>
        <translation>nombra un espacio y la fila no nombra un trabajo: un gasto es de un trabajo o de toda la obra; nombre el trabajo, o deje vacías las dos</translation>
    </message>
    <message>
        <source>there is no such file in the folder: check its name</source>
        <translation>no hay tal archivo en la carpeta: revise el nombre</translation>
    </message>
    <message>
        <source>there is no such file in the folder: is it &quot;%1&quot;?</source>
        <translation>no hay tal archivo en la carpeta: ¿es “%1”?</translation>
    </message>
    <message>
        <source>is missing: it names the pictures; add it, or say which column it is with --match theirs=File</source>
        <translation>falta: es la que nombra las fotos; añádala, o diga qué columna es con --match suya=File</translation>
    </message>
    <message>
        <source>Dropped</source>
        <translation>Quitada</translation>
    </message>
    <message>
        <source>&quot;%1&quot; of a %2 was changed since: set it by hand instead</source>
        <translation>“%1” (%2) cambió desde entonces: póngalo a mano</translation>
    </message>
    <message>
        <source>the peer answered %1 (%2)</source>
        <translation>el punto de encuentro contestó %1 (%2)</translation>
    </message>
    <message>
        <source>the peer answered %1</source>
        <translation>el punto de encuentro contestó %1</translation>
    </message>
    <message>
        <source>the peer&apos;s time does not read: use programs of one version</source>
        <translation>la hora del punto de encuentro no se entiende: use programas de la misma versión</translation>
    </message>
    <message>
        <source>%1 does not answer: is the peer running, and are both in one network?</source>
        <translation>%1 no contesta: ¿está encendido el punto de encuentro, y están los dos en la misma red?</translation>
    </message>
    <message>
        <source>%1 is answered by another than the peer this device joined: check the address; where the peer was set up anew, join again</source>
        <translation>en %1 contesta otro que no es el punto de encuentro de este aparato: revise la dirección; si se instaló de nuevo, únase otra vez</translation>
    </message>
    <message>
        <source>the connection to %1 was cut: nothing is lost, try again</source>
        <translation>se cortó la conexión con %1: no se perdió nada, intente de nuevo</translation>
    </message>
    <message>
        <source>%1 answers with more than a peer may: use programs of one version</source>
        <translation>%1 contesta más de lo permitido: use programas de la misma versión</translation>
    </message>
    <message>
        <source>The request is not signed as it must be: use a program of the same version.</source>
        <translation>La petición no está firmada como debe: use un programa de la misma versión.</translation>
    </message>
    <message>
        <source>The peer does not know this device: ask an owner for an invitation and join.</source>
        <translation>El punto de encuentro no conoce este aparato: pida una invitación a un dueño y únase.</translation>
    </message>
    <message>
        <source>The signature is not this device&apos;s: if its key file was replaced, join anew.</source>
        <translation>La firma no es de este aparato: si se cambió el archivo de su llave, únase otra vez.</translation>
    </message>
    <message>
        <source>This device was shut out by an owner: it may read and send nothing more.</source>
        <translation>Un dueño dio de baja este aparato: ya no puede leer ni enviar nada.</translation>
    </message>
    <message>
        <source>The request was signed at another time than the peer&apos;s: ask for the time and sign again.</source>
        <translation>La petición se firmó a otra hora que la del punto de encuentro: pida la hora y firme otra vez.</translation>
    </message>
    <message>
        <source>This very request came before: sign each request with a number of its own.</source>
        <translation>Esta misma petición ya llegó antes: firme cada una con un número propio.</translation>
    </message>
    <message>
        <source>Too many requests in a short time: wait and try again.</source>
        <translation>Demasiadas peticiones en poco tiempo: espere e intente de nuevo.</translation>
    </message>
    <message>
        <source>No invitation of this code is open: check its first group, or ask for a new one.</source>
        <translation>No hay una invitación abierta con ese código: revise el primer grupo, o pida otra.</translation>
    </message>
    <message>
        <source>The invitation is older than ten minutes: ask for a new one.</source>
        <translation>La invitación tiene más de diez minutos: pida otra.</translation>
    </message>
    <message>
        <source>Another device used this invitation: ask for a new one.</source>
        <translation>Otro aparato usó esta invitación: pida otra.</translation>
    </message>
    <message>
        <source>The code is not right, or this is not the peer that gave it: check both.</source>
        <translation>El código no es correcto, o este no es el punto de encuentro que lo dio: revise los dos.</translation>
    </message>
    <message>
        <source>The code was wrong too often, so the invitation is closed: ask for a new one.</source>
        <translation>El código falló demasiadas veces, así que la invitación se cerró: pida otra.</translation>
    </message>
    <message>
        <source>A device of this id with another key is known already: remove the key file and join anew.</source>
        <translation>Ya se conoce un aparato con este identificador y otra llave: borre el archivo de la llave y únase otra vez.</translation>
    </message>
    <message>
        <source>What came is not what this device signed: it was changed or cut short on the way. Try again.</source>
        <translation>Lo que llegó no es lo que firmó este aparato: se cambió o se cortó en el camino. Intente de nuevo.</translation>
    </message>
    <message>
        <source>The invitation is for a crew lead or a viewer, whose book comes from the peer: join into a new file, with --book and a name that is not taken.</source>
        <translation>La invitación es para un jefe de cuadrilla o un observador, cuyo libro viene del punto de encuentro: únase en un archivo nuevo, con --book y un nombre que no esté usado.</translation>
    </message>
    <message>
        <source>the peer says: %1</source>
        <translation>el punto de encuentro dice: %1</translation>
    </message>
    <message>
        <source>the peer says: no</source>
        <translation>el punto de encuentro dice que no</translation>
    </message>
    <message>
        <source>the peer&apos;s answer can&apos;t be read</source>
        <translation>la respuesta del punto de encuentro no se puede leer</translation>
    </message>
    <message>
        <source>%1; and %2</source>
        <translation>%1; y %2</translation>
    </message>
    <message>
        <source>Not known: %1.</source>
        <translation>No se sabe: %1.</translation>
    </message>
    <message>
        <source>%1, %2 % of resale</source>
        <translation>%1, %2 % de la reventa</translation>
    </message>
    <message>
        <source>Yes, %1</source>
        <translation>Sí, %1</translation>
    </message>
    <message>
        <source>No: %1</source>
        <translation>No: %1</translation>
    </message>
    <message>
        <source>%1; as before.</source>
        <translation>%1; como antes.</translation>
    </message>
    <message>
        <source>%1; %2 less than before.</source>
        <translation>%1; %2 menos que antes.</translation>
    </message>
    <message>
        <source>%1; %2 more than before.</source>
        <translation>%1; %2 más que antes.</translation>
    </message>
    <message>
        <source>Nothing.</source>
        <translation>Nada.</translation>
    </message>
    <message>
        <source>unnamed payees</source>
        <translation>pagos sin nombre</translation>
    </message>
    <message>
        <source>%1 %2 (now %3 ahead of work you have seen)</source>
        <translation>%1 %2 (ahora %3 por delante del trabajo que usted ha visto)</translation>
    </message>
    <message>
        <source>%1 in all: %2.</source>
        <translation>%1 en total: %2.</translation>
    </message>
    <message>
        <source>%1 by %2, %3 % of it</source>
        <translation>%1 por %2, un %3 %</translation>
    </message>
    <message>
        <source>%1 %2 (payable now %3)</source>
        <translation>%1 %2 (se puede pagar ya %3)</translation>
    </message>
    <message>
        <source>Nobody is ahead.</source>
        <translation>Nadie va por delante.</translation>
    </message>
    <message>
        <source>Ahead: %1.</source>
        <translation>Por delante: %1.</translation>
    </message>
    <message>
        <source>Nothing is owed.</source>
        <translation>No se debe nada.</translation>
    </message>
    <message>
        <source>Owed: %1.</source>
        <translation>Se debe: %1.</translation>
    </message>
    <message>
        <source>None is over.</source>
        <translation>Ninguno está por encima.</translation>
    </message>
    <message>
        <source>Over, and will stay so: %1.</source>
        <translation>Por encima, y así se quedarán: %1.</translation>
    </message>
    <message>
        <source>None is early.</source>
        <translation>Ninguno va adelantado.</translation>
    </message>
    <message>
        <source>Early, billed before plan: %1.</source>
        <translation>Adelantados, facturados antes de lo previsto: %1.</translation>
    </message>
    <message>
        <source>No contingency was put aside.</source>
        <translation>No se apartó nada para imprevistos.</translation>
    </message>
    <message>
        <source>%1 of %2 is left: %3 % used with %4 % of the work done.</source>
        <translation>Quedan %1 de %2: usado el %3 % con el %4 % del trabajo hecho.</translation>
    </message>
    <message>
        <source>None.</source>
        <translation>Ninguno.</translation>
    </message>
    <message>
        <source>%1 was to begin %2</source>
        <translation>%1 debía empezar el %2</translation>
    </message>
    <message>
        <source>%1 at %2 % was to be done %3</source>
        <translation>%1, al %2 %, debía estar hecho el %3</translation>
    </message>
    <message>
        <source>All that was planned for the week is done.</source>
        <translation>Todo lo previsto para la semana está hecho.</translation>
    </message>
    <message>
        <source>Who came was not entered.</source>
        <translation>No se anotó quién vino.</translation>
    </message>
    <message>
        <source>%1 on %2 day</source>
        <translation>%1, %2 día</translation>
    </message>
    <message>
        <source>%1 on %2 days</source>
        <translation>%1, %2 días</translation>
    </message>
    <message>
        <source>Every crew that was planned came.</source>
        <translation>Vino cada cuadrilla prevista.</translation>
    </message>
    <message>
        <source>Did not come: %1.</source>
        <translation>No vinieron: %1.</translation>
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
        <source>no day yet</source>
        <translation>sin fecha todavía</translation>
    </message>
    <message>
        <source>%1, %2 (late)</source>
        <translation>%1, %2 (tarde)</translation>
    </message>
    <message>
        <source>go on with %1</source>
        <translation>seguir con %1</translation>
    </message>
    <message>
        <source>begin %1</source>
        <translation>empezar %1</translation>
    </message>
    <message>
        <source>leave open to be looked at: %1</source>
        <translation>dejar sin cubrir para revisar: %1</translation>
    </message>
    <message>
        <source>%1 punch item to put right</source>
        <translation>%1 detalle por corregir</translation>
    </message>
    <message>
        <source>%1 punch items to put right</source>
        <translation>%1 detalles por corregir</translation>
    </message>
    <message>
        <source>No crew has work planned for the week.</source>
        <translation>Ninguna cuadrilla tiene trabajo previsto para la semana.</translation>
    </message>
    <message>
        <source>Still earning?</source>
        <translation>¿Todavía gana?</translation>
    </message>
    <message>
        <source>Done when?</source>
        <translation>¿Para cuándo queda?</translation>
    </message>
    <message>
        <source>Paid since %1, to whom, for work seen?</source>
        <translation>¿Qué se pagó desde el %1, a quién, por trabajo visto?</translation>
    </message>
    <message>
        <source>Who is ahead of their work, who is owed?</source>
        <translation>¿A quién se le pagó por delante, a quién se le debe?</translation>
    </message>
    <message>
        <source>Signed and not billed?</source>
        <translation>¿Firmado y sin facturar?</translation>
    </message>
    <message>
        <source>Which lines are over, which only early?</source>
        <translation>¿Qué renglones están por encima, cuáles solo adelantados?</translation>
    </message>
    <message>
        <source>Contingency against what is still to be opened?</source>
        <translation>¿Imprevistos frente a lo que falta por abrir?</translation>
    </message>
    <message>
        <source>Asked and not signed?</source>
        <translation>¿Pedido y sin firmar?</translation>
    </message>
    <message>
        <source>What did not happen, who did not come?</source>
        <translation>¿Qué no se hizo, quién no vino?</translation>
    </message>
    <message>
        <source>To order, decide, have inspected in 14 days?</source>
        <translation>¿Qué pedir, decidir, hacer inspeccionar en 14 días?</translation>
    </message>
    <message>
        <source>Cash?</source>
        <translation>¿Efectivo?</translation>
    </message>
    <message>
        <source>Papers missing?</source>
        <translation>¿Faltan papeles?</translation>
    </message>
    <message>
        <source>What does each crew hear on Monday?</source>
        <translation>¿Qué se le dice a cada cuadrilla el lunes?</translation>
    </message>
    <message>
        <source>The peer cannot use its store just now: wait and try again.</source>
        <translation>El punto de encuentro no puede usar ahora sus datos: espere e intente de nuevo.</translation>
    </message>
    <message>
        <source>there is no scope to freeze: read walk notes or bring a scope first</source>
        <translation>no hay alcance que fijar: lea primero las notas o traiga un alcance</translation>
    </message>
    <message>
        <source>owner&apos;s word</source>
        <translation>palabra del dueño</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nada</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Veces</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a year: write four digits, such as 1936</source>
        <translation>“%1” no es un año: escriba cuatro cifras, como 1936</translation>
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
