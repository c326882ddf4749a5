#include "geo/read/note_words_entries.h"

namespace plugside::note_words {

namespace {

constexpr unsigned en = english;
constexpr unsigned es = spanish;

constexpr Entry entries[] = {
    // the fan
    {Sense::fan, 0, en, "fan|fanned|fan side|the fan|fans out|fanned out|fan axis|fan bearing|fan direction|fan dir"},
    {Sense::fan, 0, es, "abanico|abanicos|el abanico|abanicado|lado del abanico|abn"},
    {Sense::fan_letter, 0, either, "f|ab"},
    {Sense::soil, 0, en, "soil|dirt|spoil|soil side|earth"},
    {Sense::soil, 0, es, "tierra"},
    {Sense::throwing, 0, en, "thrown|throws|pushed|kicked out|tossed|spilled|spread|sprayed|spreads"},
    {Sense::throwing, 0, es, "echad@|tirad@|arrojad@|lanzad@|volcad@"},
    {Sense::facing, 0, en, "facing|faces|face|points|pointing|pointed|pts|aims|aimed|oriented"},
    {Sense::facing, 0, es, "mira|mirando|apunta|apuntando|apuntad@|orientad@|viendo"},
    {Sense::bearing_word, 0, en, "bearing|brg|bearings|az|azimuth|azim|dir|direction"},
    {Sense::bearing_word, 0, es, "acimut|azimut|rumbo|direccion|orientacion"},
    {Sense::away, 0, en, "away from|opposite|opposite to|opposite of"},
    {Sense::away, 0, es, "lejos de|lejos del|opuest@ a|opuest@ al|contrari@ a|contrari@ al|en contra de|en contra del"},
    {Sense::plug, 0, en, "plug|plugs|plg|plug side|flat side|plug end|plug is|plugged"},
    {Sense::plug, 0, es, "tapon|tapones|el tapon|tpn|lado plano|lado chato|lado del tapon|taponad@"},
    {Sense::toward, 0, en, "to|towards|toward|twd|twds|due|on|goes|going|opens|opening"},
    {Sense::toward, 1, en, "is|was|about|approx|approximately|roughly|around|ca|mostly|~|abt|circa"},
    {Sense::toward, 0, es, "hacia|para|al|en|queda|va|da|cae|abre|se abre|abre hacia"},
    {Sense::toward, 1, es, "aprox|aproximadamente|como|casi|esta|es"},
    {Sense::side, 0, en, "side|edge|end|part"},
    {Sense::side, 0, es, "lado|orilla|extremo|borde|costado"},
    {Sense::of, 0, en, "of|from|off"},
    {Sense::of, 0, es, "de|del|desde"},
    {Sense::at, 0, either, "at"},
    {Sense::at_hour, 0, es, "a las|a la|hacia las|hacia la"},
    {Sense::clock, 0, either, "o'clock|oclock|o clock|oclk|o'clk|clock|en punto|del reloj|reloj|hrs"},
    {Sense::half_past, .5, either, "y media|half past"},
    {Sense::half_past, .25, either, "y cuarto"},
    {Sense::half_past, -.25, either, "menos cuarto"},
    {Sense::relative, 9, either, "left|to the left|on the left|to left|my left|to my left|a la izquierda|izquierda|izq"},
    {Sense::relative, 3, either, "right|to the right|on the right|to right|my right|to my right|a la derecha|derecha|der"},
    {Sense::relative, 0, either, "ahead|straight ahead|dead ahead|forward|adelante|al frente|de frente"},
    {Sense::relative, 6, either, "behind|backward|backwards|back|hacia atras|atras|detras"},
    // compass
    {Sense::compass, 0, en, "n|north|northern|nth|nrth"},
    {Sense::compass, 22.5, either, "nne|northnortheast"},
    {Sense::compass, 45, either, "ne|northeast|noreste|nordeste|northeastern|nor este|north east"},
    {Sense::compass, 67.5, either, "ene|eastnortheast"},
    {Sense::compass, 90, en, "e|east|eastern"},
    {Sense::compass, 112.5, either, "ese|eastsoutheast"},
    {Sense::compass, 135, either, "se|southeast|sureste|sudeste|southeastern|sur este|sud este|south east"},
    {Sense::compass, 157.5, either, "sse|southsoutheast"},
    {Sense::compass, 180, en, "s|south|southern|sth"},
    {Sense::compass, 202.5, either, "ssw|sso|southsouthwest"},
    {Sense::compass, 225, either, "sw|so|southwest|suroeste|sudoeste|southwestern|sur oeste|sud oeste|south west"},
    {Sense::compass, 247.5, either, "wsw|oso|westsouthwest"},
    {Sense::compass, 270, either, "w|west|western|wst"},
    {Sense::compass, 292.5, either, "wnw|ono|westnorthwest"},
    {Sense::compass, 315, either, "nw|northwest|noroeste|northwestern|nor oeste|north west"},
    {Sense::compass, 337.5, either, "nnw|nno|northnorthwest"},
    {Sense::compass, 0, es, "norte"},
    {Sense::compass, 90, es, "este|oriente"},
    {Sense::compass, 180, es, "sur"},
    {Sense::compass, 270, es, "oeste|o|poniente|occidente"},
    {Sense::compass, 22.5, es, "nornoreste|nornordeste|norte noreste|norte nordeste"},
    {Sense::compass, 67.5, es, "estenoreste|este noreste|este nordeste|estenordeste"},
    {Sense::compass, 112.5, es, "estesureste|este sureste|este sudeste|estesudeste"},
    {Sense::compass, 157.5, es, "sursureste|sur sureste|sur sudeste|sursudeste"},
    {Sense::compass, 202.5, es, "sursuroeste|sur suroeste|sur sudoeste|sursudoeste"},
    {Sense::compass, 247.5, es, "oestesuroeste|oeste suroeste|oeste sudoeste|oestesudoeste"},
    {Sense::compass, 292.5, es, "oestenoroeste|oeste noroeste"},
    {Sense::compass, 337.5, es, "nornoroeste|norte noroeste"},
    {Sense::compass, 11.25, either, "nbe|npe"},
    {Sense::compass, 33.75, either, "nebn"},
    {Sense::compass, 56.25, either, "nebe"},
    {Sense::compass, 78.75, either, "ebn|epn"},
    {Sense::compass, 101.25, either, "ebs|eps"},
    {Sense::compass, 123.75, either, "sebe"},
    {Sense::compass, 146.25, either, "sebs"},
    {Sense::compass, 168.75, either, "sbe|spe"},
    {Sense::compass, 191.25, either, "sbw|spo"},
    {Sense::compass, 213.75, either, "swbs"},
    {Sense::compass, 236.25, either, "swbw"},
    {Sense::compass, 258.75, either, "wbs|ops"},
    {Sense::compass, 281.25, either, "wbn|opn"},
    {Sense::compass, 303.75, either, "nwbw"},
    {Sense::compass, 326.25, either, "nwbn"},
    {Sense::compass, 348.75, either, "nbw|npo"},
    {Sense::by, 0, either, "by|por|por el|cuarta al|cuarta a|cuarto al|cuarta"},
    {Sense::reference, 1, en, "mag|magn|magnetic|magnetic north|mag north"},
    {Sense::reference, 1, es, "magnetic@|norte magnetico|magnet"},
    {Sense::reference, 2, en, "true|tn|true north"},
    {Sense::reference, 2, es, "verdader@|norte verdadero|geografic@|norte geografico|verd"},
    {Sense::reference_letter, 1, either, "m"},
    {Sense::reference_letter, 2, either, "t|v"},
    {Sense::degree, 0, either, "\xC2\xB0|deg|degs|degree|degrees|grado|grados|dg"},
    // lengths
    {Sense::unit, .0254, either, "ins|inch|inches|\"|pulg|pulgs|pulgada|pulgadas|inchs"},
    {Sense::unit, .3048, either, "ft|feet|foot|'|pie|pies"},
    {Sense::unit, .01, either, "cm|cms|centimetre|centimetres|centimeter|centimeters|centimetro|centimetros"},
    {Sense::unit, .001, either, "mm"},
    {Sense::unit, 1, either, "metre|metres|meter|meters|metro|metros|mts|mt|mtr|mtrs"},
    {Sense::unit, .9144, either, "yd|yds|yard|yards"},
    {Sense::unit, 1000, either, "km"},
    {Sense::unit, 0, either, "pace|paces|step|steps|paso|pasos|percent|%|acres|acre|ha"},
    {Sense::letter_in, 0, en, "in"},
    // freshness
    {Sense::fresh, 0, en,
     "fresh|frsh|frs|freshly dug|fresher|freshest|freshly|new|newer|newly dug|brand new|moist|damp|wet|recent|active|just "
     "dug|very fresh|dug today|dug last night|dug this morning|dug "
     "yesterday|dark soil|wet soil|moist soil|damp soil|fresh "
     "soil|new soil|fresh dirt|moist dirt|new dirt|fresh looking|looks fresh"},
    {Sense::fresh, 0, es,
     "fresc@|nuev@|reciente|recientes|recien hech@|recien|humed@|mojad@|activ@|fresquit@|tierra fresca|tierra humeda|tierra "
     "nueva|tierra mojada|tierra reciente"},
    {Sense::older, 0, en,
     "old|older|oldish|dry|dried|dried out|dried up|weathered|aged|stale|overgrown|grassed|grassed "
     "over|grassy|crusted|crusty|"
     "crusted over|rained on|settled|faded|grown over|weedy|sunken|eroded|inactive|abandoned|dry soil|dry dirt|not "
     "recent|washed|very old"},
    {Sense::older, 0, es,
     "viej@|sec@|antigu@|resec@|deslavad@|enhierbad@|abandonad@|con pasto|con hierba|con zacate|con maleza|inactiv@|tierra "
     "seca|tierra vieja|con costra|costra|encostrad@|viejit@|erosionad@|desgastad@|envejecid@|vieja tierra"},
    {Sense::crushed, 0, en,
     "crushed|crushd|mown|mowed|mowed over|mown over|flat|flattened|flatten|trampled|trodden|trodden "
     "on|squashed|squished|driven|"
     "driven over|driven on|drove over|run over|ran over|stepped on|smashed|levelled|leveled|leveled "
     "off|raked|disked|disced|"
     "tilled|plowed|ploughed|harrowed|dragged|knocked down|knocked flat|mowed off|mower hit|hit by mower|hit by the "
     "mower|mower got it|"
     "tractor went over|kicked over|stomped|stomped on|rolled over|tire track|tyre track|tire tracks|tyre tracks|wheel "
     "track|"
     "hit by a mower|hit by tractor|destroyed|squashed flat|trampled down|trampled on|packed down|freshly plowed|freshly "
     "ploughed|freshly mown|freshly mowed|freshly cut|just mowed|just mown|recently mowed"},
    {Sense::crushed, 0, es,
     "aplastad@|pisad@|pisotead@|segad@|podad@|aplanad@|achatad@|chafad@|atropellad@|tumbad@|deshech@|destruid@|plan@|"
     "cortad@|"
     "apisonad@|paso el tractor|paso la maquina|paso la segadora|lo piso el tractor|pasado por el "
     "tractor|arrasad@|rastread@|"
     "nivelad@|rodad@|desbaratad@|aplast|recien segad@|recien cortad@|recien arad@|arad@|recien podad@"},
    {Sense::ago, 0, es, "hace|de hace|desde hace"},
    {Sense::age, 1, either, "day|days|dia|dias|day old|days old|day ago|days ago"},
    {Sense::age, 7, either, "week|weeks|wk|wks|semana|semanas|week old|weeks old|week ago|weeks ago"},
    {Sense::age, 30, either, "month|months|mes|meses|month old|months old"},
    {Sense::age, .04, either, "hour|hours|hr|hora|horas|hour old|hours old|hrs old|hour ago|hours ago"},
    // more of the same families: regions, texting, spoken forms
    {Sense::fan, 0, en, "fans|the fans|abanic|fan shape|fanning|fanning out|apron|dirt fan|soil fan|fan of dirt"},
    {Sense::fan, 0, es, "los abanicos|abanik|abnc|abanico de tierra|abaniquito"},
    {Sense::soil, 0, en, "drt|spoils|tailings|loose soil|loose dirt"},
    {Sense::soil, 0, es, "la tierra|terreno|barro|tierra suelta|terron|terrones|la tierrita|tierrita"},
    {Sense::throwing, 0, en,
     "throw|throwing|threw|thrwn|flung|kicked|kicks|kicking|pushes|pushing|piled|piles up|piled up|spills|spilling|spilt|"
     "cast|heaped|dumped|ejected|slung|tosses|spreading|came out|comes out|coming out|spat|scattered"},
    {Sense::throwing, 0, es,
     "tira|tiro|tiran|tiraron|echa|echo|echan|echaron|arroja|arrojo|bota|boto|botad@|botando|avienta|avento|aventad@|lanza|"
     "lanzo|saca|sacan|saco|sacad@|tirando|echando|aventando|desparramad@|esparcid@|regad@|volteando|empuja|empujad@|sale|"
     "salen|salio|se sale|escupe|escupid@|amontonad@|extendid@|derramad@"},
    {Sense::facing, 0, en,
     "point|looks to|looks toward|looking to|looking toward|aim|aiming|opens to|opens toward|pntg|ptg"},
    {Sense::facing, 0, es, "miran|mirand|apuntan|voltead@|orientado|de cara|ve hacia|da hacia|da para|viendo para|encarad@"},
    {Sense::bearing_word, 0, en, "heading|hdg|compass|brng|dirn|in the direction|in direction"},
    {Sense::bearing_word, 0, es, "en direccion|con rumbo|con direccion|en sentido|sentido|brujula|con orientacion"},
    {Sense::away, 0, en, "opp|opposite side from|back to"},
    {Sense::away, 0, es, "de espaldas a|de espaldas al|al contrario de|al contrario del|opuesto de|opuesto del"},
    {Sense::plug, 0, en, "plugg|plug hole|plug spot|flat edge|flat end|blunt side"},
    {Sense::plug, 0, es, "tapn|taponcito|lado del tapon|el taponcito|tapa"},
    {Sense::toward, 0, en,
     "lies|lie|lying|lays|laying|sits|sitting|extends|extending|stretches|leads|leading|heads|headed|trends|trending|out to|"
     "out toward|out towards|off to|over to|down to|up to|runs to|runs toward|runs towards|onto|tords|towrd|tward|twrd|"
     "leans|leaning|slopes to|located"},
    {Sense::toward, 0, es,
     "pal|p'al|pa'l|pa|p'a|pa'|hacia el|para el|hasta|rumbo a|rumbo al|con rumbo a|con rumbo al|yendo|cayendo|corre hacia|"
     "sale hacia|quedo|quedan|van|dan|caen|acia|asia|ubicad@|situad@|cargad@|tirado pal|yendo pa"},
    {Sense::toward, 1, en, "arnd|arround|aprx|roughy|nearly|almost|just about|somewhere around|aroud|exactly|straight"},
    {Sense::toward, 1, es, "aproximado|alrededor de|cerca de los|mero|merito|exactamente|justo"},
    {Sense::side, 0, either, "flank|costadito|ladito"},
    {Sense::of, 0, either, "frm|fr|fom|form the"},
    {Sense::at_hour, 0, es, "alas|para las|pa las|sobre las|como a las|a eso de las"},
    {Sense::clock, 0, either, "h|hs|horas del reloj|oclok|o'clok|oclck|o'c|o c"},
    {Sense::half_past, .5, either, "and a half|y 30"},
    {Sense::relative, 9, either,
     "on my left|to the left of me|left side|left hand|left hand side|lft|on left|a mi izquierda|a mi izq|mi izquierda|a "
     "mano "
     "izquierda|hacia la izquierda|lado izquierdo|del lado izquierdo|al lado izquierdo|por la izquierda|a la "
     "izq|izqda|izquierdo|"
     "hacia mi izquierda"},
    {Sense::relative, 3, either,
     "on my right|to the right of me|right side|right hand|right hand side|rt|rgt|on right|a mi derecha|a mi der|mi "
     "derecha|a "
     "mano derecha|hacia la derecha|lado derecho|del lado derecho|al lado derecho|por la derecha|a la "
     "der|dcha|derecho|hacia mi "
     "derecha"},
    {Sense::relative, 0, either,
     "in front of me|straight on|straight forward|forwards|fwd|ahead of me|hacia adelante|para adelante|pa adelante|pa "
     "delante|delante|enfrente|enfrente de mi|delante de mi|frente a mi|hacia delante"},
    {Sense::relative, 6, either,
     "behind me|behind us|at my back|to my back|in back of me|to the rear|back behind me|detras de mi|atras de mi|a mis "
     "espaldas|a mi espalda|para atras|pa atras|pa tras"},
    {Sense::compass, 0, en, "northerly|northward|northwards|northbound|norh"},
    {Sense::compass, 45, either,
     "northeasterly|northeastward|nororiente|nororiental|n east|n e'ly|north easterly|norte este"},
    {Sense::compass, 90, either, "easterly|eastward|eastwards|est|levante|naciente|orient|oriental"},
    {Sense::compass, 135, either, "southeasterly|southeastward|suroriente|suroriental|s east|south easterly|sur oriente"},
    {Sense::compass, 180, either, "southerly|southward|southwards"},
    {Sense::compass, 225, either, "southwesterly|southwestward|surponiente|suroccidente|s west|south westerly|sur poniente"},
    {Sense::compass, 270, either, "westerly|westward|westwards|occidental|ocaso"},
    {Sense::compass, 315, either,
     "northwesterly|northwestward|norponiente|noroccidente|n west|north westerly|nor poniente|nor occidente"},
    {Sense::between, 0, either,
     "between|btwn|betw|btw|in between|halfway between|midway between|somewhere between|half way between|entre|entre el|a "
     "medio camino entre"},
    {Sense::reference, 2, either,
     "true n|t north|del mapa|from true north|off true north|of true north|from true|del norte verdadero|desde el norte "
     "verdadero|del norte geografico"},
    {Sense::reference, 1, either,
     "from magnetic north|off magnetic north|of magnetic north|from magnetic|from mag north|del norte magnetico|desde el "
     "norte magnetico"},
    {Sense::degree, 0, either, "dgs|grd|grds|grad|grs|degr"},
    {Sense::unit, .0254, either, "pulgs|pulg|inche|inchess|pgda|plg|pgs"},
    {Sense::unit, .01, either, "cent|cents|centi|centis|sentimetros"},
    {Sense::unit, 0, either,
     "palmo|palmos|cuarta|jeme|jemes|span|spans|hand|hands|finger|fingers|dedo|dedos|codo|codos|vara|varas"},
    // when; fresh or older where it is said of the mound
    {Sense::when, 0, en,
     "today|tdy|this morning|this am|overnight|last night|yesterday|since last night|since yesterday|since this morning|"
     "tonight|earlier today|just now|this afternoon|yest|ystrdy|since today|day before"},
    {Sense::when, 0, es,
     "hoy|de hoy|ayer|de ayer|esta manana|de esta manana|anoche|de anoche|desde anoche|desde ayer|hoy mismo|de hoy "
     "mismo|hoy en "
     "la manana|ayer en la tarde|de esta noche|esta noche|antier|anteayer|esta tarde|de la noche|de ahorita|ahorita|oy"},
    {Sense::when, 1, en,
     "last week|last month|last year|last season|weeks ago|months ago|last spring|last fall|a while ago|long ago"},
    {Sense::when, 1, es,
     "la semana pasada|semana pasada|de la semana pasada|del mes pasado|el mes pasado|mes pasado|del ano pasado|el ano "
     "pasado|hace tiempo|de hace tiempo|hace rato|hace mucho|la otra semana|de la otra semana"},
    {Sense::fresh, 0, en,
     "fsh|frssh|brnd new|frech|fersh|fressh|fresh dug|fresh thrown|freshly thrown|freshly made|freshly worked|freshly "
     "turned|freshly "
     "pushed|freshly kicked|still wet|still damp|still moist|just thrown|just made|recently dug|recently made|new dug|newly "
     "made|newly thrown|moist dark dirt|dark dirt|moist dark soil|dark wet soil|dark moist soil|dark damp soil|dark "
     "earth|damp earth|fresh earth|moist earth|soft dirt|loose and dark|dampish|recently|brandnew|nu|drk soil|being "
     "worked|in use|occupied|lately|fluffy|crumbly|dug out today|soil moist|still dark"},
    {Sense::fresh, 0, es,
     "reciencit@|recientit@|nuevecit@|recien cavad@|recien sacad@|recien tirad@|recien echad@|recien salid@|recien aventad@|"
     "recien removid@|recien escarbad@|acabad@ de hacer|acaban de hacer|recientemente|de recien|tierra negra|tierra "
     "oscura|tierra blanda|mojadit@|humedit@|de ayercito|calientit@|ocupad@|en uso|trabajad@|frezc@|fresk@|todavia "
     "humed@|aun humed@|todavia fresc@|aun fresc@|recienhech@|acabadit@|fres"},
    {Sense::older, 0, en,
     "grassed in|grassed up|grown in|grown up|overgrown with grass|overgrown with weeds|weeds on it|weeds on top|grass on "
     "it|grass on top|in weeds|full of weeds|sun baked|sunbaked|baked|baked hard|dried hard|rock hard|hard "
     "packed|hardpacked|hardened|caked|cracked|bleached|crust on it|crust on top|with a crust|no longer "
     "fresh|faint|melted|melted down|slumped|flaking|crumbled|long dead|ancient|as the hills|old as the hills|very dry|bone "
     "dry|powdery|dusty|dried|unused|not used|rain beaten|rained out|beaten down by rain|rainbeaten|mossy|sprouting|grey "
     "and "
     "dry|gray and dry|olde|oldr|aint new|from before|from last year|from last week|from last month|worn down|rounded "
     "off|smoothed by rain|been there a while|been here a while|lichen|deserted"},
    {Sense::older, 0, es,
     "empastad@|enmontad@|enyerbad@|enzacatad@|con monte|con yerba|con hierbas|con yerbas|con pasto encima|con hierba "
     "encima|con zacate encima|con maleza encima|hierba encima|pasto encima|zacate encima|lleno de hierba|llena de "
     "hierba|lleno "
     "de pasto|lleno de zacate|llena de zacate|lleno de maleza|tapado de hierba|tapado de zacate|endurecid@|tierra "
     "dura|tiesos|ties@|agrietad@|cuartead@|blanquecin@|polvos@|polvorient@|requeteviej@|requesec@|viejisim@|sequit@|"
     "sequisim@|rancios|llovid@|lavad@|desbaratado por la lluvia|de antes|anej@|sin usar|en desuso|de tiempo|ya tiene "
     "tiempo|apelmazad@|compactad@|caduc@|descolorid@"},
    {Sense::overgrowth, 0, en,
     "covered in|covered with|covered by|covered over|covered over with|covered up with|covrd in|full of|choked with|choked "
     "by|hidden in|growing|growing on|growing on it|buried in|lost in|swallowed by|overrun with|overrun by"},
    {Sense::overgrowth, 0, es,
     "cubiert@ de|cubiert@ por|cubiert@ con|llen@ de|tapad@ de|tapad@ pord@ con|tupid@ de|invadid@ de|invadid@ por|metid@ "
     "en|perdid@ en|perdid@ entre|crecid@ de|le salio|le crecio|ya tiene|creciendo|crecid@|crece|creciend"},
    {Sense::growth, 0, en,
     "weeds|grass|weed|wds|moss|vegetation|clover|ivy|brush|leaves|thatch|growth|bindweed|crabgrass|turf"},
    {Sense::growth, 0, es,
     "hierba|hierbas|yerba|yerbas|maleza|malezas|pasto|pastos|zacate|monte|grama|musgo|hojas|cesped|trebol|vegetacion|"
     "hojarasca|yuyos|yuyo|matas|zacatito|pastito|hierbita"},
    {Sense::crushed, 0, en,
     "trampling|trmpld|trmpled|trampld|tromped|tromped on|trompled|trod|trod on|stamped|stamped on|stamped "
     "down|mashed|mushed|"
     "mangled|pulverized|crumpled|pressed down|packed|tamped|tamped down|compacted|smushed|sqshd|sqwished|pancaked|squoshed|"
     "bulldozed|graded|bladed|scraped|scraped off|scraped flat|rototilled|cultivated|mulched|brushhogged|bush "
     "hogged|brush hogged|shredded|hayed|swathed|baled over|cut over|cut down|been cut|grass cut|hay cut|walked on|walked "
     "over|walked all over|ridden over|rode over|rolled|rolled flat|kicked flat|kicked apart|kicked in|kicked down|knocked "
     "over|wrecked|ruined|obliterated|demolished|wiped|swept|smeared|smoothed|smoothed over|stepped in|stepped all "
     "over|drivn over|drovn over|got run over|been run over|mwd|mowd|mowen|mown off|weed "
     "whacked|weedwhacked|weedeated|string "
     "trimmed|been mowed|been mown|disturbed|beat up|torn up|tore up|churned|churned up|hoof prints|hoofprints|hoof "
     "marks|dug up by|flat as a pancake|flatned|flattend|backed over|parked on|plowed under|ploughed under|tilled in|pushed "
     "flat|hit w mower|hit with mower|hit with the mower|caved in|spread out flat|grazed down"},
    {Sense::crushed, 0, es,
     "pisotearon|pisoteo|pisotean|lo pisaron|la pisaron|los pisaron|lo piso|la piso|los piso|pisaron|aplasto|aplastaron|lo "
     "aplasto|chafaron|chafo|tumbo|tumbaron|segaron|podaron|cortaron|deshicieron|deshizo|destruyo|destruyeron|rompieron|"
     "arruinaron|arruinad@|desmoronad@|machacad@|machucad@|apachurrad@|despachurrad@|espachurrad@|aplastaron|emparejad@|"
     "emparejaron|allanad@|alisad@|barrid@|planchad@|rastrillad@|rastrillaron|rastrearon|rastre@|araron|labrad@|"
     "barbechad@|"
     "volteado con el arado|desgarrad@|guadanad@|chapead@|chapodad@|desbrozad@|deshierbad@|desmalezad@|cortaron el pasto|"
     "corte de pasto|huellas de llanta|huellas de llantas|huella de llanta|huellas de tractor|marcas de "
     "llanta|rodadas|pasaron por encima|le pasaron por encima|le pasaron encima|le paso por encima|pasado por encima|lo "
     "atropello|lo atropellaron|lo tumbo|lo tumbarona pisad@|trillad@|desecho|desech@|hundido por"},
    {Sense::crusher, 0, en,
     "mower|mowers|tractor|tractors|quad|quads|atv|atvs|utv|truck|trucks|pickup|car|cars|jeep|bike|bikes|motorbike|dirt "
     "bike|wheeler|4 wheeler|four wheeler|side by side|swather|baler|combine|harvester|disk|disc|plow|plough|harrow|roller|"
     "tiller|rototiller|cultivator|sprayer|loader|skid "
     "steer|bulldozer|dozer|grader|backhoe|excavator|forklift|trailer|wagon|"
     "buggy|golf cart|gator|van|lorry|machine|machinery|machines|equipment|brush hog|brushhog|bush hog|hay cutter|rake|"
     "tires|tire|tyres|tyre|wheels|wheel|boots|boot|foot|feet of|hooves|hoofs|vehicle|vehicles|someone|somebody|zero turn|"
     "lawnmower|lawn mower|riding mower|ride on|weedeater|trctr|spreader|planter|drill|windrower|chopper|shredder"},
    {Sense::crusher, 0, es,
     "tractores|camioneta|camionetas|troca|trocas|camion|camiones|carro|carros|coche|coches|cuatrimoto|cuatrimotos|moto|"
     "motos|"
     "segadora|segadoras|podadora|podadoras|cortadora|cortacesped|maquina|maquinas|maquinaria|rastra|arado|rodillo|"
     "desbrozadora|desvaradora|empacadora|cosechadora|trilladora|guadana|remolque|llanta|llantas|rueda|ruedas|neumatico|"
     "neumaticos|bota|botas|pezunas|cascos|chapeadora|aspersora|fumigadora|pipa|carreta|bicicleta|bici|bicis|vehiculo|"
     "vehiculos|excavadora|retro|retroexcavadora|niveladora|cultivadora|jip|camion pipa|la maquina|el tractor|alguien"},
    {Sense::passing, 0, en,
     "went|drove|ran|rode|rolled|passed|been|came|driving|running|going|went right|drives|goes|backed|parked|stood|gone "
     "right|"
     "come"},
    {Sense::passing, 0, es,
     "paso|pasaron|pasa|pasado|pasando|anduvo|anduvieron|andaba|le paso|le pasaron|lo paso|ya paso|metieron|paso por|paso "
     "con"},
    {Sense::over, 0, either,
     "over|over it|over this|over top|over the top|on it|on top|on top of|all over it|across it|through it|right over|over "
     "them|encima|por encima|le paso encima|por arriba|arriba|sobre|de encima|enzima|por ensima"},
    {Sense::tracks, 0, either, "tracks|track|ruts|rut|marks|prints|huella|huellas|marca|marcas|tread|treads"},
    {Sense::age, 365, either, "year|years|yr|yrs|ano|anos|year old|years old|year ago|years ago|yrs old"},
    {Sense::age, 7, either, "wks old|wk old|wks ago|weeks since|semanitas"},
    {Sense::age, .04, either, "h old|hs old|h ago|hr ago|hrs ago|hr old|minutes old|mins old|minutes ago|minutos|horitas"},
    {Sense::age, 1, either, "dys|diitas|night|nights|noche|noches|d old|morning"},
    {Sense::age, 30, either, "months ago|month ago|mos|mo old"},
};

}  // namespace

std::span<const Entry> words_of_fans_and_states() { return entries; }

}  // namespace plugside::note_words
