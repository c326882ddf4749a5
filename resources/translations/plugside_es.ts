<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es_MX" sourcelanguage="en_US">
<context>
    <name>Call</name>
    <message>
        <source>Plan pocket gopher control from a scouting walk.</source>
        <translation>Planear el control de tuzas a partir de un recorrido de exploración.</translation>
    </message>
    <message>
        <source>en or es; else as chosen before, else the system&apos;s</source>
        <translation>en o es; si no, el elegido antes; si no, el del sistema</translation>
    </message>
    <message>
        <source>a project, or walks, the ground&apos;s layers, a plan handed out before</source>
        <translation>un proyecto, o recorridos, las capas del terreno, un plan entregado antes</translation>
    </message>
    <message>
        <source>show the job on a sample field; nothing of it is kept</source>
        <translation>mostrar el trabajo en un campo de muestra; no se guarda nada de él</translation>
    </message>
</context>
<context>
    <name>Caution</name>
    <message>
        <source>Common practice.</source>
        <translation>Práctica común.</translation>
    </message>
    <message>
        <source>Our own rule.</source>
        <translation>Regla nuestra.</translation>
    </message>
    <message>
        <source>%1, quoted from memory.</source>
        <translation>%1, citado de memoria.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>alto</translation>
    </message>
    <message>
        <source>hold back</source>
        <translation>espere</translation>
    </message>
    <message>
        <source>mind</source>
        <translation>ojo</translation>
    </message>
</context>
<context>
    <name>History</name>
    <message>
        <source>keep %1</source>
        <translation>conservar %1</translation>
    </message>
    <message>
        <source>drop %1</source>
        <translation>quitar %1</translation>
    </message>
    <message>
        <source>move %1</source>
        <translation>mover %1</translation>
    </message>
    <message>
        <source>%1 undecided</source>
        <translation>%1 sin decidir</translation>
    </message>
</context>
<context>
    <name>Map</name>
    <message>
        <source>cm</source>
        <translation>cm</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>in</source>
        <translation>pulg</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>pies</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>%1° true</source>
        <translation>%1° verd.</translation>
    </message>
</context>
<context>
    <name>Mound</name>
    <message>
        <source>M</source>
        <translation>T</translation>
    </message>
    <message>
        <source>S</source>
        <translation>A</translation>
    </message>
    <message>
        <source>V</source>
        <translation>R</translation>
    </message>
    <message>
        <source>fresh</source>
        <translation>fresco</translation>
    </message>
    <message>
        <source>older</source>
        <translation>más viejo</translation>
    </message>
    <message>
        <source>crushed</source>
        <translation>aplastado</translation>
    </message>
    <message>
        <source>age not noted</source>
        <translation>edad no anotada</translation>
    </message>
    <message>
        <source>gopher mound</source>
        <translation>montículo de tuza</translation>
    </message>
    <message>
        <source>surface plug</source>
        <translation>tapón en la superficie</translation>
    </message>
    <message>
        <source>a mole&apos;s sign</source>
        <translation>señal de topo</translation>
    </message>
    <message>
        <source>a ground squirrel&apos;s sign</source>
        <translation>señal de ardilla de tierra</translation>
    </message>
    <message>
        <source>a vole&apos;s sign</source>
        <translation>señal de ratón de pradera</translation>
    </message>
    <message>
        <source>another sign</source>
        <translation>otra señal</translation>
    </message>
</context>
<context>
    <name>MoundFacts</name>
    <message>
        <source>marked %1</source>
        <translation>marcado el %1</translation>
    </message>
    <message>
        <source>not used: %1</source>
        <translation>no se usa: %1</translation>
    </message>
    <message>
        <source>belongs to no system</source>
        <translation>no pertenece a ningún sistema</translation>
    </message>
    <message>
        <source>animal %1, the only mound of its system</source>
        <translation>animal %1, el único montículo de su sistema</translation>
    </message>
    <message>
        <source>animal %1; %2 in 100 that it is one animal&apos;s with the others</source>
        <translation>animal %1; %2 de cada 100 de que sea de un mismo animal con los otros</translation>
    </message>
    <message>
        <source>fan towards %1°</source>
        <translation>abanico hacia %1°</translation>
    </message>
    <message>
        <source>no fan</source>
        <translation>sin abanico</translation>
    </message>
    <message>
        <source>put right; recorded: %1</source>
        <translation>corregido; anotado: %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>fan towards %1° %2, true</source>
        <translation>abanico hacia %1° %2, verdadero</translation>
    </message>
    <message>
        <source>no fan was read</source>
        <translation>no se leyó abanico</translation>
    </message>
    <message>
        <source>note: %1</source>
        <translation>nota: %1</translation>
    </message>
</context>
<context>
    <name>NearestToDo</name>
    <message>
        <source>set %1</source>
        <translation>punto %1</translation>
    </message>
</context>
<context>
    <name>NoteMeanings</name>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>a fan towards…</source>
        <translation>un abanico hacia…</translation>
    </message>
    <message>
        <source>no fan to be read</source>
        <translation>ningún abanico que leer</translation>
    </message>
    <message>
        <source>fresh</source>
        <translation>fresco</translation>
    </message>
    <message>
        <source>older</source>
        <translation>más viejo</translation>
    </message>
    <message>
        <source>crushed</source>
        <translation>aplastado</translation>
    </message>
    <message>
        <source>a gopher&apos;s mound</source>
        <translation>un montículo de tuza</translation>
    </message>
    <message>
        <source>a gopher&apos;s surface plug</source>
        <translation>un tapón de tuza en la superficie</translation>
    </message>
    <message>
        <source>a mole&apos;s</source>
        <translation>de topo</translation>
    </message>
    <message>
        <source>a ground squirrel&apos;s</source>
        <translation>de ardilla de tierra</translation>
    </message>
    <message>
        <source>a vole&apos;s</source>
        <translation>de ratón de pradera</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>otra cosa</translation>
    </message>
    <message>
        <source>fan %1</source>
        <translation>abanico %1</translation>
    </message>
    <message>
        <source>mark %1</source>
        <translation>marca %1</translation>
    </message>
    <message>
        <source>every walk</source>
        <translation>todos los recorridos</translation>
    </message>
    <message>
        <source>“%1” says nothing: %2</source>
        <translation>“%1” no dice nada: %2</translation>
    </message>
    <message>
        <source>“%1” means %2: %3</source>
        <translation>“%1” quiere decir %2: %3</translation>
    </message>
</context>
<context>
    <name>PlaceWords</name>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>E</source>
        <translation>E</translation>
    </message>
    <message>
        <source>W</source>
        <translation>O</translation>
    </message>
    <message>
        <source>%1 km</source>
        <translation>%1 km</translation>
    </message>
    <message>
        <source>%1 miles</source>
        <translation>%1 millas</translation>
    </message>
    <message>
        <source>%1 from %2</source>
        <translation>a %1 de %2</translation>
    </message>
    <message>
        <source>%1 from %2: hardly the same field</source>
        <translation>a %1 de %2: ¿no es otro campo?</translation>
    </message>
</context>
<context>
    <name>ReadingWords</name>
    <message>
        <source>a receiver&apos;s walk</source>
        <translation>el recorrido de un receptor</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>una tabla</translation>
    </message>
    <message>
        <source>photographs</source>
        <translation>fotografías</translation>
    </message>
    <message>
        <source>a layer</source>
        <translation>una capa</translation>
    </message>
    <message>
        <source>layers</source>
        <translation>capas</translation>
    </message>
    <message>
        <source>ground, or a plan handed out</source>
        <translation>terreno, o un plan entregado</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>no se usa</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>latitud</translation>
    </message>
    <message>
        <source>easting, metres</source>
        <translation>este, en metros</translation>
    </message>
    <message>
        <source>northing, metres</source>
        <translation>norte, en metros</translation>
    </message>
    <message>
        <source>fan bearing</source>
        <translation>rumbo del abanico</translation>
    </message>
    <message>
        <source>freshness</source>
        <translation>qué tan fresco</translation>
    </message>
    <message>
        <source>kind of digger</source>
        <translation>quién excavó</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>date</source>
        <translation>fecha</translation>
    </message>
    <message>
        <source>time</source>
        <translation>hora</translation>
    </message>
    <message>
        <source>HDOP</source>
        <translation>HDOP</translation>
    </message>
    <message>
        <source>satellites</source>
        <translation>satélites</translation>
    </message>
    <message>
        <source>accuracy, metres</source>
        <translation>precisión, en metros</translation>
    </message>
    <message>
        <source>walker</source>
        <translation>quién caminó</translation>
    </message>
    <message>
        <source>photograph&apos;s name</source>
        <translation>nombre de la fotografía</translation>
    </message>
    <message>
        <source>%1 photographs</source>
        <translation>%1 fotografías</translation>
    </message>
    <message>
        <source>%1 mark</source>
        <translation>%1 marca</translation>
    </message>
    <message>
        <source>%1 marks</source>
        <translation>%1 marcas</translation>
    </message>
    <message>
        <source>%1 fan</source>
        <translation>%1 abanico</translation>
    </message>
    <message>
        <source>%1 fans</source>
        <translation>%1 abanicos</translation>
    </message>
    <message>
        <source>no fans: does a column tell them?</source>
        <translation>sin abanicos: ¿los dice alguna columna?</translation>
    </message>
    <message>
        <source>%1 other sign</source>
        <translation>%1 señal más</translation>
    </message>
    <message>
        <source>%1 other signs</source>
        <translation>%1 señales más</translation>
    </message>
    <message>
        <source>%1 track</source>
        <translation>%1 traza</translation>
    </message>
    <message>
        <source>%1 tracks</source>
        <translation>%1 trazas</translation>
    </message>
    <message>
        <source>a boundary</source>
        <translation>un límite</translation>
    </message>
    <message>
        <source>a boundary of %1 parts</source>
        <translation>un límite de %1 partes</translation>
    </message>
    <message>
        <source>%1 barrier</source>
        <translation>%1 barrera</translation>
    </message>
    <message>
        <source>%1 barriers</source>
        <translation>%1 barreras</translation>
    </message>
    <message>
        <source>%1 area kept clear</source>
        <translation>%1 área vedada</translation>
    </message>
    <message>
        <source>%1 areas kept clear</source>
        <translation>%1 áreas vedadas</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>which reference system?</source>
        <translation>¿qué sistema de referencia?</translation>
    </message>
    <message>
        <source>holds no place</source>
        <translation>no tiene ningún lugar</translation>
    </message>
    <message>
        <source>cannot be read like this</source>
        <translation>así no se puede leer</translation>
    </message>
    <message>
        <source>not known (true north is taken)</source>
        <translation>no se sabe (se toma el norte verdadero)</translation>
    </message>
    <message>
        <source>true north</source>
        <translation>norte verdadero</translation>
    </message>
    <message>
        <source>magnetic north</source>
        <translation>norte magnético</translation>
    </message>
</context>
<context>
    <name>SampleField</name>
    <message>
        <source>The sample could not be laid out in the folder for passing files: %1</source>
        <translation>La muestra no se pudo poner en la carpeta de archivos pasajeros: %1</translation>
    </message>
</context>
<context>
    <name>Sheets</name>
    <message>
        <source>waypoint %1</source>
        <translation>punto marcado %1</translation>
    </message>
    <message>
        <source>run at hole</source>
        <translation>túnel en el sondeo</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>hondura</translation>
    </message>
    <message>
        <source>set by</source>
        <translation>puesto por</translation>
    </message>
    <message>
        <source>day, time</source>
        <translation>día, hora</translation>
    </message>
    <message>
        <source>nothing found</source>
        <translation>nada encontrado</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>%1 right</source>
        <translation>%1 a la derecha</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>%1 a la izquierda</translation>
    </message>
    <message>
        <source>looking from %1 to %2</source>
        <translation>mirando de %1 a %2</translation>
    </message>
    <message>
        <source>standing at the plug, the fan behind you</source>
        <translation>de pie en el tapón, el abanico atrás</translation>
    </message>
    <message>
        <source>%1, pale: run in 9 of 10</source>
        <translation>%1, gris: túnel en 9 de 10</translation>
    </message>
    <message>
        <source>tape %1, row %2, pale: run in 9 of 10</source>
        <translation>cinta %1, fila %2, gris: túnel en 9 de 10</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>pies</translation>
    </message>
    <message>
        <source>untreated</source>
        <translation>sin tratar</translation>
    </message>
    <message>
        <source>map %1</source>
        <translation>mapa %1</translation>
    </message>
    <message>
        <source>How far magnetic north lies from true north is not told: the model at hand holds from 2025 to 2029. Bearings are from true north.</source>
        <translation>No se dice cuánto se aparta el norte magnético del verdadero: el modelo a mano vale de 2025 a 2029. Los rumbos son desde el norte verdadero.</translation>
    </message>
    <message>
        <source>On %1 magnetic north and true north agree here (declination 0°, World Magnetic Model 2025).</source>
        <translation>El %1 el norte magnético y el verdadero coinciden aquí (declinación 0°, World Magnetic Model 2025).</translation>
    </message>
    <message>
        <source>On %1 magnetic north (MN) lies %2° east of true north (TN): the declination, by the World Magnetic Model 2025. Bearings are from true north.</source>
        <translation>El %1 el norte magnético (NM) queda %2° al este del norte verdadero (NV): es la declinación, según el World Magnetic Model 2025. Los rumbos son desde el norte verdadero.</translation>
    </message>
    <message>
        <source>On %1 magnetic north (MN) lies %2° west of true north (TN): the declination, by the World Magnetic Model 2025. Bearings are from true north.</source>
        <translation>El %1 el norte magnético (NM) queda %2° al oeste del norte verdadero (NV): es la declinación, según el World Magnetic Model 2025. Los rumbos son desde el norte verdadero.</translation>
    </message>
    <message>
        <source>TN</source>
        <translation>NV</translation>
    </message>
    <message>
        <source>MN</source>
        <translation>NM</translation>
    </message>
    <message>
        <source>set, with its number</source>
        <translation>punto, con su número</translation>
    </message>
    <message>
        <source>mound, its fan (fresh: dark)</source>
        <translation>montículo, su abanico (fresco: oscuro)</translation>
    </message>
    <message>
        <source>run (broken: doubtful)</source>
        <translation>túnel (cortado: dudoso)</translation>
    </message>
    <message>
        <source>barrier</source>
        <translation>barrera</translation>
    </message>
    <message>
        <source>keep clear</source>
        <translation>área vedada</translation>
    </message>
    <message>
        <source>field</source>
        <translation>campo</translation>
    </message>
    <message>
        <source>Map, 1:%1</source>
        <translation>Mapa, 1:%1</translation>
    </message>
    <message>
        <source>Map %1 of %2, 1:%3</source>
        <translation>Mapa %1 de %2, 1:%3</translation>
    </message>
    <message>
        <source>list</source>
        <translation>lista</translation>
    </message>
    <message>
        <source>next: %1, %2</source>
        <translation>sigue: %1, %2</translation>
    </message>
    <message>
        <source>map</source>
        <translation>mapa</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>What to load</source>
        <translation>Qué cargar</translation>
    </message>
    <message>
        <source>Sets in walking order</source>
        <translation>Puntos en el orden del recorrido</translation>
    </message>
    <message>
        <source>fresh</source>
        <translation>fresco</translation>
    </message>
    <message>
        <source>older</source>
        <translation>más viejo</translation>
    </message>
    <message>
        <source>crushed</source>
        <translation>aplastado</translation>
    </message>
    <message>
        <source>age not noted</source>
        <translation>edad no anotada</translation>
    </message>
    <message>
        <source>%1, %2, no fan noted.</source>
        <translation>%1, %2, sin abanico anotado.</translation>
    </message>
    <message>
        <source>%1, %2, its soil thrown towards %3.</source>
        <translation>%1, %2, su tierra echada hacia %3.</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>conservado</translation>
    </message>
    <message>
        <source>kept, moved by hand</source>
        <translation>conservado, movido a mano</translation>
    </message>
    <message>
        <source>dropped</source>
        <translation>quitado</translation>
    </message>
    <message>
        <source>proposed, not decided</source>
        <translation>propuesto, sin decidir</translation>
    </message>
    <message>
        <source>plug side of %1</source>
        <translation>lado del tapón de %1</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>entre %1 y %2</translation>
    </message>
    <message>
        <source>%1 in 100 that a hole meets the run; about %2 hole.</source>
        <translation>%1 de 100 de que un sondeo dé con el túnel; cerca de %2 sondeo.</translation>
    </message>
    <message>
        <source>%1 in 100 that a hole meets the run; about %2 holes.</source>
        <translation>%1 de 100 de que un sondeo dé con el túnel; cerca de %2 sondeos.</translation>
    </message>
    <message>
        <source>Holes in order, with the tape&apos;s reading from the plug:</source>
        <translation>Sondeos en orden, con la lectura de la cinta desde el tapón:</translation>
    </message>
    <message>
        <source>middle</source>
        <translation>medio</translation>
    </message>
    <message>
        <source>%1 L</source>
        <translation>%1 I</translation>
    </message>
    <message>
        <source>%1 R</source>
        <translation>%1 D</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 pulg</translation>
    </message>
    <message>
        <source>STOP</source>
        <translation>ALTO</translation>
    </message>
    <message>
        <source>HOLD BACK</source>
        <translation>ESPERE</translation>
    </message>
    <message>
        <source>MIND</source>
        <translation>OJO</translation>
    </message>
    <message>
        <source>%1 in 100, about %2</source>
        <translation>%1 de 100, cerca de %2</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 y %2</translation>
    </message>
    <message>
        <source>Common practice.</source>
        <translation>Práctica común.</translation>
    </message>
    <message>
        <source>Our own rule.</source>
        <translation>Regla nuestra.</translation>
    </message>
    <message>
        <source>Source: %1, quoted from memory.</source>
        <translation>Fuente: %1, citado de memoria.</translation>
    </message>
    <message>
        <source>Source: %1.</source>
        <translation>Fuente: %1.</translation>
    </message>
    <message>
        <source>At every set</source>
        <translation>En todos los puntos</translation>
    </message>
    <message>
        <source>At %1</source>
        <translation>En %1</translation>
    </message>
    <message>
        <source>flags, numbered as the cards</source>
        <translation>banderas, numeradas como las fichas</translation>
    </message>
    <message>
        <source>one a set, so that every one is found and lifted again</source>
        <translation>una por punto, para que cada uno se encuentre y se levante</translation>
    </message>
    <message>
        <source>stakes with wire or cable</source>
        <translation>estacas con alambre o cable</translation>
    </message>
    <message>
        <source>never cord: it is chewed</source>
        <translation>nunca cordel: lo roen</translation>
    </message>
    <message>
        <source>probe, tape, compass</source>
        <translation>sonda, cinta, brújula</translation>
    </message>
    <message>
        <source>about %1 holes are expected, %2 at most</source>
        <translation>se esperan cerca de %1 sondeos, %2 a lo más</translation>
    </message>
    <message>
        <source>made %1</source>
        <translation>hecho el %1</translation>
    </message>
    <message>
        <source>The label, local rules and a licensed applicator decide.</source>
        <translation>Deciden la etiqueta, las reglas del lugar y un aplicador con licencia.</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>These sheets say what speaks against a place or has to be in hand first; they do not know the label in your hand.</source>
        <translation>Estas hojas dicen qué habla en contra de un lugar o qué hay que tener antes; no conocen la etiqueta que usted tiene en la mano.</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>cuántos</translation>
    </message>
    <message>
        <source>what</source>
        <translation>qué</translation>
    </message>
    <message>
        <source>set</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>place</source>
        <translation>lugar</translation>
    </message>
    <message>
        <source>from the set before, from true north</source>
        <translation>desde el punto anterior, desde el norte verdadero</translation>
    </message>
    <message>
        <source>chance, holes; cautions of the place</source>
        <translation>probabilidad, sondeos; precauciones del lugar</translation>
    </message>
    <message>
        <source>Cards</source>
        <translation>Fichas</translation>
    </message>
    <message>
        <source>Log of rounds</source>
        <translation>Registro de rondas</translation>
    </message>
    <message>
        <source>Every set is checked at least daily. In each box: the hour, and + caught, 0 nothing, &gt; moved, L lifted. Every set that went out is lifted.</source>
        <translation>Cada punto se revisa al menos a diario. En cada casilla: la hora, y + captura, 0 nada, &gt; movido, L levantado. Todo punto puesto se levanta.</translation>
    </message>
    <message>
        <source>round %1</source>
        <translation>ronda %1</translation>
    </message>
    <message>
        <source>lifted</source>
        <translation>levantado</translation>
    </message>
    <message>
        <source>day, name</source>
        <translation>día, nombre</translation>
    </message>
    <message>
        <source>Holes in order, L to the left or R to the right of the row&apos;s middle:</source>
        <translation>Sondeos en orden, I a la izquierda o D a la derecha del medio de la fila:</translation>
    </message>
    <message>
        <source>%1 to %2 animals (%3 in 100), area walked not known: no track</source>
        <translation>%1 a %2 animales (%3 de 100), área caminada no conocida: sin traza</translation>
    </message>
    <message>
        <source>%1 to %2 animals (%3 in 100) on %4 walked</source>
        <translation>%1 a %2 animales (%3 de 100) en %4 caminados</translation>
    </message>
    <message>
        <source>%1 to %2 animals (%3 in 100) on %4 walked of %5</source>
        <translation>%1 a %2 animales (%3 de 100) en %4 caminados de %5</translation>
    </message>
    <message>
        <source>its steps are on the page of the method.</source>
        <translation>sus pasos están en la página del método.</translation>
    </message>
    <message>
        <source>Conditions</source>
        <translation>Condiciones</translation>
    </message>
    <message>
        <source>Working time: %1 to %2 hours (%3 in 100), without the way between sets.</source>
        <translation>Tiempo de trabajo: %1 a %2 horas (%3 de 100), sin el camino entre puntos.</translation>
    </message>
    <message>
        <source>asked</source>
        <translation>pregunta</translation>
    </message>
    <message>
        <source>answered</source>
        <translation>respuesta</translation>
    </message>
    <message>
        <source>when</source>
        <translation>cuándo</translation>
    </message>
    <message>
        <source>The label in hand</source>
        <translation>La etiqueta en la mano</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
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
        <source>%1 °C (%2 °F)</source>
        <translation>%1 °C (%2 °F)</translation>
    </message>
    <message>
        <source>from %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>until %1</source>
        <translation>hasta %1</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>%1: rain %2, irrigation %3</source>
        <translation>%1: lluvia %2, riego %3</translation>
    </message>
    <message>
        <source>%1 (signed)</source>
        <translation>%1 (firmado)</translation>
    </message>
    <message>
        <source>%1, NOT ANSWERED</source>
        <translation>%1, SIN RESPUESTA</translation>
    </message>
    <message>
        <source>too old, ask again</source>
        <translation>muy viejo, pregunte de nuevo</translation>
    </message>
    <message>
        <source>not answered: ask before the work</source>
        <translation>sin respuesta: pregunte antes del trabajo</translation>
    </message>
    <message>
        <source>way on foot</source>
        <translation>camino a pie</translation>
    </message>
    <message>
        <source>gate</source>
        <translation>puerta</translation>
    </message>
    <message>
        <source>no way on foot is drawn; straight %1</source>
        <translation>no hay camino a pie dibujado; en línea recta %1</translation>
    </message>
    <message>
        <source>%1 on foot; straight %2</source>
        <translation>%1 a pie; en línea recta %2</translation>
    </message>
    <message>
        <source>%1 in all on foot from the first set to the last, without the stretches where no gate is drawn.</source>
        <translation>%1 en total a pie del primer punto al último, sin los tramos donde no hay puerta dibujada.</translation>
    </message>
    <message>
        <source>%1 in all from the first set to the last, on foot around barriers and through gates.</source>
        <translation>%1 en total del primer punto al último, a pie, rodeando barreras y por las puertas.</translation>
    </message>
    <message>
        <source>No set stands in this plan.</source>
        <translation>Este plan no tiene ningún punto.</translation>
    </message>
</context>
<context>
    <name>TypedPlace</name>
    <message>
        <source>“%1” is no mark&apos;s name and no latitude and longitude, as in “34.0612, -106.8921”.</source>
        <translation>«%1» no es el nombre de una marca ni una latitud y longitud, como en «34.0612, -106.8921».</translation>
    </message>
    <message>
        <source>“%1” is no place: a latitude from -90 to 90 comes first, then a longitude from -180 to 180.</source>
        <translation>«%1» no es un lugar: primero va una latitud de -90 a 90 y luego una longitud de -180 a 180.</translation>
    </message>
    <message>
        <source>“%1” lies more than 50 km from the field.</source>
        <translation>«%1» está a más de 50 km del campo.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>The hole lies in no area: draw it inside the boundary, a keep-clear area or an untreated piece.</source>
        <translation>El hueco no está en ningún área: dibújelo dentro del límite, de un área vedada o de una parcela sin tratar.</translation>
    </message>
    <message>
        <source>The line crosses no barrier, and no area from edge to edge.</source>
        <translation>La línea no cruza ninguna barrera, ni ningún área de lado a lado.</translation>
    </message>
    <message>
        <source>No pen is in hand.</source>
        <translation>No hay pluma en la mano.</translation>
    </message>
    <message>
        <source>in a corner that was set aside</source>
        <translation>en una esquina que se apartó</translation>
    </message>
    <message>
        <source>a part of a Shapefile</source>
        <translation>una parte de un Shapefile</translation>
    </message>
    <message>
        <source>its main file {1}</source>
        <translation>su archivo principal {1}</translation>
    </message>
    <message>
        <source>looking into the files</source>
        <translation>mirando los archivos</translation>
    </message>
    <message>
        <source>no file</source>
        <translation>ningún archivo</translation>
    </message>
    <message>
        <source>a walk&apos;s file at least</source>
        <translation>al menos el archivo de un recorrido</translation>
    </message>
    <message>
        <source>the outline crosses itself</source>
        <translation>el contorno se cruza a sí mismo</translation>
    </message>
    <message>
        <source>a hole lies outside the area</source>
        <translation>un hueco está fuera del área</translation>
    </message>
    <message>
        <source>a hole lies in another hole</source>
        <translation>un hueco está dentro de otro</translation>
    </message>
    <message>
        <source>holes cut the area apart</source>
        <translation>los huecos parten el área</translation>
    </message>
    <message>
        <source>a part is there twice</source>
        <translation>una parte está dos veces</translation>
    </message>
    <message>
        <source>the outline has too few corners to enclose anything</source>
        <translation>el contorno tiene muy pocas esquinas para encerrar algo</translation>
    </message>
    <message>
        <source>the outline touches itself</source>
        <translation>el contorno se toca a sí mismo</translation>
    </message>
    <message>
        <source>{1} pair given; at least {2} are needed.</source>
        <translation>Se dio {1} par; hacen falta al menos {2}.</translation>
    </message>
    <message>
        <source>{1} pairs given; at least {2} are needed.</source>
        <translation>Se dieron {1} pares; hacen falta al menos {2}.</translation>
    </message>
    <message>
        <source>A pair&apos;s place is not a number.</source>
        <translation>El lugar de un par no es un número.</translation>
    </message>
    <message>
        <source>Pairs lie on the same spot of the picture; choose spots far apart.</source>
        <translation>Hay pares en el mismo punto de la imagen; elija puntos muy separados.</translation>
    </message>
    <message>
        <source>Pairs lie on the same spot of the ground; choose spots far apart.</source>
        <translation>Hay pares en el mismo punto del terreno; elija puntos muy separados.</translation>
    </message>
    <message>
        <source>All pairs lie nearly on one line of the picture; choose one well to the side of it.</source>
        <translation>Todos los pares están casi en una línea de la imagen; elija uno bien a un lado de ella.</translation>
    </message>
    <message>
        <source>All pairs lie nearly on one line on the ground; choose one well to the side of it.</source>
        <translation>Todos los pares están casi en una línea del terreno; elija uno bien a un lado de ella.</translation>
    </message>
    <message>
        <source>extension slides</source>
        <translation>láminas de extensión agrícola</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>práctica común</translation>
    </message>
    <message>
        <source>Yes, a heap of loose soil</source>
        <translation>Sí, un montón de tierra suelta</translation>
    </message>
    <message>
        <source>Gophers and moles throw up soil.</source>
        <translation>Las tuzas y los topos echan tierra afuera.</translation>
    </message>
    <message>
        <source>No heap, or hardly any: a hole</source>
        <translation>No hay montón, o casi nada: un hoyo</translation>
    </message>
    <message>
        <source>A hole without a heap is not a gopher&apos;s mound.</source>
        <translation>Un hoyo sin montón no es un montículo de tuza.</translation>
    </message>
    <message>
        <source>No hole and no heap: a raised ridge in the turf</source>
        <translation>Ni hoyo ni montón: un lomo levantado en el pasto</translation>
    </message>
    <message>
        <source>A mole lifts the ground along its shallow way.</source>
        <translation>El topo levanta el suelo por donde va a poca hondura.</translation>
    </message>
    <message>
        <source>Several open holes joined by narrow worn trails in the grass</source>
        <translation>Varios hoyos abiertos unidos por veredas angostas y gastadas en el pasto</translation>
    </message>
    <message>
        <source>Voles keep open holes and runways on the surface.</source>
        <translation>Los ratones de pradera tienen hoyos abiertos y veredas en la superficie.</translation>
    </message>
    <message>
        <source>An open hole, a hand wide, no trails</source>
        <translation>Un hoyo abierto, del ancho de una mano, sin veredas</translation>
    </message>
    <message>
        <source>A ground squirrel&apos;s holes stay open.</source>
        <translation>Los hoyos de la ardilla de tierra quedan abiertos.</translation>
    </message>
    <message>
        <source>A small round patch of fresh soil, closed</source>
        <translation>Un pequeño parche redondo de tierra fresca, cerrado</translation>
    </message>
    <message>
        <source>A gopher closes a small opening with a round plug and leaves no fan.</source>
        <translation>La tuza cierra una abertura pequeña con un tapón redondo y no deja abanico.</translation>
    </message>
    <message>
        <source>Like a fan, a crescent or a kidney: soil thrown to one side</source>
        <translation>Como abanico, media luna o riñón: la tierra echada hacia un lado</translation>
    </message>
    <message>
        <source>A gopher pushes soil out to one side.</source>
        <translation>La tuza empuja la tierra hacia un lado.</translation>
    </message>
    <message>
        <source>Round, the same on all sides</source>
        <translation>Redondo, igual por todos lados</translation>
    </message>
    <message>
        <source>A mole&apos;s hill is round, like a volcano.</source>
        <translation>El montón del topo es redondo, como un volcán.</translation>
    </message>
    <message>
        <source>Crushed, mown or washed out: no shape is left</source>
        <translation>Aplastado, segado o deslavado: ya no tiene forma</translation>
    </message>
    <message>
        <source>A crushed mound has lost its fan.</source>
        <translation>Un montículo aplastado perdió su abanico.</translation>
    </message>
    <message>
        <source>Others like it stand about a stride apart, in a line or along a ridge</source>
        <translation>Hay otros iguales a un paso uno de otro, en línea o a lo largo de un lomo</translation>
    </message>
    <message>
        <source>A mole&apos;s hills stand about a stride apart along a raised ridge.</source>
        <translation>Los montones del topo están a un paso uno de otro, a lo largo de un lomo levantado.</translation>
    </message>
    <message>
        <source>The hole, open or filled, is in the very middle</source>
        <translation>El hoyo, abierto o tapado, está justo en el centro</translation>
    </message>
    <message>
        <source>A mole&apos;s hill is pushed up from its middle.</source>
        <translation>El montón del topo sube desde su centro.</translation>
    </message>
    <message>
        <source>Small, about a hand across, flat, closed, on its own</source>
        <translation>Pequeño, de una mano de ancho, plano, cerrado, solo</translation>
    </message>
    <message>
        <source>A gopher&apos;s surface plug is round, some 15 cm across, without a fan.</source>
        <translation>El tapón de tuza en la superficie es redondo, de unos 15 cm, sin abanico.</translation>
    </message>
    <message>
        <source>Closed with soil, at the narrow side</source>
        <translation>Cerrado con tierra, del lado angosto</translation>
    </message>
    <message>
        <source>A gopher closes its hole; the plug is opposite the pile.</source>
        <translation>La tuza cierra su hoyo; el tapón queda enfrente del montón.</translation>
    </message>
    <message>
        <source>Open, with a worn or bare entrance</source>
        <translation>Abierto, con la entrada gastada o pelona</translation>
    </message>
    <message>
        <source>Ground squirrels throw soil before a hole that stays open.</source>
        <translation>La ardilla de tierra echa tierra delante de un hoyo que queda abierto.</translation>
    </message>
    <message>
        <source>Open, but the soil is fresh and damp</source>
        <translation>Abierto, pero la tierra está fresca y húmeda</translation>
    </message>
    <message>
        <source>A gopher at work has not closed it yet: come back in an hour, a gopher&apos;s hole is closed by then.</source>
        <translation>Una tuza trabajando aún no lo ha cerrado: vuelva en una hora; para entonces el hoyo de una tuza ya está cerrado.</translation>
    </message>
    <message>
        <source>Other mounds near it have a fan and a closed plug</source>
        <translation>Otros montículos de cerca tienen abanico y tapón cerrado</translation>
    </message>
    <message>
        <source>Its neighbours are a gopher&apos;s; it counts without a fan.</source>
        <translation>Los vecinos son de tuza; cuenta sin abanico.</translation>
    </message>
    <message>
        <source>Nothing near it tells</source>
        <translation>Nada de lo que hay cerca lo dice</translation>
    </message>
    <message>
        <source>It cannot be told: level it and look again in two days.</source>
        <translation>No se puede saber: aplánelo y mire otra vez en dos días.</translation>
    </message>
    <message>
        <source>Is there a heap of soil?</source>
        <translation>¿Hay un montón de tierra?</translation>
    </message>
    <message>
        <source>What is at the hole?</source>
        <translation>¿Qué hay en el hoyo?</translation>
    </message>
    <message>
        <source>What shape is the heap?</source>
        <translation>¿Qué forma tiene el montón?</translation>
    </message>
    <message>
        <source>What else is to be seen at the round heap?</source>
        <translation>¿Qué más se ve en el montón redondo?</translation>
    </message>
    <message>
        <source>How is the hole of the fan?</source>
        <translation>¿Cómo está el hoyo del abanico?</translation>
    </message>
    <message>
        <source>What stands near the crushed heap?</source>
        <translation>¿Qué hay cerca del montón aplastado?</translation>
    </message>
    <message>
        <source>That speaks for a mole, although a fan was read.</source>
        <translation>Eso habla de un topo, aunque se leyó un abanico.</translation>
    </message>
    <message>
        <source>That speaks for a mole.</source>
        <translation>Eso habla de un topo.</translation>
    </message>
    <message>
        <source>That speaks for a vole, although a fan was read.</source>
        <translation>Eso habla de un ratón de pradera, aunque se leyó un abanico.</translation>
    </message>
    <message>
        <source>That speaks for a vole.</source>
        <translation>Eso habla de un ratón de pradera.</translation>
    </message>
    <message>
        <source>That speaks for a ground squirrel, although a fan was read.</source>
        <translation>Eso habla de una ardilla de tierra, aunque se leyó un abanico.</translation>
    </message>
    <message>
        <source>That speaks for a ground squirrel.</source>
        <translation>Eso habla de una ardilla de tierra.</translation>
    </message>
    <message>
        <source>Look with the key of questions; take it as a mole&apos;s.</source>
        <translation>Mire con la clave de preguntas; tómelo como de topo.</translation>
    </message>
    <message>
        <source>Look with the key of questions; take them as a mole&apos;s.</source>
        <translation>Mire con la clave de preguntas; tómelos como de topo.</translation>
    </message>
    <message>
        <source>Look with the key of questions; take it as a vole&apos;s.</source>
        <translation>Mire con la clave de preguntas; tómelo como de ratón de pradera.</translation>
    </message>
    <message>
        <source>Look with the key of questions; take them as a vole&apos;s.</source>
        <translation>Mire con la clave de preguntas; tómelos como de ratón de pradera.</translation>
    </message>
    <message>
        <source>Look with the key of questions; take it as a ground squirrel&apos;s.</source>
        <translation>Mire con la clave de preguntas; tómelo como de ardilla de tierra.</translation>
    </message>
    <message>
        <source>Look with the key of questions; take them as a ground squirrel&apos;s.</source>
        <translation>Mire con la clave de preguntas; tómelos como de ardilla de tierra.</translation>
    </message>
    <message>
        <source>Neither has a fan that could be read.</source>
        <translation>Ninguno de los dos tiene un abanico que se pudiera leer.</translation>
    </message>
    <message>
        <source>None has a fan that could be read.</source>
        <translation>Ninguno tiene un abanico que se pudiera leer.</translation>
    </message>
    <message>
        <source>Not all of them have a fan.</source>
        <translation>No todos tienen abanico.</translation>
    </message>
    <message>
        <source>Both fans point {1}.</source>
        <translation>Los dos abanicos apuntan al {1}.</translation>
    </message>
    <message>
        <source>All fans point {1}.</source>
        <translation>Todos los abanicos apuntan al {1}.</translation>
    </message>
    <message>
        <source>Their fans differ by {1}.</source>
        <translation>Sus abanicos difieren en {1}.</translation>
    </message>
    <message>
        <source>{1} lies {2} from {3}.</source>
        <translation>{1} está a {2} de {3}.</translation>
    </message>
    <message>
        <source>{1} lies {2} from {3}, marked {4} later.</source>
        <translation>{1} está a {2} de {3}, marcado {4} después.</translation>
    </message>
    <message>
        <source>{1} lies {2} from {3}, marked {4} before.</source>
        <translation>{1} está a {2} de {3}, marcado {4} antes.</translation>
    </message>
    <message>
        <source>{1} lie within {2} of one another.</source>
        <translation>{1} están a menos de {2} uno de otro.</translation>
    </message>
    <message>
        <source>Two marks of one mound, made so, often lie up to {1} apart.</source>
        <translation>Dos marcas de un mismo montículo, hechas así, suelen quedar hasta a {1} una de otra.</translation>
    </message>
    <message>
        <source>Take both as one mound, between the places, under the name {1}.</source>
        <translation>Tome las dos como un solo montículo, entre los dos lugares, con el nombre {1}.</translation>
    </message>
    <message>
        <source>Take them all as one mound, between the places, under the name {1}.</source>
        <translation>Tome todas como un solo montículo, entre los lugares, con el nombre {1}.</translation>
    </message>
    <message>
        <source>{1} lies {2} from {3} of {4}.</source>
        <translation>{1} está a {2} de {3}, de {4}.</translation>
    </message>
    <message>
        <source>Hereabouts the marks of the two walks lie {1} apart alike, and these two rest on one another when that is taken off.</source>
        <translation>Por aquí las marcas de los dos recorridos están corridas {1} de la misma manera, y estas dos quedan una sobre otra al quitarlo.</translation>
    </message>
    <message>
        <source>Take both as one mound, under the name {1}.</source>
        <translation>Tome las dos como un solo montículo, con el nombre {1}.</translation>
    </message>
    <message>
        <source>The fan of {1} points {2}, which puts its run {3} off the line of its neighbours&apos; runs.</source>
        <translation>El abanico de {1} apunta al {2}, lo que pone su túnel a {3} de la línea de los túneles de sus vecinos.</translation>
    </message>
    <message>
        <source>Read from the other end, the run would lie {1} off the line between {2} and {3}.</source>
        <translation>Leído desde el otro extremo, el túnel quedaría a {1} de la línea entre {2} y {3}.</translation>
    </message>
    <message>
        <source>Turn the fan round, to {1}.</source>
        <translation>Voltee el abanico, hacia el {1}.</translation>
    </message>
    <message>
        <source>All {1} fans of {2} look as if they were read from the wrong end, towards the plug.</source>
        <translation>Los {1} abanicos de {2} parecen leídos desde el extremo equivocado, hacia el tapón.</translation>
    </message>
    <message>
        <source>Turned round, the runs that neighbouring mounds point back to lie in line with one another far better.</source>
        <translation>Volteados, los túneles hacia los que apuntan los montículos vecinos quedan mucho mejor en línea.</translation>
    </message>
    <message>
        <source>Ask the walker which end was read; turn all fans of this walk round.</source>
        <translation>Pregunte a quien caminó qué extremo se leyó; voltee todos los abanicos de este recorrido.</translation>
    </message>
    <message>
        <source>The fans of {1} lie turned by about {2} clockwise, give or take {3}.</source>
        <translation>Los abanicos de {1} están girados unos {2} a la derecha, con un margen de {3}.</translation>
    </message>
    <message>
        <source>The fans of {1} lie turned by about {2} anticlockwise, give or take {3}.</source>
        <translation>Los abanicos de {1} están girados unos {2} a la izquierda, con un margen de {3}.</translation>
    </message>
    <message>
        <source>Fans stand across the runs, and the {1} fans of this walk that have neighbours stand across best when turned back. A compass beside iron does this, or magnetic bearings taken for true ones.</source>
        <translation>Los abanicos quedan atravesados a los túneles, y los {1} abanicos de este recorrido que tienen vecinos quedan mejor atravesados al girarlos de vuelta. Eso lo hace una brújula junto a fierro, o rumbos magnéticos tomados por verdaderos.</translation>
    </message>
    <message>
        <source>Ask how the bearings were taken; turn all fans of this walk by {1} anticlockwise.</source>
        <translation>Pregunte cómo se tomaron los rumbos; gire todos los abanicos de este recorrido {1} a la izquierda.</translation>
    </message>
    <message>
        <source>Ask how the bearings were taken; turn all fans of this walk by {1} clockwise.</source>
        <translation>Pregunte cómo se tomaron los rumbos; gire todos los abanicos de este recorrido {1} a la derecha.</translation>
    </message>
    <message>
        <source>point {1}</source>
        <translation>el punto {1}</translation>
    </message>
    <message>
        <source>The track of {1} springs {2} away and back at {3}.</source>
        <translation>La traza de {1} salta {2} y regresa, en {3}.</translation>
    </message>
    <message>
        <source>Nobody walks so fast; the receiver lost itself for a moment.</source>
        <translation>Nadie camina tan rápido; el receptor se perdió un momento.</translation>
    </message>
    <message>
        <source>Nothing is to be done: no mark hangs on it.</source>
        <translation>No hay nada que hacer: ninguna marca depende de eso.</translation>
    </message>
    <message>
        <source>{1} lies {2} from where the track was when it was made.</source>
        <translation>{1} está a {2} de donde iba la traza cuando se marcó.</translation>
    </message>
    <message>
        <source>Nine in ten marks of this walk lie within {1} of the track.</source>
        <translation>Nueve de cada diez marcas de este recorrido están a menos de {1} de la traza.</translation>
    </message>
    <message>
        <source>Put it where the track was at that time.</source>
        <translation>Póngalo donde iba la traza a esa hora.</translation>
    </message>
    <message>
        <source>{1} lies {2} or more from the marks made before and after it.</source>
        <translation>{1} está a {2} o más de las marcas hechas antes y después.</translation>
    </message>
    <message>
        <source>No walker gets there and back in that time.</source>
        <translation>Nadie que camina va y vuelve en ese tiempo.</translation>
    </message>
    <message>
        <source>Set it aside; where it stood is not known.</source>
        <translation>Apártelo; no se sabe dónde estaba.</translation>
    </message>
    <message>
        <source>the receiver jumped when it was marked</source>
        <translation>el receptor saltó cuando se marcó</translation>
    </message>
    <message>
        <source>{1} lies {2} from the nearest part of the track of {3}.</source>
        <translation>{1} está a {2} de la parte más cercana de la traza de {3}.</translation>
    </message>
    <message>
        <source>A mark is made where the walker stands, and the walker was not there.</source>
        <translation>Una marca se hace donde uno está parado, y quien caminaba no estaba ahí.</translation>
    </message>
    <message>
        <source>Set it aside, unless it was marked from afar.</source>
        <translation>Apártelo, a menos que se haya marcado de lejos.</translation>
    </message>
    <message>
        <source>far from where the walker was</source>
        <translation>lejos de donde estaba quien caminaba</translation>
    </message>
    <message>
        <source>{1} are all marked at one place, over {2}.</source>
        <translation>{1} están marcados en un mismo lugar, a lo largo de {2}.</translation>
    </message>
    <message>
        <source>The track went on in the meantime; the receiver gave the marks an old place.</source>
        <translation>La traza siguió entretanto; el receptor les dio a las marcas un lugar viejo.</translation>
    </message>
    <message>
        <source>Put each where the track was at its time.</source>
        <translation>Ponga cada uno donde iba la traza a su hora.</translation>
    </message>
    <message>
        <source>The clock went on and the place did not: the receiver stood still.</source>
        <translation>El reloj siguió y el lugar no: el receptor se quedó parado.</translation>
    </message>
    <message>
        <source>Keep {1} and set the others aside; where they stood is not known.</source>
        <translation>Deje {1} y aparte los demás; no se sabe dónde estaban.</translation>
    </message>
    <message>
        <source>the receiver stood still when it was marked</source>
        <translation>el receptor estaba parado cuando se marcó</translation>
    </message>
    <message>
        <source>{1} lies {2} outside the field.</source>
        <translation>{1} está {2} fuera del campo.</translation>
    </message>
    <message>
        <source>{1} lies far outside the field.</source>
        <translation>{1} está muy fuera del campo.</translation>
    </message>
    <message>
        <source>The receiver is often out by {1}, so it may stand inside.</source>
        <translation>El receptor falla a menudo por {1}, así que puede estar adentro.</translation>
    </message>
    <message>
        <source>Put it at the edge, just inside, so that it takes part.</source>
        <translation>Póngalo en el borde, apenas adentro, para que cuente.</translation>
    </message>
    <message>
        <source>That is more than the receiver&apos;s error makes likely.</source>
        <translation>Eso es más de lo que el error del receptor hace probable.</translation>
    </message>
    <message>
        <source>Set it aside, unless the field&apos;s boundary is drawn too narrow.</source>
        <translation>Apártelo, a menos que el límite del campo esté dibujado muy angosto.</translation>
    </message>
    <message>
        <source>{1} stand in a line, {2} from one to the next, none with a fan.</source>
        <translation>{1} están en línea, a {2} uno de otro, ninguno con abanico.</translation>
    </message>
    <message>
        <source>A mole&apos;s round hills stand about a stride apart along its ridge; a gopher&apos;s mounds seldom do.</source>
        <translation>Los montones redondos del topo están a un paso uno de otro a lo largo de su lomo; los montículos de tuza rara vez.</translation>
    </message>
    <message>
        <source>The note of {1} says &quot;{2}&quot;.</source>
        <translation>La nota de {1} dice &quot;{2}&quot;.</translation>
    </message>
    <message>
        <source>following the track</source>
        <translation>siguiendo la traza</translation>
    </message>
    <message>
        <source>looking for other diggers and marks outside</source>
        <translation>buscando otros excavadores y marcas de afuera</translation>
    </message>
    <message>
        <source>looking for double marks</source>
        <translation>buscando marcas dobles</translation>
    </message>
    <message>
        <source>laying later walks over earlier ones</source>
        <translation>poniendo los recorridos nuevos sobre los anteriores</translation>
    </message>
    <message>
        <source>holding fans against the runs</source>
        <translation>comparando los abanicos con los túneles</translation>
    </message>
    <message>
        <source>done</source>
        <translation>listo</translation>
    </message>
    <message>
        <source>{1} hour</source>
        <translation>{1} hora</translation>
    </message>
    <message>
        <source>{1} hours</source>
        <translation>{1} horas</translation>
    </message>
    <message>
        <source>{1} day</source>
        <translation>{1} día</translation>
    </message>
    <message>
        <source>{1} days</source>
        <translation>{1} días</translation>
    </message>
    <message>
        <source>{1} degree</source>
        <translation>{1} grado</translation>
    </message>
    <message>
        <source>{1} degrees</source>
        <translation>{1} grados</translation>
    </message>
    <message>
        <source>{1} and {2}</source>
        <translation>{1} y {2}</translation>
    </message>
    <message>
        <source>{1} and {2} more</source>
        <translation>{1} y {2} más</translation>
    </message>
    <message>
        <source>north</source>
        <translation>norte</translation>
    </message>
    <message>
        <source>north-east</source>
        <translation>noreste</translation>
    </message>
    <message>
        <source>east</source>
        <translation>este</translation>
    </message>
    <message>
        <source>south-east</source>
        <translation>sureste</translation>
    </message>
    <message>
        <source>south</source>
        <translation>sur</translation>
    </message>
    <message>
        <source>south-west</source>
        <translation>suroeste</translation>
    </message>
    <message>
        <source>west</source>
        <translation>oeste</translation>
    </message>
    <message>
        <source>north-west</source>
        <translation>noroeste</translation>
    </message>
    <message>
        <source>walk {1}</source>
        <translation>recorrido {1}</translation>
    </message>
    <message>
        <source>{1} and {2} are one animal&apos;s in {3} of 100</source>
        <translation>{1} y {2} son de un mismo animal en {3} de cada 100</translation>
    </message>
    <message>
        <source>{1} is two animals&apos; in {2} of 100</source>
        <translation>{1} es de dos animales en {2} de cada 100</translation>
    </message>
    <message>
        <source>{1} is two animals&apos; in {2} of 100: {3} apart</source>
        <translation>{1} es de dos animales en {2} de cada 100: {3} aparte</translation>
    </message>
    <message>
        <source>{1} hangs together with {2} in {3} of 100, with no other system more than now and then</source>
        <translation>{1} va con {2} en {3} de cada 100; con ningún otro sistema más que de vez en cuando</translation>
    </message>
    <message>
        <source>{1} hangs together with {2} in {3} of 100, with {4} in {5}</source>
        <translation>{1} va con {2} en {3} de cada 100, y con {4} en {5}</translation>
    </message>
    <message>
        <source>This survey is planned in a coarse form, because it is very large: mounds are grouped by a plain rule. It tells no runs, no places between mounds and no chance that holds for one system more than for another. Plan a part of the field alone to see these.</source>
        <translation>Este levantamiento se planea en forma gruesa porque es muy grande: los montículos se agrupan con una regla sencilla. No dice túneles, ni lugares entre montículos, ni una probabilidad que valga más para un sistema que para otro. Planee aparte una parte del campo para verlos.</translation>
    </message>
    <message>
        <source>What was told of systems and runs is not heeded in the coarse form.</source>
        <translation>Lo que se dijo de sistemas y túneles no se toma en cuenta en la forma gruesa.</translation>
    </message>
    <message>
        <source>ordering the marks</source>
        <translation>ordenando las marcas</translation>
    </message>
    <message>
        <source>outlining systems</source>
        <translation>trazando los sistemas</translation>
    </message>
    <message>
        <source>placing ladders</source>
        <translation>poniendo filas de sondeo</translation>
    </message>
    <message>
        <source>choosing sets</source>
        <translation>eligiendo puntos</translation>
    </message>
    <message>
        <source>finding the way past the sets</source>
        <translation>buscando el camino por los puntos</translation>
    </message>
    <message>
        <source>There is no mound in this survey, so there is nothing to plan.</source>
        <translation>No hay ningún montículo en este levantamiento, así que no hay nada que planear.</translation>
    </message>
    <message>
        <source>No mark of this survey is a gopher&apos;s mound inside the field, so there is nothing to plan.</source>
        <translation>Ninguna marca de este levantamiento es un montículo de tuza dentro del campo, así que no hay nada que planear.</translation>
    </message>
    <message>
        <source>No mark has a fan bearing: runs and probe points rest on the mounds&apos; places alone.</source>
        <translation>Ninguna marca tiene rumbo del abanico: los túneles y los puntos de sondeo se apoyan solo en los lugares de los montículos.</translation>
    </message>
    <message>
        <source>Fewer than half of the mounds have a fan bearing: the runs are less sure than they could be.</source>
        <translation>Menos de la mitad de los montículos tiene rumbo del abanico: los túneles son menos seguros de lo que podrían ser.</translation>
    </message>
    <message>
        <source>All mounds are marked at one place: check the receiver, the systems mean nothing.</source>
        <translation>Todos los montículos están marcados en un mismo lugar: revise el receptor, los sistemas no significan nada.</translation>
    </message>
    <message>
        <source>The chains that obey what was told have not settled: take the chances of this plan as rough.</source>
        <translation>Las cadenas que obedecen lo dicho no se han asentado: tome como aproximadas las probabilidades de este plan.</translation>
    </message>
    <message>
        <source>With so few mounds the survey&apos;s own scales are mostly our assumption.</source>
        <translation>Con tan pocos montículos, las escalas propias del levantamiento son más que nada suposición nuestra.</translation>
    </message>
    <message>
        <source>laying out runs</source>
        <translation>trazando túneles</translation>
    </message>
    <message>
        <source>The walk has no track, so what was not looked at is not known.</source>
        <translation>El recorrido no tiene traza, así que no se sabe qué no se miró.</translation>
    </message>
    <message>
        <source>The area walked could not be computed from this track and boundary.</source>
        <translation>El área caminada no se pudo calcular con esta traza y este límite.</translation>
    </message>
    <message>
        <source>A first look: the systems, their number and all chances are still being worked out.</source>
        <translation>Una primera mirada: los sistemas, su número y todas las probabilidades todavía se están calculando.</translation>
    </message>
    <message>
        <source>measuring what was walked</source>
        <translation>midiendo lo caminado</translation>
    </message>
    <message>
        <source>The track is too long for the area walked to be measured in the coarse form.</source>
        <translation>La traza es demasiado larga para medir el área caminada en la forma gruesa.</translation>
    </message>
    <message>
        <source>{1} in</source>
        <translation>{1} pulg</translation>
    </message>
    <message>
        <source>Probe there.</source>
        <translation>Sondee ahí.</translation>
    </message>
    <message>
        <source>Probe there first, then {1} nearer the plug, {1} farther out and so on, up to {2} either way.</source>
        <translation>Sondee ahí primero, luego {1} más cerca del tapón, {1} más lejos y así, hasta {2} a cada lado.</translation>
    </message>
    <message>
        <source>Probe there first, then {1} to the left, {1} to the right and so on, up to {2} either way.</source>
        <translation>Sondee ahí primero, luego {1} a la izquierda, {1} a la derecha y así, hasta {2} a cada lado.</translation>
    </message>
    <message>
        <source>From the plug of {1} tape {2} straight away from the fan, towards {3}.</source>
        <translation>Desde el tapón de {1} mida {2} derecho, alejándose del abanico, hacia {3}.</translation>
    </message>
    <message>
        <source>From the plug of {1} tape {2} straight away from the fan, towards {3}, then {4} to the left.</source>
        <translation>Desde el tapón de {1} mida {2} derecho, alejándose del abanico, hacia {3}, luego {4} a la izquierda.</translation>
    </message>
    <message>
        <source>From the plug of {1} tape {2} straight away from the fan, towards {3}, then {4} to the right.</source>
        <translation>Desde el tapón de {1} mida {2} derecho, alejándose del abanico, hacia {3}, luego {4} a la derecha.</translation>
    </message>
    <message>
        <source>At {1} on the tape is the middle.</source>
        <translation>A {1} en la cinta está el centro.</translation>
    </message>
    <message>
        <source>At {1} step {2} to the left of the tape.</source>
        <translation>A {1} dé {2} a la izquierda de la cinta.</translation>
    </message>
    <message>
        <source>At {1} step {2} to the right of the tape.</source>
        <translation>A {1} dé {2} a la derecha de la cinta.</translation>
    </message>
    <message>
        <source>A sudden drop of about {1} is the run.</source>
        <translation>Una caída repentina de unas {1} es el túnel.</translation>
    </message>
    <message>
        <source>Tape from the plug of {1} to the plug of {2}, towards {3}.</source>
        <translation>Tienda la cinta del tapón de {1} al tapón de {2}, hacia {3}.</translation>
    </message>
    <message>
        <source>The row is wide because neither plug shows where the run leaves: it lies across the gap, square to the tape.</source>
        <translation>La fila es ancha porque ningún tapón muestra de dónde sale el túnel: va atravesada al hueco, a escuadra con la cinta.</translation>
    </message>
    <message>
        <source>The row lies across the tape.</source>
        <translation>La fila va atravesada a la cinta.</translation>
    </message>
    <message>
        <source>trap in the lateral, or in the run it leads to</source>
        <translation>trampa en el túnel lateral, o en el túnel al que lleva</translation>
    </message>
    <message>
        <source>two traps in the run, one facing each way</source>
        <translation>dos trampas en el túnel, una hacia cada lado</translation>
    </message>
    <message>
        <source>No set is proposed for {1}: no mound there shows a fan, no neighbour is near enough, or all lies in a keep-clear area. Look at these mounds again.</source>
        <translation>No se propone punto para {1}: ningún montículo de ahí muestra abanico, ningún vecino está bastante cerca, o todo queda en un área vedada. Mire otra vez esos montículos.</translation>
    </message>
    <message>
        <source>Nothing was drawn.</source>
        <translation>No se dibujó nada.</translation>
    </message>
    <message>
        <source>A barrier wants two corners or more; one was drawn.</source>
        <translation>Una barrera pide dos esquinas o más; se dibujó una.</translation>
    </message>
    <message>
        <source>An area wants three corners or more; one was drawn.</source>
        <translation>Un área pide tres esquinas o más; se dibujó una.</translation>
    </message>
    <message>
        <source>An area wants three corners or more; two were drawn.</source>
        <translation>Un área pide tres esquinas o más; se dibujaron dos.</translation>
    </message>
    <message>
        <source>A {1} is one place and has no corners.</source>
        <translation>Esto ({1}) es un solo lugar y no tiene esquinas.</translation>
    </message>
    <message>
        <source>This {1} has only {2} corners left: remove it whole instead.</source>
        <translation>A esto ({1}) le quedan solo {2} esquinas: mejor quítelo entero.</translation>
    </message>
    <message>
        <source>A {1} is one place and cannot be split.</source>
        <translation>Esto ({1}) es un solo lugar y no se puede partir.</translation>
    </message>
    <message>
        <source>The line does not cross the {1} from edge to edge.</source>
        <translation>La línea no cruza esto ({1}) de lado a lado.</translation>
    </message>
    <message>
        <source>The barrier has no length to be split.</source>
        <translation>La barrera no tiene largo para partirla.</translation>
    </message>
    <message>
        <source>The barrier ends there: there is nothing to split off.</source>
        <translation>La barrera termina ahí: no hay nada que partir.</translation>
    </message>
    <message>
        <source>Two areas, or two barriers, can be joined; this is a {1} and the same again.</source>
        <translation>Se pueden unir dos áreas o dos barreras; aquí hay una cosa ({1}) y otra vez la misma.</translation>
    </message>
    <message>
        <source>Two areas, or two barriers, can be joined; this is a {1} and a {2}.</source>
        <translation>Se pueden unir dos áreas o dos barreras; aquí hay: {1}, y además: {2}.</translation>
    </message>
    <message>
        <source>The two barriers do not end at one place: move an end to the other&apos;s first.</source>
        <translation>Las dos barreras no terminan en un mismo lugar: mueva antes un extremo al de la otra.</translation>
    </message>
    <message>
        <source>The two areas do not touch along an edge.</source>
        <translation>Las dos áreas no se tocan a lo largo de un borde.</translation>
    </message>
    <message>
        <source>Only an area can have a hole.</source>
        <translation>Solo un área puede tener un hueco.</translation>
    </message>
    <message>
        <source>A hole wants three corners or more.</source>
        <translation>Un hueco pide tres esquinas o más.</translation>
    </message>
    <message>
        <source>The hole takes the whole area away.</source>
        <translation>El hueco se lleva toda el área.</translation>
    </message>
    <message>
        <source>The hole lies outside the area.</source>
        <translation>El hueco está fuera del área.</translation>
    </message>
    <message>
        <source>A band about a line is an area: boundary, keep-clear or untreated.</source>
        <translation>Una franja alrededor de una línea es un área: límite, área vedada o parcela sin tratar.</translation>
    </message>
    <message>
        <source>A band wants a line of two corners or more and a width above 0.</source>
        <translation>Una franja pide una línea de dos esquinas o más y un ancho mayor que 0.</translation>
    </message>
    <message>
        <source>A gap wants a width above 0.</source>
        <translation>Una abertura pide un ancho mayor que 0.</translation>
    </message>
    <message>
        <source>A {1} has no name of its own.</source>
        <translation>Esto ({1}) no tiene nombre propio.</translation>
    </message>
    <message>
        <source>In this {1} {2}.</source>
        <translation>En esto ({1}) {2}.</translation>
    </message>
    <message>
        <source>Only an area can be mended.</source>
        <translation>Solo un área se puede componer.</translation>
    </message>
    <message>
        <source>The outline encloses nothing: remove it, or draw it anew.</source>
        <translation>El contorno no encierra nada: quítelo o dibújelo de nuevo.</translation>
    </message>
    <message>
        <source>boundary</source>
        <translation>límite</translation>
    </message>
    <message>
        <source>barrier</source>
        <translation>barrera</translation>
    </message>
    <message>
        <source>crossing</source>
        <translation>paso</translation>
    </message>
    <message>
        <source>gate</source>
        <translation>puerta</translation>
    </message>
    <message>
        <source>keep-clear area</source>
        <translation>área vedada</translation>
    </message>
    <message>
        <source>untreated piece</source>
        <translation>parcela sin tratar</translation>
    </message>
    <message>
        <source>{1} and {2} are one system</source>
        <translation>{1} y {2} son un solo sistema</translation>
    </message>
    <message>
        <source>{1} and {2} are different systems</source>
        <translation>{1} y {2} son sistemas distintos</translation>
    </message>
    <message>
        <source>a run lies along the drawn line</source>
        <translation>un túnel va por la línea dibujada</translation>
    </message>
    <message>
        <source>a run joins {1} and {2}</source>
        <translation>un túnel une {1} y {2}</translation>
    </message>
    <message>
        <source>no run crosses the drawn line</source>
        <translation>ningún túnel cruza la línea dibujada</translation>
    </message>
    <message>
        <source>{1} is not a gopher&apos;s</source>
        <translation>{1} no es de tuza</translation>
    </message>
    <message>
        <source>the probe found a run between {1} and {2}</source>
        <translation>la sonda halló un túnel entre {1} y {2}</translation>
    </message>
    <message>
        <source>the probe found nothing between {1} and {2}</source>
        <translation>la sonda no halló nada entre {1} y {2}</translation>
    </message>
    <message>
        <source>an animal was caught at {1}</source>
        <translation>se atrapó un animal en {1}</translation>
    </message>
    <message>
        <source>{1}, likely</source>
        <translation>{1}, probable</translation>
    </message>
    <message>
        <source>a line of at least two places is expected</source>
        <translation>se espera una línea de al menos dos lugares</translation>
    </message>
    <message>
        <source>one mark is expected</source>
        <translation>se espera una marca</translation>
    </message>
    <message>
        <source>two marks are expected</source>
        <translation>se esperan dos marcas</translation>
    </message>
    <message>
        <source>two different marks are expected</source>
        <translation>se esperan dos marcas distintas</translation>
    </message>
    <message>
        <source>a strength above 0 is expected</source>
        <translation>se espera una fuerza mayor que 0</translation>
    </message>
    <message>
        <source>people</source>
        <translation>personas</translation>
    </message>
    <message>
        <source>pets</source>
        <translation>mascotas</translation>
    </message>
    <message>
        <source>stock</source>
        <translation>ganado</translation>
    </message>
    <message>
        <source>wildlife</source>
        <translation>fauna silvestre</translation>
    </message>
    <message>
        <source>gopher mound</source>
        <translation>montículo de tuza</translation>
    </message>
    <message>
        <source>surface plug</source>
        <translation>tapón en la superficie</translation>
    </message>
    <message>
        <source>mole</source>
        <translation>topo</translation>
    </message>
    <message>
        <source>ground squirrel</source>
        <translation>ardilla de tierra</translation>
    </message>
    <message>
        <source>vole</source>
        <translation>ratón de pradera</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otro</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>fresh</source>
        <translation>fresco</translation>
    </message>
    <message>
        <source>older</source>
        <translation>más viejo</translation>
    </message>
    <message>
        <source>crushed</source>
        <translation>aplastado</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>found {1}.</source>
        <translation>se encontró: {1}.</translation>
    </message>
    <message>
        <source>found {1}, expected {2}.</source>
        <translation>se encontró: {1}; se esperaba: {2}.</translation>
    </message>
    <message>
        <source>a mole&apos;s sign</source>
        <translation>señal de topo</translation>
    </message>
    <message>
        <source>a ground squirrel&apos;s sign</source>
        <translation>señal de ardilla de tierra</translation>
    </message>
    <message>
        <source>a vole&apos;s sign</source>
        <translation>señal de ratón de pradera</translation>
    </message>
    <message>
        <source>marked as something other than a gopher&apos;s mound</source>
        <translation>marcado como algo que no es montículo de tuza</translation>
    </message>
    <message>
        <source>told not to be a gopher&apos;s</source>
        <translation>se dijo que no es de tuza</translation>
    </message>
    <message>
        <source>the same mound as {1}</source>
        <translation>el mismo montículo que {1}</translation>
    </message>
    <message>
        <source>outside the field boundary</source>
        <translation>fuera del límite del campo</translation>
    </message>
    <message>
        <source>looking for neighbours</source>
        <translation>buscando vecinos</translation>
    </message>
    <message>
        <source>weighing links</source>
        <translation>pesando enlaces</translation>
    </message>
    <message>
        <source>joining systems</source>
        <translation>uniendo sistemas</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is set aside: it contradicts {2}.</source>
        <translation>&quot;{1}&quot; se aparta: contradice {2}.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is set aside: no run can join the two beside what else is known.</source>
        <translation>&quot;{1}&quot; se aparta: ningún túnel puede unir los dos junto con lo demás que se sabe.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is set aside: no run can join the two beside what else is known: {2}.</source>
        <translation>&quot;{1}&quot; se aparta: ningún túnel puede unir los dos junto con lo demás que se sabe: {2}.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is set aside: the marks cannot be kept apart beside {2}.</source>
        <translation>&quot;{1}&quot; se aparta: las marcas no se pueden separar junto con {2}.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is set aside: a barrier lies between.</source>
        <translation>&quot;{1}&quot; se aparta: hay una barrera de por medio.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is set aside: it would close a ring of runs with {2}.</source>
        <translation>&quot;{1}&quot; se aparta: cerraría un anillo de túneles con {2}.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is set aside: it leaves no way for what else is known.</source>
        <translation>&quot;{1}&quot; se aparta: no deja camino para lo demás que se sabe.</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is set aside: it leaves no way for what else is known: {2}.</source>
        <translation>&quot;{1}&quot; se aparta: no deja camino para lo demás que se sabe: {2}.</translation>
    </message>
    <message>
        <source>drawing networks</source>
        <translation>sorteando redes</translation>
    </message>
    <message>
        <source>&quot;{1}&quot; is set aside: {2}.</source>
        <translation>&quot;{1}&quot; se aparta: {2}.</translation>
    </message>
    <message>
        <source>it contradicts &quot;{1}&quot;</source>
        <translation>contradice &quot;{1}&quot;</translation>
    </message>
    <message>
        <source>no mound that takes part is named {1}</source>
        <translation>ningún montículo que cuente se llama {1}</translation>
    </message>
    <message>
        <source>fewer than two marks lie beside it</source>
        <translation>hay menos de dos marcas junto a ella</translation>
    </message>
    <message>
        <source>Distances between neighbours vary by {1} in 100 of their mean here, unlike the {2} to {3} in 100 this was built for: take the systems as rough.</source>
        <translation>Aquí las distancias entre vecinos varían en {1} de cada 100 de su media, a diferencia de los {2} a {3} de cada 100 para los que esto se hizo: tome los sistemas como aproximados.</translation>
    </message>
    <message>
        <source>The second nearest mound stands {1} times as far as the nearest here, unlike the {2} to {3} times this was built for: take the systems as rough.</source>
        <translation>Aquí el segundo montículo más cercano está {1} veces más lejos que el primero, a diferencia de las {2} a {3} veces para las que esto se hizo: tome los sistemas como aproximados.</translation>
    </message>
    <message>
        <source>The eighth nearest mound stands {1} times as far as the second here, unlike the {2} to {3} times this was built for: take the systems as rough.</source>
        <translation>Aquí el octavo montículo más cercano está {1} veces más lejos que el segundo, a diferencia de las {2} a {3} veces para las que esto se hizo: tome los sistemas como aproximados.</translation>
    </message>
    <message>
        <source>A fan was read at {1} in 100 mounds here, unlike the {2} to {3} in 100 this was built for: take the runs and their probe points as rough.</source>
        <translation>Aquí se leyó abanico en {1} de cada 100 montículos, a diferencia de los {2} a {3} de cada 100 para los que esto se hizo: tome los túneles y sus puntos de sondeo como aproximados.</translation>
    </message>
    <message>
        <source>Of the nearest mounds {1} in 100 lie along a fan&apos;s axis here, unlike the {2} to {3} in 100 this was built for: take the runs and their probe points as rough.</source>
        <translation>Aquí, de los montículos más cercanos, {1} de cada 100 están en el eje de un abanico, a diferencia de los {2} a {3} de cada 100 para los que esto se hizo: tome los túneles y sus puntos de sondeo como aproximados.</translation>
    </message>
    <message>
        <source>The fans of neighbouring mounds lie along one line by {1} (1: all, 0: as at random) here, unlike the {2} to {3} this was built for: take the runs and their probe points as rough.</source>
        <translation>Aquí los abanicos de montículos vecinos van en una línea por {1} (1: todos, 0: como al azar), a diferencia de los {2} a {3} para los que esto se hizo: tome los túneles y sus puntos de sondeo como aproximados.</translation>
    </message>
    <message>
        <source>Strings of mounds go on straight by {1} (1: quite straight) here, unlike the {2} to {3} this was built for: take the systems as rough.</source>
        <translation>Aquí las hileras de montículos siguen derecho por {1} (1: del todo derecho), a diferencia de los {2} a {3} para los que esto se hizo: tome los sistemas como aproximados.</translation>
    </message>
    <message>
        <source>Of the mounds {1} in 100 have no likely neighbour here, unlike the {2} to {3} in 100 this was built for: take the systems as rough.</source>
        <translation>Aquí, de los montículos, {1} de cada 100 no tienen vecino probable, a diferencia de los {2} a {3} de cada 100 para los que esto se hizo: tome los sistemas como aproximados.</translation>
    </message>
    <message>
        <source>The best links of mounds differ by {1} in strength here, unlike the {2} to {3} this was built for: take the systems as rough.</source>
        <translation>Aquí los mejores enlaces de los montículos difieren en {1} de fuerza, a diferencia de los {2} a {3} para los que esto se hizo: tome los sistemas como aproximados.</translation>
    </message>
    <message>
        <source>Which mounds are joined is as open as {1} of a coin&apos;s toss here, unlike the {2} to {3} this was built for: take the systems as rough.</source>
        <translation>Aquí qué montículos van unidos es tan incierto como {1} de un volado, a diferencia de los {2} a {3} para los que esto se hizo: tome los sistemas como aproximados.</translation>
    </message>
    <message>
        <source>A mound has {1} likely neighbours here, unlike the {2} to {3} this was built for: take the systems as rough.</source>
        <translation>Aquí un montículo tiene {1} vecinos probables, a diferencia de los {2} a {3} para los que esto se hizo: tome los sistemas como aproximados.</translation>
    </message>
    <message>
        <source>The long links between neighbours are {1} times the middle one here, unlike the {2} to {3} times this was built for: take the systems as rough.</source>
        <translation>Aquí los enlaces largos entre vecinos son {1} veces el de en medio, a diferencia de las {2} a {3} veces para las que esto se hizo: tome los sistemas como aproximados.</translation>
    </message>
    <message>
        <source>Mounds and fans stand here as if strewn at random, unlike the fields this was built for: take the systems as rough.</source>
        <translation>Aquí montículos y abanicos están como regados al azar, a diferencia de los campos para los que esto se hizo: tome los sistemas como aproximados.</translation>
    </message>
    <message>
        <source>Fans say as little here about where the neighbouring mounds stand as fans at random would, unlike in the fields this was built for: take the runs and their probe points as rough.</source>
        <translation>Aquí los abanicos dicen tan poco de dónde están los montículos vecinos como lo harían abanicos al azar, a diferencia de los campos para los que esto se hizo: tome los túneles y sus puntos de sondeo como aproximados.</translation>
    </message>
    <message>
        <source>How mounds and fans stand to one another here is, all together, unlike the fields this was built for: take the systems as rough.</source>
        <translation>La manera en que aquí están montículos y abanicos unos con otros es, en conjunto, distinta de los campos para los que esto se hizo: tome los sistemas como aproximados.</translation>
    </message>
    <message>
        <source>drawing networks of runs</source>
        <translation>sorteando redes de túneles</translation>
    </message>
    <message>
        <source>finding the systems</source>
        <translation>hallando los sistemas</translation>
    </message>
    <message>
        <source>{1} ft</source>
        <translation>{1} pies</translation>
    </message>
    <message>
        <source>{1} ft {2} in</source>
        <translation>{1} pies {2} pulg</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>pies</translation>
    </message>
    <message>
        <source>acres</source>
        <translation>acres</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>NNE</source>
        <translation>NNE</translation>
    </message>
    <message>
        <source>NE</source>
        <translation>NE</translation>
    </message>
    <message>
        <source>ENE</source>
        <translation>ENE</translation>
    </message>
    <message>
        <source>E</source>
        <translation>E</translation>
    </message>
    <message>
        <source>ESE</source>
        <translation>ESE</translation>
    </message>
    <message>
        <source>SE</source>
        <translation>SE</translation>
    </message>
    <message>
        <source>SSE</source>
        <translation>SSE</translation>
    </message>
    <message>
        <source>S</source>
        <translation>S</translation>
    </message>
    <message>
        <source>SSW</source>
        <translation>SSO</translation>
    </message>
    <message>
        <source>SW</source>
        <translation>SO</translation>
    </message>
    <message>
        <source>WSW</source>
        <translation>OSO</translation>
    </message>
    <message>
        <source>W</source>
        <translation>O</translation>
    </message>
    <message>
        <source>WNW</source>
        <translation>ONO</translation>
    </message>
    <message>
        <source>NW</source>
        <translation>NO</translation>
    </message>
    <message>
        <source>NNW</source>
        <translation>NNO</translation>
    </message>
    <message>
        <source>only {1} distances to learn from, {2} are needed</source>
        <translation>solo {1} distancias para aprender; hacen falta {2}</translation>
    </message>
    <message>
        <source>all marks lie on the line walked, which tells nothing of a curve</source>
        <translation>todas las marcas están en la línea caminada, que no dice nada de una curva</translation>
    </message>
    <message>
        <source>measuring what was seen</source>
        <translation>midiendo lo que se vio</translation>
    </message>
    <message>
        <source>counting what was not seen</source>
        <translation>contando lo que no se vio</translation>
    </message>
    <message>
        <source>{1} to {2}</source>
        <translation>{1} a {2}</translation>
    </message>
    <message>
        <source>{1} in 100</source>
        <translation>{1} de cada 100</translation>
    </message>
    <message>
        <source>The curve fits the distances poorly: take what follows as rough.</source>
        <translation>La curva se ajusta mal a las distancias: tome lo que sigue como aproximado.</translation>
    </message>
    <message>
        <source>{1} of the marks were reached from the mark before, so distances from the line tell little</source>
        <translation>a {1} de las marcas se llegó desde la marca anterior, así que las distancias a la línea dicen poco</translation>
    </message>
    <message>
        <source>On the ground walked about {1} of the mounds were seen; not seen there: {2} mounds ({3}), expected {4}.</source>
        <translation>En el terreno caminado se vieron cerca de {1} de los montículos; ahí no se vieron: {2} montículos ({3}), se esperan {4}.</translation>
    </message>
    <message>
        <source>On the ground not walked: {1} mounds ({2}), expected {3}; animals: {4}, expected {5}, of which some may be counted already, where works reach across the edge.</source>
        <translation>En el terreno no caminado: {1} montículos ({2}), se esperan {3}; animales: {4}, se esperan {5}; algunos pueden estar ya contados, donde los túneles pasan el borde.</translation>
    </message>
    <message>
        <source>Of the mounds not seen, {1} are assumed alike with the ground walked, not seen from anywhere; of all mounds in the field {2} were seen.</source>
        <translation>De los montículos no vistos, {1} se suponen iguales al terreno caminado, sin verse de ningún lado; de todos los montículos del campo se vieron {2}.</translation>
    </message>
    <message>
        <source>Piece {1}, walker {2}</source>
        <translation>Pieza {1}, persona {2}</translation>
    </message>
    <message>
        <source>Piece {1}</source>
        <translation>Pieza {1}</translation>
    </message>
    <message>
        <source>Walker {1}</source>
        <translation>Persona {1}</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>The ground falls into {1} pieces between which no way is known: look for a gate or crossing on the spot.</source>
        <translation>El terreno queda en {1} piezas entre las que no se conoce camino: busque ahí mismo una puerta o un paso.</translation>
    </message>
    <message>
        <source>the year {1}</source>
        <translation>el año {1}</translation>
    </message>
    <message>
        <source>2025.0 to 2030.0, for which the magnetic model holds</source>
        <translation>de 2025.0 a 2030.0, para los que vale el modelo magnético</translation>
    </message>
    <message>
        <source>latitude {1}</source>
        <translation>latitud {1}</translation>
    </message>
    <message>
        <source>degrees from -90 to 90</source>
        <translation>grados de -90 a 90</translation>
    </message>
    <message>
        <source>longitude {1}</source>
        <translation>longitud {1}</translation>
    </message>
    <message>
        <source>degrees from -360 to 360</source>
        <translation>grados de -360 a 360</translation>
    </message>
    <message>
        <source>a height of {1} m</source>
        <translation>una altura de {1} m</translation>
    </message>
    <message>
        <source>-10,000 to 600,000 m</source>
        <translation>de -10,000 a 600,000 m</translation>
    </message>
    <message>
        <source>a picture: GeoTIFF, PNG, JPEG, JPEG 2000, GeoPackage or MBTiles</source>
        <translation>una imagen: GeoTIFF, PNG, JPEG, JPEG 2000, GeoPackage o MBTiles</translation>
    </message>
    <message>
        <source>none of these</source>
        <translation>ninguna de estas</translation>
    </message>
    <message>
        <source>the name of another file, {1}</source>
        <translation>el nombre de otro archivo, {1}</translation>
    </message>
    <message>
        <source>a picture that is whole in its own file</source>
        <translation>una imagen completa en su propio archivo</translation>
    </message>
    <message>
        <source>a picture with at least one band</source>
        <translation>una imagen con al menos una banda</translation>
    </message>
    <message>
        <source>{1} by {2} pixels</source>
        <translation>{1} por {2} píxeles</translation>
    </message>
    <message>
        <source>pieces of {1} by {2} pixels of {3} bands</source>
        <translation>pedazos de {1} por {2} píxeles de {3} bandas</translation>
    </message>
    <message>
        <source>pieces of at most 128 MiB, as tiles have them</source>
        <translation>pedazos de 128 MiB cuando más, como los tienen las teselas</translation>
    </message>
    <message>
        <source>at most 1.1e9 pixels a side</source>
        <translation>cuando más 1.1e9 píxeles por lado</translation>
    </message>
    <message>
        <source>at most 2 million pixels a side and 4e11 in all</source>
        <translation>cuando más 2 millones de píxeles por lado y 4e11 en total</translation>
    </message>
    <message>
        <source>at most 5e8 pixels of a {1}; a GeoTIFF holds more</source>
        <translation>cuando más 5e8 píxeles de un {1}; un GeoTIFF aguanta más</translation>
    </message>
    <message>
        <source>no band</source>
        <translation>ninguna banda</translation>
    </message>
    <message>
        <source>several pictures, {1}</source>
        <translation>varias imágenes, {1}</translation>
    </message>
    <message>
        <source>a picture without a position</source>
        <translation>una imagen sin posición</translation>
    </message>
    <message>
        <source>its position: a world file beside it, or pairs of places on picture and map</source>
        <translation>su posición: un archivo de posición junto a ella, o pares de lugares en imagen y mapa</translation>
    </message>
    <message>
        <source>a position with numbers that squeeze the picture into a line or are none</source>
        <translation>una posición con números que aplastan la imagen en una línea o que no lo son</translation>
    </message>
    <message>
        <source>the size of a pixel in two directions</source>
        <translation>el tamaño de un píxel en dos direcciones</translation>
    </message>
    <message>
        <source>a placement that squeezes the picture into a line</source>
        <translation>una colocación que aplasta la imagen en una línea</translation>
    </message>
    <message>
        <source>pairs spread over it</source>
        <translation>pares repartidos por ella</translation>
    </message>
    <message>
        <source>the code of a reference system of the register, as EPSG:25830</source>
        <translation>la clave de un sistema de referencia del registro, como EPSG:25830</translation>
    </message>
    <message>
        <source>a .prj beside it that is no definition</source>
        <translation>un .prj junto a ella que no define nada</translation>
    </message>
    <message>
        <source>the reference system of its position</source>
        <translation>el sistema de referencia de su posición</translation>
    </message>
    <message>
        <source>a position without a reference system</source>
        <translation>una posición sin sistema de referencia</translation>
    </message>
    <message>
        <source>a reference system that no way leads to from longitude and latitude</source>
        <translation>un sistema de referencia al que no se llega desde longitud y latitud</translation>
    </message>
    <message>
        <source>a picture that lies nowhere near the field</source>
        <translation>una imagen que no está ni cerca del campo</translation>
    </message>
    <message>
        <source>a picture of the field&apos;s ground</source>
        <translation>una imagen del terreno del campo</translation>
    </message>
    <message>
        <source>a picture with one band of colour or three, of whole numbers or fractions</source>
        <translation>una imagen con una banda de color o tres, de números enteros o con fracciones</translation>
    </message>
    <message>
        <source>a picture without a band of colour</source>
        <translation>una imagen sin banda de color</translation>
    </message>
    <message>
        <source>complex numbers</source>
        <translation>números complejos</translation>
    </message>
    <message>
        <source>a file that is gone or has changed</source>
        <translation>un archivo que ya no está o que cambió</translation>
    </message>
    <message>
        <source>the picture that was opened</source>
        <translation>la imagen que se abrió</translation>
    </message>
    <message>
        <source>reducing the picture</source>
        <translation>reduciendo la imagen</translation>
    </message>
    <message>
        <source>a request to stop</source>
        <translation>una petición de parar</translation>
    </message>
    <message>
        <source>a copy that could not be written</source>
        <translation>una copia que no se pudo escribir</translation>
    </message>
    <message>
        <source>a reference system that no way leads to</source>
        <translation>un sistema de referencia al que no se llega</translation>
    </message>
    <message>
        <source>a short text beside the picture</source>
        <translation>un texto corto junto a la imagen</translation>
    </message>
    <message>
        <source>something that is no plain file</source>
        <translation>algo que no es un archivo común</translation>
    </message>
    <message>
        <source>a file over 64 KiB</source>
        <translation>un archivo de más de 64 KiB</translation>
    </message>
    <message>
        <source>a file that cannot be read</source>
        <translation>un archivo que no se puede leer</translation>
    </message>
    <message>
        <source>line {1}</source>
        <translation>línea {1}</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un número</translation>
    </message>
    <message>
        <source>{1} numbers</source>
        <translation>{1} números</translation>
    </message>
    <message>
        <source>six numbers, one a line</source>
        <translation>seis números, uno por línea</translation>
    </message>
    <message>
        <source>numbers that squeeze the picture into a line</source>
        <translation>números que aplastan la imagen en una línea</translation>
    </message>
    <message>
        <source>an answer was not understood ({1} to {2}); the finding counts as open</source>
        <translation>una respuesta no se entendió ({1} a {2}); la observación cuenta como abierta</translation>
    </message>
    <message>
        <source>what was answered to {1} was not understood ({2}); the finding is open again</source>
        <translation>lo que se contestó a {1} no se entendió ({2}); la observación queda abierta otra vez</translation>
    </message>
    <message>
        <source>what was answered to {1} was not understood ({2}); the finding stays refused</source>
        <translation>lo que se contestó a {1} no se entendió ({2}); la observación sigue rechazada</translation>
    </message>
    <message>
        <source>what was recorded before the mark was mended was not understood ({1}); the mark counts as recorded as it stands</source>
        <translation>lo anotado antes de corregir la marca no se entendió ({1}); la marca cuenta como anotada tal como está</translation>
    </message>
    <message>
        <source>a second answer to {1}; it counts</source>
        <translation>una segunda respuesta a {1}; es la que cuenta</translation>
    </message>
    <message>
        <source>a correction of notes has no words that it is about; it is not used</source>
        <translation>una corrección de notas no tiene las palabras de que trata; no se usa</translation>
    </message>
    <message>
        <source>what was said of systems cannot be told from {1}; it is not used</source>
        <translation>lo que se dijo de sistemas no se saca de {1}; no se usa</translation>
    </message>
    <message>
        <source>what was said of systems is not whole: {1}; it is not used</source>
        <translation>lo que se dijo de sistemas no está completo: {1}; no se usa</translation>
    </message>
    <message>
        <source>a finding of coordinates was not understood ({1}); its marks stay as they are</source>
        <translation>una observación de coordenadas no se entendió ({1}); sus marcas quedan como están</translation>
    </message>
    <message>
        <source>it is not at one point</source>
        <translation>no está en un solo punto</translation>
    </message>
    <message>
        <source>its coordinates look wrong, see the finding</source>
        <translation>sus coordenadas se ven mal, vea la observación</translation>
    </message>
    <message>
        <source>No place on the earth has a latitude beyond 90 degrees.</source>
        <translation>Ningún lugar de la tierra tiene latitud de más de 90 grados.</translation>
    </message>
    <message>
        <source>Read as degrees and minutes the marks of the file, now {1} from end to end, come together, and no minute is 60 or more.</source>
        <translation>Leídas como grados y minutos, las marcas del archivo, ahora de {1} de punta a punta, se juntan, y ningún minuto es 60 o más.</translation>
    </message>
    <message>
        <source>As they stand the marks lie {1} from everything else that is known of the field; changed so, they lie on it.</source>
        <translation>Como están, las marcas quedan a {1} de todo lo demás que se sabe del campo; cambiadas así, quedan en él.</translation>
    </message>
    <message>
        <source>As they stand the marks lie {1} from what else was read; changed so, they lie on it, and no minute is 60 or more.</source>
        <translation>Como están, las marcas quedan a {1} de lo demás que se leyó; cambiadas así, quedan ahí, y ningún minuto es 60 o más.</translation>
    </message>
    <message>
        <source>Where the marks stand no pocket gophers live; changed so, they lie in North or Central America, where they do.</source>
        <translation>Donde están las marcas no viven tuzas; cambiadas así, quedan en América del Norte o Central, donde sí viven.</translation>
    </message>
    <message>
        <source>Its track is drawn with the same change.</source>
        <translation>Su traza se dibuja con el mismo cambio.</translation>
    </message>
    <message>
        <source>As it stands the mark lies {1} from the others; changed so, it lies among them.</source>
        <translation>Como está, la marca queda a {1} de las demás; cambiada así, queda entre ellas.</translation>
    </message>
    <message>
        <source>latitude and longitude look exchanged</source>
        <translation>latitud y longitud parecen cambiadas una por otra</translation>
    </message>
    <message>
        <source>the sign of the longitude (east or west) looks lost</source>
        <translation>el signo de la longitud (este u oeste) parece perdido</translation>
    </message>
    <message>
        <source>the sign of the latitude (north or south) looks lost</source>
        <translation>el signo de la latitud (norte o sur) parece perdido</translation>
    </message>
    <message>
        <source>the signs of latitude and longitude look lost</source>
        <translation>los signos de latitud y longitud parecen perdidos</translation>
    </message>
    <message>
        <source>latitude and longitude look exchanged, and the sign of the longitude (east or west) lost</source>
        <translation>latitud y longitud parecen cambiadas una por otra, y perdido el signo de la longitud (este u oeste)</translation>
    </message>
    <message>
        <source>degrees and minutes look read as decimal degrees</source>
        <translation>grados y minutos parecen leídos como grados decimales</translation>
    </message>
    <message>
        <source>with latitude and longitude exchanged</source>
        <translation>con latitud y longitud cambiadas una por otra</translation>
    </message>
    <message>
        <source>with the longitude&apos;s sign turned</source>
        <translation>con el signo de la longitud al revés</translation>
    </message>
    <message>
        <source>with the latitude&apos;s sign turned</source>
        <translation>con el signo de la latitud al revés</translation>
    </message>
    <message>
        <source>with both signs turned</source>
        <translation>con los dos signos al revés</translation>
    </message>
    <message>
        <source>with latitude and longitude exchanged and the longitude&apos;s sign turned</source>
        <translation>con latitud y longitud cambiadas una por otra y el signo de la longitud al revés</translation>
    </message>
    <message>
        <source>read as degrees and minutes</source>
        <translation>leído como grados y minutos</translation>
    </message>
    <message>
        <source>Of {1} marks of {2} {3}; the first was written as latitude {4}, longitude {5}.</source>
        <translation>En {1} marcas de {2}: {3}; la primera estaba escrita con latitud {4}, longitud {5}.</translation>
    </message>
    <message>
        <source>Of {1} of {2} {3}; it was written as latitude {4}, longitude {5}.</source>
        <translation>En {1} de {2}: {3}; estaba escrita con latitud {4}, longitud {5}.</translation>
    </message>
    <message>
        <source>Take them back at the place where they stand now, {1}; until then they take no part.</source>
        <translation>Tómelas de vuelta en el lugar donde están ahora, {1}; hasta entonces no cuentan.</translation>
    </message>
    <message>
        <source>Take it back at the place where it stands now, {1}; until then it takes no part.</source>
        <translation>Tómela de vuelta en el lugar donde está ahora, {1}; hasta entonces no cuenta.</translation>
    </message>
    <message>
        <source>more than 1,000 cells in a row</source>
        <translation>más de 1,000 celdas en una fila</translation>
    </message>
    <message>
        <source>a table of marks</source>
        <translation>una tabla de marcas</translation>
    </message>
    <message>
        <source>a quotation mark that is never closed</source>
        <translation>unas comillas que nunca se cierran</translation>
    </message>
    <message>
        <source>a cell with both of them</source>
        <translation>una celda con las dos</translation>
    </message>
    <message>
        <source>a cell longer than 64 KiB</source>
        <translation>una celda de más de 64 KiB</translation>
    </message>
    <message>
        <source>a mark&apos;s short note</source>
        <translation>la nota corta de una marca</translation>
    </message>
    <message>
        <source>more than 2,000,000 rows</source>
        <translation>más de 2,000,000 de filas</translation>
    </message>
    <message>
        <source>the marks of one field</source>
        <translation>las marcas de un campo</translation>
    </message>
    <message>
        <source>the mark has no name; such marks are called M001, M002 and so on, in order</source>
        <translation>la marca no tiene nombre; esas marcas se llaman M001, M002 y así, en orden</translation>
    </message>
    <message>
        <source>the name {1} is used before; the mark is called {2}</source>
        <translation>el nombre {1} ya se usó; la marca se llama {2}</translation>
    </message>
    <message>
        <source>{1} marks of the file are there already; they are not added again</source>
        <translation>{1} marcas del archivo ya están; no se agregan otra vez</translation>
    </message>
    <message>
        <source>{1}; set aside until answered</source>
        <translation>{1}; apartado hasta que se conteste</translation>
    </message>
    <message>
        <source>a field at least one degree from a pole</source>
        <translation>un campo a un grado por lo menos de un polo</translation>
    </message>
    <message>
        <source>a place at {1}, {2} km from the middle of the field</source>
        <translation>un lugar en {1}, a {2} km del centro del campo</translation>
    </message>
    <message>
        <source>one field, within 50 km of its middle at {1}</source>
        <translation>un solo campo, a menos de 50 km de su centro en {1}</translation>
    </message>
    <message>
        <source>the field boundary</source>
        <translation>el límite del campo</translation>
    </message>
    <message>
        <source>a barrier</source>
        <translation>una barrera</translation>
    </message>
    <message>
        <source>a keep-clear area</source>
        <translation>un área vedada</translation>
    </message>
    <message>
        <source>an untreated piece</source>
        <translation>una parcela sin tratar</translation>
    </message>
    <message>
        <source>a crossing or gate</source>
        <translation>un paso o una puerta</translation>
    </message>
    <message>
        <source>{1} stretches of track lead more than 50 km from the field; they are not used</source>
        <translation>{1} tramos de traza van a más de 50 km del campo; no se usan</translation>
    </message>
    <message>
        <source>{1} point</source>
        <translation>{1} punto</translation>
    </message>
    <message>
        <source>{1} points</source>
        <translation>{1} puntos</translation>
    </message>
    <message>
        <source>taken as marks, as they carry notes of mounds: {1} of a route</source>
        <translation>tomados como marcas, porque llevan notas de montículos: {1} de una ruta</translation>
    </message>
    <message>
        <source>not used, as they carry no note of a mound: {1} of a route</source>
        <translation>no se usan, porque no llevan nota de un montículo: {1} de una ruta</translation>
    </message>
    <message>
        <source>the file has no waypoints, so no mounds</source>
        <translation>el archivo no tiene puntos marcados, así que no hay montículos</translation>
    </message>
    <message>
        <source>the photograph belongs to a mark that names it; it is no mark of its own</source>
        <translation>la fotografía es de una marca que la nombra; no es marca por sí misma</translation>
    </message>
    <message>
        <source>and {1} more</source>
        <translation>y {1} más</translation>
    </message>
    <message>
        <source>{1} further findings are not listed</source>
        <translation>{1} avisos más no se muestran</translation>
    </message>
    <message>
        <source>layer {1}</source>
        <translation>capa {1}</translation>
    </message>
    <message>
        <source>the layer has no shapes; it is not used</source>
        <translation>la capa no tiene formas; no se usa</translation>
    </message>
    <message>
        <source>a feature without a shape</source>
        <translation>un elemento sin forma</translation>
    </message>
    <message>
        <source>a point, a line or a polygon</source>
        <translation>un punto, una línea o un polígono</translation>
    </message>
    <message>
        <source>the time {1} was not understood</source>
        <translation>la hora {1} no se entendió</translation>
    </message>
    <message>
        <source>its points are taken as mounds</source>
        <translation>sus puntos se toman como montículos</translation>
    </message>
    <message>
        <source>its points are not used</source>
        <translation>sus puntos no se usan</translation>
    </message>
    <message>
        <source>its lines are taken as walks</source>
        <translation>sus líneas se toman como recorridos</translation>
    </message>
    <message>
        <source>its lines are taken as barriers</source>
        <translation>sus líneas se toman como barreras</translation>
    </message>
    <message>
        <source>its lines are not used</source>
        <translation>sus líneas no se usan</translation>
    </message>
    <message>
        <source>its polygons are taken as the field boundary</source>
        <translation>sus polígonos se toman como el límite del campo</translation>
    </message>
    <message>
        <source>its polygons are taken as keep-clear areas</source>
        <translation>sus polígonos se toman como áreas vedadas</translation>
    </message>
    <message>
        <source>its polygons are not used</source>
        <translation>sus polígonos no se usan</translation>
    </message>
    <message>
        <source>the column {1} is not used</source>
        <translation>la columna {1} no se usa</translation>
    </message>
    <message>
        <source>a file of another kind</source>
        <translation>un archivo de otro tipo</translation>
    </message>
    <message>
        <source>a file of layers</source>
        <translation>un archivo de capas</translation>
    </message>
    <message>
        <source>a file without a layer of shapes</source>
        <translation>un archivo sin capa de formas</translation>
    </message>
    <message>
        <source>points, lines or polygons of a field</source>
        <translation>puntos, líneas o polígonos de un campo</translation>
    </message>
    <message>
        <source>an SQLite data base</source>
        <translation>una base de datos SQLite</translation>
    </message>
    <message>
        <source>a JSON text</source>
        <translation>un texto JSON</translation>
    </message>
    <message>
        <source>a GPX file</source>
        <translation>un archivo GPX</translation>
    </message>
    <message>
        <source>reading the walk</source>
        <translation>leyendo el recorrido</translation>
    </message>
    <message>
        <source>an error while reading</source>
        <translation>un error al leer</translation>
    </message>
    <message>
        <source>a readable file</source>
        <translation>un archivo que se pueda leer</translation>
    </message>
    <message>
        <source>a note that is only a date or time is not used</source>
        <translation>una nota que es solo fecha u hora no se usa</translation>
    </message>
    <message>
        <source>the receiver had no fix at this mark; its place is taken as good to 5 m only</source>
        <translation>el receptor no tenía posición en esta marca; su lugar se toma como bueno solo a 5 m</translation>
    </message>
    <message>
        <source>the note counts {1} mounds; the mark is taken as one, where it stands</source>
        <translation>la nota cuenta {1} montículos; la marca se toma como uno, donde está</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>in the note, {1} was not understood</source>
        <translation>en la nota, {1} no se entendió</translation>
    </message>
    <message>
        <source>{1} The mound is used without a fan</source>
        <translation>{1} El montículo se usa sin abanico</translation>
    </message>
    <message>
        <source>the fan is told by the clock and the track does not tell the walking direction here; the mound is used without a fan</source>
        <translation>el abanico se dice por el reloj y la traza no dice aquí hacia dónde se caminaba; el montículo se usa sin abanico</translation>
    </message>
    <message>
        <source>fans told by the clock are turned into bearings by the walking direction at the mark</source>
        <translation>los abanicos dichos por el reloj se pasan a rumbos con la dirección en que se caminaba en la marca</translation>
    </message>
    <message>
        <source>the {1} says {2}, but the mark is taken as {3}</source>
        <translation>{1}: dice {2}, pero la marca se toma como {3}</translation>
    </message>
    <message>
        <source>the {1} {2} is that of a thing; it takes no part as a mound</source>
        <translation>{1}: {2} es de una cosa; no cuenta como montículo</translation>
    </message>
    <message>
        <source>type</source>
        <translation>tipo</translation>
    </message>
    <message>
        <source>the type {1} tells nothing of a mound; it is not used</source>
        <translation>el tipo {1} no dice nada de un montículo; no se usa</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>a name like this could mean a fan bearing; only a note, or a name with the word fan, is read as one</source>
        <translation>un nombre así podría ser el rumbo de un abanico; solo se lee como tal una nota, o un nombre con la palabra abanico</translation>
    </message>
    <message>
        <source>symbol</source>
        <translation>símbolo</translation>
    </message>
    <message>
        <source>the symbol {1} tells nothing of a mound; it is not used</source>
        <translation>el símbolo {1} no dice nada de un montículo; no se usa</translation>
    </message>
    <message>
        <source>waypoint {1}</source>
        <translation>punto marcado {1}</translation>
    </message>
    <message>
        <source>a document type declaration</source>
        <translation>una declaración de tipo de documento</translation>
    </message>
    <message>
        <source>a GPX file without one (declared entities are never read)</source>
        <translation>un archivo GPX sin ella (las entidades declaradas nunca se leen)</translation>
    </message>
    <message>
        <source>an empty file</source>
        <translation>un archivo vacío</translation>
    </message>
    <message>
        <source>XML that cannot be read ({1})</source>
        <translation>XML que no se puede leer ({1})</translation>
    </message>
    <message>
        <source>a well-formed GPX file</source>
        <translation>un archivo GPX bien formado</translation>
    </message>
    <message>
        <source>elements nested more than {1} deep</source>
        <translation>elementos anidados a más de {1} de hondo</translation>
    </message>
    <message>
        <source>a document of kind {1}</source>
        <translation>un documento de tipo {1}</translation>
    </message>
    <message>
        <source>a GPX file of version 1.0 or 1.1</source>
        <translation>un archivo GPX de la versión 1.0 o 1.1</translation>
    </message>
    <message>
        <source>the file does not say its GPX version; read as 1.1</source>
        <translation>el archivo no dice su versión de GPX; se lee como 1.1</translation>
    </message>
    <message>
        <source>GPX version {1}</source>
        <translation>GPX versión {1}</translation>
    </message>
    <message>
        <source>version 1.0 or 1.1</source>
        <translation>la versión 1.0 o 1.1</translation>
    </message>
    <message>
        <source>a text longer than 64 KiB</source>
        <translation>un texto de más de 64 KiB</translation>
    </message>
    <message>
        <source>a number of degrees from -{1} to {1}</source>
        <translation>un número de grados de -{1} a {1}</translation>
    </message>
    <message>
        <source>no {1}</source>
        <translation>falta {1}</translation>
    </message>
    <message>
        <source>more than 2,000,000 waypoints</source>
        <translation>más de 2,000,000 de puntos marcados</translation>
    </message>
    <message>
        <source>route point {1}</source>
        <translation>punto de ruta {1}</translation>
    </message>
    <message>
        <source>the {1} {2} was not understood</source>
        <translation>{1}: {2} no se entendió</translation>
    </message>
    <message>
        <source>elevation</source>
        <translation>altura</translation>
    </message>
    <message>
        <source>number of satellites</source>
        <translation>número de satélites</translation>
    </message>
    <message>
        <source>more than 20,000,000 track points</source>
        <translation>más de 20,000,000 de puntos de traza</translation>
    </message>
    <message>
        <source>the walks of one field</source>
        <translation>los recorridos de un campo</translation>
    </message>
    <message>
        <source>track point {1}</source>
        <translation>punto de traza {1}</translation>
    </message>
    <message>
        <source>a track point&apos;s latitude lies beyond 90 degrees; its latitude and longitude are taken as exchanged</source>
        <translation>la latitud de un punto de la traza pasa de 90 grados; su latitud y longitud se toman cambiadas una por otra</translation>
    </message>
    <message>
        <source>a track point&apos;s time was not understood; it has none</source>
        <translation>la hora de un punto de la traza no se entendió; no tiene hora</translation>
    </message>
    <message>
        <source>a walk, table, photograph or layer file</source>
        <translation>un archivo de recorrido, tabla, fotografía o capa</translation>
    </message>
    <message>
        <source>{1} on this computer</source>
        <translation>{1} en esta computadora</translation>
    </message>
    <message>
        <source>a name that leads to a network or into another file</source>
        <translation>un nombre que lleva a una red o adentro de otro archivo</translation>
    </message>
    <message>
        <source>no such file</source>
        <translation>no existe el archivo</translation>
    </message>
    <message>
        <source>a file that cannot be reached ({1})</source>
        <translation>un archivo al que no se llega ({1})</translation>
    </message>
    <message>
        <source>a folder</source>
        <translation>una carpeta</translation>
    </message>
    <message>
        <source>a device or pipe</source>
        <translation>un dispositivo o una tubería</translation>
    </message>
    <message>
        <source>a file over {1} MiB</source>
        <translation>un archivo de más de {1} MiB</translation>
    </message>
    <message>
        <source>the files of one field</source>
        <translation>los archivos de un campo</translation>
    </message>
    <message>
        <source>a file that may not be opened</source>
        <translation>un archivo que no se deja abrir</translation>
    </message>
    <message>
        <source>a file that starts with {1}</source>
        <translation>un archivo que empieza con {1}</translation>
    </message>
    <message>
        <source>the correction of {1} is of the walk {2}, which is not there; it is not used</source>
        <translation>la corrección de {1} es del recorrido {2}, que no está; no se usa</translation>
    </message>
    <message>
        <source>the mend of {1} moves a mark away from the field; the finding is open again</source>
        <translation>el arreglo de {1} saca una marca del campo; la observación queda abierta otra vez</translation>
    </message>
    <message>
        <source>the mend of {1} moves a mark away from the field; the finding stays refused</source>
        <translation>el arreglo de {1} saca una marca del campo; la observación sigue rechazada</translation>
    </message>
    <message>
        <source>the answer to {1} names the mark {2}, which is not there; it is kept for the others</source>
        <translation>la respuesta a {1} nombra la marca {2}, que no está; se guarda para las demás</translation>
    </message>
    <message>
        <source>the finding {1} is of marks or a place that are not there; it is not used</source>
        <translation>la observación {1} es de marcas o de un lugar que no están; no se usa</translation>
    </message>
    <message>
        <source>the recorded place of the mark lies away from the field; it counts as recorded where it stands</source>
        <translation>el lugar anotado de la marca queda lejos del campo; cuenta como anotada donde está</translation>
    </message>
    <message>
        <source>the mark&apos;s row says something else than what was recorded and answered; the row counts, as a mend of your own that can be taken back</source>
        <translation>la fila de la marca dice otra cosa que lo anotado y contestado; cuenta la fila, como un arreglo de usted que se puede quitar</translation>
    </message>
    <message>
        <source>a place that is no number</source>
        <translation>un lugar que no es número</translation>
    </message>
    <message>
        <source>longitude and latitude in degrees</source>
        <translation>longitud y latitud en grados</translation>
    </message>
    <message>
        <source>a place at {1}, {2}</source>
        <translation>un lugar en {1}, {2}</translation>
    </message>
    <message>
        <source>a longitude from -180 to 180 and a latitude from -90 to 90</source>
        <translation>una longitud de -180 a 180 y una latitud de -90 a 90</translation>
    </message>
    <message>
        <source>a ring of {1} places</source>
        <translation>un anillo de {1} lugares</translation>
    </message>
    <message>
        <source>at least three</source>
        <translation>al menos tres</translation>
    </message>
    <message>
        <source>a shape of kind {1}</source>
        <translation>una forma de tipo {1}</translation>
    </message>
    <message>
        <source>points, lines or polygons</source>
        <translation>puntos, líneas o polígonos</translation>
    </message>
    <message>
        <source>a polygon that crosses itself and cannot be repaired</source>
        <translation>un polígono que se cruza a sí mismo y no se puede componer</translation>
    </message>
    <message>
        <source>a simple polygon</source>
        <translation>un polígono simple</translation>
    </message>
    <message>
        <source>the polygon crosses or touches itself; it was repaired, look at it on the map</source>
        <translation>el polígono se cruza o se toca a sí mismo; se compuso, mírelo en el mapa</translation>
    </message>
    <message>
        <source>more than 2,000,000 features</source>
        <translation>más de 2,000,000 de elementos</translation>
    </message>
    <message>
        <source>the layers of one field</source>
        <translation>las capas de un campo</translation>
    </message>
    <message>
        <source>something that cannot be read ({1})</source>
        <translation>algo que no se puede leer ({1})</translation>
    </message>
    <message>
        <source>an undamaged layer</source>
        <translation>una capa sin daño</translation>
    </message>
    <message>
        <source>no reference system</source>
        <translation>ningún sistema de referencia</translation>
    </message>
    <message>
        <source>the reference system {1}</source>
        <translation>el sistema de referencia {1}</translation>
    </message>
    <message>
        <source>one that says where on the earth the coordinates lie, such as WGS 84</source>
        <translation>uno que diga en qué parte de la tierra están las coordenadas, como WGS 84</translation>
    </message>
    <message>
        <source>one that can be turned into longitude and latitude</source>
        <translation>uno que se pueda pasar a longitud y latitud</translation>
    </message>
    <message>
        <source>{1}, feature {2}</source>
        <translation>{1}, elemento {2}</translation>
    </message>
    <message>
        <source>coordinates that their reference system has no place for</source>
        <translation>coordenadas para las que su sistema de referencia no tiene lugar</translation>
    </message>
    <message>
        <source>coordinates of a field</source>
        <translation>coordenadas de un campo</translation>
    </message>
    <message>
        <source>a file of another kind inside</source>
        <translation>adentro, un archivo de otro tipo</translation>
    </message>
    <message>
        <source>the library that reads the file says: {1}</source>
        <translation>la biblioteca que lee el archivo dice: {1}</translation>
    </message>
    <message>
        <source>reading the layers</source>
        <translation>leyendo las capas</translation>
    </message>
    <message>
        <source>a GeoPackage with layers</source>
        <translation>un GeoPackage con capas</translation>
    </message>
    <message>
        <source>a KML file with placemarks</source>
        <translation>un archivo KML con lugares</translation>
    </message>
    <message>
        <source>a Shapefile</source>
        <translation>un Shapefile</translation>
    </message>
    <message>
        <source>a FlatGeobuf layer</source>
        <translation>una capa FlatGeobuf</translation>
    </message>
    <message>
        <source>GeoJSON features</source>
        <translation>elementos GeoJSON</translation>
    </message>
    <message>
        <source>a KML file over 64 MiB</source>
        <translation>un archivo KML de más de 64 MiB</translation>
    </message>
    <message>
        <source>a GeoJSON file over 64 MiB</source>
        <translation>un archivo GeoJSON de más de 64 MiB</translation>
    </message>
    <message>
        <source>the ground of one field</source>
        <translation>el terreno de un campo</translation>
    </message>
    <message>
        <source>a Shapefile without {1} beside it</source>
        <translation>un Shapefile sin {1} a su lado</translation>
    </message>
    <message>
        <source>all its parts: .shp, .shx, .dbf and .prj</source>
        <translation>todas sus partes: .shp, .shx, .dbf y .prj</translation>
    </message>
    <message>
        <source>a KML file without one (declared entities are never read)</source>
        <translation>un archivo KML sin ella (las entidades declaradas nunca se leen)</translation>
    </message>
    <message>
        <source>The fan of one mark is turned by {1}, the declination at the walk&apos;s place and time.</source>
        <translation>El abanico de una marca se gira {1}, la declinación en el lugar y la hora del recorrido.</translation>
    </message>
    <message>
        <source>The fan of one mark is turned by {1}, the declination at the walk&apos;s place in the middle of 2027, since its marks have no times.</source>
        <translation>El abanico de una marca se gira {1}, la declinación en el lugar del recorrido a mediados de 2027, porque sus marcas no tienen hora.</translation>
    </message>
    <message>
        <source>The fans of {1} marks are turned by {2}, the declination at the walk&apos;s place and time.</source>
        <translation>Los abanicos de {1} marcas se giran {2}, la declinación en el lugar y la hora del recorrido.</translation>
    </message>
    <message>
        <source>The fans of {1} marks are turned by {2}, the declination at the walk&apos;s place in the middle of 2027, since its marks have no times.</source>
        <translation>Los abanicos de {1} marcas se giran {2}, la declinación en el lugar del recorrido a mediados de 2027, porque sus marcas no tienen hora.</translation>
    </message>
    <message>
        <source>the note doubts itself; it is taken as it stands</source>
        <translation>la nota duda de sí misma; se toma como está</translation>
    </message>
    <message>
        <source>hit</source>
        <translation>acierto</translation>
    </message>
    <message>
        <source>untold</source>
        <translation>sin decir</translation>
    </message>
    <message>
        <source>{1} o&apos;clock</source>
        <translation>las {1}</translation>
    </message>
    <message>
        <source>the bearing {1} is not within 0 to 360; no fan is taken from it</source>
        <translation>el rumbo {1} no está entre 0 y 360; no se toma abanico de él</translation>
    </message>
    <message>
        <source>no bearing: {1}</source>
        <translation>ningún rumbo: {1}</translation>
    </message>
    <message>
        <source>fan {1} magnetic</source>
        <translation>abanico {1} magnético</translation>
    </message>
    <message>
        <source>fan {1} true</source>
        <translation>abanico {1} verdadero</translation>
    </message>
    <message>
        <source>fan {1}</source>
        <translation>abanico {1}</translation>
    </message>
    <message>
        <source>{1}, from the plug at {2}</source>
        <translation>{1}, por el tapón en {2}</translation>
    </message>
    <message>
        <source>the fan is noted as a range; its middle, {1}, is used</source>
        <translation>el abanico está anotado como intervalo; se usa su medio, {1}</translation>
    </message>
    <message>
        <source>the fan and the plug do not lie opposite each other; the first noted is used</source>
        <translation>el abanico y el tapón no quedan uno frente al otro; se usa el primero anotado</translation>
    </message>
    <message>
        <source>a second fan, {1}, is noted; the first is used</source>
        <translation>hay anotado un segundo abanico, {1}; se usa el primero</translation>
    </message>
    <message>
        <source>fan at {1}, from the plug</source>
        <translation>abanico a {1}, por el tapón</translation>
    </message>
    <message>
        <source>fan at {1}</source>
        <translation>abanico a {1}</translation>
    </message>
    <message>
        <source>a second fan, at {1}, is noted; the first is used</source>
        <translation>hay anotado un segundo abanico, a {1}; se usa el primero</translation>
    </message>
    <message>
        <source>no fan</source>
        <translation>sin abanico</translation>
    </message>
    <message>
        <source>the note tells of a hit and of none; it is taken as a hit</source>
        <translation>la nota habla de acierto y de nada; se toma como acierto</translation>
    </message>
    <message>
        <source>probed</source>
        <translation>sondeado</translation>
    </message>
    <message>
        <source>{1}, {2} deep</source>
        <translation>{1}, a {2} de hondo</translation>
    </message>
    <message>
        <source>{1}, {2} from the plug</source>
        <translation>{1}, a {2} del tapón</translation>
    </message>
    <message>
        <source>{1} mound</source>
        <translation>{1} montículo</translation>
    </message>
    <message>
        <source>{1} mounds</source>
        <translation>{1} montículos</translation>
    </message>
    <message>
        <source>a second count, {1}, is noted; the first is used</source>
        <translation>hay anotada una segunda cuenta, {1}; se usa la primera</translation>
    </message>
    <message>
        <source>both {1} and {2} are noted; the first is taken</source>
        <translation>están anotados {1} y {2}; se toma lo primero</translation>
    </message>
    <message>
        <source>both {1} and {2} are noted; taken as {3}</source>
        <translation>están anotados {1} y {2}; se toma como {3}</translation>
    </message>
    <message>
        <source>the photograph does not say where it was taken; it is not used</source>
        <translation>la fotografía no dice dónde se tomó; no se usa</translation>
    </message>
    <message>
        <source>degrees, minutes and seconds, {1} or {2}</source>
        <translation>grados, minutos y segundos, {1} o {2}</translation>
    </message>
    <message>
        <source>GPSLatitude and GPSLongitude</source>
        <translation>GPSLatitude y GPSLongitude</translation>
    </message>
    <message>
        <source>the photograph</source>
        <translation>la fotografía</translation>
    </message>
    <message>
        <source>the photograph&apos;s clock names no zone; its time is not used</source>
        <translation>el reloj de la fotografía no dice zona; no se usa su hora</translation>
    </message>
    <message>
        <source>the photograph&apos;s time {1} was not understood</source>
        <translation>la hora de la fotografía, {1}, no se entendió</translation>
    </message>
    <message>
        <source>the photograph&apos;s direction is from magnetic north; it is kept in the note as it is</source>
        <translation>la dirección de la fotografía es desde el norte magnético; queda en la nota como está</translation>
    </message>
    <message>
        <source>the photograph does not say from which north its direction is</source>
        <translation>la fotografía no dice desde qué norte es su dirección</translation>
    </message>
    <message>
        <source>a picture that cannot be read</source>
        <translation>una imagen que no se puede leer</translation>
    </message>
    <message>
        <source>a JPEG photograph</source>
        <translation>una fotografía JPEG</translation>
    </message>
    <message>
        <source>the times do not fit the track&apos;s points; the track is read without times</source>
        <translation>las horas no cuadran con los puntos de la traza; la traza se lee sin horas</translation>
    </message>
    <message>
        <source>the kind {1} is not known; taken as a gopher mound</source>
        <translation>la clase {1} no se conoce; se toma como montículo de tuza</translation>
    </message>
    <message>
        <source>the freshness {1} is not known</source>
        <translation>no se conoce qué tan fresco es {1}</translation>
    </message>
    <message>
        <source>a mound that is not one point</source>
        <translation>un montículo que no es un solo punto</translation>
    </message>
    <message>
        <source>one point</source>
        <translation>un punto</translation>
    </message>
    <message>
        <source>fan_bearing {1}</source>
        <translation>fan_bearing {1}</translation>
    </message>
    <message>
        <source>degrees from 0 to 360</source>
        <translation>grados de 0 a 360</translation>
    </message>
    <message>
        <source>position_sd_m {1}</source>
        <translation>position_sd_m {1}</translation>
    </message>
    <message>
        <source>metres above 0</source>
        <translation>metros por encima de 0</translation>
    </message>
    <message>
        <source>shared_sd_m {1}</source>
        <translation>shared_sd_m {1}</translation>
    </message>
    <message>
        <source>the north {1} is not known; the bearings are taken as true</source>
        <translation>el norte {1} no se conoce; los rumbos se toman como verdaderos</translation>
    </message>
    <message>
        <source>a decision was not understood; the site counts as proposed</source>
        <translation>una decisión no se entendió; el lugar cuenta como propuesto</translation>
    </message>
    <message>
        <source>accuracy</source>
        <translation>precisión</translation>
    </message>
    <message>
        <source>a table over 128 MiB</source>
        <translation>una tabla de más de 128 MiB</translation>
    </message>
    <message>
        <source>a table without columns of longitude and latitude</source>
        <translation>una tabla sin columnas de longitud y latitud</translation>
    </message>
    <message>
        <source>two columns that say where each mark is</source>
        <translation>dos columnas que digan dónde está cada marca</translation>
    </message>
    <message>
        <source>the reference system of easting and northing, such as EPSG:32610</source>
        <translation>el sistema de referencia del este y el norte, como EPSG:32610</translation>
    </message>
    <message>
        <source>eastings and northings without a reference system</source>
        <translation>estes y nortes sin sistema de referencia</translation>
    </message>
    <message>
        <source>reading the table</source>
        <translation>leyendo la tabla</translation>
    </message>
    <message>
        <source>the table has no row with a place, so no mounds</source>
        <translation>la tabla no tiene ninguna fila con lugar, así que no hay montículos</translation>
    </message>
    <message>
        <source>the row says no place; it is not used</source>
        <translation>la fila no dice lugar; no se usa</translation>
    </message>
    <message>
        <source>the row has more cells than the table has columns; those beyond are not used</source>
        <translation>la fila tiene más celdas que columnas la tabla; las que sobran no se usan</translation>
    </message>
    <message>
        <source>easting {1}</source>
        <translation>este {1}</translation>
    </message>
    <message>
        <source>a number of metres</source>
        <translation>un número de metros</translation>
    </message>
    <message>
        <source>northing {1}</source>
        <translation>norte {1}</translation>
    </message>
    <message>
        <source>easting {1}, northing {2}</source>
        <translation>este {1}, norte {2}</translation>
    </message>
    <message>
        <source>a place that {1} can tell</source>
        <translation>un lugar que {1} pueda decir</translation>
    </message>
    <message>
        <source>degrees from {1}</source>
        <translation>grados de {1}</translation>
    </message>
    <message>
        <source>longitude</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>-180 to 180</source>
        <translation>-180 a 180</translation>
    </message>
    <message>
        <source>latitude</source>
        <translation>latitud</translation>
    </message>
    <message>
        <source>-90 to 90</source>
        <translation>-90 a 90</translation>
    </message>
    <message>
        <source>the first row is taken as a mark, not as headings</source>
        <translation>la primera fila se toma como marca, no como encabezado</translation>
    </message>
    <message>
        <source>columns {1} and {2} are taken as easting and northing, by their size and order</source>
        <translation>las columnas {1} y {2} se toman como este y norte, por su tamaño y orden</translation>
    </message>
    <message>
        <source>columns {1} and {2} are taken as longitude and latitude, by their size and order</source>
        <translation>las columnas {1} y {2} se toman como longitud y latitud, por su tamaño y orden</translation>
    </message>
    <message>
        <source>columns {1} and {2} are taken as latitude and longitude, by their size and order</source>
        <translation>las columnas {1} y {2} se toman como latitud y longitud, por su tamaño y orden</translation>
    </message>
    <message>
        <source>the coordinates are taken as degrees and minutes in one number (3815.5 is 38 degrees 15.5 minutes)</source>
        <translation>las coordenadas se toman como grados y minutos en un solo número (3815.5 son 38 grados 15.5 minutos)</translation>
    </message>
    <message>
        <source>dates such as 1/3/2026 are taken with the day first</source>
        <translation>las fechas como 1/3/2026 se toman con el día primero</translation>
    </message>
    <message>
        <source>a text that no separator parts into columns ({1})</source>
        <translation>un texto que ningún separador parte en columnas ({1})</translation>
    </message>
    <message>
        <source>a table of marks, or a GPX, GeoPackage or GeoJSON file</source>
        <translation>una tabla de marcas, o un archivo GPX, GeoPackage o GeoJSON</translation>
    </message>
    <message>
        <source>UTF-16 (little end first)</source>
        <translation>UTF-16 (extremo menor primero)</translation>
    </message>
    <message>
        <source>UTF-16 (big end first)</source>
        <translation>UTF-16 (extremo mayor primero)</translation>
    </message>
    <message>
        <source>{1} degrees west</source>
        <translation>{1} grados oeste</translation>
    </message>
    <message>
        <source>{1} degrees east</source>
        <translation>{1} grados este</translation>
    </message>
    <message>
        <source>the fan bearing is magnetic and the declination cannot be told: {1}</source>
        <translation>el rumbo del abanico es magnético y no se puede saber la declinación: {1}</translation>
    </message>
    <message>
        <source>magnetic bearings are turned to true ones by the declination, {1}</source>
        <translation>los rumbos magnéticos se pasan a verdaderos con la declinación, {1}</translation>
    </message>
    <message>
        <source>magnetic bearings are turned to true ones by the declination, {1}, as in the middle of 2027 since the mark has no time</source>
        <translation>los rumbos magnéticos se pasan a verdaderos con la declinación, {1}, la de mediados de 2027 porque la marca no tiene hora</translation>
    </message>
    <message>
        <source>a point</source>
        <translation>un punto</translation>
    </message>
    <message>
        <source>a line</source>
        <translation>una línea</translation>
    </message>
    <message>
        <source>a polygon</source>
        <translation>un polígono</translation>
    </message>
    <message>
        <source>layers that are not known here are not used: {1}</source>
        <translation>las capas que aquí no se conocen no se usan: {1}</translation>
    </message>
    <message>
        <source>the width of this gap is no length above 0; a metre is taken</source>
        <translation>el ancho de esta abertura no es un largo mayor que 0; se toma un metro</translation>
    </message>
    <message>
        <source>the kind of keep-clear area {1} is not known; it is kept clear as &quot;other&quot;</source>
        <translation>la clase de área vedada {1} no se conoce; queda vedada como &quot;otro&quot;</translation>
    </message>
    <message>
        <source>the layers {1}</source>
        <translation>las capas {1}</translation>
    </message>
    <message>
        <source>one of field_boundaries, barriers, keep_clear_areas, mounds</source>
        <translation>una de field_boundaries, barriers, keep_clear_areas, mounds</translation>
    </message>
    <message>
        <source>writing the layers</source>
        <translation>escribiendo las capas</translation>
    </message>
    <message>
        <source>an error while writing ({1})</source>
        <translation>un error al escribir ({1})</translation>
    </message>
    <message>
        <source>a picture without a pixel</source>
        <translation>una imagen sin un solo píxel</translation>
    </message>
    <message>
        <source>a picture that could not be written ({1})</source>
        <translation>una imagen que no se pudo escribir ({1})</translation>
    </message>
    <message>
        <source>a file that can be written</source>
        <translation>un archivo que se pueda escribir</translation>
    </message>
    <message>
        <source>the name of a folder</source>
        <translation>el nombre de una carpeta</translation>
    </message>
    <message>
        <source>a link that leads nowhere ({1})</source>
        <translation>un enlace que no lleva a nada ({1})</translation>
    </message>
    <message>
        <source>a device or pipe under that name</source>
        <translation>un dispositivo o una tubería con ese nombre</translation>
    </message>
    <message>
        <source>an earlier file that may not be written over</source>
        <translation>un archivo anterior que no se deja reemplazar</translation>
    </message>
    <message>
        <source>a folder in which nothing can be written</source>
        <translation>una carpeta en la que no se puede escribir</translation>
    </message>
    <message>
        <source>a disk that does not keep it</source>
        <translation>un disco que no lo guarda</translation>
    </message>
    <message>
        <source>a name that cannot be taken</source>
        <translation>un nombre que no se puede usar</translation>
    </message>
    <message>
        <source>a disk that took only a part of it</source>
        <translation>un disco que recibió solo una parte</translation>
    </message>
    <message>
        <source>{1} line, {2}, about {3} min at a searching pace</source>
        <translation>{1} línea, {2}, unos {3} min a paso de búsqueda</translation>
    </message>
    <message>
        <source>{1} lines, {2}, about {3} min at a searching pace</source>
        <translation>{1} líneas, {2}, unos {3} min a paso de búsqueda</translation>
    </message>
    <message>
        <source>STOP: {1}</source>
        <translation>ALTO: {1}</translation>
    </message>
    <message>
        <source>chance of a hit {1} in 100</source>
        <translation>probabilidad de dar con el túnel: {1} de cada 100</translation>
    </message>
    <message>
        <source>UTF-8</source>
        <translation>UTF-8</translation>
    </message>
    <message>
        <source>Latin-1</source>
        <translation>Latin-1</translation>
    </message>
    <message>
        <source>UC IPM Pest Notes 7433</source>
        <translation>UC IPM Pest Notes 7433</translation>
    </message>
    <message>
        <source>Dalquest 1948</source>
        <translation>Dalquest 1948</translation>
    </message>
    <message>
        <source>Montana Dept of Agriculture</source>
        <translation>Departamento de Agricultura de Montana</translation>
    </message>
    <message>
        <source>Driscoll &amp; Watson</source>
        <translation>Driscoll &amp; Watson</translation>
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
        <source>bytes</source>
        <translation>bytes</translation>
    </message>
    <message>
        <source>column {1}: {2}, where {3} should stand</source>
        <translation>columna {1}: {2}, donde debe ir {3}</translation>
    </message>
    <message>
        <source>a number in its range</source>
        <translation>un número en su intervalo</translation>
    </message>
    <message>
        <source>a smaller number</source>
        <translation>un número menor</translation>
    </message>
    <message>
        <source>a finite number</source>
        <translation>un número finito</translation>
    </message>
    <message>
        <source>a length above 0</source>
        <translation>un largo mayor que 0</translation>
    </message>
    <message>
        <source>0 to 360 degrees</source>
        <translation>0 a 360 grados</translation>
    </message>
    <message>
        <source>a time of the years 1 to 9999</source>
        <translation>una hora de los años 1 a 9999</translation>
    </message>
    <message>
        <source>one letter</source>
        <translation>una letra</translation>
    </message>
    <message>
        <source>bytes that are no list</source>
        <translation>bytes que no son una lista</translation>
    </message>
    <message>
        <source>a word that this version knows</source>
        <translation>una palabra que esta versión conozca</translation>
    </message>
    <message>
        <source>a project file</source>
        <translation>un archivo de proyecto</translation>
    </message>
    <message>
        <source>a project in memory</source>
        <translation>un proyecto en memoria</translation>
    </message>
    <message>
        <source>not enough memory to open it</source>
        <translation>falta memoria para abrirlo</translation>
    </message>
    <message>
        <source>a disk that takes each change</source>
        <translation>un disco que reciba cada cambio</translation>
    </message>
    <message>
        <source>a disk that is full</source>
        <translation>un disco lleno</translation>
    </message>
    <message>
        <source>a file that may not be written</source>
        <translation>un archivo en el que no se deja escribir</translation>
    </message>
    <message>
        <source>a project that each change can be put into</source>
        <translation>un proyecto en el que se pueda poner cada cambio</translation>
    </message>
    <message>
        <source>a file that another program holds</source>
        <translation>un archivo que otro programa tiene tomado</translation>
    </message>
    <message>
        <source>a project that is free to be written</source>
        <translation>un proyecto libre para escribir</translation>
    </message>
    <message>
        <source>a damaged or cut off file</source>
        <translation>un archivo dañado o cortado</translation>
    </message>
    <message>
        <source>a whole project file</source>
        <translation>un archivo de proyecto completo</translation>
    </message>
    <message>
        <source>a file that cannot be opened, or a folder in which nothing can be written</source>
        <translation>un archivo que no se puede abrir, o una carpeta en la que no se puede escribir</translation>
    </message>
    <message>
        <source>a project that can be read and written</source>
        <translation>un proyecto que se pueda leer y escribir</translation>
    </message>
    <message>
        <source>not enough memory for it</source>
        <translation>falta memoria para él</translation>
    </message>
    <message>
        <source>a part of more than 512 MiB</source>
        <translation>una parte de más de 512 MiB</translation>
    </message>
    <message>
        <source>a smaller one</source>
        <translation>una más chica</translation>
    </message>
    <message>
        <source>a failure ({1})</source>
        <translation>una falla ({1})</translation>
    </message>
    <message>
        <source>a whole project file on a sound disk</source>
        <translation>un archivo de proyecto completo en un disco sano</translation>
    </message>
    <message>
        <source>a project of form {1}, which a later version wrote</source>
        <translation>un proyecto de la forma {1}, que escribió una versión posterior</translation>
    </message>
    <message>
        <source>form {1} or an earlier one (open it with the later version)</source>
        <translation>la forma {1} o una anterior (ábralo con la versión posterior)</translation>
    </message>
    <message>
        <source>a project of form {1}</source>
        <translation>un proyecto de la forma {1}</translation>
    </message>
    <message>
        <source>a form from 1 to {1}</source>
        <translation>una forma de 1 a {1}</translation>
    </message>
    <message>
        <source>tables that are not a project&apos;s</source>
        <translation>tablas que no son de un proyecto</translation>
    </message>
    <message>
        <source>the tables of form {1}</source>
        <translation>las tablas de la forma {1}</translation>
    </message>
    <message>
        <source>a project that each change can be put into (copy it where you may write)</source>
        <translation>un proyecto en el que se pueda poner cada cambio (cópielo a donde usted pueda escribir)</translation>
    </message>
    <message>
        <source>a project that is open already</source>
        <translation>un proyecto que ya está abierto</translation>
    </message>
    <message>
        <source>one that is open nowhere else</source>
        <translation>uno que no esté abierto en otra parte</translation>
    </message>
    <message>
        <source>a disk that keeps no locks ({1})</source>
        <translation>un disco que no guarda candados ({1})</translation>
    </message>
    <message>
        <source>one on which a project can be kept from being opened twice</source>
        <translation>uno en el que se pueda evitar que un proyecto se abra dos veces</translation>
    </message>
    <message>
        <source>another file under that name, or none (it was moved, removed or replaced)</source>
        <translation>otro archivo con ese nombre, o ninguno (se movió, se quitó o se reemplazó)</translation>
    </message>
    <message>
        <source>the project that was opened (keep it under a name again)</source>
        <translation>el proyecto que se abrió (guárdelo otra vez con un nombre)</translation>
    </message>
    <message>
        <source>table {1}, row {2}</source>
        <translation>tabla {1}, fila {2}</translation>
    </message>
    <message>
        <source>the number {1}</source>
        <translation>el número {1}</translation>
    </message>
    <message>
        <source>rows without a gap</source>
        <translation>filas sin huecos</translation>
    </message>
    <message>
        <source>what a project holds there</source>
        <translation>lo que un proyecto tiene ahí</translation>
    </message>
    <message>
        <source>table {1}</source>
        <translation>tabla {1}</translation>
    </message>
    <message>
        <source>a field whose parts fit each other</source>
        <translation>un campo cuyas partes cuadren entre sí</translation>
    </message>
    <message>
        <source>a list that is none of mentions</source>
        <translation>una lista que no es de menciones</translation>
    </message>
    <message>
        <source>categories and words</source>
        <translation>clases y palabras</translation>
    </message>
    <message>
        <source>a stretch of track of walk {1}, which is not its turn</source>
        <translation>un tramo de traza del recorrido {1}, que no es el que sigue</translation>
    </message>
    <message>
        <source>a {1} whose corners are none</source>
        <translation>esto ({1}), con esquinas que no lo son</translation>
    </message>
    <message>
        <source>the mark {1} of no walk</source>
        <translation>la marca {1} de ningún recorrido</translation>
    </message>
    <message>
        <source>two marks of the name {1}</source>
        <translation>dos marcas de nombre {1}</translation>
    </message>
    <message>
        <source>two decisions on one set at {1}</source>
        <translation>dos decisiones sobre un mismo punto en {1}</translation>
    </message>
    <message>
        <source>two answers to {1}</source>
        <translation>dos respuestas a {1}</translation>
    </message>
    <message>
        <source>a fact that is none ({1})</source>
        <translation>un hecho que no lo es ({1})</translation>
    </message>
    <message>
        <source>a column&apos;s role that this version knows</source>
        <translation>un uso de columna que esta versión conozca</translation>
    </message>
    <message>
        <source>labels of bait for pocket gophers</source>
        <translation>etiquetas de cebos para tuzas</translation>
    </message>
    <message>
        <source>federal label text of aluminium phosphide burrow fumigants, 2018</source>
        <translation>texto de la etiqueta federal de fumigantes de fosfuro de aluminio para madrigueras, 2018</translation>
    </message>
    <message>
        <source>Push the probe at the rungs of the ladder in their order: a sudden drop of about 2 in (5 cm) is the run.</source>
        <translation>Meta la sonda en los sondeos de la fila, en su orden: una caída repentina de unas 2 in (5 cm) es el túnel.</translation>
    </message>
    <message>
        <source>Tie every trap to a stake with wire or cable, never cord: cord is chewed through.</source>
        <translation>Amarre cada trampa a una estaca con alambre o cable, nunca con cordel: el cordel lo roen.</translation>
    </message>
    <message>
        <source>Flag every stake, and write down where it stands.</source>
        <translation>Ponga banderita en cada estaca y anote dónde queda.</translation>
    </message>
    <message>
        <source>Check at least daily; the law on how often differs by state. No catch in 48 hours to 3 days: move the set.</source>
        <translation>Revise al menos una vez al día; la ley sobre cada cuánto cambia de un estado a otro. Sin captura en 48 horas a 3 días, mueva el punto.</translation>
    </message>
    <message>
        <source>Lift every trap, stake and flag, count them against what went out, and close every hole.</source>
        <translation>Levante cada trampa, estaca y banderita, cuéntelas contra lo que llevó y cierre cada hoyo.</translation>
    </message>
    <message>
        <source>Flag the place until the mounds have been read again.</source>
        <translation>Deje una banderita hasta que se hayan vuelto a leer los montículos.</translation>
    </message>
    <message>
        <source>Look daily for carcasses and spilled bait, with gloves on; bury both.</source>
        <translation>Busque cada día, con guantes, animales muertos y cebo regado; entierre ambos.</translation>
    </message>
    <message>
        <source>Level the mounds; fresh soil tells which system is still in use. Bury spills, and take back what is left.</source>
        <translation>Empareje los montículos; la tierra fresca dice qué sistema sigue en uso. Entierre lo regado y llévese lo que sobre.</translation>
    </message>
    <message>
        <source>Cover the opened hole, or leave it open, as this page says for this place.</source>
        <translation>Tape el hoyo abierto, o déjelo abierto, según dice esta página para este lugar.</translation>
    </message>
    <message>
        <source>extension accounts; common practice</source>
        <translation>escritos de extensión agrícola; práctica común</translation>
    </message>
    <message>
        <source>Close the hole with sod or a board where it is to be dark; let no soil fall on the trap.</source>
        <translation>Cierre el hoyo con césped o una tabla donde deba quedar oscuro; que no caiga tierra sobre la trampa.</translation>
    </message>
    <message>
        <source>trap in a lateral</source>
        <translation>trampa en un túnel lateral</translation>
    </message>
    <message>
        <source>probe</source>
        <translation>sonda</translation>
    </message>
    <message>
        <source>trowel</source>
        <translation>palita</translation>
    </message>
    <message>
        <source>tape</source>
        <translation>cinta</translation>
    </message>
    <message>
        <source>hammer</source>
        <translation>martillo</translation>
    </message>
    <message>
        <source>Clear the plug and open the lateral with the trowel until its walls are whole.</source>
        <translation>Quite el tapón y abra el túnel lateral con la palita hasta que sus paredes estén enteras.</translation>
    </message>
    <message>
        <source>Slide in one trap, its working end leading, until it is just short of the run.</source>
        <translation>Meta una trampa, con el lado que atrapa por delante, hasta quedar justo antes del túnel principal.</translation>
    </message>
    <message>
        <source>paired traps in the run</source>
        <translation>dos trampas en el túnel</translation>
    </message>
    <message>
        <source>shovel</source>
        <translation>pala</translation>
    </message>
    <message>
        <source>Dig down to the run and clear both of its mouths of loose soil.</source>
        <translation>Cave hasta el túnel y limpie sus dos bocas de tierra suelta.</translation>
    </message>
    <message>
        <source>Set two traps in the run, one facing each way, each a little way into its mouth.</source>
        <translation>Ponga dos trampas en el túnel, una hacia cada lado, cada una un poco adentro de su boca.</translation>
    </message>
    <message>
        <source>Measure the amount that the label in hand names for one placement, and no more.</source>
        <translation>Mida la cantidad que dice la etiqueta que tiene en la mano para una colocación, y no más.</translation>
    </message>
    <message>
        <source>Put the bait into the open run below, never on the surface, and let no soil fall on it.</source>
        <translation>Ponga el cebo abajo, en el túnel abierto, nunca en la superficie, y que no le caiga tierra.</translation>
    </message>
    <message>
        <source>Gather and bury whatever was spilled before you go on.</source>
        <translation>Recoja y entierre lo que se haya regado antes de seguir.</translation>
    </message>
    <message>
        <source>Nothing is staked.</source>
        <translation>No se pone estaca.</translation>
    </message>
    <message>
        <source>bait by spoon in the opened lateral</source>
        <translation>cebo con cuchara en el túnel lateral abierto</translation>
    </message>
    <message>
        <source>spoon with a long handle</source>
        <translation>cuchara de mango largo</translation>
    </message>
    <message>
        <source>Close the hole above the bait with sod or a clod, so that no light and no soil comes in.</source>
        <translation>Cierre el hoyo por encima del cebo con césped o un terrón, para que no entren luz ni tierra.</translation>
    </message>
    <message>
        <source>Clear the plug and open the lateral as far as the run.</source>
        <translation>Quite el tapón y abra el túnel lateral hasta el túnel principal.</translation>
    </message>
    <message>
        <source>Close the probe hole with sod, a stone or your heel, so that no light and no soil comes in.</source>
        <translation>Cierre el hoyo de la sonda con césped, una piedra o el talón, para que no entren luz ni tierra.</translation>
    </message>
    <message>
        <source>bait by spoon through a probe hole</source>
        <translation>cebo con cuchara por el hoyo de la sonda</translation>
    </message>
    <message>
        <source>probe with a narrow and a wide end</source>
        <translation>sonda con una punta delgada y una ancha</translation>
    </message>
    <message>
        <source>funnel</source>
        <translation>embudo</translation>
    </message>
    <message>
        <source>The narrow end has found the run: open the hole with the wide end, and feel that the run is open.</source>
        <translation>La punta delgada dio con el túnel: abra el hoyo con la ancha y sienta que el túnel está abierto.</translation>
    </message>
    <message>
        <source>bait by a dispensing probe</source>
        <translation>cebo con sonda dosificadora</translation>
    </message>
    <message>
        <source>dispensing probe</source>
        <translation>sonda dosificadora</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>báscula</translation>
    </message>
    <message>
        <source>Before the day begins release ten times over a tray, weigh it, and enter the weight here: one release is a tenth.</source>
        <translation>Antes de empezar el día suelte diez dosis sobre una charola, péselas y escriba aquí el peso: una dosis es la décima parte.</translation>
    </message>
    <message>
        <source>With the tip in the run release as often as this page works out from your weighing and the label.</source>
        <translation>Con la punta en el túnel, suelte tantas dosis como calcula esta página de su pesada y de la etiqueta.</translation>
    </message>
    <message>
        <source>fumigant by tablets or cartridge</source>
        <translation>fumigante en pastillas o cartucho</translation>
    </message>
    <message>
        <source>what the label names to be worn</source>
        <translation>lo que la etiqueta pide llevar puesto</translation>
    </message>
    <message>
        <source>Close every opening of the system at once, paper or sod first, then soil, so that no gas comes out.</source>
        <translation>Cierre enseguida cada abertura del sistema, primero papel o césped y luego tierra, para que no salga gas.</translation>
    </message>
    <message>
        <source>Come back as the label says, look for opened holes, and keep everyone away until then.</source>
        <translation>Vuelva cuando diga la etiqueta, busque hoyos abiertos y no deje acercarse a nadie hasta entonces.</translation>
    </message>
    <message>
        <source>Write down what was used and where, as the management plan asks; take every sign back when its time is over.</source>
        <translation>Anote qué se usó y dónde, como pide el plan de manejo; recoja cada letrero cuando pase su plazo.</translation>
    </message>
    <message>
        <source>Have the licensed applicator at hand and the written management plan done before the job.</source>
        <translation>Tenga presente al aplicador con licencia y hecho el plan escrito de manejo antes del trabajo.</translation>
    </message>
    <message>
        <source>Walk the whole system again: no part of it within 100 ft (30 m) of a building where people or domestic animals may be.</source>
        <translation>Recorra otra vez todo el sistema: ninguna parte a menos de 100 pies (30 m) de un edificio donde pueda haber personas o animales domésticos.</translation>
    </message>
    <message>
        <source>Open the hole with the wide end, put in what the label names for one burrow, and nothing else.</source>
        <translation>Abra el hoyo con la punta ancha, meta lo que dice la etiqueta para una madriguera y nada más.</translation>
    </message>
    <message>
        <source>our assumption</source>
        <translation>supuesto nuestro</translation>
    </message>
    <message>
        <source>The answer of {1} is too old: {2}</source>
        <translation>La respuesta del {1} es demasiado vieja: {2}</translation>
    </message>
    <message>
        <source>Not known: {1}</source>
        <translation>No se sabe: {1}</translation>
    </message>
    <message>
        <source>This method sets traps.</source>
        <translation>Este método pone trampas.</translation>
    </message>
    <message>
        <source>This method sets bait.</source>
        <translation>Este método pone cebo.</translation>
    </message>
    <message>
        <source>This method sets a fumigant.</source>
        <translation>Este método pone un fumigante.</translation>
    </message>
    <message>
        <source>How wet is the soil where the runs lie?</source>
        <translation>¿Qué tan mojado está el suelo donde van los túneles?</translation>
    </message>
    <message>
        <source>Is rain due in the next three days?</source>
        <translation>¿Se espera lluvia en los próximos tres días?</translation>
    </message>
    <message>
        <source>Is irrigation due in the next three days?</source>
        <translation>¿Toca riego en los próximos tres días?</translation>
    </message>
    <message>
        <source>How much rain and irrigation does each of the coming days bring?</source>
        <translation>¿Cuánta lluvia y cuánto riego trae cada uno de los próximos días?</translation>
    </message>
    <message>
        <source>How warm is the soil at the depth of the runs?</source>
        <translation>¿A qué temperatura está el suelo a la profundidad de los túneles?</translation>
    </message>
    <message>
        <source>What is the soil: sand or loose, loam, clay?</source>
        <translation>¿Cómo es el suelo: arena o suelto, franco, arcilla?</translation>
    </message>
    <message>
        <source>Is the soil cracked?</source>
        <translation>¿Está agrietado el suelo?</translation>
    </message>
    <message>
        <source>Is the ground frozen?</source>
        <translation>¿Está helado el suelo?</translation>
    </message>
    <message>
        <source>Which crop or turf grows here?</source>
        <translation>¿Qué cultivo o pasto crece aquí?</translation>
    </message>
    <message>
        <source>What is the field used for?</source>
        <translation>¿Para qué se usa el terreno?</translation>
    </message>
    <message>
        <source>Is there a home, a school, a nursing home, a day care or a hospital on the property?</source>
        <translation>¿Hay en la propiedad una casa, una escuela, un asilo, una guardería o un hospital?</translation>
    </message>
    <message>
        <source>Do children come here, and from when to when?</source>
        <translation>¿Vienen niños aquí, y de cuándo a cuándo?</translation>
    </message>
    <message>
        <source>Do other people come here, and from when to when?</source>
        <translation>¿Viene aquí otra gente, y de cuándo a cuándo?</translation>
    </message>
    <message>
        <source>Do pets come here, and from when to when?</source>
        <translation>¿Vienen mascotas aquí, y de cuándo a cuándo?</translation>
    </message>
    <message>
        <source>Does stock come here, and from when to when?</source>
        <translation>¿Viene ganado aquí, y de cuándo a cuándo?</translation>
    </message>
    <message>
        <source>Is every building within 100 ft (30 m) of the field on the map?</source>
        <translation>¿Está en el mapa cada edificio a menos de 100 pies (30 m) del terreno?</translation>
    </message>
    <message>
        <source>Is there a well, spring, pond or ditch within 100 ft (30 m) that is not on the map?</source>
        <translation>¿Hay a menos de 100 pies (30 m) un pozo, manantial, estanque o zanja que no esté en el mapa?</translation>
    </message>
    <message>
        <source>What does the wildlife agency say of protected animals in this county?</source>
        <translation>¿Qué dice la autoridad de fauna silvestre de los animales protegidos en este condado?</translation>
    </message>
    <message>
        <source>Is the written fumigation management plan in hand?</source>
        <translation>¿Tiene en la mano el plan escrito de manejo de la fumigación?</translation>
    </message>
    <message>
        <source>Has the one-call service been called, and are the lines marked?</source>
        <translation>¿Se llamó al servicio de localización de líneas, y están señaladas?</translation>
    </message>
    <message>
        <source>Have the neighbours been told?</source>
        <translation>¿Se avisó a los vecinos?</translation>
    </message>
    <message>
        <source>Has the law on traps of this state and town been read?</source>
        <translation>¿Se leyó la ley de este estado y pueblo sobre trampas?</translation>
    </message>
    <message>
        <source>What does the state&apos;s pesticide office say of strychnine?</source>
        <translation>¿Qué dice de la estricnina la oficina estatal de plaguicidas?</translation>
    </message>
    <message>
        <source>Which applicator&apos;s licence is held, and until when is it valid?</source>
        <translation>¿Qué licencia de aplicador se tiene, y hasta cuándo vale?</translation>
    </message>
    <message>
        <source>What does the label in hand say?</source>
        <translation>¿Qué dice la etiqueta que tiene en la mano?</translation>
    </message>
    <message>
        <source>Which active ingredient does the label name?</source>
        <translation>¿Qué ingrediente activo nombra la etiqueta?</translation>
    </message>
    <message>
        <source>Which method is chosen?</source>
        <translation>¿Qué método se eligió?</translation>
    </message>
    <message>
        <source>Where does the method put what is set: in the lateral, in the run?</source>
        <translation>¿Dónde deja el método lo que pone: en el túnel lateral, en el túnel principal?</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>seco</translation>
    </message>
    <message>
        <source>damp</source>
        <translation>húmedo</translation>
    </message>
    <message>
        <source>wet</source>
        <translation>mojado</translation>
    </message>
    <message>
        <source>sand or loose</source>
        <translation>arena o suelto</translation>
    </message>
    <message>
        <source>loam</source>
        <translation>franco</translation>
    </message>
    <message>
        <source>clay</source>
        <translation>arcilla</translation>
    </message>
    <message>
        <source>food crop</source>
        <translation>cultivo de alimento</translation>
    </message>
    <message>
        <source>hay or forage</source>
        <translation>heno o forraje</translation>
    </message>
    <message>
        <source>orchard or vineyard</source>
        <translation>huerta o viñedo</translation>
    </message>
    <message>
        <source>pasture</source>
        <translation>potrero</translation>
    </message>
    <message>
        <source>plant nursery</source>
        <translation>vivero</translation>
    </message>
    <message>
        <source>lawn or park</source>
        <translation>césped o parque</translation>
    </message>
    <message>
        <source>sports field</source>
        <translation>cancha deportiva</translation>
    </message>
    <message>
        <source>fallow</source>
        <translation>barbecho</translation>
    </message>
    <message>
        <source>another use</source>
        <translation>otro uso</translation>
    </message>
    <message>
        <source>home</source>
        <translation>casa</translation>
    </message>
    <message>
        <source>school</source>
        <translation>escuela</translation>
    </message>
    <message>
        <source>athletic field of a school</source>
        <translation>cancha deportiva escolar</translation>
    </message>
    <message>
        <source>nursing home</source>
        <translation>asilo</translation>
    </message>
    <message>
        <source>day care</source>
        <translation>guardería</translation>
    </message>
    <message>
        <source>hospital</source>
        <translation>hospital</translation>
    </message>
    <message>
        <source>asked, no answer yet</source>
        <translation>se preguntó, aún sin respuesta</translation>
    </message>
    <message>
        <source>none known here</source>
        <translation>aquí no se conoce ninguno</translation>
    </message>
    <message>
        <source>known here</source>
        <translation>se conoce aquí</translation>
    </message>
    <message>
        <source>known here; the agency has named its terms</source>
        <translation>se conoce aquí; la autoridad dijo sus condiciones</translation>
    </message>
    <message>
        <source>not called</source>
        <translation>no se llamó</translation>
    </message>
    <message>
        <source>called, not marked yet</source>
        <translation>se llamó, aún sin señalar</translation>
    </message>
    <message>
        <source>called and marked</source>
        <translation>se llamó y está señalado</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>no se preguntó</translation>
    </message>
    <message>
        <source>has named its terms</source>
        <translation>dijo sus condiciones</translation>
    </message>
    <message>
        <source>withdrawn or banned here</source>
        <translation>aquí está retirada o prohibida</translation>
    </message>
    <message>
        <source>No label has been typed in: no amount is computed and none is compared.</source>
        <translation>No se ha escrito ninguna etiqueta: no se calcula ni se compara ninguna cantidad.</translation>
    </message>
    <message>
        <source>The label&apos;s amount a placement has not been typed in.</source>
        <translation>No se ha escrito la cantidad de la etiqueta para una colocación.</translation>
    </message>
    <message>
        <source>It has not been said how much one placement is to get.</source>
        <translation>No se ha dicho cuánto lleva una colocación.</translation>
    </message>
    <message>
        <source>One placement gets {1}; the label names {2} at most.</source>
        <translation>Una colocación lleva {1}; la etiqueta dice {2} como máximo.</translation>
    </message>
    <message>
        <source>One placement gets {1}; the label names {2} at least.</source>
        <translation>Una colocación lleva {1}; la etiqueta dice {2} como mínimo.</translation>
    </message>
    <message>
        <source>{1} and the label&apos;s {2} are not of one kind.</source>
        <translation>{1} y {2} de la etiqueta no son de la misma clase.</translation>
    </message>
    <message>
        <source>{1} and the label&apos;s {2} cannot be compared before the bait has been weighed: type its grams a millilitre.</source>
        <translation>{1} y {2} de la etiqueta no se pueden comparar antes de pesar el cebo: escriba sus gramos por mililitro.</translation>
    </message>
    <message>
        <source>{1} ({2})</source>
        <translation>{1} ({2})</translation>
    </message>
    <message>
        <source>The fullest system gets {1} placements; the label names {2} at most.</source>
        <translation>El sistema con más lleva {1} colocaciones; la etiqueta dice {2} como máximo.</translation>
    </message>
    <message>
        <source>The nearest two placements of one system lie {1} apart; the label names {2} at least.</source>
        <translation>Las dos colocaciones más cercanas de un sistema están a {1}; la etiqueta dice {2} como mínimo.</translation>
    </message>
    <message>
        <source>This treatment puts {1} on {2}, {3}; the label names {4} at most.</source>
        <translation>Este tratamiento pone {1} en {2}, {3}; la etiqueta dice {4} como máximo.</translation>
    </message>
    <message>
        <source>How much this puts on the area cannot be worked out: a dose or the bait&apos;s grams a millilitre are wanting. The label names {1} at most.</source>
        <translation>No se puede calcular cuánto se pone en la superficie: falta una dosis o los gramos por mililitro del cebo. La etiqueta dice {1} como máximo.</translation>
    </message>
    <message>
        <source>The size of the field is not known, so that {1} cannot be compared with the label&apos;s {2}.</source>
        <translation>No se sabe el tamaño del terreno, y por eso {1} no se puede comparar con {2} de la etiqueta.</translation>
    </message>
    <message>
        <source>With this treatment the season has put {1} on {2}, {3}; the label names {4} at most.</source>
        <translation>Con este tratamiento la temporada ha puesto {1} en {2}, {3}; la etiqueta dice {4} como máximo.</translation>
    </message>
    <message>
        <source>This is treatment {1} of the season; the label names {2} at most.</source>
        <translation>Este es el tratamiento {1} de la temporada; la etiqueta dice {2} como máximo.</translation>
    </message>
    <message>
        <source>The last treatment, on {1}, was {2} days ago; the label names {3} days at least.</source>
        <translation>El último tratamiento, el {1}, fue hace {2} días; la etiqueta dice {3} días como mínimo.</translation>
    </message>
    <message>
        <source>A treated system may come within {1} of a building; the label names {2} at least.</source>
        <translation>Un sistema tratado puede llegar a {1} de un edificio; la etiqueta dice {2} como mínimo.</translation>
    </message>
    <message>
        <source>A treated system may come within {1} of water; the label names {2} at least.</source>
        <translation>Un sistema tratado puede llegar a {1} del agua; la etiqueta dice {2} como mínimo.</translation>
    </message>
    <message>
        <source>It is not known what grows here; the label names: {1}.</source>
        <translation>No se sabe qué crece aquí; la etiqueta nombra: {1}.</translation>
    </message>
    <message>
        <source>{1} is among the sites of the label.</source>
        <translation>{1} está entre los sitios de la etiqueta.</translation>
    </message>
    <message>
        <source>{1} is not among the sites of the label: {2}.</source>
        <translation>{1} no está entre los sitios de la etiqueta: {2}.</translation>
    </message>
    <message>
        <source>The day of work is {1}; label or registration end on {2}.</source>
        <translation>El día del trabajo es el {1}; la etiqueta o su registro terminan el {2}.</translation>
    </message>
    <message>
        <source>It has not been said when these figures were compared with the label in hand.</source>
        <translation>No se ha dicho cuándo se compararon estas cifras con la etiqueta en la mano.</translation>
    </message>
    <message>
        <source>These figures were compared with the label in hand on {1}; the day of work is {2}.</source>
        <translation>Estas cifras se compararon con la etiqueta en la mano el {1}; el día del trabajo es el {2}.</translation>
    </message>
    <message>
        <source>zinc phosphide</source>
        <translation>fosfuro de zinc</translation>
    </message>
    <message>
        <source>strychnine</source>
        <translation>estricnina</translation>
    </message>
    <message>
        <source>anticoagulant</source>
        <translation>anticoagulante</translation>
    </message>
    <message>
        <source>aluminium phosphide</source>
        <translation>fosfuro de aluminio</translation>
    </message>
    <message>
        <source>magnesium phosphide</source>
        <translation>fosfuro de magnesio</translation>
    </message>
    <message>
        <source>smoke of a cartridge</source>
        <translation>humo de cartucho</translation>
    </message>
    <message>
        <source>another ingredient</source>
        <translation>otro ingrediente</translation>
    </message>
    <message>
        <source>{1}: {2} is typed, a number above 0 is expected.</source>
        <translation>{1}: se escribió {2}, se espera un número mayor que 0.</translation>
    </message>
    <message>
        <source>{1}: {2} is typed, a number of 0 or more is expected.</source>
        <translation>{1}: se escribió {2}, se espera un número de 0 o más.</translation>
    </message>
    <message>
        <source>Least amount a placement</source>
        <translation>Cantidad mínima por colocación</translation>
    </message>
    <message>
        <source>Most a placement</source>
        <translation>Cantidad máxima por colocación</translation>
    </message>
    <message>
        <source>Most on an area</source>
        <translation>Máximo por superficie</translation>
    </message>
    <message>
        <source>Most of a season</source>
        <translation>Máximo por temporada</translation>
    </message>
    <message>
        <source>Placements in a system</source>
        <translation>Colocaciones por sistema</translation>
    </message>
    <message>
        <source>Treatments of a season</source>
        <translation>Tratamientos por temporada</translation>
    </message>
    <message>
        <source>Days between treatments</source>
        <translation>Días entre tratamientos</translation>
    </message>
    <message>
        <source>Hours until anyone may enter again</source>
        <translation>Horas hasta que alguien pueda volver a entrar</translation>
    </message>
    <message>
        <source>Grams a millilitre</source>
        <translation>Gramos por mililitro</translation>
    </message>
    <message>
        <source>Distance between placements</source>
        <translation>Distancia entre colocaciones</translation>
    </message>
    <message>
        <source>Distance to buildings</source>
        <translation>Distancia a edificios</translation>
    </message>
    <message>
        <source>Distance to water</source>
        <translation>Distancia al agua</translation>
    </message>
    <message>
        <source>The least amount a placement, {1}, is above the most, {2}.</source>
        <translation>La cantidad mínima por colocación, {1}, es mayor que la máxima, {2}.</translation>
    </message>
    <message>
        <source>The least and the most amount a placement, {1} and {2}, are not of one kind.</source>
        <translation>La cantidad mínima y la máxima por colocación, {1} y {2}, no son de la misma clase.</translation>
    </message>
    <message>
        <source>{1} m ({2} ft)</source>
        <translation>{1} m ({2} pies)</translation>
    </message>
    <message>
        <source>{1}: {2}, {3} with the reserve.</source>
        <translation>{1}: {2}, {3} con la reserva.</translation>
    </message>
    <message>
        <source>{1}: {2}.</source>
        <translation>{1}: {2}.</translation>
    </message>
    <message>
        <source>No label has been typed in: no amount of bait or fumigant is computed.</source>
        <translation>No se ha escrito ninguna etiqueta: no se calcula ninguna cantidad de cebo ni de fumigante.</translation>
    </message>
    <message>
        <source>The label&apos;s amount a placement, or yours, has not been typed in: no amount is computed.</source>
        <translation>No se ha escrito la cantidad de la etiqueta por colocación, o la suya: no se calcula ninguna cantidad.</translation>
    </message>
    <message>
        <source>One placement is to get {1}, which cannot be compared with the label&apos;s {2} or goes beyond it: no amount is computed.</source>
        <translation>Una colocación llevaría {1}, que no se puede comparar con {2} de la etiqueta o pasa de ahí: no se calcula ninguna cantidad.</translation>
    </message>
    <message>
        <source>bait or fumigant</source>
        <translation>cebo o fumigante</translation>
    </message>
    <message>
        <source>{1}: {2} for {3} placements, {4} with the reserve.</source>
        <translation>{1}: {2} para {3} colocaciones, {4} con la reserva.</translation>
    </message>
    <message>
        <source>By weight {1} ({2}).</source>
        <translation>En peso {1} ({2}).</translation>
    </message>
    <message>
        <source>{1} minutes a hole; holes by each ladder&apos;s own chances, from the first rung to the one that finds the run or the last; minutes of each set about its method&apos;s mean; one ladder and set apart from another; without the way between them.</source>
        <translation>{1} minutos por hoyo; hoyos según las probabilidades de cada fila, del primer sondeo al que da con el túnel o al último; minutos de cada punto alrededor de la media de su método; cada fila y punto independiente de los demás; sin el camino entre ellos.</translation>
    </message>
    <message>
        <source>One set has no method yet: only its holes are counted.</source>
        <translation>Un punto aún no tiene método: solo se cuentan sus hoyos.</translation>
    </message>
    <message>
        <source>{1} sets have no method yet: only their holes are counted.</source>
        <translation>{1} puntos aún no tienen método: solo se cuentan sus hoyos.</translation>
    </message>
    <message>
        <source>A method of your own wants a name.</source>
        <translation>Un método propio necesita un nombre.</translation>
    </message>
    <message>
        <source>{1}: a method of your own is kept under a name of its own, &quot;own-&quot; and a number.</source>
        <translation>{1}: un método propio se guarda con un nombre aparte, «own-» y un número.</translation>
    </message>
    <message>
        <source>{1}: write at least one step, and none that is empty.</source>
        <translation>{1}: escriba al menos un paso, y ninguno vacío.</translation>
    </message>
    <message>
        <source>{1}: minutes are numbers of 0 or more.</source>
        <translation>{1}: los minutos son números de 0 o más.</translation>
    </message>
    <message>
        <source>{1}: a set has one placement or more.</source>
        <translation>{1}: un punto tiene una colocación o más.</translation>
    </message>
    <message>
        <source>{1}: the hours between two checks are more than 0.</source>
        <translation>{1}: las horas entre dos revisiones son más de 0.</translation>
    </message>
    <message>
        <source>{1}: what a set needs are numbers of 0 or more.</source>
        <translation>{1}: lo que necesita un punto son números de 0 o más.</translation>
    </message>
    <message>
        <source>This method closes every hole.</source>
        <translation>Este método cierra cada hoyo.</translation>
    </message>
    <message>
        <source>This method, as it was written, leaves the hole open.</source>
        <translation>Este método, como se escribió, deja el hoyo abierto.</translation>
    </message>
    <message>
        <source>Cover: children come here.</source>
        <translation>Tape: aquí vienen niños.</translation>
    </message>
    <message>
        <source>Cover: it is not known whether children come here.</source>
        <translation>Tape: no se sabe si aquí vienen niños.</translation>
    </message>
    <message>
        <source>Cover: pets come here.</source>
        <translation>Tape: aquí vienen mascotas.</translation>
    </message>
    <message>
        <source>Cover: it is not known whether pets come here.</source>
        <translation>Tape: no se sabe si aquí vienen mascotas.</translation>
    </message>
    <message>
        <source>Cover: stock comes here.</source>
        <translation>Tape: aquí viene ganado.</translation>
    </message>
    <message>
        <source>Cover: it is not known whether stock comes here.</source>
        <translation>Tape: no se sabe si aquí viene ganado.</translation>
    </message>
    <message>
        <source>Cover: other people come here.</source>
        <translation>Tape: aquí viene otra gente.</translation>
    </message>
    <message>
        <source>Cover: it is not known whether other people come here.</source>
        <translation>Tape: no se sabe si aquí viene otra gente.</translation>
    </message>
    <message>
        <source>Nobody was said to come here: open or covered made no clear difference to the catch overall; covering helped in late spring and early summer (Baldwin et al. 2013).</source>
        <translation>Según lo dicho, aquí no viene nadie: abierto o tapado no cambió claramente la captura en conjunto; tapar ayudó a fines de primavera y principios de verano (Baldwin et al. 2013).</translation>
    </message>
    <message>
        <source>traps</source>
        <translation>trampas</translation>
    </message>
    <message>
        <source>stakes</source>
        <translation>estacas</translation>
    </message>
    <message>
        <source>wire or cable</source>
        <translation>alambre o cable</translation>
    </message>
    <message>
        <source>flags</source>
        <translation>banderitas</translation>
    </message>
    <message>
        <source>covers</source>
        <translation>tapas</translation>
    </message>
    <message>
        <source>signs</source>
        <translation>letreros</translation>
    </message>
    <message>
        <source>pairs of gloves</source>
        <translation>pares de guantes</translation>
    </message>
    <message>
        <source>Children come here.</source>
        <translation>Aquí vienen niños.</translation>
    </message>
    <message>
        <source>Other people come here.</source>
        <translation>Aquí viene otra gente.</translation>
    </message>
    <message>
        <source>Pets come here.</source>
        <translation>Aquí vienen mascotas.</translation>
    </message>
    <message>
        <source>Stock comes here.</source>
        <translation>Aquí viene ganado.</translation>
    </message>
    <message>
        <source>The wildlife agency was asked and has not answered yet.</source>
        <translation>Se preguntó a la autoridad de fauna silvestre y aún no ha contestado.</translation>
    </message>
    <message>
        <source>A protected animal is known here.</source>
        <translation>Aquí se conoce un animal protegido.</translation>
    </message>
    <message>
        <source>The wildlife agency knows of none here.</source>
        <translation>La autoridad de fauna silvestre no conoce ninguno aquí.</translation>
    </message>
    <message>
        <source>The wildlife agency has named its terms.</source>
        <translation>La autoridad de fauna silvestre dijo sus condiciones.</translation>
    </message>
    <message>
        <source>The wildlife agency has named no terms.</source>
        <translation>La autoridad de fauna silvestre no puso condiciones.</translation>
    </message>
    <message>
        <source>Neither people nor pets nor stock were said to come here.</source>
        <translation>Según lo dicho, aquí no vienen ni personas ni mascotas ni ganado.</translation>
    </message>
    <message>
        <source>The law on traps was read.</source>
        <translation>Se leyó la ley sobre trampas.</translation>
    </message>
    <message>
        <source>The law on traps has not been read yet.</source>
        <translation>Aún no se ha leído la ley sobre trampas.</translation>
    </message>
    <message>
        <source>The method names no time between two checks.</source>
        <translation>El método no dice cada cuánto se revisa.</translation>
    </message>
    <message>
        <source>The method checks its traps every {1} hours.</source>
        <translation>El método revisa sus trampas cada {1} horas.</translation>
    </message>
    <message>
        <source>The lines were marked out.</source>
        <translation>Las líneas están señaladas.</translation>
    </message>
    <message>
        <source>The one-call service was called, and the lines are not marked yet.</source>
        <translation>Se llamó al servicio de localización, y las líneas aún no están señaladas.</translation>
    </message>
    <message>
        <source>The one-call service has not been called.</source>
        <translation>No se ha llamado al servicio de localización de líneas.</translation>
    </message>
    <message>
        <source>The label&apos;s ingredient is another one.</source>
        <translation>El ingrediente de la etiqueta es otro.</translation>
    </message>
    <message>
        <source>The soil is not wet, and neither rain nor irrigation is due.</source>
        <translation>El suelo no está mojado, y no se espera lluvia ni riego.</translation>
    </message>
    <message>
        <source>The soil is wet.</source>
        <translation>El suelo está mojado.</translation>
    </message>
    <message>
        <source>Rain is due in the next three days.</source>
        <translation>Se espera lluvia en los próximos tres días.</translation>
    </message>
    <message>
        <source>Irrigation is due in the next three days.</source>
        <translation>Toca riego en los próximos tres días.</translation>
    </message>
    <message>
        <source>This method puts bait on the surface.</source>
        <translation>Este método pone cebo en la superficie.</translation>
    </message>
    <message>
        <source>This method puts bait below the ground.</source>
        <translation>Este método pone el cebo bajo tierra.</translation>
    </message>
    <message>
        <source>The pesticide office says that it is withdrawn or banned here.</source>
        <translation>La oficina de plaguicidas dice que aquí está retirada o prohibida.</translation>
    </message>
    <message>
        <source>The pesticide office has not been asked.</source>
        <translation>No se ha preguntado a la oficina de plaguicidas.</translation>
    </message>
    <message>
        <source>The pesticide office has named its terms.</source>
        <translation>La oficina de plaguicidas dijo sus condiciones.</translation>
    </message>
    <message>
        <source>No applicator&apos;s licence is held, or it has run out.</source>
        <translation>No se tiene licencia de aplicador, o ya venció.</translation>
    </message>
    <message>
        <source>A licence is held that has not run out.</source>
        <translation>Se tiene una licencia que no ha vencido.</translation>
    </message>
    <message>
        <source>The management plan is not in hand.</source>
        <translation>No se tiene en la mano el plan de manejo.</translation>
    </message>
    <message>
        <source>The management plan is in hand.</source>
        <translation>Se tiene en la mano el plan de manejo.</translation>
    </message>
    <message>
        <source>A home, school, nursing home, day care or hospital stands on the property.</source>
        <translation>En la propiedad hay una casa, escuela, asilo, guardería u hospital.</translation>
    </message>
    <message>
        <source>None of these stands on the property, athletic fields of schools apart.</source>
        <translation>En la propiedad no hay nada de eso, salvo canchas deportivas de escuelas.</translation>
    </message>
    <message>
        <source>The soil is warm enough, and not both dry and loose or cracked.</source>
        <translation>El suelo no está frío, ni a la vez seco y suelto o agrietado.</translation>
    </message>
    <message>
        <source>The soil is dry, and loose or cracked.</source>
        <translation>El suelo está seco, y suelto o agrietado.</translation>
    </message>
    <message>
        <source>The method wants the lateral of a mound; this place lies between mounds.</source>
        <translation>El método quiere el túnel lateral de un montículo; este lugar queda entre montículos.</translation>
    </message>
    <message>
        <source>The method wants the run between mounds; this place is on the plug side of one.</source>
        <translation>El método quiere el túnel entre montículos; este lugar está del lado del tapón de uno.</translation>
    </message>
    <message>
        <source>The place is of the kind that the method wants.</source>
        <translation>El lugar es de la clase que el método quiere.</translation>
    </message>
    <message>
        <source>The neighbours were told.</source>
        <translation>Se avisó a los vecinos.</translation>
    </message>
    <message>
        <source>The neighbours have not been told.</source>
        <translation>No se ha avisado a los vecinos.</translation>
    </message>
    <message>
        <source>The ground is frozen.</source>
        <translation>El suelo está helado.</translation>
    </message>
    <message>
        <source>The ground is not frozen.</source>
        <translation>El suelo no está helado.</translation>
    </message>
    <message>
        <source>This holds at every set.</source>
        <translation>Esto vale en cada punto.</translation>
    </message>
    <message>
        <source>A label was typed in.</source>
        <translation>Se escribió una etiqueta.</translation>
    </message>
    <message>
        <source>No label has been typed in.</source>
        <translation>No se ha escrito ninguna etiqueta.</translation>
    </message>
    <message>
        <source>No figure that was typed from the label is gone beyond.</source>
        <translation>No se pasa de ninguna cifra que se escribió de la etiqueta.</translation>
    </message>
    <message>
        <source>This system may come within {1} m ({2} ft) of a building; the label names {3} m ({4} ft) at least.</source>
        <translation>Este sistema puede llegar a {1} m ({2} pies) de un edificio; la etiqueta dice {3} m ({4} pies) como mínimo.</translation>
    </message>
    <message>
        <source>This system may come within {1} m ({2} ft) of water; the label names {3} m ({4} ft) at least.</source>
        <translation>Este sistema puede llegar a {1} m ({2} pies) del agua; la etiqueta dice {3} m ({4} pies) como mínimo.</translation>
    </message>
    <message>
        <source>The distances that the label names are kept on the map.</source>
        <translation>En el mapa se guardan las distancias que dice la etiqueta.</translation>
    </message>
    <message>
        <source>The label names {1} hours.</source>
        <translation>La etiqueta dice {1} horas.</translation>
    </message>
    <message>
        <source>The label names no such hours.</source>
        <translation>La etiqueta no dice horas de esas.</translation>
    </message>
    <message>
        <source>The label names for {1}: {2}.</source>
        <translation>La etiqueta dice para {1}: {2}.</translation>
    </message>
    <message>
        <source>What the label names for this method&apos;s tools was not typed in.</source>
        <translation>No se escribió lo que dice la etiqueta para las herramientas de este método.</translation>
    </message>
    <message>
        <source>The label is not of restricted use.</source>
        <translation>La etiqueta no es de uso restringido.</translation>
    </message>
    <message>
        <source>without a name</source>
        <translation>sin nombre</translation>
    </message>
    <message>
        <source>System {1} may come within 100 ft (30 m) of {2}, with a chance of {3} in 100 at its likeliest place.</source>
        <translation>El sistema {1} puede llegar a menos de 100 pies (30 m) de {2}, con una probabilidad de {3} en 100 en su lugar más probable.</translation>
    </message>
    <message>
        <source>No building of the map lies within 100 ft (30 m) of where this system may reach.</source>
        <translation>Ningún edificio del mapa queda a menos de 100 pies (30 m) de donde puede llegar este sistema.</translation>
    </message>
    <message>
        <source>No well of the map lies within 100 ft (30 m) of where this system may reach, and no other water was told of.</source>
        <translation>Ningún pozo del mapa queda a menos de 100 pies (30 m) de donde puede llegar este sistema, y no se dijo de otra agua.</translation>
    </message>
    <message>
        <source>A well, spring, pond or ditch was told of that is not on the map.</source>
        <translation>Se dijo de un pozo, manantial, estanque o zanja que no está en el mapa.</translation>
    </message>
    <message>
        <source>No play area of the map lies within 100 ft (30 m) of where this system may reach.</source>
        <translation>Ninguna área de juegos del mapa queda a menos de 100 pies (30 m) de donde puede llegar este sistema.</translation>
    </message>
    <message>
        <source>The probe row reaches into {1}.</source>
        <translation>La fila de sondeo entra en {1}.</translation>
    </message>
    <message>
        <source>The probe row reaches into no area that is to be kept clear.</source>
        <translation>La fila de sondeo no entra en ningún área vedada.</translation>
    </message>
    <message>
        <source>The edge of {1} lies within 16 ft (5 m) of the probe row.</source>
        <translation>El borde de {1} queda a menos de 16 pies (5 m) de la fila de sondeo.</translation>
    </message>
    <message>
        <source>No edge of such an area lies within 16 ft (5 m) of the probe row.</source>
        <translation>Ningún borde de un área así queda a menos de 16 pies (5 m) de la fila de sondeo.</translation>
    </message>
    <message>
        <source>No buried line of the map lies within 16 ft (5 m) of the probe row.</source>
        <translation>Ninguna línea enterrada del mapa queda a menos de 16 pies (5 m) de la fila de sondeo.</translation>
    </message>
    <message>
        <source>{1} lies within 16 ft (5 m) of the probe row, and has not been marked out.</source>
        <translation>{1} queda a menos de 16 pies (5 m) de la fila de sondeo, y no se ha señalado.</translation>
    </message>
    <message>
        <source>The note of {1} says: {2}.</source>
        <translation>La nota de {1} dice: {2}.</translation>
    </message>
    <message>
        <source>No note of the walk near this set speaks of it.</source>
        <translation>Ninguna nota del recorrido cerca de este punto habla de ello.</translation>
    </message>
    <message>
        <source>There is no caution &quot;{1}&quot; to sign.</source>
        <translation>No hay ninguna advertencia «{1}» que firmar.</translation>
    </message>
    <message>
        <source>A stop cannot be signed away: change the method, the place or what stands against it.</source>
        <translation>Un alto no se puede quitar con una firma: cambie el método, el lugar o lo que habla en contra.</translation>
    </message>
    <message>
        <source>This caution holds nothing back: there is nothing to sign.</source>
        <translation>Esta advertencia no frena nada: no hay nada que firmar.</translation>
    </message>
    <message>
        <source>Whoever signs gives their name.</source>
        <translation>Quien firma da su nombre.</translation>
    </message>
    <message>
        <source>Whoever signs gives a reason.</source>
        <translation>Quien firma da una razón.</translation>
    </message>
    <message>
        <source>oz</source>
        <translation>oz</translation>
    </message>
    <message>
        <source>lb</source>
        <translation>lb</translation>
    </message>
    <message>
        <source>teaspoons</source>
        <translation>cucharaditas</translation>
    </message>
    <message>
        <source>teaspoon</source>
        <translation>cucharadita</translation>
    </message>
    <message>
        <source>tablespoons</source>
        <translation>cucharadas</translation>
    </message>
    <message>
        <source>tablespoon</source>
        <translation>cucharada</translation>
    </message>
    <message>
        <source>cups</source>
        <translation>tazas</translation>
    </message>
    <message>
        <source>cup</source>
        <translation>taza</translation>
    </message>
    <message>
        <source>tablets</source>
        <translation>pastillas</translation>
    </message>
    <message>
        <source>tablet</source>
        <translation>pastilla</translation>
    </message>
    <message>
        <source>cartridges</source>
        <translation>cartuchos</translation>
    </message>
    <message>
        <source>cartridge</source>
        <translation>cartucho</translation>
    </message>
    <message>
        <source>{1} per acre</source>
        <translation>{1} por acre</translation>
    </message>
    <message>
        <source>{1} per hectare</source>
        <translation>{1} por hectárea</translation>
    </message>
    <message>
        <source>The soil has {1} °C ({2} °F), less than 4.4 °C (40 °F).</source>
        <translation>El suelo está a {1} °C ({2} °F), menos de 4.4 °C (40 °F).</translation>
    </message>
    <message>
        <source>one of the words of this answer</source>
        <translation>una de las palabras de esta respuesta</translation>
    </message>
    <message>
        <source>yes or no</source>
        <translation>yes o no</translation>
    </message>
    <message>
        <source>a length as 30 m or 100 ft</source>
        <translation>una longitud como 30 m o 100 ft</translation>
    </message>
    <message>
        <source>an amount as 1 teaspoons or 20 grams</source>
        <translation>una cantidad como 1 teaspoons o 20 grams</translation>
    </message>
    <message>
        <source>a rate as 1 pounds per acre</source>
        <translation>una dosis como 1 pounds per acre</translation>
    </message>
    <message>
        <source>a day as 2025-04-10</source>
        <translation>un día como 2025-04-10</translation>
    </message>
    <message>
        <source>a time as 2025-04-10T12:00:00Z</source>
        <translation>una hora como 2025-04-10T12:00:00Z</translation>
    </message>
    <message>
        <source>a day, millimetres of rain and of irrigation, as 2025-04-10 5 -</source>
        <translation>un día, milímetros de lluvia y de riego, como 2025-04-10 5 -</translation>
    </message>
    <message>
        <source>a day that can be read in one way only, as 2025-04-10</source>
        <translation>un día que se lea de una sola manera, como 2025-04-10</translation>
    </message>
    <message>
        <source>millimetres or inches of 0 or more</source>
        <translation>milímetros o pulgadas de 0 o más</translation>
    </message>
    <message>
        <source>a day, rain, and irrigation</source>
        <translation>un día, lluvia y riego</translation>
    </message>
    <message>
        <source>each day once</source>
        <translation>cada día una vez</translation>
    </message>
    <message>
        <source>a second row of this name</source>
        <translation>una segunda fila con este nombre</translation>
    </message>
    <message>
        <source>one row of each name</source>
        <translation>una fila por nombre</translation>
    </message>
    <message>
        <source>a name of an answer, a method or a figure of the label</source>
        <translation>el nombre de una respuesta, de un método o de una cifra de la etiqueta</translation>
    </message>
    <message>
        <source>a name, =, and a value</source>
        <translation>un nombre, = y un valor</translation>
    </message>
    <message>
        <source>Runs of system {4} that may be of system {1} may come within 100 ft (30 m) of {2}: both with a chance of {3} in 100.</source>
        <translation>Túneles del sistema {4} que pueden ser del sistema {1} pueden llegar a menos de 100 pies (30 m) de {2}: las dos cosas con una probabilidad de {3} en 100.</translation>
    </message>
    <message>
        <source>found {1}, expected a sentence that begins with &quot;$&quot;.</source>
        <translation>se encontró {1}, se esperaba una sentencia que empiece con &quot;$&quot;.</translation>
    </message>
    <message>
        <source>found {1}, expected a sum of two digits behind a &quot;*&quot; at its end.</source>
        <translation>se encontró {1}, se esperaba al final una suma de dos dígitos tras un &quot;*&quot;.</translation>
    </message>
    <message>
        <source>the sum says {1}, but the sentence makes {2}: something of {3} was lost.</source>
        <translation>la suma dice {1}, pero la sentencia da {2}: algo de {3} se perdió.</translation>
    </message>
    <message>
        <source>found {1}, expected the kind of a sentence.</source>
        <translation>se encontró {1}, se esperaba el tipo de una sentencia.</translation>
    </message>
    <message>
        <source>last line</source>
        <translation>última línea</translation>
    </message>
    <message>
        <source>line {1} from the end</source>
        <translation>línea {1} desde el final</translation>
    </message>
    <message>
        <source>the place or time of {1} was not understood.</source>
        <translation>el lugar o la hora de {1} no se entendió.</translation>
    </message>
    <message>
        <source>a &lt;{1}&gt; near the end: found other elements in it, expected one position.</source>
        <translation>un &lt;{1}&gt; cerca del final: se encontraron otros elementos en él, se esperaba una posición.</translation>
    </message>
    <message>
        <source>a &lt;{1}&gt; near the end: found {2}, expected {3}.</source>
        <translation>un &lt;{1}&gt; cerca del final: se encontró {2}, se esperaba {3}.</translation>
    </message>
    <message>
        <source>found {1}, expected a position.</source>
        <translation>se encontró {1}, se esperaba una posición.</translation>
    </message>
    <message>
        <source>a file that a receiver&apos;s program writes: NMEA sentences, GPX, or a table</source>
        <translation>un archivo que escriba el programa de un receptor: sentencias NMEA, GPX o una tabla</translation>
    </message>
    <message>
        <source>{1} is no text: expected NMEA sentences, GPX, or a table.</source>
        <translation>{1} no es texto: se esperaban sentencias NMEA, GPX o una tabla.</translation>
    </message>
    <message>
        <source>Mounds stand {1} m ({4} ft) from their nearest here, unlike the {2} to {3} m ({5} to {6} ft) this was built for: take the systems as rough.</source>
        <translation>Aquí los montículos están a {1} m ({4} pies) del más cercano, a diferencia de los {2} a {3} m ({5} a {6} pies) para los que esto se hizo: tome los sistemas como aproximados.</translation>
    </message>
    <message>
        <source>How seeing falls off with distance is a default, about as if all mounds within {1} of the walker were seen: {2}.</source>
        <translation>Cómo se va viendo menos con la distancia es un valor supuesto, más o menos como si se vieran todos los montículos a menos de {1} de quien camina: {2}.</translation>
    </message>
    <message>
        <source>How seeing falls off with distance was learnt from {1} marks of this walk (half-normal curve): as if all mounds within {2} of the line were seen and none beyond.</source>
        <translation>Cómo se va viendo menos con la distancia se aprendió de {1} marcas de este recorrido (curva seminormal): como si se vieran todos los montículos a menos de {2} de la línea y ninguno más allá.</translation>
    </message>
    <message>
        <source>How seeing falls off with distance was learnt from {1} marks of this walk (hazard-rate curve): as if all mounds within {2} of the line were seen and none beyond.</source>
        <translation>Cómo se va viendo menos con la distancia se aprendió de {1} marcas de este recorrido (curva de tasa de riesgo): como si se vieran todos los montículos a menos de {2} de la línea y ninguno más allá.</translation>
    </message>
    <message>
        <source>The track has gaps of {1} in all: they are taken as not walked.</source>
        <translation>La traza tiene huecos de {1} en total: se toman como no caminados.</translation>
    </message>
    <message>
        <source>{1} of the track were faster than a walk: they are taken as not searched.</source>
        <translation>{1} de la traza fueron más rápidos que a pie: se toman como no revisados.</translation>
    </message>
    <message>
        <source>An address of tiles begins with https:// or http://.</source>
        <translation>Una dirección de teselas empieza con https:// o http://.</translation>
    </message>
    <message>
        <source>The address holds blanks or characters that no address has.</source>
        <translation>La dirección tiene espacios o caracteres que ninguna dirección tiene.</translation>
    </message>
    <message>
        <source>The address holds a name and password; they would be sent with every tile.</source>
        <translation>La dirección lleva un nombre y una contraseña; se enviarían con cada tesela.</translation>
    </message>
    <message>
        <source>“{1}” is no single server&apos;s name.</source>
        <translation>«{1}» no es el nombre de un solo servidor.</translation>
    </message>
    <message>
        <source>The address names the level as {z}, the column as {x} and the row as {y}, each once.</source>
        <translation>La dirección nombra el nivel como {z}, la columna como {x} y la fila como {y}, cada uno una vez.</translation>
    </message>
    <message>
        <source>The address holds a place other than {z}, {x}, {y} or {-y}.</source>
        <translation>La dirección tiene un lugar que no es {z}, {x}, {y} ni {-y}.</translation>
    </message>
    <message>
        <source>a file of layers with lines or areas: GeoPackage, GeoJSON, KML, Shapefile</source>
        <translation>un archivo de capas con líneas o áreas: GeoPackage, GeoJSON, KML, Shapefile</translation>
    </message>
    <message>
        <source>lines that all lie further than 50 km from the field</source>
        <translation>líneas que están todas a más de 50 km del campo</translation>
    </message>
    <message>
        <source>no line and no area</source>
        <translation>ninguna línea y ningún área</translation>
    </message>
    <message>
        <source>as many places as spots</source>
        <translation>tantos lugares como puntos de la imagen</translation>
    </message>
    <message>
        <source>No gate is drawn on the way to set {1}: a barrier, a building or an edge of the field lies between. Draw a gate where one gets across, and the walking order goes through it.</source>
        <translation>No hay puerta dibujada en el camino al punto {1}: entre medio hay una barrera, un edificio o un borde del terreno. Dibuje una puerta por donde se pueda pasar, y el orden del recorrido irá por ella.</translation>
    </message>
    <message>
        <source>No gate is drawn on the way to sets {1}: a barrier, a building or an edge of the field lies between. Draw a gate where one gets across, and the walking order goes through it.</source>
        <translation>No hay puerta dibujada en el camino a los puntos {1}: entre medio hay una barrera, un edificio o un borde del terreno. Dibuje una puerta por donde se pueda pasar, y el orden del recorrido irá por ella.</translation>
    </message>
    <message>
        <source>the file&apos;s work order is not used: the field has another already</source>
        <translation>la orden de trabajo del archivo no se usa: el terreno ya tiene otra</translation>
    </message>
    <message>
        <source>of the work order this is not used: found {1}, expected {2}</source>
        <translation>esto de la orden de trabajo no se usa: se halló {1}, se esperaba {2}</translation>
    </message>
    <message>
        <source>signatures without a name do not count ({1} of them): sign again what is held back</source>
        <translation>las firmas sin nombre no cuentan (son {1}): vuelva a firmar lo retenido</translation>
    </message>
    <message>
        <source>writing the field sheets</source>
        <translation>escribiendo las hojas de campo</translation>
    </message>
    <message>
        <source>a stop</source>
        <translation>una parada</translation>
    </message>
    <message>
        <source>time to write it</source>
        <translation>tiempo para escribirlo</translation>
    </message>
    <message>
        <source>1 text was cut at 254 bytes.</source>
        <translation>Se cortó 1 texto a 254 bytes.</translation>
    </message>
    <message>
        <source>{1} texts were cut at 254 bytes.</source>
        <translation>Se cortaron {1} textos a 254 bytes.</translation>
    </message>
    <message>
        <source>Only the sets that are not dropped, each with its name, chance and instruction: no animals&apos; systems, runs, mounds or ground.</source>
        <translation>Solo los puntos que no se quitaron, cada uno con su nombre, probabilidad e instrucción: ni sistemas de los animales, ni túneles, ni montículos, ni terreno.</translation>
    </message>
    <message>
        <source>Every line end within a text becomes a space.</source>
        <translation>Cada fin de línea dentro de un texto se convierte en un espacio.</translation>
    </message>
    <message>
        <source>Names of columns have ten characters at most: the legend beside the files says what each stands for.</source>
        <translation>Los nombres de columna tienen diez caracteres como máximo: la leyenda junto a los archivos dice qué significa cada uno.</translation>
    </message>
    <message>
        <source>Texts are cut at 254 bytes.</source>
        <translation>Los textos se cortan a 254 bytes.</translation>
    </message>
    <message>
        <source>No times of day: they stand as texts, in UTC.</source>
        <translation>Sin horas del día: figuran como textos, en UTC.</translation>
    </message>
    <message>
        <source>A text that is missing cannot be told from an empty one.</source>
        <translation>Un texto que falta no se distingue de uno vacío.</translation>
    </message>
    <message>
        <source>Times stand as texts, in UTC.</source>
        <translation>Las horas figuran como textos, en UTC.</translation>
    </message>
    <message>
        <source>Conditions, method and label are not in it.</source>
        <translation>No contiene condiciones, método ni etiqueta.</translation>
    </message>
    <message>
        <source>Only sets, probe points, mounds and how the work is done: no lines and no areas.</source>
        <translation>Solo puntos, filas de sondeo, montículos y cómo se trabaja: ni líneas ni áreas.</translation>
    </message>
    <message>
        <source>Only the GeoPackage gives your decisions back when it is opened again.</source>
        <translation>Solo el GeoPackage le devuelve sus decisiones al abrirlo otra vez.</translation>
    </message>
    <message>
        <source>Names of people, licence numbers and reasons are left out.</source>
        <translation>Se omiten los nombres de personas, números de licencia y motivos.</translation>
    </message>
    <message>
        <source>Names of people, licence numbers, reasons and notes are left out.</source>
        <translation>Se omiten los nombres de personas, números de licencia, motivos y notas.</translation>
    </message>
    <message>
        <source>a link, device or pipe under the name {1}</source>
        <translation>un enlace, dispositivo o tubería con el nombre {1}</translation>
    </message>
    <message>
        <source>Names of columns in these Shapefiles, which hold ten characters at most, and what they stand for.</source>
        <translation>Nombres de columna en estos Shapefiles, que admiten diez caracteres como máximo, y lo que significan.</translation>
    </message>
    <message>
        <source>WGS 84 longitude and latitude; texts in UTF-8; times in UTC, written as texts.</source>
        <translation>Longitud y latitud WGS 84; textos en UTF-8; horas en UTC, escritas como textos.</translation>
    </message>
    <message>
        <source>Texts that were cut at {1} bytes: {2}.</source>
        <translation>Textos cortados a {1} bytes: {2}.</translation>
    </message>
    <message>
        <source>Baldwin et al. 2013</source>
        <translation>Baldwin et al. 2013</translation>
    </message>
    <message>
        <source>The method puts down a fumigant, and the label&apos;s ingredient is a bait.</source>
        <translation>El método pone un fumigante, y el ingrediente de la etiqueta es un cebo.</translation>
    </message>
    <message>
        <source>The method puts down bait, and the label&apos;s ingredient is a fumigant.</source>
        <translation>El método pone cebo, y el ingrediente de la etiqueta es un fumigante.</translation>
    </message>
    <message>
        <source>The label&apos;s ingredient is none of those known here: read whether it is for this method.</source>
        <translation>El ingrediente de la etiqueta no es ninguno de los que aquí se conocen: lea si es para este método.</translation>
    </message>
    <message>
        <source>The label&apos;s ingredient goes with the method.</source>
        <translation>El ingrediente de la etiqueta corresponde al método.</translation>
    </message>
    <message>
        <source>a latitude and a longitude in degrees, as in 38.5412 -121.7405</source>
        <translation>una latitud y una longitud en grados, como 38.5412 -121.7405</translation>
    </message>
    <message>
        <source>places of sets, as in plug-side:M12 between:M12:M13</source>
        <translation>lugares de puntos, como plug-side:M12 between:M12:M13</translation>
    </message>
    <message>
        <source>a whole number of people from 1 to 50</source>
        <translation>un número entero de personas, de 1 a 50</translation>
    </message>
    <message>
        <source>1 to 1440 minutes</source>
        <translation>de 1 a 1440 minutos</translation>
    </message>
    <message>
        <source>a whole number from 1 up</source>
        <translation>un número entero desde 1</translation>
    </message>
    <message>
        <source>What was not seen is not known: the walk has no track in the field.</source>
        <translation>No se sabe qué no se vio: el recorrido no tiene traza en el campo.</translation>
    </message>
    <message>
        <source>Walked: {1}; not walked: {2}.</source>
        <translation>Caminado: {1}; no caminado: {2}.</translation>
    </message>
    <message>
        <source>Walked: {1}.</source>
        <translation>Caminado: {1}.</translation>
    </message>
    <message>
        <source>1 mark</source>
        <translation>1 marca</translation>
    </message>
    <message>
        <source>{1} marks</source>
        <translation>{1} marcas</translation>
    </message>
    <message>
        <source>1 mound</source>
        <translation>1 montículo</translation>
    </message>
    <message>
        <source>1 system</source>
        <translation>1 sistema</translation>
    </message>
    <message>
        <source>{1} systems</source>
        <translation>{1} sistemas</translation>
    </message>
    <message>
        <source>1 run</source>
        <translation>1 túnel</translation>
    </message>
    <message>
        <source>{1} runs</source>
        <translation>{1} túneles</translation>
    </message>
    <message>
        <source>1 probe site</source>
        <translation>1 lugar de sondeo</translation>
    </message>
    <message>
        <source>{1} probe sites</source>
        <translation>{1} lugares de sondeo</translation>
    </message>
    <message>
        <source>{1}: {2}, {3} used.</source>
        <translation>{1}: {2}, de las que se usan {3}.</translation>
    </message>
    <message>
        <source>left out, {1}: {2}</source>
        <translation>no se usan, {1}: {2}</translation>
    </message>
    <message>
        <source>area walked unknown: no track</source>
        <translation>área caminada desconocida: no hay traza</translation>
    </message>
    <message>
        <source>on {1} walked of {2}</source>
        <translation>en {1} caminados de {2}</translation>
    </message>
    <message>
        <source>on {1} walked</source>
        <translation>en {1} caminados</translation>
    </message>
    <message>
        <source>Animals: {1} to {2} ({3} in 100), expected {4}, {5}.</source>
        <translation>Animales: {1} a {2} ({3} de cada 100), se esperan {4}, {5}.</translation>
    </message>
    <message>
        <source>{1}: {2}, one animal&apos;s with {3} in 100, {4} of run, {5}</source>
        <translation>{1}: {2}, de un solo animal en {3} de cada 100, {4} de túnel, {5}</translation>
    </message>
    <message>
        <source>What else may be true, of {1}:</source>
        <translation>Qué más puede ser cierto, de {1}:</translation>
    </message>
    <message>
        <source>What else may be true:</source>
        <translation>Qué más puede ser cierto:</translation>
    </message>
    <message>
        <source>1 mound may well be another system&apos;s</source>
        <translation>1 montículo bien puede ser de otro sistema</translation>
    </message>
    <message>
        <source>{1} mounds may well be another system&apos;s</source>
        <translation>{1} montículos bien pueden ser de otro sistema</translation>
    </message>
    <message>
        <source>Stop ({1}): {2}</source>
        <translation>Alto ({1}): {2}</translation>
    </message>
    <message>
        <source>Hold back ({1}): {2}</source>
        <translation>Espere ({1}): {2}</translation>
    </message>
    <message>
        <source>Mind ({1}): {2}</source>
        <translation>Tenga en cuenta ({1}): {2}</translation>
    </message>
    <message>
        <source>1 finding while reading, see above.</source>
        <translation>1 observación al leer, vea arriba.</translation>
    </message>
    <message>
        <source>{1} findings while reading, see above.</source>
        <translation>{1} observaciones al leer, vea arriba.</translation>
    </message>
    <message>
        <source>Not written: {1} (what lies there is older)</source>
        <translation>No se escribió: {1} (lo que hay ahí es anterior)</translation>
    </message>
    <message>
        <source>Not written: {1}</source>
        <translation>No se escribió: {1}</translation>
    </message>
    <message>
        <source>Written: {1}</source>
        <translation>Escrito: {1}</translation>
    </message>
    <message>
        <source>Written: {1} ({2} files)</source>
        <translation>Escrito: {1} ({2} archivos)</translation>
    </message>
    <message>
        <source>Dropped {1}: {2}</source>
        <translation>Quitado: {1}: {2}</translation>
    </message>
    <message>
        <source>dropping sets that meet a stop</source>
        <translation>quitando los puntos que topan con un alto</translation>
    </message>
    <message>
        <source>1 place that stood in for them met a stop, too, and was dropped.</source>
        <translation>1 lugar que los reemplazaba topó también con un alto, y se quitó.</translation>
    </message>
    <message>
        <source>{1} places that stood in for them met a stop, too, and were dropped.</source>
        <translation>{1} lugares que los reemplazaban toparon también con un alto, y se quitaron.</translation>
    </message>
    <message>
        <source>No set is left.</source>
        <translation>No queda ningún punto.</translation>
    </message>
    <message>
        <source>and for {1} more reasons at other sets.</source>
        <translation>y por {1} razones más en otros puntos.</translation>
    </message>
    <message>
        <source>no method chosen</source>
        <translation>sin método elegido</translation>
    </message>
    <message>
        <source>Judged for {1}:</source>
        <translation>Juzgado para el {1}:</translation>
    </message>
    <message>
        <source>Stop ({1}, {2}): {3}</source>
        <translation>Alto ({1}, {2}): {3}</translation>
    </message>
    <message>
        <source>Hold back ({1}, {2}): {3}</source>
        <translation>Espere ({1}, {2}): {3}</translation>
    </message>
    <message>
        <source>Not known, may be a stop ({1}, {2}): {3}</source>
        <translation>No se sabe, puede ser un alto ({1}, {2}): {3}</translation>
    </message>
    <message>
        <source>Not known, may hold back ({1}, {2}): {3}</source>
        <translation>No se sabe, puede pedir esperar ({1}, {2}): {3}</translation>
    </message>
    <message>
        <source>Held back, signed ({1}, {2}): {3}</source>
        <translation>Espera firmada ({1}, {2}): {3}</translation>
    </message>
    <message>
        <source>Mind ({1}, {2}): {3}</source>
        <translation>Tenga en cuenta ({1}, {2}): {3}</translation>
    </message>
    <message>
        <source>Asked for:</source>
        <translation>Falta saber:</translation>
    </message>
    <message>
        <source>Sets that meet a stop: {1} of {2}; a hold-back that nobody signed: {3}. The label, local rules and a licensed applicator decide.</source>
        <translation>Puntos que topan con un alto: {1} de {2}; con una espera que nadie firmó: {3}. Deciden la etiqueta, las reglas del lugar y un aplicador con licencia.</translation>
    </message>
    <message>
        <source>1 set</source>
        <translation>1 punto</translation>
    </message>
    <message>
        <source>{1} sets</source>
        <translation>{1} puntos</translation>
    </message>
    <message>
        <source>This plan is not to be handed out: 1 of {1} meets a stop. Change the method, the place or what stands against it, or drop this set, and plan again.</source>
        <translation>Este plan no se debe entregar: 1 de {1} topa con un alto. Cambie el método, el lugar o lo que habla en contra, o quite ese punto, y vuelva a planear.</translation>
    </message>
    <message>
        <source>This plan is not to be handed out: {1} of {2} meet a stop. Change the method, the place or what stands against it, or drop these sets, and plan again.</source>
        <translation>Este plan no se debe entregar: {1} de {2} topan con un alto. Cambie el método, el lugar o lo que habla en contra, o quite esos puntos, y vuelva a planear.</translation>
    </message>
    <message>
        <source>A text that a spreadsheet would take for a formula begins with an apostrophe that is not part of it.</source>
        <translation>Un texto que una hoja de cálculo tomaría por fórmula empieza con un apóstrofo que no es parte de él.</translation>
    </message>
    <message>
        <source>Names of people, licence numbers, reasons and notes are in what can carry them.</source>
        <translation>Nombres de personas, números de licencia, razones y notas van en lo que los puede llevar.</translation>
    </message>
    <message>
        <source>Names of people, licence numbers and reasons are left out, and notes in all but the GeoPackage.</source>
        <translation>Nombres de personas, números de licencia y razones quedan fuera, y las notas, de todo menos del GeoPackage.</translation>
    </message>
    <message>
        <source>writing the sets</source>
        <translation>escribiendo los puntos</translation>
    </message>
</context>
<context>
    <name>plugside::AgainstView</name>
    <message>
        <source>What speaks against the sets is being judged.</source>
        <translation>Se está juzgando lo que habla en contra de los puntos.</translation>
    </message>
    <message>
        <source>No method is chosen: only what speaks against every method is judged.</source>
        <translation>No se ha elegido método: solo se juzga lo que habla en contra de cualquier método.</translation>
    </message>
    <message>
        <source>%1 stop holds: with these sets the plan is not handed out.</source>
        <translation>Vale %1 alto: con estos puntos el plan no se entrega.</translation>
    </message>
    <message>
        <source>%1 stops hold: with these sets the plan is not handed out.</source>
        <translation>Valen %1 altos: con estos puntos el plan no se entrega.</translation>
    </message>
    <message>
        <source>%1 hold-back wants an answer or a signed reason.</source>
        <translation>%1 espera pide una respuesta o una razón firmada.</translation>
    </message>
    <message>
        <source>%1 hold-backs want an answer or a signed reason.</source>
        <translation>%1 esperas piden una respuesta o una razón firmada.</translation>
    </message>
    <message>
        <source>Label, local rules and a licensed applicator decide.</source>
        <translation>Deciden la etiqueta, las reglas del lugar y un aplicador con licencia.</translation>
    </message>
    <message>
        <source>%1 sets: %2 and more</source>
        <translation>%1 puntos: %2 y más</translation>
    </message>
    <message>
        <source>set %1</source>
        <translation>punto %1</translation>
    </message>
    <message>
        <source>%1 sets: %2</source>
        <translation>%1 puntos: %2</translation>
    </message>
    <message>
        <source>Asked: %1</source>
        <translation>Se pregunta: %1</translation>
    </message>
    <message>
        <source>on the map: %1</source>
        <translation>en el mapa: %1</translation>
    </message>
    <message>
        <source>shows these sets on the map, one after the other</source>
        <translation>muestra estos puntos en el mapa, uno tras otro</translation>
    </message>
    <message>
        <source>shows the part of the system on the map that is the reason</source>
        <translation>muestra en el mapa la parte del sistema que es la razón</translation>
    </message>
    <message>
        <source>Signed by %1, %2: %3</source>
        <translation>Firmado por %1, %2: %3</translation>
    </message>
    <message>
        <source>take the signature back</source>
        <translation>retirar la firma</translation>
    </message>
    <message>
        <source>your name</source>
        <translation>su nombre</translation>
    </message>
    <message>
        <source>name of who signs</source>
        <translation>nombre de quien firma</translation>
    </message>
    <message>
        <source>why it is done all the same</source>
        <translation>por qué se hace de todos modos</translation>
    </message>
    <message>
        <source>reason that is signed</source>
        <translation>razón que se firma</translation>
    </message>
    <message>
        <source>sign</source>
        <translation>firmar</translation>
    </message>
    <message>
        <source>signature of %1</source>
        <translation>firma de %1</translation>
    </message>
    <message>
        <source>signature taken back</source>
        <translation>firma retirada</translation>
    </message>
    <message>
        <source>Signed for %4 by %1, %2: %3</source>
        <translation>Firmado para %4 por %1, %2: %3</translation>
    </message>
    <message>
        <source>what the signature covers</source>
        <translation>lo que abarca la firma</translation>
    </message>
    <message>
        <source>for all these sets</source>
        <translation>para todos estos puntos</translation>
    </message>
    <message>
        <source>for the set at hand</source>
        <translation>para el punto actual</translation>
    </message>
    <message>
        <source>for the animal at hand</source>
        <translation>para el animal actual</translation>
    </message>
    <message>
        <source>The set at hand is none of these. Show one of them on the map, then sign.</source>
        <translation>El punto actual no es ninguno de estos. Muestre uno de ellos en el mapa y firme.</translation>
    </message>
</context>
<context>
    <name>plugside::CautionView</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>plugside::CloseUp</name>
    <message>
        <source>close-up of the set&apos;s place</source>
        <translation>de cerca, el lugar del punto</translation>
    </message>
    <message>
        <source>%1 right</source>
        <translation>%1 der.</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>%1 izq.</translation>
    </message>
    <message>
        <source>as you look from %1 to %2</source>
        <translation>como se mira de %1 a %2</translation>
    </message>
    <message>
        <source>as you stand, the fan behind you</source>
        <translation>de pie, con el abanico detrás</translation>
    </message>
    <message>
        <source>band: run in 9 of 10</source>
        <translation>franja: túnel en 9 de 10</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>Arrow keys shift the ladder, a figure begins a tape reading, Enter accepts, Escape gives up.</source>
        <translation>Las flechas corren la fila, una cifra empieza una lectura de cinta, Enter acepta, Escape desiste.</translation>
    </message>
</context>
<context>
    <name>plugside::ColumnsModel</name>
    <message>
        <source>column %1 means: %2 (Enter to change)</source>
        <translation>la columna %1 es: %2 (Enter para cambiar)</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>columna %1</translation>
    </message>
</context>
<context>
    <name>plugside::ColumnsView</name>
    <message>
        <source>the first rows, under what each column means</source>
        <translation>las primeras filas, bajo lo que es cada columna</translation>
    </message>
</context>
<context>
    <name>plugside::ConditionsView</name>
    <message>
        <source>The method&apos;s rules ask</source>
        <translation>Las reglas del método preguntan</translation>
    </message>
    <message>
        <source>Other conditions</source>
        <translation>Otras condiciones</translation>
    </message>
    <message>
        <source>paste lines: a day, rain, irrigation</source>
        <translation>pegue renglones: un día, lluvia, riego</translation>
    </message>
    <message>
        <source>take this table</source>
        <translation>tomar esta tabla</translation>
    </message>
    <message>
        <source>rain and irrigation</source>
        <translation>lluvia y riego</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 pulg</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source>%1: rain %2, irrigation %3</source>
        <translation>%1: lluvia %2, riego %3</translation>
    </message>
    <message>
        <source>told %1</source>
        <translation>dicho el %1</translation>
    </message>
    <message>
        <source>What is not answered speaks against the work until it is. “Not known” is an answer, too.</source>
        <translation>Lo que no está respondido habla en contra del trabajo hasta que lo esté. «No se sabe» también es una respuesta.</translation>
    </message>
    <message>
        <source>Asked on other pages of this step: %1</source>
        <translation>Se pregunta en otras páginas de este paso: %1</translation>
    </message>
    <message>
        <source>May people or domestic animals be in “%1”?</source>
        <translation>¿Puede haber personas o animales domésticos en «%1»?</translation>
    </message>
    <message>
        <source>—</source>
        <translation>—</translation>
    </message>
    <message>
        <source>use of %1</source>
        <translation>uso de %1</translation>
    </message>
    <message>
        <source>still so</source>
        <translation>sigue así</translation>
    </message>
    <message>
        <source>still so: %1</source>
        <translation>sigue así: %1</translation>
    </message>
    <message>
        <source>Told %1. That is too long ago to be believed: is it still so?</source>
        <translation>Dicho %1. Hace demasiado tiempo para creerlo: ¿sigue siendo así?</translation>
    </message>
</context>
<context>
    <name>plugside::CorrectionsView</name>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 y %2 más</translation>
    </message>
    <message>
        <source>the fan of %1 points to %2°</source>
        <translation>el abanico de %1 apunta a %2°</translation>
    </message>
    <message>
        <source>%1 shows no fan</source>
        <translation>%1 no muestra abanico</translation>
    </message>
    <message>
        <source>the fans of %1 turned by %2°</source>
        <translation>los abanicos de %1 girados %2°</translation>
    </message>
    <message>
        <source>%1 stands elsewhere</source>
        <translation>%1 está en otra parte</translation>
    </message>
    <message>
        <source>%1 looks otherwise</source>
        <translation>%1 se ve de otro modo</translation>
    </message>
    <message>
        <source>%1 is another&apos;s sign</source>
        <translation>%1 es señal de otro</translation>
    </message>
    <message>
        <source>%1 set aside</source>
        <translation>%1 apartado</translation>
    </message>
    <message>
        <source>%1 taken back</source>
        <translation>%1 tomado de vuelta</translation>
    </message>
    <message>
        <source>%1: one mound</source>
        <translation>%1: un solo montículo</translation>
    </message>
    <message>
        <source>the picked fan points to: 135, SE (P)</source>
        <translation>el abanico elegido apunta a: 135, SE (P)</translation>
    </message>
    <message>
        <source>bearing of the picked fan</source>
        <translation>rumbo del abanico elegido</translation>
    </message>
    <message>
        <source>Said so far</source>
        <translation>Dicho hasta ahora</translation>
    </message>
    <message>
        <source>what was said so far; Delete lifts one</source>
        <translation>lo dicho hasta ahora; Supr quita uno</translation>
    </message>
    <message>
        <source>one animal</source>
        <translation>es uno</translation>
    </message>
    <message>
        <source>O</source>
        <translation>O</translation>
    </message>
    <message>
        <source>the picked mark and another are one animal&apos;s</source>
        <translation>la marca elegida y otra son de un mismo animal</translation>
    </message>
    <message>
        <source>two animals</source>
        <translation>son dos</translation>
    </message>
    <message>
        <source>T</source>
        <translation>T</translation>
    </message>
    <message>
        <source>the picked mark and another are two animals&apos;</source>
        <translation>la marca elegida y otra son de dos animales</translation>
    </message>
    <message>
        <source>run here</source>
        <translation>hay túnel</translation>
    </message>
    <message>
        <source>R</source>
        <translation>R</translation>
    </message>
    <message>
        <source>a run joins the picked mark and another</source>
        <translation>un túnel une la marca elegida con otra</translation>
    </message>
    <message>
        <source>no gopher&apos;s</source>
        <translation>no es tuza</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>the picked mark is not a gopher&apos;s</source>
        <translation>la marca elegida no es de tuza</translation>
    </message>
    <message>
        <source>older</source>
        <translation>más viejo</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>the picked mark is older than the others</source>
        <translation>la marca elegida es más vieja que las otras</translation>
    </message>
    <message>
        <source>no run</source>
        <translation>sin túnel</translation>
    </message>
    <message>
        <source>X</source>
        <translation>X</translation>
    </message>
    <message>
        <source>draw a line that no run crosses</source>
        <translation>dibuje una línea que ningún túnel cruza</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>apartar</translation>
    </message>
    <message>
        <source>Z</source>
        <translation>Z</translation>
    </message>
    <message>
        <source>draw about marks to set aside</source>
        <translation>encierre las marcas que se apartan</translation>
    </message>
    <message>
        <source>What would help most</source>
        <translation>Qué ayudaría más</translation>
    </message>
    <message>
        <source>one</source>
        <translation>uno</translation>
    </message>
    <message>
        <source>Y</source>
        <translation>Y</translation>
    </message>
    <message>
        <source>two</source>
        <translation>dos</translation>
    </message>
    <message>
        <source>D</source>
        <translation>D</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>Page down</source>
        <translation>Av Pág</translation>
    </message>
    <message>
        <source>Are %1 and %2 one animal&apos;s? %3 in 100 that they are. An answer narrows the number of animals by %4 in 100.</source>
        <translation>¿Son %1 y %2 de un mismo animal? %3 de cada 100 de que sí. Una respuesta estrecha el número de animales en %4 de cada 100.</translation>
    </message>
    <message>
        <source>lift what was said</source>
        <translation>quitar lo dicho</translation>
    </message>
    <message>
        <source>lift what was put right</source>
        <translation>quitar lo corregido</translation>
    </message>
</context>
<context>
    <name>plugside::DayRail</name>
    <message>
        <source>%1 mark read</source>
        <translation>%1 marca leída</translation>
    </message>
    <message>
        <source>%1 marks read</source>
        <translation>%1 marcas leídas</translation>
    </message>
    <message>
        <source>%1, %2 remarks</source>
        <translation>%1, %2 avisos</translation>
    </message>
    <message>
        <source>%1 drawn</source>
        <translation>dibujados: %1</translation>
    </message>
    <message>
        <source>%1 doubtful mound</source>
        <translation>%1 dudoso</translation>
    </message>
    <message>
        <source>%1 doubtful mounds</source>
        <translation>%1 dudosos</translation>
    </message>
    <message>
        <source>none proposed</source>
        <translation>ninguno propuesto</translation>
    </message>
    <message>
        <source>all decided</source>
        <translation>todos decididos</translation>
    </message>
    <message>
        <source>%1 to decide</source>
        <translation>%1 por decidir</translation>
    </message>
    <message>
        <source>the day&apos;s steps</source>
        <translation>los pasos del día</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Terreno</translation>
    </message>
    <message>
        <source>Systems</source>
        <translation>Sistemas</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Puntos</translation>
    </message>
    <message>
        <source>no walk is open</source>
        <translation>sin recorrido</translation>
    </message>
    <message>
        <source>after the walk</source>
        <translation>tras el recorrido</translation>
    </message>
    <message>
        <source>nothing drawn yet</source>
        <translation>nada dibujado aún</translation>
    </message>
    <message>
        <source>being made</source>
        <translation>en preparación</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
</context>
<context>
    <name>plugside::DiggerAnswerButton</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>plugside::DiggerKeyView</name>
    <message>
        <source>A gopher&apos;s mound.</source>
        <translation>Un montículo de tuza.</translation>
    </message>
    <message>
        <source>A gopher&apos;s surface plug, without a fan.</source>
        <translation>Un tapón de tuza en la superficie, sin abanico.</translation>
    </message>
    <message>
        <source>A mole&apos;s work.</source>
        <translation>Obra de topo.</translation>
    </message>
    <message>
        <source>A ground squirrel&apos;s work.</source>
        <translation>Obra de ardilla de tierra.</translation>
    </message>
    <message>
        <source>A vole&apos;s work.</source>
        <translation>Obra de ratón de pradera.</translation>
    </message>
    <message>
        <source>Something else&apos;s work.</source>
        <translation>Obra de otro.</translation>
    </message>
    <message>
        <source>what decided it</source>
        <translation>qué lo decidió</translation>
    </message>
    <message>
        <source>back</source>
        <translation>atrás</translation>
    </message>
    <message>
        <source>the question before (Backspace)</source>
        <translation>la pregunta anterior (Retroceso)</translation>
    </message>
    <message>
        <source>take it so</source>
        <translation>tomarlo así</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>leave it</source>
        <translation>dejarlo</translation>
    </message>
    <message>
        <source>put the questions away, nothing is changed (Esc)</source>
        <translation>cerrar las preguntas, nada cambia (Esc)</translation>
    </message>
    <message>
        <source>who dug here</source>
        <translation>quién excavó aquí</translation>
    </message>
    <message>
        <source>Who dug at %1? Only what you saw counts.</source>
        <translation>¿Quién excavó en %1? Solo cuenta lo que usted vio.</translation>
    </message>
    <message>
        <source>It cannot be told.</source>
        <translation>No se puede saber.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>leave it as it is</source>
        <translation>dejarlo como está</translation>
    </message>
</context>
<context>
    <name>plugside::EntryView</name>
    <message>
        <source>bearings read from</source>
        <translation>rumbos leídos desde</translation>
    </message>
    <message>
        <source>parted by</source>
        <translation>separado por</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>coma</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>punto y coma</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>tabulador</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>barra</translation>
    </message>
    <message>
        <source>blanks</source>
        <translation>espacios</translation>
    </message>
    <message>
        <source>decimals after a</source>
        <translation>decimales tras</translation>
    </message>
    <message>
        <source>point</source>
        <translation>punto</translation>
    </message>
    <message>
        <source>first row</source>
        <translation>primera fila</translation>
    </message>
    <message>
        <source>headings</source>
        <translation>encabezado</translation>
    </message>
    <message>
        <source>a mark</source>
        <translation>una marca</translation>
    </message>
    <message>
        <source>letters</source>
        <translation>letras</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>grados</translation>
    </message>
    <message>
        <source>as they are written</source>
        <translation>como están escritos</translation>
    </message>
    <message>
        <source>minutes packed in (3815.5)</source>
        <translation>con minutos adentro (3815.5)</translation>
    </message>
    <message>
        <source>dates</source>
        <translation>fechas</translation>
    </message>
    <message>
        <source>year first</source>
        <translation>año primero</translation>
    </message>
    <message>
        <source>day first</source>
        <translation>día primero</translation>
    </message>
    <message>
        <source>month first</source>
        <translation>mes primero</translation>
    </message>
    <message>
        <source>layer</source>
        <translation>capa</translation>
    </message>
    <message>
        <source>points are</source>
        <translation>los puntos son</translation>
    </message>
    <message>
        <source>mounds</source>
        <translation>montículos</translation>
    </message>
    <message>
        <source>not used</source>
        <translation>no se usa</translation>
    </message>
    <message>
        <source>lines are</source>
        <translation>las líneas son</translation>
    </message>
    <message>
        <source>ways walked</source>
        <translation>caminos recorridos</translation>
    </message>
    <message>
        <source>barriers no run crosses</source>
        <translation>barreras que ningún túnel cruza</translation>
    </message>
    <message>
        <source>polygons are</source>
        <translation>los polígonos son</translation>
    </message>
    <message>
        <source>the field&apos;s boundary</source>
        <translation>el límite del campo</translation>
    </message>
    <message>
        <source>areas kept clear</source>
        <translation>áreas vedadas</translation>
    </message>
    <message>
        <source>%1; being counted</source>
        <translation>%1; se está contando</translation>
    </message>
    <message>
        <source> It is left out; the others can be read without it.</source>
        <translation> Se deja fuera; los demás se pueden leer sin él.</translation>
    </message>
    <message>
        <source> Put it back where it was, or leave it out: its marks then go, and what was decided on them waits until it is read again.</source>
        <translation> Póngalo donde estaba, o déjelo fuera: sus marcas se van, y lo decidido sobre ellas espera hasta que se lea otra vez.</translation>
    </message>
    <message>
        <source>Its marks lie at %1</source>
        <translation>Sus marcas están en %1</translation>
    </message>
    <message>
        <source>It lies at %1</source>
        <translation>Está en %1</translation>
    </message>
    <message>
        <source>, %1</source>
        <translation>, %1</translation>
    </message>
    <message>
        <source> %1 remark on it is told after reading.</source>
        <translation> %1 aviso sobre él se da después de leer.</translation>
    </message>
    <message>
        <source> %1 remarks on it are told after reading.</source>
        <translation> %1 avisos sobre él se dan después de leer.</translation>
    </message>
    <message>
        <source>%1 fan names no north.</source>
        <translation>%1 abanico no dice de qué norte.</translation>
    </message>
    <message>
        <source>%1 fans name no north.</source>
        <translation>%1 abanicos no dicen de qué norte.</translation>
    </message>
    <message>
        <source>What each column means; the first rows under it:</source>
        <translation>Qué es cada columna; debajo, las primeras filas:</translation>
    </message>
</context>
<context>
    <name>plugside::FieldSession</name>
    <message>
        <source>The plan is still being handed out. Open the file when that is done, or stop it.</source>
        <translation>El plan todavía se está entregando. Abra el archivo cuando termine, o párelo.</translation>
    </message>
    <message>
        <source>set %1</source>
        <translation>punto %1</translation>
    </message>
    <message>
        <source>set at %1</source>
        <translation>punto en %1</translation>
    </message>
    <message>
        <source>finding of %1</source>
        <translation>observación de %1</translation>
    </message>
    <message>
        <source>%1 findings</source>
        <translation>%1 observaciones</translation>
    </message>
    <message>
        <source>accept %1</source>
        <translation>aceptar %1</translation>
    </message>
    <message>
        <source>refuse %1</source>
        <translation>rechazar %1</translation>
    </message>
    <message>
        <source>digger of %1</source>
        <translation>excavador de %1</translation>
    </message>
    <message>
        <source>add %1</source>
        <translation>agregar %1</translation>
    </message>
    <message>
        <source>add %1 files</source>
        <translation>agregar %1 archivos</translation>
    </message>
    <message>
        <source>read the files again</source>
        <translation>leer de nuevo los archivos</translation>
    </message>
</context>
<context>
    <name>plugside::FindingPicture</name>
    <message>
        <source>the ground about %1</source>
        <translation>el terreno alrededor de %1</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <translation>%1 pies</translation>
    </message>
</context>
<context>
    <name>plugside::FindingsView</name>
    <message>
        <source>one mound marked twice</source>
        <translation>un montículo marcado dos veces</translation>
    </message>
    <message>
        <source>fan read from the wrong end</source>
        <translation>abanico leído desde el otro extremo</translation>
    </message>
    <message>
        <source>perhaps another digger&apos;s</source>
        <translation>quizá de otro excavador</translation>
    </message>
    <message>
        <source>outside the field</source>
        <translation>fuera del campo</translation>
    </message>
    <message>
        <source>marked on an earlier walk</source>
        <translation>marcado en un recorrido anterior</translation>
    </message>
    <message>
        <source>latitude and longitude swapped</source>
        <translation>latitud y longitud cambiadas</translation>
    </message>
    <message>
        <source>a sign was lost</source>
        <translation>se perdió un signo</translation>
    </message>
    <message>
        <source>degrees and minutes taken for decimals</source>
        <translation>grados y minutos tomados por decimales</translation>
    </message>
    <message>
        <source>the receiver jumped</source>
        <translation>el receptor saltó</translation>
    </message>
    <message>
        <source>the receiver stood still</source>
        <translation>el receptor se quedó parado</translation>
    </message>
    <message>
        <source>far from the track</source>
        <translation>lejos de la traza</translation>
    </message>
    <message>
        <source>bearings turned alike</source>
        <translation>rumbos girados por igual</translation>
    </message>
    <message>
        <source>what was found, why, and what is proposed</source>
        <translation>qué se halló, por qué, y qué se propone</translation>
    </message>
    <message>
        <source>accept</source>
        <translation>aceptar</translation>
    </message>
    <message>
        <source>refuse</source>
        <translation>rechazar</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>‹</source>
        <translation>‹</translation>
    </message>
    <message>
        <source>previous finding</source>
        <translation>observación anterior</translation>
    </message>
    <message>
        <source>Page up</source>
        <translation>Re Pág</translation>
    </message>
    <message>
        <source>›</source>
        <translation>›</translation>
    </message>
    <message>
        <source>next finding</source>
        <translation>observación siguiente</translation>
    </message>
    <message>
        <source>Page down</source>
        <translation>Av Pág</translation>
    </message>
    <message>
        <source>accept all alike</source>
        <translation>iguales: sí</translation>
    </message>
    <message>
        <source>accept all of this kind that are as sure</source>
        <translation>aceptar todas las de esta clase que son igual de seguras</translation>
    </message>
    <message>
        <source>Shift+A</source>
        <translation>Mayús+A</translation>
    </message>
    <message>
        <source>refuse all alike</source>
        <translation>iguales: no</translation>
    </message>
    <message>
        <source>refuse all of this kind that are no surer</source>
        <translation>rechazar todas las de esta clase que no son más seguras</translation>
    </message>
    <message>
        <source>Shift+R</source>
        <translation>Mayús+R</translation>
    </message>
    <message>
        <source>The walk is being looked through.</source>
        <translation>Se está revisando el recorrido.</translation>
    </message>
    <message>
        <source>Nothing is left to look at.</source>
        <translation>No queda nada por revisar.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>right in about %1 of 100 such cases</source>
        <translation>acierta en unos %1 de 100 casos así</translation>
    </message>
</context>
<context>
    <name>plugside::GroundPage</name>
    <message>
        <source>building</source>
        <translation>edificio</translation>
    </message>
    <message>
        <source>well</source>
        <translation>pozo</translation>
    </message>
    <message>
        <source>play area</source>
        <translation>área de juegos</translation>
    </message>
    <message>
        <source>marked utility</source>
        <translation>línea marcada</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otro</translation>
    </message>
    <message>
        <source>boundary</source>
        <translation>límite</translation>
    </message>
    <message>
        <source>barrier</source>
        <translation>barrera</translation>
    </message>
    <message>
        <source>crossing</source>
        <translation>paso</translation>
    </message>
    <message>
        <source>gate</source>
        <translation>puerta</translation>
    </message>
    <message>
        <source>keep clear</source>
        <translation>vedar</translation>
    </message>
    <message>
        <source>untreated</source>
        <translation>sin tratar</translation>
    </message>
    <message>
        <source>hole</source>
        <translation>hueco</translation>
    </message>
    <message>
        <source>split</source>
        <translation>partir</translation>
    </message>
    <message>
        <source>Boundary: what belongs to the field. Click its corners; double click or Enter ends it.</source>
        <translation>Límite: lo que es del campo. Haga clic en sus esquinas; doble clic o Enter lo termina.</translation>
    </message>
    <message>
        <source>Barrier: what no run crosses, as a road, a ditch, a wall. Click along it; double click or Enter ends it.</source>
        <translation>Barrera: lo que ningún túnel cruza, como un camino, una zanja, un muro. Haga clic a lo largo; doble clic o Enter la termina.</translation>
    </message>
    <message>
        <source>Crossing: a gap in a barrier where a run passes, as a culvert. Click the place.</source>
        <translation>Paso: abertura en una barrera por donde pasa un túnel, como una alcantarilla. Haga clic en el lugar.</translation>
    </message>
    <message>
        <source>Gate: where people pass. Click the place.</source>
        <translation>Puerta: por donde pasa la gente. Haga clic en el lugar.</translation>
    </message>
    <message>
        <source>Keep clear: where nothing is set. Click its corners; double click or Enter ends it.</source>
        <translation>Vedar: donde no se pone nada. Haga clic en las esquinas; doble clic o Enter lo termina.</translation>
    </message>
    <message>
        <source>Untreated piece: left alone, to compare with. Click its corners; double click or Enter ends it.</source>
        <translation>Parcela sin tratar: se deja sola, para comparar. Haga clic en sus esquinas; doble clic o Enter la termina.</translation>
    </message>
    <message>
        <source>Hole: cut out of the area it lies in. Click its corners; double click or Enter ends it.</source>
        <translation>Hueco: se corta del área en que está. Haga clic en sus esquinas; doble clic o Enter lo termina.</translation>
    </message>
    <message>
        <source>Split: draw a line across an area, or over a barrier; double click or Enter splits it.</source>
        <translation>Partir: dibuje una línea a través de un área, o sobre una barrera; doble clic o Enter la parte.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 wide</source>
        <translation>%1: %2 de ancho</translation>
    </message>
    <message>
        <source>field %1</source>
        <translation>campo %1</translation>
    </message>
    <message>
        <source>%1 barrier</source>
        <translation>%1 barrera</translation>
    </message>
    <message>
        <source>%1 barriers</source>
        <translation>%1 barreras</translation>
    </message>
    <message>
        <source>%1 crossing</source>
        <translation>%1 paso</translation>
    </message>
    <message>
        <source>%1 crossings</source>
        <translation>%1 pasos</translation>
    </message>
    <message>
        <source>%1 gate</source>
        <translation>%1 puerta</translation>
    </message>
    <message>
        <source>%1 gates</source>
        <translation>%1 puertas</translation>
    </message>
    <message>
        <source>%1 keep-clear area</source>
        <translation>%1 área vedada</translation>
    </message>
    <message>
        <source>%1 keep-clear areas</source>
        <translation>%1 áreas vedadas</translation>
    </message>
    <message>
        <source>%1 untreated piece</source>
        <translation>%1 parcela sin tratar</translation>
    </message>
    <message>
        <source>%1 untreated pieces</source>
        <translation>%1 parcelas sin tratar</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Terreno</translation>
    </message>
    <message>
        <source>what the pen does</source>
        <translation>qué hace la pluma</translation>
    </message>
    <message>
        <source>next corner by length and bearing</source>
        <translation>siguiente esquina por largo y rumbo</translation>
    </message>
    <message>
        <source>next corner: 40 ft NE, 12.5 m 135 (N)</source>
        <translation>siguiente: 40 pies NE, 12.5 m 135 (N)</translation>
    </message>
    <message>
        <source>shapes of the ground</source>
        <translation>formas del terreno</translation>
    </message>
    <message>
        <source>B</source>
        <translation>B</translation>
    </message>
    <message>
        <source>D</source>
        <translation>D</translation>
    </message>
    <message>
        <source>X</source>
        <translation>X</translation>
    </message>
    <message>
        <source>T</source>
        <translation>T</translation>
    </message>
    <message>
        <source>K</source>
        <translation>K</translation>
    </message>
    <message>
        <source>U</source>
        <translation>U</translation>
    </message>
    <message>
        <source>H</source>
        <translation>H</translation>
    </message>
    <message>
        <source>Y</source>
        <translation>Y</translation>
    </message>
    <message>
        <source>name</source>
        <translation>nombre</translation>
    </message>
    <message>
        <source>name of the shape</source>
        <translation>nombre de la forma</translation>
    </message>
    <message>
        <source>what is kept clear</source>
        <translation>qué se veda</translation>
    </message>
    <message>
        <source>reason</source>
        <translation>razón</translation>
    </message>
    <message>
        <source>reason for keeping clear</source>
        <translation>razón para vedarla</translation>
    </message>
    <message>
        <source>width: 3 ft, 1.2 m</source>
        <translation>ancho: 3 pies, 1.2 m</translation>
    </message>
    <message>
        <source>width of the gap</source>
        <translation>ancho de la abertura</translation>
    </message>
    <message>
        <source>remove (Del)</source>
        <translation>quitar (Supr)</translation>
    </message>
    <message>
        <source>join with… (J)</source>
        <translation>unir con… (J)</translation>
    </message>
    <message>
        <source>mend (E)</source>
        <translation>componer (E)</translation>
    </message>
    <message>
        <source>“%1” is no width, as in “3 ft” or “1.2 m”.</source>
        <translation>“%1” no es un ancho, como “3 pies” o “1.2 m”.</translation>
    </message>
    <message>
        <source>No walk is open: the ground is drawn about its marks.</source>
        <translation>Ningún recorrido abierto: el terreno se dibuja alrededor de sus marcas.</translation>
    </message>
    <message>
        <source>Nothing is drawn yet. Without a boundary nothing lies outside the field.</source>
        <translation>Aún no hay nada dibujado. Sin límite, nada queda fuera del campo.</translation>
    </message>
    <message>
        <source>Click the shape to join it with.</source>
        <translation>Haga clic en la forma con la que se une.</translation>
    </message>
    <message>
        <source>about walk</source>
        <translation>en torno</translation>
    </message>
    <message>
        <source>W</source>
        <translation>W</translation>
    </message>
    <message>
        <source>Corners about all that was walked, to begin a boundary with: Enter takes them, then they can be moved.</source>
        <translation>Esquinas en torno a todo lo recorrido, para empezar un límite: Enter las toma y luego se pueden mover.</translation>
    </message>
    <message>
        <source>trace</source>
        <translation>calcar</translation>
    </message>
    <message>
        <source>R</source>
        <translation>R</translation>
    </message>
    <message>
        <source>Trace: a line of a layer, or a walk&apos;s track, becomes a shape, whole or between two places of it.</source>
        <translation>Calcar: una línea de una capa, o la traza de un recorrido, se vuelve una forma, entera o entre dos lugares de ella.</translation>
    </message>
    <message>
        <source>width in all: 20 ft, 6 m</source>
        <translation>ancho total: 20 ft, 6 m</translation>
    </message>
    <message>
        <source>width of a band kept clear about this line</source>
        <translation>ancho de la franja vedada a lo largo de esta línea</translation>
    </message>
    <message>
        <source>Keeps a band of that width about the line clear, as of a ditch or a buried pipe.</source>
        <translation>Veda una franja de ese ancho a lo largo de la línea, como la de una zanja o un tubo enterrado.</translation>
    </message>
    <message>
        <source>keep clear (L)</source>
        <translation>vedar franja (L)</translation>
    </message>
</context>
<context>
    <name>plugside::GroundTool</name>
    <message>
        <source>boundary</source>
        <translation>límite</translation>
    </message>
    <message>
        <source>barrier</source>
        <translation>barrera</translation>
    </message>
    <message>
        <source>crossing</source>
        <translation>paso</translation>
    </message>
    <message>
        <source>gate</source>
        <translation>puerta</translation>
    </message>
    <message>
        <source>keep-clear area</source>
        <translation>área vedada</translation>
    </message>
    <message>
        <source>untreated piece</source>
        <translation>parcela sin tratar</translation>
    </message>
    <message>
        <source>%1° %2</source>
        <translation>%1° %2</translation>
    </message>
    <message>
        <source>line %1</source>
        <translation>línea %1</translation>
    </message>
    <message>
        <source>area %1</source>
        <translation>área %1</translation>
    </message>
    <message>
        <source>cut a hole</source>
        <translation>cortar un hueco</translation>
    </message>
    <message>
        <source>split</source>
        <translation>partir</translation>
    </message>
    <message>
        <source>draw</source>
        <translation>dibujar</translation>
    </message>
    <message>
        <source>remove a corner</source>
        <translation>quitar una esquina</translation>
    </message>
    <message>
        <source>remove the %1</source>
        <translation>quitar: %1</translation>
    </message>
    <message>
        <source>mend the %1</source>
        <translation>componer: %1</translation>
    </message>
    <message>
        <source>name the %1</source>
        <translation>nombrar: %1</translation>
    </message>
    <message>
        <source>“%1” is no length and bearing, as in “40 ft NE” or “12.5 m 135”.</source>
        <translation>“%1” no es largo y rumbo, como “40 pies NE” o “12.5 m 135”.</translation>
    </message>
    <message>
        <source>A leg goes on from a corner: put the first one on the map.</source>
        <translation>Un tramo sigue desde una esquina: ponga la primera en el mapa.</translation>
    </message>
    <message>
        <source>move a corner</source>
        <translation>mover una esquina</translation>
    </message>
    <message>
        <source>join</source>
        <translation>unir</translation>
    </message>
    <message>
        <source>Nothing was walked that an outline could go about.</source>
        <translation>No se recorrió nada en torno a lo que trazar un contorno.</translation>
    </message>
    <message>
        <source>“%1” is no width, as in “20 ft” or “6 m”.</source>
        <translation>«%1» no es un ancho, como en «20 ft» o «6 m».</translation>
    </message>
    <message>
        <source>keep a band clear</source>
        <translation>vedar una franja</translation>
    </message>
</context>
<context>
    <name>plugside::HandOutDialog</name>
    <message>
        <source>Hand out the plan</source>
        <translation>Entregar el plan</translation>
    </message>
    <message>
        <source>Hand out</source>
        <translation>Entregar</translation>
    </message>
    <message>
        <source>%1 of %2 sets are decided; undecided ones go out as proposals, dropped ones are not given to the handheld. The label, local rules and a licensed applicator decide what is done.</source>
        <translation>%1 de %2 puntos están decididos; los no decididos salen como propuestas, los quitados no van al aparato de mano. Lo que se hace lo deciden la etiqueta, las reglas del lugar y un aplicador con licencia.</translation>
    </message>
    <message>
        <source>folder</source>
        <translation>carpeta</translation>
    </message>
    <message>
        <source>choose…</source>
        <translation>elegir…</translation>
    </message>
    <message>
        <source>plan, as a GeoPackage</source>
        <translation>plan, como GeoPackage</translation>
    </message>
    <message>
        <source>name of the GeoPackage</source>
        <translation>nombre del GeoPackage</translation>
    </message>
    <message>
        <source>sets, as waypoints</source>
        <translation>puntos, para el receptor</translation>
    </message>
    <message>
        <source>name of the waypoint file</source>
        <translation>nombre del archivo de puntos</translation>
    </message>
    <message>
        <source>into</source>
        <translation>en</translation>
    </message>
    <message>
        <source>not now</source>
        <translation>ahora no</translation>
    </message>
    <message>
        <source>hand out</source>
        <translation>entregar</translation>
    </message>
    <message>
        <source>There is no such folder.</source>
        <translation>No existe esa carpeta.</translation>
    </message>
    <message>
        <source>A file needs a name.</source>
        <translation>Un archivo pide un nombre.</translation>
    </message>
    <message>
        <source>%1 is there already and will be replaced.</source>
        <translation>%1 ya está ahí y se reemplazará.</translation>
    </message>
    <message>
        <source>Only the GeoPackage gives your decisions back when it is opened again.</source>
        <translation>Solo el GeoPackage le devuelve sus decisiones al abrirlo otra vez.</translation>
    </message>
    <message>
        <source>Into which folder?</source>
        <translation>¿En qué carpeta?</translation>
    </message>
    <message>
        <source>field sheets, as a PDF</source>
        <translation>hojas de campo, como PDF</translation>
    </message>
    <message>
        <source>name of the field sheets</source>
        <translation>nombre de las hojas de campo</translation>
    </message>
    <message>
        <source>the sheets for a phone</source>
        <translation>las hojas para un teléfono</translation>
    </message>
    <message>
        <source>name of the page for a phone</source>
        <translation>nombre de la página para teléfono</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>papel</translation>
    </message>
    <message>
        <source>letter</source>
        <translation>carta</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>language of the sheets</source>
        <translation>idioma de las hojas</translation>
    </message>
    <message>
        <source>English</source>
        <translation>inglés</translation>
    </message>
    <message>
        <source>Spanish</source>
        <translation>español</translation>
    </message>
    <message>
        <source>sets, as a route</source>
        <translation>puntos, como ruta</translation>
    </message>
    <message>
        <source>name of the route file</source>
        <translation>nombre del archivo de la ruta</translation>
    </message>
    <message>
        <source>map layers, as KML</source>
        <translation>capas del mapa, en KML</translation>
    </message>
    <message>
        <source>name of the KML file</source>
        <translation>nombre del archivo KML</translation>
    </message>
    <message>
        <source>map layers, as GeoJSON</source>
        <translation>capas del mapa, en GeoJSON</translation>
    </message>
    <message>
        <source>name of the GeoJSON file</source>
        <translation>nombre del archivo GeoJSON</translation>
    </message>
    <message>
        <source>map layers, as Shapefiles</source>
        <translation>capas del mapa, en Shapefiles</translation>
    </message>
    <message>
        <source>name that the Shapefiles begin with</source>
        <translation>nombre con que empiezan los Shapefiles</translation>
    </message>
    <message>
        <source>tables, as CSV</source>
        <translation>tablas, en CSV</translation>
    </message>
    <message>
        <source>name that the tables begin with</source>
        <translation>nombre con que empiezan las tablas</translation>
    </message>
    <message>
        <source>with what is private</source>
        <translation>con lo que es privado</translation>
    </message>
    <message>
        <source>names of people, licence numbers, reasons, notes</source>
        <translation>nombres de personas, números de licencia, razones, notas</translation>
    </message>
    <message>
        <source>%1 files, %2 to %3.</source>
        <translation>%1 archivos, de %2 a %3.</translation>
    </message>
    <message>
        <source>Two of them are to be written as %1.</source>
        <translation>Dos de ellos se escribirían como %1.</translation>
    </message>
    <message>
        <source>%1 and %2 more are there already and will be replaced.</source>
        <translation>%1 y %2 más ya están ahí y se van a reemplazar.</translation>
    </message>
</context>
<context>
    <name>plugside::HatchKey</name>
    <message>
        <source>the hatching on the map</source>
        <translation>el rayado del mapa</translation>
    </message>
    <message>
        <source>single lines: less than half of the mounds were seen; crossed lines: less than one in ten</source>
        <translation>líneas sencillas: se vio menos de la mitad de los montículos; líneas cruzadas: menos de uno de cada diez</translation>
    </message>
    <message>
        <source>hardly looked at: less than 1 in 10 seen</source>
        <translation>casi sin mirar: se vio menos de 1 de cada 10</translation>
    </message>
    <message>
        <source>less than 1 in 2 mounds seen</source>
        <translation>se vio menos de 1 de cada 2 montículos</translation>
    </message>
</context>
<context>
    <name>plugside::ImageryList</name>
    <message>
        <source>Imagery</source>
        <translation>Imágenes</translation>
    </message>
    <message>
        <source>pictures under the ground, the topmost first</source>
        <translation>imágenes bajo el terreno, la de más arriba primero</translation>
    </message>
    <message>
        <source>A large picture is being reduced; far out it is shown roughly meanwhile.</source>
        <translation>Se está reduciendo una imagen grande; mientras, de lejos se ve gruesa.</translation>
    </message>
    <message>
        <source>strength</source>
        <translation>fuerza</translation>
    </message>
    <message>
        <source>how strongly imagery is drawn, in hundredths</source>
        <translation>con qué fuerza se dibujan las imágenes, en centésimos</translation>
    </message>
    <message>
        <source>add imagery</source>
        <translation>agregar imágenes</translation>
    </message>
    <message>
        <source>take away</source>
        <translation>quitar</translation>
    </message>
    <message>
        <source>%1 a pixel</source>
        <translation>%1 por píxel</translation>
    </message>
    <message>
        <source>Lay a picture of the ground under the map (Ctrl+I)</source>
        <translation>Poner una imagen del terreno bajo el mapa (Ctrl+I)</translation>
    </message>
    <message>
        <source>server</source>
        <translation>servidor</translation>
    </message>
    <message>
        <source>Imagery from a map server, once you entered its address and said yes (Ctrl+Shift+I)</source>
        <translation>Imágenes de un servidor de mapas, una vez que usted escribió su dirección y dijo que sí (Ctrl+Mayús+I)</translation>
    </message>
    <message>
        <source>place</source>
        <translation>ubicar</translation>
    </message>
    <message>
        <source>Place a picture without a position by pairs of places (Enter)</source>
        <translation>Ubicar una imagen sin posición por pares de lugares (Intro)</translation>
    </message>
    <message>
        <source>%1, not placed yet</source>
        <translation>%1, sin ubicar todavía</translation>
    </message>
    <message>
        <source>%1, not placed yet: %2</source>
        <translation>%1, sin ubicar todavía: %2</translation>
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
        <source>%1, not asked</source>
        <translation>%1, no se le pide nada</translation>
    </message>
    <message>
        <source>%1, asked for what you look at</source>
        <translation>%1, se le pide lo que usted mira</translation>
    </message>
</context>
<context>
    <name>plugside::KeyButton</name>
    <message>
        <source>key %1</source>
        <translation>tecla %1</translation>
    </message>
    <message>
        <source>key %1, decided so</source>
        <translation>tecla %1, así se decidió</translation>
    </message>
</context>
<context>
    <name>plugside::KeysOverlay</name>
    <message>
        <source>the keys</source>
        <translation>las teclas</translation>
    </message>
    <message>
        <source>Ctrl+O</source>
        <translation>Ctrl+O</translation>
    </message>
    <message>
        <source>Ctrl+Shift+O</source>
        <translation>Ctrl+Mayús+O</translation>
    </message>
    <message>
        <source>add a walk or ground to this field</source>
        <translation>agregar recorrido o terreno a este campo</translation>
    </message>
    <message>
        <source>Ctrl+S</source>
        <translation>Ctrl+S</translation>
    </message>
    <message>
        <source>hand out</source>
        <translation>entregar</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation>Ctrl+Z</translation>
    </message>
    <message>
        <source>undo</source>
        <translation>deshacer</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z, Ctrl+Y</source>
        <translation>Ctrl+Mayús+Z, Ctrl+Y</translation>
    </message>
    <message>
        <source>redo</source>
        <translation>rehacer</translation>
    </message>
    <message>
        <source>Ctrl+U</source>
        <translation>Ctrl+U</translation>
    </message>
    <message>
        <source>feet or metres</source>
        <translation>pies o metros</translation>
    </message>
    <message>
        <source>Ctrl+L</source>
        <translation>Ctrl+L</translation>
    </message>
    <message>
        <source>light, or readable in sunlight</source>
        <translation>claro, o para leer al sol</translation>
    </message>
    <message>
        <source>Ctrl+E</source>
        <translation>Ctrl+E</translation>
    </message>
    <message>
        <source>English or Spanish</source>
        <translation>inglés o español</translation>
    </message>
    <message>
        <source>F11</source>
        <translation>F11</translation>
    </message>
    <message>
        <source>whole screen</source>
        <translation>pantalla completa</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>put away, give up</source>
        <translation>cerrar, dejarlo</translation>
    </message>
    <message>
        <source>V  L  T  W</source>
        <translation>V  L  T  W</translation>
    </message>
    <message>
        <source>of the walk: read, wrong, notes, not seen</source>
        <translation>recorrido: leído, dudas, notas, no visto</translation>
    </message>
    <message>
        <source>I</source>
        <translation>I</translation>
    </message>
    <message>
        <source>who dug at the picked mark; 1 2 3 answer</source>
        <translation>quién excavó en la marca; 1 2 3 contestan</translation>
    </message>
    <message>
        <source>P</source>
        <translation>P</translation>
    </message>
    <message>
        <source>the mark&apos;s photograph, large</source>
        <translation>la fotografía de la marca, en grande</translation>
    </message>
    <message>
        <source>G</source>
        <translation>G</translation>
    </message>
    <message>
        <source>hatch the ground not seen, or not</source>
        <translation>rayar el terreno no visto, o no</translation>
    </message>
    <message>
        <source>A  R</source>
        <translation>A  R</translation>
    </message>
    <message>
        <source>accept, refuse a finding; Shift: all alike</source>
        <translation>aceptar, rechazar; con Mayús: todas iguales</translation>
    </message>
    <message>
        <source>B D X T K U H Y</source>
        <translation>B D X T K U H Y</translation>
    </message>
    <message>
        <source>on the ground: draw what the button says</source>
        <translation>en el terreno: dibujar lo que dice el botón</translation>
    </message>
    <message>
        <source>J  E  Del</source>
        <translation>J  E  Supr</translation>
    </message>
    <message>
        <source>join, mend, remove the picked shape</source>
        <translation>unir, componer, quitar la forma elegida</translation>
    </message>
    <message>
        <source>O T R N A X Z</source>
        <translation>O T R N A X Z</translation>
    </message>
    <message>
        <source>of systems: say what the button says</source>
        <translation>de sistemas: decir lo que dice el botón</translation>
    </message>
    <message>
        <source>Y  D</source>
        <translation>Y  D</translation>
    </message>
    <message>
        <source>answer the question: one animal, two</source>
        <translation>contestar la pregunta: un animal, dos</translation>
    </message>
    <message>
        <source>M</source>
        <translation>M</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>Page up, Page down</source>
        <translation>Re Pág, Av Pág</translation>
    </message>
    <message>
        <source>previous, next set</source>
        <translation>punto anterior, siguiente</translation>
    </message>
    <message>
        <source>+  −  F</source>
        <translation>+  −  F</translation>
    </message>
    <message>
        <source>nearer, further, the whole field</source>
        <translation>más cerca, más lejos, todo el campo</translation>
    </message>
    <message>
        <source>arrows</source>
        <translation>flechas</translation>
    </message>
    <message>
        <source>move the map; Ctrl+M goes to it</source>
        <translation>mueven el mapa; Ctrl+M va a él</translation>
    </message>
    <message>
        <source>Space  [  ]</source>
        <translation>Espacio  [  ]</translation>
    </message>
    <message>
        <source>on the map: nearest mark, mark by mark</source>
        <translation>en el mapa: marca más cercana, una por una</translation>
    </message>
    <message>
        <source>C  S</source>
        <translation>C  S</translation>
    </message>
    <message>
        <source>open a project, or a walk with its ground</source>
        <translation>abrir proyecto, o recorrido con su terreno</translation>
    </message>
    <message>
        <source>Ctrl+Shift+S</source>
        <translation>Ctrl+Mayús+S</translation>
    </message>
    <message>
        <source>give the project a name and place</source>
        <translation>dar nombre y lugar al proyecto</translation>
    </message>
    <message>
        <source>latitude, longitude; what is shown</source>
        <translation>latitud, longitud; qué se muestra</translation>
    </message>
    <message>
        <source>K  D  U</source>
        <translation>K  D  U</translation>
    </message>
    <message>
        <source>keep the set, drop it, undecided again</source>
        <translation>conservar el punto, quitarlo, sin decidir</translation>
    </message>
    <message>
        <source>move it: arrows, drag or type a length; Enter</source>
        <translation>moverlo: flechas, arrastre o medida; Enter</translation>
    </message>
    <message>
        <source>Ctrl+arrows</source>
        <translation>Ctrl+flechas</translation>
    </message>
    <message>
        <source>W  I</source>
        <translation>W  I</translation>
    </message>
    <message>
        <source>why this place; the first other instead</source>
        <translation>por qué aquí; el primer otro en su lugar</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>the animal&apos;s sets; left, right choose</source>
        <translation>los puntos del animal; izq., der. eligen</translation>
    </message>
    <message>
        <source>O  T</source>
        <translation>O  T</translation>
    </message>
    <message>
        <source>which sets to go through; several at once</source>
        <translation>qué puntos recorrer; varios a la vez</translation>
    </message>
    <message>
        <source>next undecided by worth, next finding</source>
        <translation>el que rinde más, observación siguiente</translation>
    </message>
    <message>
        <source>,  Q</source>
        <translation>,  Q</translation>
    </message>
    <message>
        <source>lay the tape on the map; a magnifying glass</source>
        <translation>poner la cinta en el mapa; una lupa</translation>
    </message>
    <message>
        <source>.  Alt+arrows</source>
        <translation>.  Alt+flechas</translation>
    </message>
    <message>
        <source>turn the map to the way walked; next mark that way</source>
        <translation>girar el mapa según se camina; marca siguiente</translation>
    </message>
    <message>
        <source>Ctrl+G</source>
        <translation>Ctrl+G</translation>
    </message>
    <message>
        <source>follow a receiver; with Shift: in the middle</source>
        <translation>seguir un receptor; con Mayús, al centro</translation>
    </message>
    <message>
        <source>F1  F2</source>
        <translation>F1  F2</translation>
    </message>
    <message>
        <source>this sheet; the job on a sample field</source>
        <translation>esta hoja; el trabajo en una muestra</translation>
    </message>
    <message>
        <source>W</source>
        <translation>W</translation>
    </message>
    <message>
        <source>an outline about the walk; [ ] its corners, arrows</source>
        <translation>contorno del recorrido; [ ] esquinas, flechas</translation>
    </message>
    <message>
        <source>shift a ladder, turn a fan; Shift for more</source>
        <translation>correr una fila, girar un abanico; Mayús, más</translation>
    </message>
    <message>
        <source>Ctrl++  Ctrl+−  Ctrl+0</source>
        <translation>Ctrl++  Ctrl+−  Ctrl+0</translation>
    </message>
    <message>
        <source>larger text, smaller, as at first</source>
        <translation>texto más grande, más chico, como al principio</translation>
    </message>
    <message>
        <source>Ctrl+I  Ctrl+Shift+I</source>
        <translation>Ctrl+I  Ctrl+Mayús+I</translation>
    </message>
    <message>
        <source>lay a picture, or a server&apos;s, under the map</source>
        <translation>poner una imagen, o la de un servidor, bajo el mapa</translation>
    </message>
    <message>
        <source>trace a layer or track; a band about a line</source>
        <translation>calcar una capa o traza; franja de una línea</translation>
    </message>
    <message>
        <source>R  L</source>
        <translation>R  L</translation>
    </message>
    <message>
        <source>1  2  3  4  5</source>
        <translation>1  2  3  4  5</translation>
    </message>
    <message>
        <source>Walk, Ground, Systems, Method, Sets</source>
        <translation>Recorrido, Terreno, Sistemas, Método, Puntos</translation>
    </message>
    <message>
        <source>N  M  L  A  O</source>
        <translation>N  M  L  A  O</translation>
    </message>
    <message>
        <source>of the method: conditions, methods, label, against, load</source>
        <translation>del método: condiciones, métodos, etiqueta, en contra, carga</translation>
    </message>
    <message>
        <source>R</source>
        <translation>R</translation>
    </message>
    <message>
        <source>walking order: from, to, people, days, tours</source>
        <translation>orden de visita: desde, hasta, personas, días, vueltas</translation>
    </message>
</context>
<context>
    <name>plugside::LabelView</name>
    <message>
        <source>this figure is kept</source>
        <translation>se cumple esta cifra</translation>
    </message>
    <message>
        <source>exceeded</source>
        <translation>se pasa</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>No product&apos;s label is in this program. Type the figures from the label in hand; it and the law stand above everything here. Without a label no amount is computed.</source>
        <translation>En este programa no hay etiqueta de ningún producto. Escriba las cifras de la etiqueta que tiene en la mano; ella y la ley están por encima de todo lo de aquí. Sin etiqueta no se calcula ninguna cantidad.</translation>
    </message>
    <message>
        <source>Plan and label compared</source>
        <translation>El plan comparado con la etiqueta</translation>
    </message>
    <message>
        <source>Figures of the label</source>
        <translation>Cifras de la etiqueta</translation>
    </message>
    <message>
        <source>crops and sites it names</source>
        <translation>cultivos y sitios que nombra</translation>
    </message>
    <message>
        <source>with ; between</source>
        <translation>con ; entre ellos</translation>
    </message>
    <message>
        <source>what is worn with each tool</source>
        <translation>qué se lleva puesto con cada herramienta</translation>
    </message>
    <message>
        <source>spoon: gloves; by hand: …</source>
        <translation>cuchara: guantes; a mano: …</translation>
    </message>
    <message>
        <source>grams of ten releases of the dispensing probe</source>
        <translation>gramos de diez dosis de la sonda dosificadora</translation>
    </message>
    <message>
        <source>each weighing, with ; between</source>
        <translation>cada pesada, con ; entre ellas</translation>
    </message>
    <message>
        <source>sites of the label</source>
        <translation>sitios de la etiqueta</translation>
    </message>
    <message>
        <source>protection</source>
        <translation>protección</translation>
    </message>
    <message>
        <source>“%1” is no weight above zero.</source>
        <translation>«%1» no es un peso mayor que cero.</translation>
    </message>
    <message>
        <source>weighing of the dispensing probe</source>
        <translation>pesada de la sonda dosificadora</translation>
    </message>
    <message>
        <source>One release weighs %2 g; the label&apos;s amount a placement is kept by %1 release at most.</source>
        <translation>Una dosis pesa %2 g; la cantidad de la etiqueta por colocación se cumple con %1 dosis como máximo.</translation>
    </message>
    <message>
        <source>One release weighs %2 g; the label&apos;s amount a placement is kept by %1 releases at most.</source>
        <translation>Una dosis pesa %2 g; la cantidad de la etiqueta por colocación se cumple con %1 dosis como máximo.</translation>
    </message>
    <message>
        <source>One release weighs %1 g.</source>
        <translation>Una dosis pesa %1 g.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>being compared</source>
        <translation>se está comparando</translation>
    </message>
    <message>
        <source>active ingredient</source>
        <translation>ingrediente activo</translation>
    </message>
    <message>
        <source>ingredient and strength, as printed</source>
        <translation>ingrediente y concentración, como está impreso</translation>
    </message>
    <message>
        <source>registration number</source>
        <translation>número de registro</translation>
    </message>
    <message>
        <source>least amount a placement</source>
        <translation>cantidad mínima por colocación</translation>
    </message>
    <message>
        <source>most amount a placement</source>
        <translation>cantidad máxima por colocación</translation>
    </message>
    <message>
        <source>amount a placement that you mean to put</source>
        <translation>cantidad por colocación que usted piensa poner</translation>
    </message>
    <message>
        <source>most placements a system</source>
        <translation>colocaciones por sistema, máximo</translation>
    </message>
    <message>
        <source>least distance between placements</source>
        <translation>distancia mínima entre colocaciones</translation>
    </message>
    <message>
        <source>most on an area, one treatment</source>
        <translation>máximo por superficie, un tratamiento</translation>
    </message>
    <message>
        <source>most on an area, a season</source>
        <translation>máximo por superficie, una temporada</translation>
    </message>
    <message>
        <source>most treatments a season</source>
        <translation>tratamientos por temporada, máximo</translation>
    </message>
    <message>
        <source>least days between treatments</source>
        <translation>días mínimos entre tratamientos</translation>
    </message>
    <message>
        <source>restricted use</source>
        <translation>uso restringido</translation>
    </message>
    <message>
        <source>re-entry after hours (0: none named)</source>
        <translation>reingreso después de horas (0: no dice)</translation>
    </message>
    <message>
        <source>distance from buildings (0: none named)</source>
        <translation>distancia a edificios (0: no dice)</translation>
    </message>
    <message>
        <source>distance from water (0: none named)</source>
        <translation>distancia al agua (0: no dice)</translation>
    </message>
    <message>
        <source>bulk density, grams a millilitre, as weighed</source>
        <translation>densidad a granel, gramos por mililitro, pesada</translation>
    </message>
    <message>
        <source>compared with the label on</source>
        <translation>comparado con la etiqueta el</translation>
    </message>
    <message>
        <source>good until</source>
        <translation>vale hasta</translation>
    </message>
</context>
<context>
    <name>plugside::LoadView</name>
    <message>
        <source>With a budget of</source>
        <translation>Con un presupuesto de</translation>
    </message>
    <message>
        <source>how many traps or minutes there are</source>
        <translation>cuántas trampas o cuántos minutos hay</translation>
    </message>
    <message>
        <source>what the budget counts</source>
        <translation>qué cuenta el presupuesto</translation>
    </message>
    <message>
        <source>traps</source>
        <translation>trampas</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>minutos</translation>
    </message>
    <message>
        <source>keep these sets</source>
        <translation>conservar estos puntos</translation>
    </message>
    <message>
        <source>“%1” is no number of traps or minutes.</source>
        <translation>«%1» no es un número de trampas ni de minutos.</translation>
    </message>
    <message>
        <source>budget</source>
        <translation>presupuesto</translation>
    </message>
    <message>
        <source>keep what the budget reaches</source>
        <translation>conservar lo que alcanza el presupuesto</translation>
    </message>
    <message>
        <source>What to load is being counted.</source>
        <translation>Se está contando lo que hay que cargar.</translation>
    </message>
    <message>
        <source>%1 set stands</source>
        <translation>%1 punto está en pie</translation>
    </message>
    <message>
        <source>%1 sets stand</source>
        <translation>%1 puntos están en pie</translation>
    </message>
    <message>
        <source>About %1 minutes (%2 to %3, %4 in 100), pushing about %5 holes (%6 to %7), without the way between sets. %8</source>
        <translation>Unos %1 minutos (%2 a %3, %4 de 100), con unos %5 sondeos (%6 a %7), sin el camino entre puntos. %8</translation>
    </message>
    <message>
        <source>Without a budget: %1 would reach about %2 of %3 animals.</source>
        <translation>Sin presupuesto: %1 alcanzarían unas %2 de %3 tuzas.</translation>
    </message>
    <message>
        <source>%1 of it go into %2, which reach about %3 of %4 animals; no choice within it reaches more than %5.</source>
        <translation>De él van %1 a %2, que alcanzan unas %3 de %4 tuzas; ninguna elección dentro de él alcanza más de %5.</translation>
    </message>
</context>
<context>
    <name>plugside::MainWindow</name>
    <message>
        <source>Plugside</source>
        <translation>Plugside</translation>
    </message>
    <message>
        <source>This plan was handed out before: %1 decision on its sets came back with it.</source>
        <translation>Este plan se entregó antes: con él regresó %1 decisión sobre sus puntos.</translation>
    </message>
    <message>
        <source>This plan was handed out before: %1 decisions on its sets came back with it.</source>
        <translation>Este plan se entregó antes: con él regresaron %1 decisiones sobre sus puntos.</translation>
    </message>
    <message>
        <source>%1 thing said before names a mark that is not there now; it waits.</source>
        <translation>%1 cosa dicha antes nombra una marca que ahora no está; espera.</translation>
    </message>
    <message>
        <source>%1 things said before name marks that are not there now; they wait.</source>
        <translation>%1 cosas dichas antes nombran marcas que ahora no están; esperan.</translation>
    </message>
    <message>
        <source>%1[*] – Plugside</source>
        <translation>%1[*] – Plugside</translation>
    </message>
    <message>
        <source>add to it</source>
        <translation>agregar a él</translation>
    </message>
    <message>
        <source>open instead</source>
        <translation>abrir en su lugar</translation>
    </message>
    <message>
        <source>stay</source>
        <translation>quedarse</translation>
    </message>
    <message>
        <source>open without</source>
        <translation>abrir sin entregar</translation>
    </message>
    <message>
        <source>Add a walk or ground to this field</source>
        <translation>Agregar un recorrido o terreno a este campo</translation>
    </message>
    <message>
        <source>This is a first look. Hand out once the whole plan is made.</source>
        <translation>Esta es una primera mirada. Entregue cuando esté hecho el plan completo.</translation>
    </message>
    <message>
        <source>The plan is not up to date yet. Hand out once it is made.</source>
        <translation>El plan aún no está al día. Entregue cuando esté hecho.</translation>
    </message>
    <message>
        <source>Handed out: %1
in %2</source>
        <translation>Entregado: %1
en %2</translation>
    </message>
    <message>
        <source>close without</source>
        <translation>cerrar sin entregar</translation>
    </message>
    <message>
        <source>Imagery lies under a field: open a walk first.</source>
        <translation>Las imágenes van bajo un campo: abra antes un recorrido.</translation>
    </message>
    <message>
        <source>Add pictures of the ground</source>
        <translation>Agregar imágenes del terreno</translation>
    </message>
    <message>
        <source>Pictures with a position (*.tif *.tiff *.png *.jpg *.jpeg *.jp2 *.gpkg *.mbtiles);;All files (*)</source>
        <translation>Imágenes con posición (*.tif *.tiff *.png *.jpg *.jpeg *.jp2 *.gpkg *.mbtiles);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>A field is open already. It stays in its project.</source>
        <translation>Ya hay un campo abierto. Se queda en su proyecto.</translation>
    </message>
    <message>
        <source>Open a project, or a walk with its ground if there is one</source>
        <translation>Abrir un proyecto, o un recorrido con su terreno si lo hay</translation>
    </message>
    <message>
        <source>Projects, walks, tables, photographs, ground, plans (*.plugside *.gpx *.csv *.txt *.tsv *.jpg *.jpeg *.kml *.gpkg *.geojson *.json *.shp *.fgb);;All files (*)</source>
        <translation>Proyectos, recorridos, tablas, fotografías, terreno, planes (*.plugside *.gpx *.csv *.txt *.tsv *.jpg *.jpeg *.kml *.gpkg *.geojson *.json *.shp *.fgb);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>This project was of an earlier form and was brought forward. As it was, it is kept as %1.</source>
        <translation>Este proyecto era de una forma anterior y se puso al día. Como estaba, queda guardado como %1.</translation>
    </message>
    <message>
        <source>Every change is kept in %1
in %2</source>
        <translation>Cada cambio se guarda en %1
en %2</translation>
    </message>
    <message>
        <source>kept in %1</source>
        <translation>guardado en %1</translation>
    </message>
    <message>
        <source>not kept yet in %1</source>
        <translation>aún sin guardar en %1</translation>
    </message>
    <message>
        <source>keep as…	Ctrl+Shift+S</source>
        <translation>guardar como…	Ctrl+Mayús+S</translation>
    </message>
    <message>
        <source>open…	Ctrl+O</source>
        <translation>abrir…	Ctrl+O</translation>
    </message>
    <message>
        <source>go on with</source>
        <translation>seguir con</translation>
    </message>
    <message>
        <source>%1[*] – %2 – Plugside</source>
        <translation>%1[*] – %2 – Plugside</translation>
    </message>
    <message>
        <source>%1 is a project and is opened by itself. Open it first, then add the other files.</source>
        <translation>%1 es un proyecto y se abre solo. Ábralo primero y luego agregue los otros archivos.</translation>
    </message>
    <message>
        <source>Keep this project as</source>
        <translation>Guardar este proyecto como</translation>
    </message>
    <message>
        <source>Projects (*.plugside)</source>
        <translation>Proyectos (*.plugside)</translation>
    </message>
    <message>
        <source>The disk takes long.</source>
        <translation>El disco se tarda.</translation>
    </message>
    <message>
        <source>The last changes to this field are not in its project file. %1</source>
        <translation>Los últimos cambios de este campo no están en su archivo de proyecto. %1</translation>
    </message>
    <message>
        <source>wait and try again</source>
        <translation>esperar y probar otra vez</translation>
    </message>
    <message>
        <source>keep as…</source>
        <translation>guardar como…</translation>
    </message>
    <message>
        <source>A receiver is followed on a field: open a walk first.</source>
        <translation>Un receptor se sigue sobre un campo: abra antes un recorrido.</translation>
    </message>
    <message>
        <source>The file that the receiver&apos;s program goes on writing</source>
        <translation>El archivo que el programa del receptor sigue escribiendo</translation>
    </message>
    <message>
        <source>Sentences, tracks, tables (*.nmea *.nma *.log *.txt *.gpx *.csv);;All files (*)</source>
        <translation>Sentencias, trazas, tablas (*.nmea *.nma *.log *.txt *.gpx *.csv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>the sample: nothing of it is kept</source>
        <translation>la muestra: no se guarda nada de ella</translation>
    </message>
    <message>
        <source>stop following the receiver	Ctrl+G</source>
        <translation>dejar de seguir el receptor	Ctrl+G</translation>
    </message>
    <message>
        <source>follow a receiver…	Ctrl+G</source>
        <translation>seguir un receptor…	Ctrl+G</translation>
    </message>
    <message>
        <source>the job on a sample field	F2</source>
        <translation>el trabajo en un campo de muestra	F2</translation>
    </message>
    <message>
        <source>leave the sample</source>
        <translation>salir de la muestra</translation>
    </message>
    <message>
        <source>%1 – a sample, nothing of it is kept – Plugside</source>
        <translation>%1 – una muestra, no se guarda nada de ella – Plugside</translation>
    </message>
    <message>
        <source>This is the sample: nothing of it is kept. A walk of your own has a project from the start.</source>
        <translation>Esta es la muestra: no se guarda nada de ella. Un recorrido propio tiene su proyecto desde el principio.</translation>
    </message>
    <message>
        <source>A field is open. It stays in its project. Show the job on the sample now?</source>
        <translation>Hay un campo abierto. Se queda en su proyecto. ¿Mostrar ahora el trabajo en la muestra?</translation>
    </message>
    <message>
        <source>show the sample</source>
        <translation>mostrar la muestra</translation>
    </message>
    <message>
        <source>show it without</source>
        <translation>mostrarla sin guardar</translation>
    </message>
    <message>
        <source>see the job on a sample field  F2</source>
        <translation>ver el trabajo en un campo de muestra  F2</translation>
    </message>
    <message>
        <source>%1 It is not asked again before you hide it and show it again.</source>
        <translation>%1 No se le vuelve a pedir nada hasta que usted lo oculte y lo muestre de nuevo.</translation>
    </message>
    <message>
        <source>take a picture away</source>
        <translation>retirar una imagen</translation>
    </message>
    <message>
        <source>A layer to trace lines of</source>
        <translation>Una capa de la que calcar líneas</translation>
    </message>
    <message>
        <source>Layers (*.gpkg *.geojson *.json *.shp *.kml *.fgb);;All files (*)</source>
        <translation>Capas (*.gpkg *.geojson *.json *.shp *.kml *.fgb);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>sets %1: %2</source>
        <translation>puntos %1: %2</translation>
    </message>
    <message>
        <source>What speaks against the sets is being judged. Hand out once it is.</source>
        <translation>Se está juzgando lo que habla en contra de los puntos. Entregue cuando termine.</translation>
    </message>
    <message>
        <source>Not handed out: a stop holds. Drop these sets or change what it hangs on.
%1</source>
        <translation>No se entregó: vale un alto. Quite estos puntos o cambie aquello de lo que depende.
%1</translation>
    </message>
    <message>
        <source>These hold-backs want a signed reason before the plan is handed out.
%1</source>
        <translation>Estas esperas piden una razón firmada antes de entregar el plan.
%1</translation>
    </message>
    <message>
        <source>sign them</source>
        <translation>firmarlas</translation>
    </message>
    <message>
        <source>not now</source>
        <translation>ahora no</translation>
    </message>
    <message>
        <source>Click on the map where it is. Space takes the middle of the map, Esc gives up.</source>
        <translation>Haga clic en el mapa donde está. Espacio toma el centro del mapa, Esc lo deja.</translation>
    </message>
    <message>
        <source>The walking order is being worked out. Hand out once it is.</source>
        <translation>El orden de visita se está calculando. Entregue cuando esté listo.</translation>
    </message>
</context>
<context>
    <name>plugside::MapButtons</name>
    <message>
        <source>nearer</source>
        <translation>más cerca</translation>
    </message>
    <message>
        <source>further</source>
        <translation>más lejos</translation>
    </message>
    <message>
        <source>whole field</source>
        <translation>todo el campo</translation>
    </message>
    <message>
        <source>the whole field</source>
        <translation>todo el campo</translation>
    </message>
    <message>
        <source>lat, lon</source>
        <translation>lat, lon</translation>
    </message>
    <message>
        <source>latitude and longitude</source>
        <translation>latitud y longitud</translation>
    </message>
    <message>
        <source>show</source>
        <translation>mostrar</translation>
    </message>
    <message>
        <source>what the map shows</source>
        <translation>qué muestra el mapa</translation>
    </message>
    <message>
        <source>%1 (key %2)</source>
        <translation>%1 (tecla %2)</translation>
    </message>
    <message>
        <source>the way walked</source>
        <translation>el camino recorrido</translation>
    </message>
    <message>
        <source>ground not seen</source>
        <translation>terreno no visto</translation>
    </message>
    <message>
        <source>other diggers&apos; signs</source>
        <translation>señales de otros excavadores</translation>
    </message>
    <message>
        <source>systems</source>
        <translation>sistemas</translation>
    </message>
    <message>
        <source>runs</source>
        <translation>túneles</translation>
    </message>
    <message>
        <source>runs less likely than not</source>
        <translation>túneles menos probables que no</translation>
    </message>
    <message>
        <source>flags and ladders</source>
        <translation>banderas y filas</translation>
    </message>
    <message>
        <source>letters and names</source>
        <translation>letras y nombres</translation>
    </message>
</context>
<context>
    <name>plugside::MapSpeech</name>
    <message>
        <source>set %1 of %2</source>
        <translation>punto %1 de %2</translation>
    </message>
    <message>
        <source>undecided</source>
        <translation>sin decidir</translation>
    </message>
    <message>
        <source>%1 in 100 to meet the run</source>
        <translation>%1 de cada 100 de dar con el túnel</translation>
    </message>
    <message>
        <source>no walk is open</source>
        <translation>sin recorrido</translation>
    </message>
    <message>
        <source>mark %1</source>
        <translation>marca %1</translation>
    </message>
    <message>
        <source>animal %1, %2</source>
        <translation>animal %1, %2</translation>
    </message>
    <message>
        <source>%1 mound</source>
        <translation>%1 montículo</translation>
    </message>
    <message>
        <source>%1 mounds</source>
        <translation>%1 montículos</translation>
    </message>
    <message>
        <source>%1 mark</source>
        <translation>%1 marca</translation>
    </message>
    <message>
        <source>%1 marks</source>
        <translation>%1 marcas</translation>
    </message>
    <message>
        <source>%1 set</source>
        <translation>%1 punto</translation>
    </message>
    <message>
        <source>%1 sets</source>
        <translation>%1 puntos</translation>
    </message>
    <message>
        <source>nothing is picked; %1</source>
        <translation>nada elegido; %1</translation>
    </message>
</context>
<context>
    <name>plugside::MapView</name>
    <message>
        <source>untreated</source>
        <translation>sin tratar</translation>
    </message>
    <message>
        <source>map of the field</source>
        <translation>mapa del campo</translation>
    </message>
    <message>
        <source>Arrow keys move the map, plus and minus zoom, F shows the whole field, Space picks the nearest mark.</source>
        <translation>Las flechas mueven el mapa, más y menos acercan y alejan, F muestra todo el campo, Espacio elige la marca más cercana.</translation>
    </message>
    <message>
        <source>fan %1° %2</source>
        <translation>abanico %1° %2</translation>
    </message>
    <message>
        <source>move over the map or pick a mark</source>
        <translation>pase sobre el mapa o elija una marca</translation>
    </message>
    <message>
        <source>latitude %1, longitude %2</source>
        <translation>latitud %1, longitud %2</translation>
    </message>
    <message>
        <source>; from %1: %2 towards %3° %4</source>
        <translation>; desde %1: %2 hacia %3° %4</translation>
    </message>
    <message>
        <source>Drop a walk here</source>
        <translation>Suelte aquí un recorrido</translation>
    </message>
    <message>
        <source>or press Ctrl+O. A walk is a GPX file from your receiver;
the ground&apos;s layers, or a plan handed out before, may come with it.</source>
        <translation>u oprima Ctrl+O. Un recorrido es un archivo GPX de su receptor;
con él pueden venir las capas del terreno o un plan entregado antes.</translation>
    </message>
</context>
<context>
    <name>plugside::MarkKey</name>
    <message>
        <source>fresh</source>
        <translation>fresco</translation>
    </message>
    <message>
        <source>a mole&apos;s</source>
        <translation>de topo</translation>
    </message>
    <message>
        <source>older</source>
        <translation>más viejo</translation>
    </message>
    <message>
        <source>a ground squirrel&apos;s</source>
        <translation>de ardilla de tierra</translation>
    </message>
    <message>
        <source>age not noted</source>
        <translation>edad no anotada</translation>
    </message>
    <message>
        <source>a vole&apos;s</source>
        <translation>de ratón de pradera</translation>
    </message>
    <message>
        <source>crushed: no fan</source>
        <translation>aplastado</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>otra cosa</translation>
    </message>
    <message>
        <source>how marks are drawn</source>
        <translation>cómo se dibujan las marcas</translation>
    </message>
</context>
<context>
    <name>plugside::MarkPicture</name>
    <message>
        <source>%1. Esc, Enter or a click puts it away.</source>
        <translation>%1. Esc, Enter o un clic la cierra.</translation>
    </message>
    <message>
        <source>The photograph %1 is not beside the files that were read.</source>
        <translation>La fotografía %1 no está junto a los archivos leídos.</translation>
    </message>
    <message>
        <source>The photograph %1 cannot be read.</source>
        <translation>La fotografía %1 no se puede leer.</translation>
    </message>
    <message>
        <source>photograph %1 of the mark</source>
        <translation>fotografía %1 de la marca</translation>
    </message>
    <message>
        <source>larger (Enter, or P)</source>
        <translation>más grande (Enter, o P)</translation>
    </message>
    <message>
        <source>the photograph is being read</source>
        <translation>se está leyendo la fotografía</translation>
    </message>
</context>
<context>
    <name>plugside::MethodPage</name>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>How the work is done is chosen once a walk is open.</source>
        <translation>Cómo se trabaja se elige cuando hay un recorrido abierto.</translation>
    </message>
    <message>
        <source>conditions (N)</source>
        <translation>condiciones (N)</translation>
    </message>
    <message>
        <source>methods (M)</source>
        <translation>métodos (M)</translation>
    </message>
    <message>
        <source>label (L)</source>
        <translation>etiqueta (L)</translation>
    </message>
    <message>
        <source>what speaks against (A)</source>
        <translation>qué habla en contra (A)</translation>
    </message>
    <message>
        <source>to load (O)</source>
        <translation>carga (O)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>no method for the whole field: %1</source>
        <translation>sin método para todo el terreno: %1</translation>
    </message>
</context>
<context>
    <name>plugside::MethodsView</name>
    <message>
        <source>at any ladder</source>
        <translation>en cualquier fila de sondeo</translation>
    </message>
    <message>
        <source>at a ladder beside a plug</source>
        <translation>en una fila de sondeo junto a un tapón</translation>
    </message>
    <message>
        <source>at a ladder between two mounds</source>
        <translation>en una fila de sondeo entre dos montículos</translation>
    </message>
    <message>
        <source>%1; about %2 minutes a set, give or take %3, without its probe holes</source>
        <translation>%1; unos %2 minutos por punto, %3 más o menos, sin sus sondeos</translation>
    </message>
    <message>
        <source>your own</source>
        <translation>suyo</translation>
    </message>
    <message>
        <source>%1, quoted from memory</source>
        <translation>%1, citado de memoria</translation>
    </message>
    <message>
        <source>%1. %2 (%3)</source>
        <translation>%1. %2 (%3)</translation>
    </message>
    <message>
        <source>Tools: %1</source>
        <translation>Herramientas: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>A set takes: %1</source>
        <translation>Un punto lleva: %1</translation>
    </message>
    <message>
        <source>what speaks against it here is being judged</source>
        <translation>se está juzgando lo que habla en contra aquí</translation>
    </message>
    <message>
        <source>stop: %1 of %2 sets</source>
        <translation>alto: %1 de %2 puntos</translation>
    </message>
    <message>
        <source>hold back: %1 of %2 sets</source>
        <translation>espere: %1 de %2 puntos</translation>
    </message>
    <message>
        <source>%1 question open</source>
        <translation>%1 pregunta abierta</translation>
    </message>
    <message>
        <source>%1 questions open</source>
        <translation>%1 preguntas abiertas</translation>
    </message>
    <message>
        <source>No stop and no hold-back is known here; label, local rules and a licensed applicator decide.</source>
        <translation>Aquí no se conoce ningún alto ni espera; deciden la etiqueta, las reglas del lugar y un aplicador con licencia.</translation>
    </message>
    <message>
        <source>What is chosen here holds for the whole field; one set may be worked otherwise (Sets). Nothing here says that a method may be used: label, local rules and a licensed applicator decide.</source>
        <translation>Lo que se elige aquí vale para todo el terreno; un punto se puede trabajar de otro modo (Puntos). Nada de aquí dice que un método se pueda usar: deciden la etiqueta, las reglas del lugar y un aplicador con licencia.</translation>
    </message>
    <message>
        <source>a variant of mine</source>
        <translation>una variante mía</translation>
    </message>
    <message>
        <source>its steps, or not</source>
        <translation>sus pasos, o no</translation>
    </message>
    <message>
        <source>a variant of mine: %1</source>
        <translation>una variante mía: %1</translation>
    </message>
    <message>
        <source>method: %1</source>
        <translation>método: %1</translation>
    </message>
    <message>
        <source>%1, my way</source>
        <translation>%1, a mi manera</translation>
    </message>
    <message>
        <source>own method</source>
        <translation>método propio</translation>
    </message>
    <message>
        <source>chosen for the field</source>
        <translation>elegido para el terreno</translation>
    </message>
    <message>
        <source>choose for the field</source>
        <translation>elegir para el terreno</translation>
    </message>
</context>
<context>
    <name>plugside::MoundFacts</name>
    <message>
        <source>who dug here? (I)</source>
        <translation>¿quién excavó aquí? (I)</translation>
    </message>
    <message>
        <source>questions about what can be seen, with drawings</source>
        <translation>preguntas sobre lo que se ve, con dibujos</translation>
    </message>
    <message>
        <source>×</source>
        <translation>×</translation>
    </message>
    <message>
        <source>put the mark&apos;s facts away</source>
        <translation>cerrar los datos de la marca</translation>
    </message>
    <message>
        <source>put away (Esc)</source>
        <translation>cerrar (Esc)</translation>
    </message>
    <message>
        <source>Mark %1</source>
        <translation>Marca %1</translation>
    </message>
</context>
<context>
    <name>plugside::NotSeenView</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>How far a mound is seen from was learnt from this walk&apos;s own marks.</source>
        <translation>De qué tan lejos se ve un montículo se aprendió de las marcas de este recorrido.</translation>
    </message>
    <message>
        <source>How far a mound is seen from is a default, not this walk&apos;s own: take the numbers as rough.</source>
        <translation>De qué tan lejos se ve un montículo es un valor supuesto, no de este recorrido: tome los números como aproximados.</translation>
    </message>
    <message>
        <source>That the ground not walked is like the ground walked is assumed: %1 in 100 of the mounds not seen rest on that alone.</source>
        <translation>Que el terreno no caminado es como el caminado se supone: %1 de cada 100 de los montículos no vistos dependen solo de eso.</translation>
    </message>
    <message>
        <source>how it was reckoned</source>
        <translation>cómo se calculó</translation>
    </message>
    <message>
        <source>hatched on the map (G)</source>
        <translation>rayado en el mapa (G)</translation>
    </message>
    <message>
        <source>being worked out</source>
        <translation>se está calculando</translation>
    </message>
    <message>
        <source>The walk has no track in the field: what was not seen cannot be told.</source>
        <translation>El recorrido no tiene traza en el campo: no se puede saber qué no se vio.</translation>
    </message>
    <message>
        <source>It was not worked out.</source>
        <translation>No se calculó.</translation>
    </message>
    <message>
        <source>It is worked out once the plan is made.</source>
        <translation>Se calcula cuando esté hecho el plan.</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>parar</translation>
    </message>
    <message>
        <source>work it out</source>
        <translation>calcularlo</translation>
    </message>
    <message>
        <source>Walked: %1. Not walked: %2.</source>
        <translation>Caminado: %1. Sin caminar: %2.</translation>
    </message>
    <message>
        <source>Walked: %1. Without a boundary nobody knows how much was not.</source>
        <translation>Caminado: %1. Sin límite nadie sabe cuánto faltó.</translation>
    </message>
    <message>
        <source>%1 mounds</source>
        <translation>%1 montículos</translation>
    </message>
    <message>
        <source>not seen where somebody walked, in %1 of 100 such cases; expected %2</source>
        <translation>sin ver donde alguien caminó, en %1 de 100 casos así; se esperan %2</translation>
    </message>
    <message>
        <source>%1 animals</source>
        <translation>%1 animales</translation>
    </message>
    <message>
        <source>where nobody walked, in %1 of 100 such cases; expected %2, with %3 of their mounds</source>
        <translation>donde nadie caminó, en %1 de 100 casos así; se esperan %2, con %3 de sus montículos</translation>
    </message>
</context>
<context>
    <name>plugside::NoteRowPainter</name>
    <message>
        <source>nothing was read</source>
        <translation>no se leyó nada</translation>
    </message>
</context>
<context>
    <name>plugside::NoteWordsView</name>
    <message>
        <source>the note&apos;s words: %1</source>
        <translation>las palabras de la nota: %1</translation>
    </message>
    <message>
        <source>picked: %1</source>
        <translation>elegidas: %1</translation>
    </message>
    <message>
        <source>no word is picked</source>
        <translation>ninguna palabra elegida</translation>
    </message>
</context>
<context>
    <name>plugside::NotesModel</name>
    <message>
        <source>%2 (%1 mark)</source>
        <translation>%2 (%1 marca)</translation>
    </message>
    <message>
        <source>%2 (%1 marks)</source>
        <translation>%2 (%1 marcas)</translation>
    </message>
    <message>
        <source>%1: %2. Read: %3.</source>
        <translation>%1: %2. Leído: %3.</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source> Not understood: %1.</source>
        <translation> No se entendió: %1.</translation>
    </message>
</context>
<context>
    <name>plugside::NotesView</name>
    <message>
        <source> …</source>
        <translation> …</translation>
    </message>
    <message>
        <source>notes, each with what was read</source>
        <translation>notas, cada una con lo que se leyó</translation>
    </message>
    <message>
        <source>corrections made, each can be lifted</source>
        <translation>correcciones hechas; cada una se puede quitar</translation>
    </message>
    <message>
        <source>lift this correction (Delete)</source>
        <translation>quitar esta corrección (Supr)</translation>
    </message>
    <message>
        <source>notes with words that were not understood</source>
        <translation>notas con palabras que no se entendieron</translation>
    </message>
    <message>
        <source>all notes</source>
        <translation>todas las notas</translation>
    </message>
    <message>
        <source>notes that speak of people, pets, stock or wildlife</source>
        <translation>notas que hablan de personas, mascotas, ganado o fauna</translation>
    </message>
    <message>
        <source>corrections made</source>
        <translation>correcciones hechas</translation>
    </message>
    <message>
        <source>all of the rest</source>
        <translation>todo el resto</translation>
    </message>
    <message>
        <source>take everything that was not understood: the first stretch means this, the others nothing</source>
        <translation>tomar todo lo que no se entendió: el primer trozo quiere decir esto, los demás nada</translation>
    </message>
    <message>
        <source>what the picked words mean</source>
        <translation>qué quieren decir las palabras elegidas</translation>
    </message>
    <message>
        <source>degrees clockwise from true north</source>
        <translation>grados a la derecha desde el norte verdadero</translation>
    </message>
    <message>
        <source>means</source>
        <translation>quiere decir</translation>
    </message>
    <message>
        <source>in this note</source>
        <translation>en esta nota</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Ctrl+Enter</translation>
    </message>
    <message>
        <source>in all of the walk</source>
        <translation>en todo el recorrido</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Enter</source>
        <translation>Ctrl+Mayús+Enter</translation>
    </message>
    <message>
        <source>rest %1</source>
        <translation>resto %1</translation>
    </message>
    <message>
        <source>all %1</source>
        <translation>todas %1</translation>
    </message>
    <message>
        <source>who %1</source>
        <translation>quién %1</translation>
    </message>
    <message>
        <source>The notes are being read.</source>
        <translation>Se están leyendo las notas.</translation>
    </message>
    <message>
        <source>All that was noted was understood.</source>
        <translation>Todo lo anotado se entendió.</translation>
    </message>
    <message>
        <source>No note speaks of people, pets, stock or wildlife.</source>
        <translation>Ninguna nota habla de personas, mascotas, ganado o fauna.</translation>
    </message>
    <message>
        <source>No mark has a note.</source>
        <translation>Ninguna marca tiene nota.</translation>
    </message>
    <message>
        <source>mended %1</source>
        <translation>corregidas %1</translation>
    </message>
    <message>
        <source>Pick words in the note to say what they mean.</source>
        <translation>Elija palabras de la nota para decir qué quieren decir.</translation>
    </message>
    <message>
        <source>in all of the walk: …</source>
        <translation>en todo el recorrido: …</translation>
    </message>
    <message>
        <source>in all of the walk: %1 note</source>
        <translation>en todo el recorrido: %1 nota</translation>
    </message>
    <message>
        <source>in all of the walk: %1 notes</source>
        <translation>en todo el recorrido: %1 notas</translation>
    </message>
    <message>
        <source>That changes nothing in the walk&apos;s notes.</source>
        <translation>Eso no cambia nada en las notas del recorrido.</translation>
    </message>
    <message>
        <source>In all of the walk it would leave every mark as it is taken now, with less left over in %1.</source>
        <translation>En todo el recorrido dejaría cada marca como se toma ahora, con menos sin entender en %1.</translation>
    </message>
    <message>
        <source>In all of the walk it would change what %1 mark is taken for: </source>
        <translation>En todo el recorrido cambiaría por qué se toma %1 marca: </translation>
    </message>
    <message>
        <source>In all of the walk it would change what %1 marks are taken for: </source>
        <translation>En todo el recorrido cambiaría por qué se toman %1 marcas: </translation>
    </message>
    <message>
        <source>note of %1</source>
        <translation>nota de %1</translation>
    </message>
    <message>
        <source>reading of %1 note</source>
        <translation>lectura de %1 nota</translation>
    </message>
    <message>
        <source>reading of %1 notes</source>
        <translation>lectura de %1 notas</translation>
    </message>
    <message>
        <source>correction lifted</source>
        <translation>corrección quitada</translation>
    </message>
</context>
<context>
    <name>plugside::OwnMethodEdit</name>
    <message>
        <source>its name</source>
        <translation>su nombre</translation>
    </message>
    <message>
        <source>minutes a set</source>
        <translation>minutos por punto</translation>
    </message>
    <message>
        <source>give or take, minutes</source>
        <translation>minutos más o menos</translation>
    </message>
    <message>
        <source>placements a set, of bait or fumigant</source>
        <translation>colocaciones por punto, de cebo o fumigante</translation>
    </message>
    <message>
        <source>tools, with commas between</source>
        <translation>herramientas, con comas entre ellas</translation>
    </message>
    <message>
        <source>steps, a line each</source>
        <translation>pasos, un renglón cada uno</translation>
    </message>
    <message>
        <source>use these words</source>
        <translation>usar estas palabras</translation>
    </message>
    <message>
        <source>take this method away</source>
        <translation>quitar este método</translation>
    </message>
    <message>
        <source>own method</source>
        <translation>método propio</translation>
    </message>
    <message>
        <source>Sets are worked by it. Choose another method first.</source>
        <translation>Hay puntos que se trabajan así. Elija antes otro método.</translation>
    </message>
    <message>
        <source>take a method away</source>
        <translation>quitar un método</translation>
    </message>
</context>
<context>
    <name>plugside::PickButton</name>
    <message>
        <source>%1: %2 ▾</source>
        <translation>%1: %2 ▾</translation>
    </message>
</context>
<context>
    <name>plugside::PicturePlacing</name>
    <message>
        <source>add a pair</source>
        <translation>agregar un par</translation>
    </message>
    <message>
        <source>remove a pair</source>
        <translation>quitar un par</translation>
    </message>
    <message>
        <source>way of placing</source>
        <translation>modo de ubicar</translation>
    </message>
    <message>
        <source>move a pair</source>
        <translation>mover un par</translation>
    </message>
</context>
<context>
    <name>plugside::PictureSheet</name>
    <message>
        <source>photograph %1</source>
        <translation>fotografía %1</translation>
    </message>
</context>
<context>
    <name>plugside::PictureView</name>
    <message>
        <source>picture to be placed</source>
        <translation>imagen por ubicar</translation>
    </message>
    <message>
        <source>Arrow keys move the cross, Space puts a spot, plus and minus zoom, R turns the picture.</source>
        <translation>Las flechas mueven la cruz, Espacio pone un punto, más y menos acercan y alejan, R gira la imagen.</translation>
    </message>
    <message>
        <source>The picture is being opened.</source>
        <translation>Se está abriendo la imagen.</translation>
    </message>
</context>
<context>
    <name>plugside::PlacingPanel</name>
    <message>
        <source>what to do next</source>
        <translation>qué hacer ahora</translation>
    </message>
    <message>
        <source>place: mark, or latitude, longitude</source>
        <translation>lugar: marca, o latitud, longitud</translation>
    </message>
    <message>
        <source>place on the map, typed</source>
        <translation>lugar del mapa, escrito</translation>
    </message>
    <message>
        <source>pairs, each with what it is off by</source>
        <translation>pares, cada uno con lo que se desvía</translation>
    </message>
    <message>
        <source>how well the pairs agree</source>
        <translation>qué tan bien concuerdan los pares</translation>
    </message>
    <message>
        <source>For a scan or a photograph taken straight down: the picture is shifted, turned and scaled only, so that pairs check each other sooner.</source>
        <translation>Para un escaneo o una foto tomada desde arriba: la imagen solo se desplaza, gira y escala, y así los pares se comprueban antes entre sí.</translation>
    </message>
    <message>
        <source>remove (Del)</source>
        <translation>quitar (Supr)</translation>
    </message>
    <message>
        <source>done (Esc)</source>
        <translation>listo (Esc)</translation>
    </message>
    <message>
        <source>Now click the same place on the map, or a mark, or type it. By keys: Ctrl+M goes to the map.</source>
        <translation>Ahora haga clic en el mismo lugar del mapa, o en una marca, o escríbalo. Con teclas: Ctrl+M lleva al mapa.</translation>
    </message>
    <message>
        <source>Now click the same place on the picture.</source>
        <translation>Ahora haga clic en el mismo lugar de la imagen.</translation>
    </message>
    <message>
        <source>Click a place on the picture that you can find on the map too: a corner, a pole, a gate. Three pairs place the picture; more check each other. Pairs are moved by dragging, or by Ctrl with arrows.</source>
        <translation>Haga clic en un lugar de la imagen que también encuentre en el mapa: una esquina, un poste, una puerta. Tres pares ubican la imagen; con más, se comprueban entre sí. Los pares se mueven arrastrando, o con Ctrl y flechas.</translation>
    </message>
    <message>
        <source>All together: pairs agree to about %1.</source>
        <translation>En conjunto, los pares concuerdan a unos %1.</translation>
    </message>
    <message>
        <source>These pairs fit exactly and so check nothing; one more shows how well they agree.</source>
        <translation>Estos pares ajustan exactamente y por eso no comprueban nada; uno más muestra qué tan bien concuerdan.</translation>
    </message>
    <message>
        <source>Pair %1 stands out most: look at it first.</source>
        <translation>El par %1 es el que más se aparta: revíselo primero.</translation>
    </message>
    <message>
        <source>The picture would lie face down: two pairs are probably exchanged.</source>
        <translation>La imagen quedaría boca abajo: es probable que dos pares estén intercambiados.</translation>
    </message>
    <message>
        <source>pair %1</source>
        <translation>par %1</translation>
    </message>
    <message>
        <source>pair %1: off by %2</source>
        <translation>par %1: se desvía %2</translation>
    </message>
    <message>
        <source>%1, stands out most</source>
        <translation>%1, es el que más se aparta</translation>
    </message>
    <message>
        <source>Place %1</source>
        <translation>Ubicar %1</translation>
    </message>
    <message>
        <source>one scale, no slant</source>
        <translation>misma escala, sin sesgo</translation>
    </message>
</context>
<context>
    <name>plugside::ProjectKeeper</name>
    <message>
        <source>The last change is not in the project file yet; it is tried again. %1</source>
        <translation>El último cambio aún no está en el archivo de proyecto; se intenta otra vez. %1</translation>
    </message>
    <message>
        <source>%1 is open here already.</source>
        <translation>%1 ya está abierto aquí.</translation>
    </message>
</context>
<context>
    <name>plugside::QuestionRow</name>
    <message>
        <source>from which day</source>
        <translation>desde qué día</translation>
    </message>
    <message>
        <source>until which day</source>
        <translation>hasta qué día</translation>
    </message>
    <message>
        <source>when, in your words</source>
        <translation>cuándo, en sus palabras</translation>
    </message>
    <message>
        <source>who was asked, and what they said</source>
        <translation>a quién se preguntó, y qué dijo</translation>
    </message>
    <message>
        <source>number of the call</source>
        <translation>número de la llamada</translation>
    </message>
    <message>
        <source>holder</source>
        <translation>titular</translation>
    </message>
    <message>
        <source>number (kept out of what is handed out)</source>
        <translation>número (no sale en lo que se entrega)</translation>
    </message>
    <message>
        <source>valid until</source>
        <translation>vale hasta</translation>
    </message>
    <message>
        <source>still so</source>
        <translation>sigue así</translation>
    </message>
    <message>
        <source>still so: %1</source>
        <translation>sigue así: %1</translation>
    </message>
    <message>
        <source>Answered %1. That is too long ago to be believed: is it still so?</source>
        <translation>Respondido el %1. Hace demasiado para creerlo: ¿sigue así?</translation>
    </message>
    <message>
        <source>answered %1</source>
        <translation>respondido el %1</translation>
    </message>
</context>
<context>
    <name>plugside::ReachCurve</name>
    <message>
        <source>animals reached against what is spent: %1 reach %2 of %3</source>
        <translation>tuzas alcanzadas según lo gastado: %1 alcanzan %2 de %3</translation>
    </message>
    <message>
        <source>animals reached</source>
        <translation>tuzas alcanzadas</translation>
    </message>
    <message>
        <source>traps</source>
        <translation>trampas</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>minutos</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>puntos</translation>
    </message>
    <message>
        <source>%1 trap</source>
        <translation>%1 trampa</translation>
    </message>
    <message>
        <source>%1 traps</source>
        <translation>%1 trampas</translation>
    </message>
    <message>
        <source>%1 minute</source>
        <translation>%1 minuto</translation>
    </message>
    <message>
        <source>%1 minutes</source>
        <translation>%1 minutos</translation>
    </message>
    <message>
        <source>%1 set</source>
        <translation>%1 punto</translation>
    </message>
    <message>
        <source>%1 sets</source>
        <translation>%1 puntos</translation>
    </message>
    <message>
        <source>%1 in the field</source>
        <translation>%1 en el campo</translation>
    </message>
    <message>
        <source>%1: %2 animals</source>
        <translation>%1: %2 animales</translation>
    </message>
</context>
<context>
    <name>plugside::ReadingDesk</name>
    <message>
        <source>the open field</source>
        <translation>el campo abierto</translation>
    </message>
</context>
<context>
    <name>plugside::ReadingSheet</name>
    <message>
        <source>the files, what each was taken for, and whether it is read</source>
        <translation>los archivos, por qué se tomó cada uno, y si se lee</translation>
    </message>
    <message>
        <source>all bearings</source>
        <translation>rumbos</translation>
    </message>
    <message>
        <source>as each file says</source>
        <translation>como dice cada archivo</translation>
    </message>
    <message>
        <source>from true north</source>
        <translation>desde el norte verdadero</translation>
    </message>
    <message>
        <source>from magnetic north</source>
        <translation>desde el norte magnético</translation>
    </message>
    <message>
        <source>Enter, or Ctrl+Enter from anywhere</source>
        <translation>Enter, o Ctrl+Enter desde cualquier parte</translation>
    </message>
    <message>
        <source>How the files were read</source>
        <translation>Cómo se leyeron los archivos</translation>
    </message>
    <message>
        <source>What the files hold</source>
        <translation>Qué hay en los archivos</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>being counted</source>
        <translation>se está contando</translation>
    </message>
    <message>
        <source>%1 file</source>
        <translation>%1 archivo</translation>
    </message>
    <message>
        <source>%1 files</source>
        <translation>%1 archivos</translation>
    </message>
    <message>
        <source>, %1 left out</source>
        <translation>, %1 fuera</translation>
    </message>
    <message>
        <source>; %1 waits for an answer</source>
        <translation>; %1 espera respuesta</translation>
    </message>
    <message>
        <source>; %1 wait for an answer</source>
        <translation>; %1 esperan respuesta</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>parar</translation>
    </message>
    <message>
        <source>not now</source>
        <translation>ahora no</translation>
    </message>
    <message>
        <source>Escape</source>
        <translation>Escape</translation>
    </message>
    <message>
        <source>reading…</source>
        <translation>leyendo…</translation>
    </message>
    <message>
        <source>read again</source>
        <translation>leer otra vez</translation>
    </message>
    <message>
        <source>read these</source>
        <translation>leer estos</translation>
    </message>
    <message>
        <source>%1 waits for an answer: say it, or leave the file out (Space in the list).</source>
        <translation>%1 espera una respuesta: désela, o deje fuera el archivo (Espacio en la lista).</translation>
    </message>
    <message>
        <source>%1 file was read; </source>
        <translation>Se leyó %1 archivo; </translation>
    </message>
    <message>
        <source>%1 files were read; </source>
        <translation>Se leyeron %1 archivos; </translation>
    </message>
    <message>
        <source>the survey has %1 mark</source>
        <translation>el levantamiento tiene %1 marca</translation>
    </message>
    <message>
        <source>the survey has %1 marks</source>
        <translation>el levantamiento tiene %1 marcas</translation>
    </message>
    <message>
        <source> of %1 walk.</source>
        <translation> de %1 recorrido.</translation>
    </message>
    <message>
        <source> of %1 walks.</source>
        <translation> de %1 recorridos.</translation>
    </message>
    <message>
        <source>
Left out: %1</source>
        <translation>
Fuera: %1</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
</context>
<context>
    <name>plugside::RecentProjects</name>
    <message>
        <source>%1 (not named)</source>
        <translation>%1 (sin nombre)</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 en %2</translation>
    </message>
    <message>
        <source>Go on with</source>
        <translation>Seguir con</translation>
    </message>
    <message>
        <source>go on with %1</source>
        <translation>seguir con %1</translation>
    </message>
</context>
<context>
    <name>plugside::RowEdit</name>
    <message>
        <source>grams</source>
        <translation>gramos</translation>
    </message>
    <message>
        <source>kilograms</source>
        <translation>kilogramos</translation>
    </message>
    <message>
        <source>ounces</source>
        <translation>onzas</translation>
    </message>
    <message>
        <source>pounds</source>
        <translation>libras</translation>
    </message>
    <message>
        <source>teaspoons</source>
        <translation>cucharaditas</translation>
    </message>
    <message>
        <source>tablespoons</source>
        <translation>cucharadas</translation>
    </message>
    <message>
        <source>cups</source>
        <translation>tazas</translation>
    </message>
    <message>
        <source>tablets</source>
        <translation>pastillas</translation>
    </message>
    <message>
        <source>cartridges</source>
        <translation>cartuchos</translation>
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
        <source>not known</source>
        <translation>no se sabe</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source>private applicator</source>
        <translation>aplicador privado</translation>
    </message>
    <message>
        <source>commercial applicator</source>
        <translation>aplicador comercial</translation>
    </message>
    <message>
        <source>—</source>
        <translation>—</translation>
    </message>
    <message>
        <source>year-month-day</source>
        <translation>año-mes-día</translation>
    </message>
    <message>
        <source>unit of: %1</source>
        <translation>unidad de: %1</translation>
    </message>
    <message>
        <source>area of: %1</source>
        <translation>superficie de: %1</translation>
    </message>
    <message>
        <source>per acre</source>
        <translation>por acre</translation>
    </message>
    <message>
        <source>per hectare</source>
        <translation>por hectárea</translation>
    </message>
    <message>
        <source>not known: %1</source>
        <translation>no se sabe: %1</translation>
    </message>
    <message>
        <source>ft</source>
        <translation>pies</translation>
    </message>
    <message>
        <source>m</source>
        <translation>m</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>“%1” is not a number.</source>
        <translation>«%1» no es un número.</translation>
    </message>
    <message>
        <source>other</source>
        <translation>otro</translation>
    </message>
</context>
<context>
    <name>plugside::ServerDialog</name>
    <message>
        <source>Imagery from a server</source>
        <translation>Imágenes de un servidor</translation>
    </message>
    <message>
        <source>Enter the address of map tiles that you may use, with {z}, {x} and {y} where level, column and row stand.</source>
        <translation>Escriba la dirección de teselas de mapa que usted puede usar, con {z}, {x} e {y} donde van nivel, columna y fila.</translation>
    </message>
    <message>
        <source>address of the tiles</source>
        <translation>dirección de las teselas</translation>
    </message>
    <message>
        <source>finest level that the server has</source>
        <translation>nivel más fino que tiene el servidor</translation>
    </message>
    <message>
        <source>finest level that it has</source>
        <translation>nivel más fino que tiene</translation>
    </message>
    <message>
        <source>what will be asked of whom</source>
        <translation>qué se pedirá y a quién</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>yes, ask it</source>
        <translation>sí, pedirle</translation>
    </message>
    <message>
        <source>Nothing is asked of anyone yet. Without a yes this program never uses the network.</source>
        <translation>Todavía no se le pide nada a nadie. Sin un sí, este programa nunca usa la red.</translation>
    </message>
    <message>
        <source>With a yes, %1 is asked for the tiles of what you look at, whenever you look elsewhere on the map. It can then see which part of the map is looked at, when, and from which network address. Nothing of the project is sent: no mark, no note, no file. It is asked until you hide it, take it away, or open another field.</source>
        <translation>Con un sí, se le piden a %1 las teselas de lo que usted mira, cada vez que mire otra parte del mapa. Así puede ver qué parte del mapa se mira, cuándo y desde qué dirección de red. No se envía nada del proyecto: ninguna marca, ninguna nota, ningún archivo. Se le pide hasta que usted lo oculte, lo retire o abra otro campo.</translation>
    </message>
    <message>
        <source>The address begins with http: whoever carries the request can read it too.</source>
        <translation>La dirección empieza con http: quien transporte la petición también puede leerla.</translation>
    </message>
</context>
<context>
    <name>plugside::ServerImagery</name>
    <message>
        <source>%1 sends on to %2. Only the address that you entered is asked; enter the other one if you trust it.</source>
        <translation>%1 remite a %2. Solo se pide a la dirección que usted escribió; escriba la otra si le tiene confianza.</translation>
    </message>
    <message>
        <source>%1 sends more than a tile holds.</source>
        <translation>%1 envía más de lo que cabe en una tesela.</translation>
    </message>
    <message>
        <source>There is no server named %1, or no network.</source>
        <translation>No hay ningún servidor llamado %1, o no hay red.</translation>
    </message>
    <message>
        <source>%1 refuses the connection.</source>
        <translation>%1 rechaza la conexión.</translation>
    </message>
    <message>
        <source>%1 does not answer in time.</source>
        <translation>%1 no responde a tiempo.</translation>
    </message>
    <message>
        <source>%1 cannot show that it is itself.</source>
        <translation>%1 no puede demostrar que es quien dice ser.</translation>
    </message>
    <message>
        <source>%1 answers with the number %2 in place of a picture.</source>
        <translation>%1 responde con el número %2 en lugar de una imagen.</translation>
    </message>
    <message>
        <source>%1 broke off: %2.</source>
        <translation>%1 se interrumpió: %2.</translation>
    </message>
    <message>
        <source>%1 sends something that is no picture of a tile.</source>
        <translation>%1 envía algo que no es la imagen de una tesela.</translation>
    </message>
</context>
<context>
    <name>plugside::SetReadings</name>
    <message>
        <source>to the right</source>
        <translation>a la derecha</translation>
    </message>
    <message>
        <source>tape reading from the plug</source>
        <translation>lectura de cinta desde el tapón</translation>
    </message>
    <message>
        <source>tape reading to the right; to the left with a minus</source>
        <translation>lectura de cinta a la derecha; a la izquierda con menos</translation>
    </message>
    <message>
        <source>a length: 1 ft 3, 15 in, 0.38 m</source>
        <translation>una medida: 1 ft 3, 15 in, 0.38 m</translation>
    </message>
    <message>
        <source>from the plug of %1</source>
        <translation>desde el tapón de %1</translation>
    </message>
    <message>
        <source>“%1” is no length. Type 1 ft 3, 15 in or 0.38 m.</source>
        <translation>«%1» no es una medida. Escriba 1 ft 3, 15 in o 0.38 m.</translation>
    </message>
</context>
<context>
    <name>plugside::SetReasons</name>
    <message>
        <source>a run joins %1 and %2 in %3 of 100</source>
        <translation>un túnel une %1 y %2 en %3 de 100</translation>
    </message>
    <message>
        <source>why this place (W)</source>
        <translation>por qué aquí (W)</translation>
    </message>
    <message>
        <source>why this place, and what else was possible</source>
        <translation>por qué aquí y qué más era posible</translation>
    </message>
    <message>
        <source>No run is drawn to these mounds: the fan alone tells where to probe.</source>
        <translation>No hay túnel trazado a estos montículos: solo el abanico dice dónde sondear.</translation>
    </message>
    <message>
        <source>and %1 more run</source>
        <translation>y %1 túnel más</translation>
    </message>
    <message>
        <source>and %1 more runs</source>
        <translation>y %1 túneles más</translation>
    </message>
    <message>
        <source>No other place of this animal is free.</source>
        <translation>Ningún otro lugar de este animal está libre.</translation>
    </message>
    <message>
        <source>Take one of these instead:</source>
        <translation>Tomar uno de estos en su lugar:</translation>
    </message>
    <message>
        <source>%1  (I)</source>
        <translation>%1  (I)</translation>
    </message>
    <message>
        <source>take instead: %1, %2</source>
        <translation>tomar en su lugar: %1, %2</translation>
    </message>
    <message>
        <source>%1 further place has no more chance than these.</source>
        <translation>%1 lugar más no tiene mayor probabilidad que estos.</translation>
    </message>
    <message>
        <source>%1 further places have no more chance than these.</source>
        <translation>%1 lugares más no tienen mayor probabilidad que estos.</translation>
    </message>
    <message>
        <source>%1 other is a set of this plan already.</source>
        <translation>%1 otro ya es punto de este plan.</translation>
    </message>
    <message>
        <source>%1 others are sets of this plan already.</source>
        <translation>%1 otros ya son puntos de este plan.</translation>
    </message>
    <message>
        <source>fan towards %1</source>
        <translation>abanico hacia %1</translation>
    </message>
    <message>
        <source>no fan read</source>
        <translation>sin abanico leído</translation>
    </message>
    <message>
        <source>animal %1&apos;s in %2 of 100</source>
        <translation>del animal %1 en %2 de 100</translation>
    </message>
</context>
<context>
    <name>plugside::SetStrip</name>
    <message>
        <source>the sets of animal %1 side by side</source>
        <translation>los puntos del animal %1 lado a lado</translation>
    </message>
    <message>
        <source>set %1, %2 in 100</source>
        <translation>punto %1, %2 de 100</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>the sets of animal %1; arrow keys choose (A)</source>
        <translation>los puntos del animal %1; las flechas eligen (A)</translation>
    </message>
    <message>
        <source>‹ %1</source>
        <translation>‹ %1</translation>
    </message>
    <message>
        <source>%1 ›</source>
        <translation>%1 ›</translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <translation>%1 de 100</translation>
    </message>
</context>
<context>
    <name>plugside::SetsPage</name>
    <message>
        <source>animal %1, plug side of %2</source>
        <translation>animal %1, del lado del tapón de %2</translation>
    </message>
    <message>
        <source>animal %1, between %2 and %3</source>
        <translation>animal %1, entre %2 y %3</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>conservado</translation>
    </message>
    <message>
        <source>dropped</source>
        <translation>quitado</translation>
    </message>
    <message>
        <source>kept at the place it was moved to</source>
        <translation>conservado en el lugar al que se movió</translation>
    </message>
    <message>
        <source>what to do, the chance, and what to mind</source>
        <translation>qué hacer, la probabilidad, y qué cuidar</translation>
    </message>
    <message>
        <source>keep</source>
        <translation>conservar</translation>
    </message>
    <message>
        <source>move</source>
        <translation>mover</translation>
    </message>
    <message>
        <source>drop</source>
        <translation>quitar</translation>
    </message>
    <message>
        <source>‹</source>
        <translation>‹</translation>
    </message>
    <message>
        <source>previous set</source>
        <translation>punto anterior</translation>
    </message>
    <message>
        <source>Page up</source>
        <translation>Re Pág</translation>
    </message>
    <message>
        <source>›</source>
        <translation>›</translation>
    </message>
    <message>
        <source>next set</source>
        <translation>punto siguiente</translation>
    </message>
    <message>
        <source>Page down</source>
        <translation>Av Pág</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>undecide  U</source>
        <translation>sin decidir  U</translation>
    </message>
    <message>
        <source>take the decision back</source>
        <translation>deshacer la decisión</translation>
    </message>
    <message>
        <source>U</source>
        <translation>U</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Puntos</translation>
    </message>
    <message>
        <source>A set is proposed once a walk is open.</source>
        <translation>Se propone un punto cuando hay un recorrido abierto.</translation>
    </message>
    <message>
        <source>The plan proposes no set. The Walk step says why.</source>
        <translation>El plan no propone ningún punto. El paso Recorrido dice por qué.</translation>
    </message>
    <message>
        <source>The plan is being made.</source>
        <translation>El plan se está haciendo.</translation>
    </message>
    <message>
        <source>Set %1</source>
        <translation>Punto %1</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <translation>%1 de 100</translation>
    </message>
    <message>
        <source>to meet the run,
about %1 rung</source>
        <translation>de dar con el túnel,
unos %1 sondeo</translation>
    </message>
    <message>
        <source>to meet the run,
about %1 rungs</source>
        <translation>de dar con el túnel,
unos %1 sondeos</translation>
    </message>
    <message>
        <source>chance is
recomputed</source>
        <translation>se calcula otra
vez</translation>
    </message>
    <message>
        <source>%1 thing to mind here</source>
        <translation>%1 cosa que cuidar aquí</translation>
    </message>
    <message>
        <source>%1 things to mind here</source>
        <translation>%1 cosas que cuidar aquí</translation>
    </message>
    <message>
        <source>lower the chance asked for</source>
        <translation>bajar la probabilidad pedida</translation>
    </message>
    <message>
        <source>raise the chance asked for</source>
        <translation>subir la probabilidad pedida</translation>
    </message>
    <message>
        <source>in 100</source>
        <translation>de 100</translation>
    </message>
    <message>
        <source>plug side of %1</source>
        <translation>lado del tapón de %1</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>entre %1 y %2</translation>
    </message>
    <message>
        <source>%2 in 100, about %1 rung</source>
        <translation>%2 de 100, cerca de %1 sondeo</translation>
    </message>
    <message>
        <source>%2 in 100, about %1 rungs</source>
        <translation>%2 de 100, cerca de %1 sondeos</translation>
    </message>
    <message>
        <source>undecided</source>
        <translation>sin decidir</translation>
    </message>
    <message>
        <source>with a caution of the place</source>
        <translation>con advertencia del lugar</translation>
    </message>
    <message>
        <source>chance under %1 in 100</source>
        <translation>probabilidad menor de %1 de 100</translation>
    </message>
    <message>
        <source>chance of at least %1 in 100</source>
        <translation>probabilidad de %1 de 100 o más</translation>
    </message>
    <message>
        <source>animal %1</source>
        <translation>animal %1</translation>
    </message>
    <message>
        <source>Adds %1 animals to those reached, for about %2 minutes.</source>
        <translation>Suma %1 animales a los alcanzados, por unos %2 minutos.</translation>
    </message>
    <message>
        <source>moved %1 along, %2 to the right</source>
        <translation>movido %1 a lo largo, %2 a la derecha</translation>
    </message>
    <message>
        <source>%1 of %2 (O)</source>
        <translation>%1 de %2 (O)</translation>
    </message>
    <message>
        <source>all %1 sets (O)</source>
        <translation>los %1 puntos (O)</translation>
    </message>
    <message>
        <source>%1 passed over; gone through: %2</source>
        <translation>%1 se pasan por alto; se recorren: %2</translation>
    </message>
    <message>
        <source>keep %1</source>
        <translation>conservar %1</translation>
    </message>
    <message>
        <source>drop %1</source>
        <translation>quitar %1</translation>
    </message>
    <message>
        <source>lay here</source>
        <translation>dejar aquí</translation>
    </message>
    <message>
        <source>No set is kept yet.</source>
        <translation>Aún no se conserva ningún punto.</translation>
    </message>
    <message>
        <source>Kept sets reach %1 of %2 animals; in %3 of 100 cases %4 to %5.</source>
        <translation>Los conservados alcanzan %1 de %2 animales; en %3 de 100 casos, de %4 a %5.</translation>
    </message>
    <message>
        <source>%1 With the undecided: %2.</source>
        <translation>%1 Con los no decididos: %2.</translation>
    </message>
    <message>
        <source>keep %1 set</source>
        <translation>conservar %1 punto</translation>
    </message>
    <message>
        <source>keep %1 sets</source>
        <translation>conservar %1 puntos</translation>
    </message>
    <message>
        <source>drop %1 set</source>
        <translation>quitar %1 punto</translation>
    </message>
    <message>
        <source>drop %1 sets</source>
        <translation>quitar %1 puntos</translation>
    </message>
    <message>
        <source>several (T)</source>
        <translation>varios (T)</translation>
    </message>
    <message>
        <source>which sets are gone through</source>
        <translation>qué puntos se recorren</translation>
    </message>
    <message>
        <source>decide on several sets at once</source>
        <translation>decidir varios puntos a la vez</translation>
    </message>
    <message>
        <source>decide on several sets at once (T)</source>
        <translation>decidir varios puntos a la vez (T)</translation>
    </message>
    <message>
        <source>worthiest  N</source>
        <translation>rinde más  N</translation>
    </message>
    <message>
        <source>the undecided set that is worth most</source>
        <translation>el punto sin decidir que rinde más</translation>
    </message>
    <message>
        <source>another place for set %1</source>
        <translation>otro lugar para el punto %1</translation>
    </message>
    <message>
        <source>the method of this set</source>
        <translation>el método de este punto</translation>
    </message>
    <message>
        <source>%1 Signed by %2.</source>
        <translation>%1 Firmado por %2.</translation>
    </message>
    <message>
        <source>as the field: %1</source>
        <translation>como el terreno: %1</translation>
    </message>
    <message>
        <source>no method chosen for the field</source>
        <translation>sin método elegido para el terreno</translation>
    </message>
    <message>
        <source>method of set %1</source>
        <translation>método del punto %1</translation>
    </message>
    <message>
        <source>Walking order</source>
        <translation>Orden de visita</translation>
    </message>
    <message>
        <source>walking order (R)</source>
        <translation>orden de visita (R)</translation>
    </message>
    <message>
        <source>the order in which sets are walked to</source>
        <translation>el orden en que se visitan los puntos</translation>
    </message>
    <message>
        <source>the order in which sets are walked to (R)</source>
        <translation>el orden en que se visitan los puntos (R)</translation>
    </message>
</context>
<context>
    <name>plugside::Several</name>
    <message>
        <source>Decide on several at once</source>
        <translation>Decidir varios a la vez</translation>
    </message>
    <message>
        <source>least chance in 100</source>
        <translation>probabilidad mínima de 100</translation>
    </message>
    <message>
        <source>all undecided</source>
        <translation>todos los no decididos</translation>
    </message>
    <message>
        <source>undecided of those gone through</source>
        <translation>sin decidir entre los recorridos</translation>
    </message>
    <message>
        <source>undecided of animal %1</source>
        <translation>sin decidir del animal %1</translation>
    </message>
    <message>
        <source>undecided, chance at least</source>
        <translation>sin decidir, al menos</translation>
    </message>
    <message>
        <source>There is no undecided set among these.</source>
        <translation>Entre estos no hay puntos sin decidir.</translation>
    </message>
    <message>
        <source>The next key decides %1 set. What was decided already stays.</source>
        <translation>La tecla siguiente decide %1 punto. Lo ya decidido queda.</translation>
    </message>
    <message>
        <source>The next key decides %1 sets at once; undo takes them back together. What was decided already stays.</source>
        <translation>La tecla siguiente decide %1 puntos a la vez; deshacer los devuelve juntos. Lo ya decidido queda.</translation>
    </message>
</context>
<context>
    <name>plugside::ShowOnly</name>
    <message>
        <source>Go through these alone</source>
        <translation>Recorrer solo estos</translation>
    </message>
    <message>
        <source>chance in 100</source>
        <translation>probabilidad de 100</translation>
    </message>
    <message>
        <source>show all again</source>
        <translation>mostrar todos otra vez</translation>
    </message>
    <message>
        <source>undecided</source>
        <translation>sin decidir</translation>
    </message>
    <message>
        <source>with a caution of the place</source>
        <translation>con advertencia del lugar</translation>
    </message>
    <message>
        <source>chance to meet the run under</source>
        <translation>dar con el túnel en menos de</translation>
    </message>
    <message>
        <source>of animal %1</source>
        <translation>del animal %1</translation>
    </message>
    <message>
        <source>All %1 sets are gone through.</source>
        <translation>Se recorren los %1 puntos.</translation>
    </message>
    <message>
        <source>%1 of %2 sets are gone through, %3 are passed over. The map shows all.</source>
        <translation>Se recorren %1 de %2 puntos, %3 se pasan por alto. El mapa los muestra todos.</translation>
    </message>
</context>
<context>
    <name>plugside::Slip</name>
    <message>
        <source>×</source>
        <translation>×</translation>
    </message>
    <message>
        <source>put this notice away</source>
        <translation>cerrar este aviso</translation>
    </message>
    <message>
        <source>put away (Esc)</source>
        <translation>cerrar (Esc)</translation>
    </message>
</context>
<context>
    <name>plugside::StandingView</name>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 días</translation>
    </message>
    <message>
        <source>keep in the middle</source>
        <translation>tener al centro</translation>
    </message>
    <message>
        <source>Ctrl+Shift+G</source>
        <translation>Ctrl+Mayús+G</translation>
    </message>
    <message>
        <source>stop following</source>
        <translation>dejar de seguir</translation>
    </message>
    <message>
        <source>Ctrl+G</source>
        <translation>Ctrl+G</translation>
    </message>
    <message>
        <source>%1 ago</source>
        <translation>hace %1</translation>
    </message>
    <message>
        <source>No place is in the file yet.</source>
        <translation>Aún no hay ningún lugar en el archivo.</translation>
    </message>
    <message>
        <source>Looking into the file.</source>
        <translation>Mirando el archivo.</translation>
    </message>
    <message>
        <source>The receiver has no place now. The last one was told %1 ago.</source>
        <translation>El receptor no tiene lugar ahora. El último lo dijo hace %1.</translation>
    </message>
    <message>
        <source>Nothing new for %1: this is where you were.</source>
        <translation>Nada nuevo desde hace %1: aquí es donde estaba usted.</translation>
    </message>
    <message>
        <source>You are within %1 of here (19 times in 20), %2 ago.</source>
        <translation>Usted está a menos de %1 de aquí (19 veces de 20), hace %2.</translation>
    </message>
    <message>
        <source>You are about here, %1 ago. How near is not told.</source>
        <translation>Usted está más o menos aquí, hace %1. Qué tan cerca, no se dice.</translation>
    </message>
    <message>
        <source>The receiver says that this place is guessed or made up.</source>
        <translation>El receptor dice que este lugar es supuesto o inventado.</translation>
    </message>
    <message>
        <source>The receiver&apos;s clock is ahead of this computer&apos;s.</source>
        <translation>El reloj del receptor va adelantado al de esta computadora.</translation>
    </message>
    <message>
        <source>That is far from this field.</source>
        <translation>Eso está lejos de este campo.</translation>
    </message>
    <message>
        <source>All sets are decided.</source>
        <translation>Todos los puntos están decididos.</translation>
    </message>
    <message>
        <source>Nearest to decide: %1</source>
        <translation>Lo más cercano por decidir: %1</translation>
    </message>
    <message>
        <source>Nearest mound: %1</source>
        <translation>Montículo más cercano: %1</translation>
    </message>
    <message>
        <source>%1, within the receiver&apos;s error. Look for the plug, and tape from there.</source>
        <translation>%1, dentro del error del receptor. Busque el tapón y mida con cinta desde ahí.</translation>
    </message>
    <message>
        <source>%1, %2 towards %3° (%4).</source>
        <translation>%1, %2 hacia %3° (%4).</translation>
    </message>
    <message>
        <source>Following %1</source>
        <translation>Siguiendo %1</translation>
    </message>
</context>
<context>
    <name>plugside::SystemChooser</name>
    <message>
        <source>search by code or name: 32610, UTM 10, California zone 2</source>
        <translation>busque por clave o nombre: 32610, UTM 10, California zone 2</translation>
    </message>
    <message>
        <source>search for the reference system of the coordinates</source>
        <translation>buscar el sistema de referencia de las coordenadas</translation>
    </message>
    <message>
        <source>reference systems found, and where each would put the marks</source>
        <translation>sistemas de referencia hallados, y dónde pondría cada uno las marcas</translation>
    </message>
    <message>
        <source>searching…</source>
        <translation>buscando…</translation>
    </message>
    <message>
        <source>In which reference system are the eastings and northings?</source>
        <translation>¿En qué sistema de referencia están los estes y nortes?</translation>
    </message>
    <message>
        <source>reference system: %1</source>
        <translation>sistema de referencia: %1</translation>
    </message>
    <message>
        <source>%1  (%2)</source>
        <translation>%1  (%2)</translation>
    </message>
    <message>
        <source>%1  no such place</source>
        <translation>%1  no hay tal lugar</translation>
    </message>
    <message>
        <source>%1  at %2</source>
        <translation>%1  en %2</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>Nothing is called so.</source>
        <translation>Nada se llama así.</translation>
    </message>
    <message>
        <source>Type a code, a zone or a name. Whoever made the file knows it; often it stands in the settings of the receiver.</source>
        <translation>Escriba una clave, una zona o un nombre. Quien hizo el archivo lo sabe; a menudo está en los ajustes del receptor.</translation>
    </message>
    <message>
        <source>Enter takes the one at hand.</source>
        <translation>Enter toma el que está señalado.</translation>
    </message>
    <message>
        <source>These put the marks beside the other files&apos;. Enter takes the one at hand; type to search for another.</source>
        <translation>Estos ponen las marcas junto a las de los otros archivos. Enter toma el señalado; escriba para buscar otro.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>plugside::SystemsPage</name>
    <message>
        <source>no animal</source>
        <translation>ningún animal</translation>
    </message>
    <message>
        <source>%1 animal</source>
        <translation>%1 animal</translation>
    </message>
    <message>
        <source>%1 animals</source>
        <translation>%1 animales</translation>
    </message>
    <message>
        <source>%1 to %2 animals</source>
        <translation>%1 a %2 animales</translation>
    </message>
    <message>
        <source>%1 m²</source>
        <translation>%1 m²</translation>
    </message>
    <message>
        <source>%1 sq ft</source>
        <translation>%1 pies²</translation>
    </message>
    <message>
        <source>Systems</source>
        <translation>Sistemas</translation>
    </message>
    <message>
        <source>animals (V)</source>
        <translation>animales (V)</translation>
    </message>
    <message>
        <source>corrections (L)</source>
        <translation>correcciones (L)</translation>
    </message>
    <message>
        <source>animal</source>
        <translation>animal</translation>
    </message>
    <message>
        <source>mounds</source>
        <translation>montíc.</translation>
    </message>
    <message>
        <source>one animal&apos;s</source>
        <translation>de uno solo</translation>
    </message>
    <message>
        <source>run</source>
        <translation>túnel</translation>
    </message>
    <message>
        <source>burrow systems</source>
        <translation>sistemas de túneles</translation>
    </message>
    <message>
        <source>what else may be true</source>
        <translation>qué más puede ser cierto</translation>
    </message>
    <message>
        <source>working</source>
        <translation>trabajando</translation>
    </message>
    <message>
        <source>nothing yet</source>
        <translation>nada todavía</translation>
    </message>
    <message>
        <source>most likely %1; the interval holds in %2 of 100 cases, if the walk was a fair look at the field</source>
        <translation>lo más probable, %1; el intervalo vale en %2 de 100 casos, si el recorrido fue una mirada pareja del campo</translation>
    </message>
    <message>
        <source>No mound of a gopher takes part.</source>
        <translation>Ningún montículo de tuza cuenta.</translation>
    </message>
    <message>
        <source>counted on %1 walked</source>
        <translation>contado en %1 caminados</translation>
    </message>
    <message>
        <source>the area walked is still being measured</source>
        <translation>el área caminada todavía se está midiendo</translation>
    </message>
    <message>
        <source>no track was read: the area walked is not known</source>
        <translation>no se leyó traza: no se sabe el área caminada</translation>
    </message>
    <message>
        <source>%1 mound could well be another animal&apos;s</source>
        <translation>%1 montículo bien podría ser de otro animal</translation>
    </message>
    <message>
        <source>%1 mounds could well be another animal&apos;s</source>
        <translation>%1 montículos bien podrían ser de otro animal</translation>
    </message>
    <message>
        <source>What else may be true:</source>
        <translation>Qué más puede ser cierto:</translation>
    </message>
    <message>
        <source>%1 in 100</source>
        <translation>%1 de 100</translation>
    </message>
    <message>
        <source>Animal %1</source>
        <translation>Animal %1</translation>
    </message>
    <message>
        <source>%1 mound</source>
        <translation>%1 montículo</translation>
    </message>
    <message>
        <source>%1 mounds</source>
        <translation>%1 montículos</translation>
    </message>
    <message>
        <source>%1, the freshest: %2</source>
        <translation>%1, el más fresco: %2</translation>
    </message>
    <message>
        <source>%1 of run drawn, on %2</source>
        <translation>%1 de túnel dibujado, en %2</translation>
    </message>
    <message>
        <source>%1 in 100 that all of it is one animal&apos;s</source>
        <translation>%1 de cada 100 de que todo sea de un solo animal</translation>
    </message>
</context>
<context>
    <name>plugside::SystemsTool</name>
    <message>
        <source>Draw the line that no run crosses; double click or Enter ends it.</source>
        <translation>Dibuje la línea que ningún túnel cruza; doble clic o Enter la termina.</translation>
    </message>
    <message>
        <source>Draw about the marks to set aside; double click or Enter ends it.</source>
        <translation>Encierre las marcas que se apartan; doble clic o Enter lo termina.</translation>
    </message>
    <message>
        <source>Pick the mark first that this is said of.</source>
        <translation>Elija antes la marca de la que se dice esto.</translation>
    </message>
    <message>
        <source>%1 is older</source>
        <translation>%1 es más viejo</translation>
    </message>
    <message>
        <source>A line wants two corners or more.</source>
        <translation>Una línea pide dos esquinas o más.</translation>
    </message>
    <message>
        <source>No mark that takes part lies in there.</source>
        <translation>Ahí no hay ninguna marca que cuente.</translation>
    </message>
    <message>
        <source>set aside a corner</source>
        <translation>apartar una esquina</translation>
    </message>
    <message>
        <source>“%1” is no bearing, as in “135”, “SE” or “S 45 E”.</source>
        <translation>“%1” no es un rumbo, como “135”, “SE” o “S 45 E”.</translation>
    </message>
    <message>
        <source>turn the fan of %1</source>
        <translation>girar el abanico de %1</translation>
    </message>
    <message>
        <source>move %1</source>
        <translation>mover %1</translation>
    </message>
    <message>
        <source>Click another mark of the same animal, or press Enter for the one that is ringed.</source>
        <translation>Haga clic en otra marca del mismo animal, o pulse Enter para la que tiene el anillo.</translation>
    </message>
    <message>
        <source>Click the mark that is another animal&apos;s, or press Enter for the one that is ringed.</source>
        <translation>Haga clic en la marca que es de otro animal, o pulse Enter para la que tiene el anillo.</translation>
    </message>
    <message>
        <source>Click the mark that a run joins this one to, or press Enter for the one that is ringed.</source>
        <translation>Haga clic en la marca a la que un túnel une esta, o pulse Enter para la que tiene el anillo.</translation>
    </message>
    <message>
        <source>Pick a mark with a fan first.</source>
        <translation>Elija antes una marca con abanico.</translation>
    </message>
</context>
<context>
    <name>plugside::TapeTool</name>
    <message>
        <source>%1° %2</source>
        <translation>%1° %2</translation>
    </message>
    <message>
        <source>in all %1</source>
        <translation>en total %1</translation>
    </message>
    <message>
        <source>the tape starts here</source>
        <translation>aquí empieza la cinta</translation>
    </message>
</context>
<context>
    <name>plugside::TopBar</name>
    <message>
        <source>no track: area walked not known</source>
        <translation>sin traza: no se sabe el área caminada</translation>
    </message>
    <message>
        <source>%1 walked</source>
        <translation>%1 caminados</translation>
    </message>
    <message>
        <source>under 1</source>
        <translation>menos de 1</translation>
    </message>
    <message>
        <source>%1, %2 % not seen</source>
        <translation>%1, %2 % sin ver</translation>
    </message>
    <message>
        <source>English or Spanish (Ctrl+E)</source>
        <translation>inglés o español (Ctrl+E)</translation>
    </message>
    <message>
        <source>language: English; press for Spanish</source>
        <translation>idioma: español; oprima para inglés</translation>
    </message>
    <message>
        <source>keys</source>
        <translation>teclas</translation>
    </message>
    <message>
        <source>F1</source>
        <translation>F1</translation>
    </message>
    <message>
        <source>hand out…</source>
        <translation>entregar…</translation>
    </message>
    <message>
        <source>Ctrl+S: the plan as a GeoPackage, the sets as waypoints</source>
        <translation>Ctrl+S: el plan como GeoPackage, los puntos para el receptor</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>metros</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>pies</translation>
    </message>
    <message>
        <source>units: metres; press for feet and inches</source>
        <translation>unidades: metros; oprima para pies y pulgadas</translation>
    </message>
    <message>
        <source>units: feet and inches; press for metres</source>
        <translation>unidades: pies y pulgadas; oprima para metros</translation>
    </message>
    <message>
        <source>feet or metres (Ctrl+U)</source>
        <translation>pies o metros (Ctrl+U)</translation>
    </message>
    <message>
        <source>light</source>
        <translation>claro</translation>
    </message>
    <message>
        <source>sunlight</source>
        <translation>sol</translation>
    </message>
    <message>
        <source>light; press for reading in sunlight</source>
        <translation>claro; oprima para leer al sol</translation>
    </message>
    <message>
        <source>sunlight; press for the light look</source>
        <translation>para leer al sol; oprima para el aspecto claro</translation>
    </message>
    <message>
        <source>light, or readable in sunlight (Ctrl+L)</source>
        <translation>claro, o para leer al sol (Ctrl+L)</translation>
    </message>
    <message>
        <source>Plugside</source>
        <translation>Plugside</translation>
    </message>
    <message>
        <source>%1 of %2 sets decided</source>
        <translation>%1 de %2 puntos decididos</translation>
    </message>
    <message>
        <source>%1, most likely %2</source>
        <translation>%1, lo más probable %2</translation>
    </message>
    <message>
        <source>project</source>
        <translation>proyecto</translation>
    </message>
    <message>
        <source>where this field is kept, and other projects</source>
        <translation>dónde se guarda este campo, y otros proyectos</translation>
    </message>
    <message>
        <source>look</source>
        <translation>aspecto</translation>
    </message>
    <message>
        <source>units, theme, size of text, language, keys</source>
        <translation>unidades, tema, tamaño del texto, idioma, teclas</translation>
    </message>
    <message>
        <source>text %1 %</source>
        <translation>texto %1 %</translation>
    </message>
    <message>
        <source>size of text: %1 in 100; press for larger</source>
        <translation>tamaño del texto: %1 de cada 100; pulse para agrandarlo</translation>
    </message>
    <message>
        <source>size of text (Ctrl++, Ctrl+-, Ctrl+0)</source>
        <translation>tamaño del texto (Ctrl++, Ctrl+-, Ctrl+0)</translation>
    </message>
    <message>
        <source>keys (F1)</source>
        <translation>teclas (F1)</translation>
    </message>
</context>
<context>
    <name>plugside::TourAccount</name>
    <message>
        <source>let go of the walking order</source>
        <translation>soltar el orden de visita</translation>
    </message>
    <message>
        <source>keep the walking order</source>
        <translation>conservar el orden de visita</translation>
    </message>
</context>
<context>
    <name>plugside::ToursView</name>
    <message>
        <source>gate %1</source>
        <translation>puerta %1</translation>
    </message>
    <message>
        <source>gate: %1</source>
        <translation>puerta: %1</translation>
    </message>
    <message>
        <source>the place set on the map</source>
        <translation>el lugar puesto en el mapa</translation>
    </message>
    <message>
        <source>set it on the map …</source>
        <translation>ponerlo en el mapa …</translation>
    </message>
    <message>
        <source>people</source>
        <translation>personas</translation>
    </message>
    <message>
        <source>minutes a day</source>
        <translation>minutos al día</translation>
    </message>
    <message>
        <source>traps or placements one carries</source>
        <translation>trampas o colocaciones que lleva cada uno</translation>
    </message>
    <message>
        <source>where the walking order begins</source>
        <translation>dónde empieza el orden de visita</translation>
    </message>
    <message>
        <source>where the walking order ends</source>
        <translation>dónde termina el orden de visita</translation>
    </message>
    <message>
        <source>from</source>
        <translation>desde</translation>
    </message>
    <message>
        <source>to</source>
        <translation>hasta</translation>
    </message>
    <message>
        <source>keep this order</source>
        <translation>conservar este orden</translation>
    </message>
    <message>
        <source>tours, and which of them is shown</source>
        <translation>vueltas, y cuál de ellas se muestra</translation>
    </message>
    <message>
        <source>sets in walking order</source>
        <translation>puntos en orden de visita</translation>
    </message>
    <message>
        <source>where the walk began</source>
        <translation>donde empezó el recorrido</translation>
    </message>
    <message>
        <source>wherever the last set is</source>
        <translation>donde esté el último punto</translation>
    </message>
    <message>
        <source>back to where it begins</source>
        <translation>de vuelta a donde empieza</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>detener</translation>
    </message>
    <message>
        <source>work out anew</source>
        <translation>calcular de nuevo</translation>
    </message>
    <message>
        <source>The walking order is being worked out.</source>
        <translation>El orden de visita se está calculando.</translation>
    </message>
    <message>
        <source>The walking order follows the plan, which is being made.</source>
        <translation>El orden de visita sigue al plan, que se está haciendo.</translation>
    </message>
    <message>
        <source>%1 tour, %2 on foot, %3 minutes.</source>
        <translation>%1 vuelta, %2 a pie, %3 minutos.</translation>
    </message>
    <message>
        <source>%1 tours, %2 on foot; the longest takes %3 minutes.</source>
        <translation>%1 vueltas, %2 a pie; la más larga toma %3 minutos.</translation>
    </message>
    <message>
        <source>Being worked out anew. Until then: %1</source>
        <translation>Se está calculando de nuevo. Hasta entonces: %1</translation>
    </message>
    <message>
        <source>Being made shorter.</source>
        <translation>Se está acortando.</translation>
    </message>
    <message>
        <source>The first was %1.</source>
        <translation>La primera fue de %1.</translation>
    </message>
    <message>
        <source>This order is kept in the project: what is dropped leaves it, what is new is put in.</source>
        <translation>Este orden se conserva en el proyecto: lo que se quita sale de él, lo nuevo se intercala.</translation>
    </message>
    <message>
        <source>This is the order of the plan.</source>
        <translation>Este es el orden del plan.</translation>
    </message>
    <message>
        <source>Stopped: it may become shorter.</source>
        <translation>Detenido: puede hacerse más corto.</translation>
    </message>
    <message>
        <source>While nothing else is wished it stays as far as it can when sets come and go.</source>
        <translation>Mientras no se pida otra cosa, se mantiene en lo posible cuando hay puntos nuevos o quitados.</translation>
    </message>
    <message>
        <source>No way leads to %1 set: %2. Draw a gate where one gets across.</source>
        <translation>Ningún camino lleva a %1 punto: %2. Dibuje una puerta donde se pueda pasar.</translation>
    </message>
    <message>
        <source>No way leads to %1 sets: %2. Draw a gate where one gets across.</source>
        <translation>Ningún camino lleva a %1 puntos: %2. Dibuje una puerta donde se pueda pasar.</translation>
    </message>
    <message>
        <source>%1 set does not fit into a day even alone: %2.</source>
        <translation>%1 punto no cabe en un día ni siquiera solo: %2.</translation>
    </message>
    <message>
        <source>%1 sets do not fit into a day even alone: %2.</source>
        <translation>%1 puntos no caben en un día ni siquiera solos: %2.</translation>
    </message>
    <message>
        <source>all tours</source>
        <translation>todas las vueltas</translation>
    </message>
    <message>
        <source>%1 set</source>
        <translation>%1 punto</translation>
    </message>
    <message>
        <source>%1 sets</source>
        <translation>%1 puntos</translation>
    </message>
    <message>
        <source>person %1, day %2: %3, %4, %5 minutes (%6 to %7)</source>
        <translation>persona %1, día %2: %3, %4, %5 minutos (%6 a %7)</translation>
    </message>
    <message>
        <source>; back for more %1 time</source>
        <translation>; vuelve por más %1 vez</translation>
    </message>
    <message>
        <source>; back for more %1 times</source>
        <translation>; vuelve por más %1 veces</translation>
    </message>
    <message>
        <source>tour %1: %2</source>
        <translation>vuelta %1: %2</translation>
    </message>
    <message>
        <source>%1.  set %2, %3</source>
        <translation>%1.  punto %2, %3</translation>
    </message>
    <message>
        <source>%1, after fetching more</source>
        <translation>%1, después de ir por más</translation>
    </message>
</context>
<context>
    <name>plugside::TraceTool</name>
    <message>
        <source>track of %1</source>
        <translation>traza de %1</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Click the line to follow first.</source>
        <translation>Haga clic primero en la línea que se va a calcar.</translation>
    </message>
    <message>
        <source>trace</source>
        <translation>calcar</translation>
    </message>
</context>
<context>
    <name>plugside::TraceView</name>
    <message>
        <source>Trace what is there</source>
        <translation>Calcar lo que hay</translation>
    </message>
    <message>
        <source>what is traced</source>
        <translation>qué se calca</translation>
    </message>
    <message>
        <source>boundary (B)</source>
        <translation>límite (B)</translation>
    </message>
    <message>
        <source>barrier (D)</source>
        <translation>barrera (D)</translation>
    </message>
    <message>
        <source>keep clear (K)</source>
        <translation>vedar (K)</translation>
    </message>
    <message>
        <source>untreated (U)</source>
        <translation>sin tratar (U)</translation>
    </message>
    <message>
        <source>other way round (I)</source>
        <translation>por el otro lado (I)</translation>
    </message>
    <message>
        <source>open a layer (O)</source>
        <translation>abrir capa (O)</translation>
    </message>
    <message>
        <source>done (Esc)</source>
        <translation>listo (Esc)</translation>
    </message>
    <message>
        <source>The layer is being read.</source>
        <translation>Se está leyendo la capa.</translation>
    </message>
    <message>
        <source>No line is there to trace: open a layer with lines or areas.</source>
        <translation>No hay ninguna línea que calcar: abra una capa con líneas o áreas.</translation>
    </message>
    <message>
        <source>Click a line: a track, or one of a layer that was opened.</source>
        <translation>Haga clic en una línea: una traza, o una de una capa abierta.</translation>
    </message>
    <message>
        <source>%1. All of it; click it once more for the piece between both places. It becomes:</source>
        <translation>%1. Entera; haga clic otra vez en ella para tomar el tramo entre ambos lugares. Se vuelve:</translation>
    </message>
    <message>
        <source>%1, between the two places. It becomes:</source>
        <translation>%1, entre los dos lugares. Se vuelve:</translation>
    </message>
</context>
<context>
    <name>plugside::WalkPage</name>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: marks without a track</source>
        <translation>%1: marcas sin traza</translation>
    </message>
    <message>
        <source>%1: a track of %2</source>
        <translation>%1: una traza de %2</translation>
    </message>
    <message>
        <source>a boundary</source>
        <translation>un límite</translation>
    </message>
    <message>
        <source>a barrier</source>
        <translation>una barrera</translation>
    </message>
    <message>
        <source>an area kept clear</source>
        <translation>un área vedada</translation>
    </message>
    <message>
        <source>no boundary, barrier or area to keep clear was read</source>
        <translation>no se leyó límite, barrera ni área vedada</translation>
    </message>
    <message>
        <source>ground: %1</source>
        <translation>terreno: %1</translation>
    </message>
    <message>
        <source>%1 mark of a gopher</source>
        <translation>%1 marca de tuza</translation>
    </message>
    <message>
        <source>%1 marks of gophers</source>
        <translation>%1 marcas de tuza</translation>
    </message>
    <message>
        <source>, %1 with a fan that could be read</source>
        <translation>, %1 con un abanico que se pudo leer</translation>
    </message>
    <message>
        <source>%1 mark of another digger or thing</source>
        <translation>%1 marca de otro excavador o cosa</translation>
    </message>
    <message>
        <source>%1 marks of other diggers or things</source>
        <translation>%1 marcas de otros excavadores o cosas</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Recorrido</translation>
    </message>
    <message>
        <source>No walk is open. Drop the files of a scouting walk here, whatever the handheld gave: walks, tables, photographs, the farm&apos;s layers.</source>
        <translation>Ningún recorrido abierto. Suelte aquí los archivos de un recorrido de exploración, lo que haya dado el aparato: recorridos, tablas, fotografías, las capas de la finca.</translation>
    </message>
    <message>
        <source>open a walk…</source>
        <translation>abrir…</translation>
    </message>
    <message>
        <source>Ctrl+O</source>
        <translation>Ctrl+O</translation>
    </message>
    <message>
        <source>add to it…</source>
        <translation>agregar…</translation>
    </message>
    <message>
        <source>Ctrl+Shift+O: another walk or the ground&apos;s layers</source>
        <translation>Ctrl+Mayús+O: otro recorrido o las capas del terreno</translation>
    </message>
    <message>
        <source>files read…</source>
        <translation>archivos…</translation>
    </message>
    <message>
        <source>how the files were read: columns, reference systems and norths, to be changed and read again</source>
        <translation>cómo se leyeron los archivos: columnas, sistemas de referencia y nortes, para cambiarlos y leer otra vez</translation>
    </message>
    <message>
        <source>what was read (V)</source>
        <translation>qué se leyó (V)</translation>
    </message>
    <message>
        <source>what looks wrong (L)</source>
        <translation>qué se ve mal (L)</translation>
    </message>
    <message>
        <source>notes (T)</source>
        <translation>notas (T)</translation>
    </message>
    <message>
        <source>what was not seen (W)</source>
        <translation>qué no se vio (W)</translation>
    </message>
    <message>
        <source>what was not understood or was changed in reading</source>
        <translation>lo que no se entendió o se cambió al leer</translation>
    </message>
    <message>
        <source>Said in notes: %1.</source>
        <translation>Dicho en notas: %1.</translation>
    </message>
    <message>
        <source>seen from the track: %1</source>
        <translation>visto desde la traza: %1</translation>
    </message>
    <message>
        <source>the field: %1</source>
        <translation>el campo: %1</translation>
    </message>
    <message>
        <source>read</source>
        <translation>leído</translation>
    </message>
    <message>
        <source>to look at: %1</source>
        <translation>revisar: %1</translation>
    </message>
    <message>
        <source>to look at: …</source>
        <translation>revisar: …</translation>
    </message>
    <message>
        <source>all looked at</source>
        <translation>revisado</translation>
    </message>
    <message>
        <source>notes: %1</source>
        <translation>notas: %1</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>notas</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>no visto</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>plugside::WalkThroughPanel</name>
    <message>
        <source>5 of 5: hand out</source>
        <translation>5 de 5: entregar</translation>
    </message>
    <message>
        <source>That is the job</source>
        <translation>Ese es el trabajo</translation>
    </message>
    <message>
        <source>leave  Esc</source>
        <translation>salir  Esc</translation>
    </message>
    <message>
        <source>leave the walk-through and the sample; nothing of either is kept</source>
        <translation>salir de la guía y de la muestra; no se guarda nada de ninguna</translation>
    </message>
    <message>
        <source>stay on the sample</source>
        <translation>quedarse en la muestra</translation>
    </message>
    <message>
        <source>back</source>
        <translation>atrás</translation>
    </message>
    <message>
        <source>next  F2</source>
        <translation>seguir  F2</translation>
    </message>
    <message>
        <source>on without doing it</source>
        <translation>seguir sin hacerlo</translation>
    </message>
    <message>
        <source>1 of 5: look</source>
        <translation>1 de 5: mirar</translation>
    </message>
    <message>
        <source>This field is made up. Each brown fan is a mound as it was marked on the walk. Look at one: click it, or press Ctrl+M, then Space; below stands what was noted.</source>
        <translation>Este campo es inventado. Cada abanico café es un montículo como se marcó en el recorrido. Mire uno: haga clic en él, o pulse Ctrl+M y Espacio; abajo está lo anotado.</translation>
    </message>
    <message>
        <source>2 of 5: draw</source>
        <translation>2 de 5: dibujar</translation>
    </message>
    <message>
        <source>Press 2. What no run crosses is drawn over the picture: press D, click two places on the map (or press Space, arrows, Space), then Enter.</source>
        <translation>Pulse 2. Sobre la imagen se dibuja lo que ningún túnel cruza: pulse D, haga clic en dos lugares del mapa (o Espacio, flechas, Espacio) y luego Enter.</translation>
    </message>
    <message>
        <source>3 of 5: correct</source>
        <translation>3 de 5: corregir</translation>
    </message>
    <message>
        <source>Press 3, then L. Each letter stands for one animal, as its mounds tell. Below is a question about two marks: Y if they are one animal&apos;s, D if two.</source>
        <translation>Pulse 3 y luego L. Cada letra es un animal, según sus montículos. Abajo hay una pregunta sobre dos marcas: Y si son de un animal, D si de dos.</translation>
    </message>
    <message>
        <source>4 of 5: decide</source>
        <translation>4 de 5: decidir</translation>
    </message>
    <message>
        <source>Press 4. Each flag is a place to probe; below stands how to tape it from the plug, its chance, and what speaks against it. K keeps the set, D drops it.</source>
        <translation>Pulse 4. Cada bandera es un lugar para sondear; abajo está cómo medirlo desde el tapón, su probabilidad y lo que habla en contra. K conserva el punto, D lo quita.</translation>
    </message>
    <message>
        <source>Press Ctrl+S. The sets go to the handheld as waypoints, the plan to the farm&apos;s maps as a GeoPackage. See where to, then press Esc: nothing is written.</source>
        <translation>Pulse Ctrl+S. Los puntos van al receptor como waypoints; el plan, a los mapas del rancho como GeoPackage. Mire a dónde y pulse Esc: no se escribe nada.</translation>
    </message>
    <message>
        <source>Begin with a walk of your own: drop its files here, or press Ctrl+O. F1 shows all keys, F2 begins this again. Of the sample nothing is kept.</source>
        <translation>Empiece con un recorrido propio: suelte aquí sus archivos o pulse Ctrl+O. F1 muestra todas las teclas, F2 empieza de nuevo. De la muestra no se guarda nada.</translation>
    </message>
    <message>
        <source>stay</source>
        <translation>quedarse</translation>
    </message>
    <message>
        <source>‹</source>
        <translation>‹</translation>
    </message>
    <message>
        <source>back (Shift+F2)</source>
        <translation>atrás (Mayús+F2)</translation>
    </message>
</context>
<context>
    <name>plugside::WorkAccount</name>
    <message>
        <source>%1 was found, %2 was expected.</source>
        <translation>Se encontró %1, se esperaba %2.</translation>
    </message>
    <message>
        <source>after the plan</source>
        <translation>después del plan</translation>
    </message>
    <message>
        <source>none chosen yet</source>
        <translation>ninguno elegido todavía</translation>
    </message>
    <message>
        <source>being judged</source>
        <translation>se está juzgando</translation>
    </message>
    <message>
        <source>%1 question open</source>
        <translation>%1 pregunta abierta</translation>
    </message>
    <message>
        <source>%1 questions open</source>
        <translation>%1 preguntas abiertas</translation>
    </message>
    <message>
        <source>%1 stop</source>
        <translation>%1 alto</translation>
    </message>
    <message>
        <source>%1 stops</source>
        <translation>%1 altos</translation>
    </message>
    <message>
        <source>%1 to sign</source>
        <translation>%1 por firmar</translation>
    </message>
    <message>
        <source>chosen, answered</source>
        <translation>elegido, respondido</translation>
    </message>
</context>
<context>
    <name>plugside::WorkBanner</name>
    <message>
        <source>files</source>
        <translation>archivos</translation>
    </message>
    <message>
        <source>planning</source>
        <translation>planeando</translation>
    </message>
    <message>
        <source>stopped: this is a first look, not the whole plan</source>
        <translation>detenido: esto es una primera mirada, no el plan completo</translation>
    </message>
    <message>
        <source>stopped: the plan is not up to date</source>
        <translation>detenido: el plan no está al día</translation>
    </message>
    <message>
        <source>a first look; working: %1</source>
        <translation>una primera mirada; trabajando: %1</translation>
    </message>
    <message>
        <source>working: %1</source>
        <translation>trabajando: %1</translation>
    </message>
    <message>
        <source>plan again</source>
        <translation>planear otra vez</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>parar</translation>
    </message>
</context>
</TS>
