// Further words of the fan, of how fresh, of the probe and of what crushes, as they are spoken, typed and misspelt; and ordinary words
// that stand among them.
#include "core/survey/mound.h"
#include "geo/read/note_words_entries.h"

namespace plugside::note_words {

namespace {

constexpr double of(SignKind kind) { return static_cast<double>(kind); }

constexpr unsigned en = english;
constexpr unsigned es = spanish;

constexpr Entry entries[] = {
    // numbers in words
    {Sense::number, 13, either, "thirteen|trece"},
    {Sense::number, 14, either, "fourteen|catorce"},
    {Sense::number, 15, either, "fifteen|quince"},
    {Sense::number, 16, either, "sixteen|dieciseis|diez y seis"},
    {Sense::number, 17, either, "seventeen|diecisiete"},
    {Sense::number, 18, either, "eighteen|dieciocho"},
    {Sense::number, 19, either, "nineteen|diecinueve"},
    {Sense::number, 20, either, "twenty|veinte"},
    {Sense::number, 21, either, "veintiuno|veintiun"},
    {Sense::number, 22, either, "veintidos"},
    {Sense::number, 23, either, "veintitres"},
    {Sense::number, 24, either, "veinticuatro"},
    {Sense::number, 25, either, "veinticinco"},
    {Sense::number, 26, either, "veintiseis"},
    {Sense::number, 27, either, "veintisiete"},
    {Sense::number, 28, either, "veintiocho"},
    {Sense::number, 29, either, "veintinueve"},
    {Sense::number, 30, either, "thirty|treinta"},
    {Sense::number, 35, either, "treintaicinco|treintaycinco"},
    {Sense::number, 40, either, "forty|fourty|cuarenta"},
    {Sense::number, 45, either, "cuarentaicinco|cuarentaycinco"},
    {Sense::number, 50, either, "fifty|cincuenta"},
    {Sense::number, 60, either, "sixty|sesenta"},
    {Sense::number, 70, either, "seventy|setenta"},
    {Sense::number, 80, either, "eighty|ochenta"},
    {Sense::number, 90, either, "ninety|ninty|noventa"},
    {Sense::number, 100, either, "hundred|cien|ciento"},
    {Sense::number, 200, either, "doscientos|docientos"},
    {Sense::number, 300, either, "trescientos|trecientos"},
    // the fan and the plug, and how they lie
    {Sense::fan, 0, en,
     "fn|fna|afn|fnn|ffan|fantail|fan tail|fan of soil|fan opening|fan line|fan centerline|fan center line|"
     "fan heading|fan spread|fan lobe|lobe|fan mouth"},
    {Sense::fan, 0, es,
     "abanico|avanico|avaniko|abanco|abanicp|abani|el abaniko|lado abierto del abanico|cono de tierra|eje del abanico|"
     "direccion del abanico|rumbo del abanico"},
    {Sense::plug, 0, en, "plug mark|soil plug|dirt plug|earthen plug|plug facing|plug located|pluug"},
    {Sense::plug, 0, es, "tapon de tierra|tappon|tapon"},
    {Sense::throwing, 0, en,
     "turned up|pushed up|came up|popped up|thrown up|heaved|heaved up|kicked up|shoved|shoved out|shoved up|"
     "pushed out|pushes out|pushed dirt|turned out|worked up|dug out|showed up|appeared overnight|brought up|"
     "tossed out|thrown out|went up|put up|coming up"},
    {Sense::throwing, 0, es,
     "amanecio|aparecio|levanto|levantad@|levantaron|brotad@|broto|sacada|recien levantad@|escarbo|escarbaron|"
     "removid@|removio|abierto hacia|la avento|la echo|la tiro"},
    {Sense::compass, 0, either, "nte|nort|nrte|nrthn"},
    {Sense::compass, 90, either, "ote|ori|orte"},
    {Sense::compass, 180, either, "sth|souh|suth"},
    {Sense::compass, 270, either, "pte|pnte|poni|occ|occte|oest|wets"},
    {Sense::compass, 45, either, "nre|noest e|nor oriente|neast|ne ly"},
    {Sense::compass, 135, either, "seast|sur ote|sureste ste"},
    {Sense::compass, 225, either, "swest|sur pte"},
    {Sense::compass, 315, either, "nwest|nor pte"},
    {Sense::bearing_word, 0, either,
     "bearing of|a bearing of|at a bearing of|bearin|bering|compass bearing|compass reading|compass says|azmuth|"
     "azimut de|con azimut|un rumbo de|rumbo de|con rumbo de|azim de|marca la brujula"},
    {Sense::toward, 0, either,
     "tirado hacia|tirada hacia|cargado al|cargado hacia|echado al|opens up to|opening up to|running|tends|spreads to|"
     "drifts|angled|angles|slanted|pointing to|ponting|da al|da a|sale al|se va al|se va hacia|dirigid@ al|"
     "dirigid@ hacia|dirigid@ a|rumbo pal"},
    {Sense::visible, 0, either,
     "to be seen|still to be seen|still visible|visible still|still showing|still seen|still there|showing still|"
     "aun visible|todavia visible|se alcanza a ver|aun se ve|todavia se ve|si se ve|can be seen|can still be seen|"
     "is visible|still clear|still shows|discerned|distinguished|identified|recognized|recognised|observed|present|"
     "measured|measurable|apreciable|aun se aprecia|se aprecia aun|legible aun|discernable|noticeable"},
    {Sense::degree, 0, either, "gr"},
    {Sense::gone, 0, either,
     "hard to see|hard to make out|difficult to see|difficult to read|difficult to tell|hard to find|tough to read|"
     "tough to tell|tough to see|anyones guess|no way to tell|impossible to see|impossible to make out|"
     "too flat to read|cannot be seen|cannot be made out|cannot be told|cannot be determined|could not be read|"
     "could not be seen|could not be determined|couldnt be read|cant be seen|can not be read|can not be seen|"
     "not readable|not legible|not discernible|unrecognizable|all washed out|muy borrad@|dificil de ver|"
     "dificil de leer|dificil de distinguir|dificil de apreciar|imposible de distinguir|imposible distinguir|"
     "imposible leer|no legible|no identificable|irreconocibles|no se reconoce|no se puede leer|"
     "no se puede distinguir|no pude ver|no pude leer|ya no hay|deshecho el abanico|illegibile|ilegibles|no visble|"
     "undeterminable|undetermined|smudged|gone now|long gone"},
    {Sense::negation, 0, either,
     "can no longer|can not|no more|didnt see a|did not see|no existe|ni siquiera|nada de|no hay ni|tampoco hay|"
     "no se observa|no observo|no veo|there isnt|there isnt any|there wasnt|isn t|zero sign of|no trace of|"
     "sin rastro de|sin senal de"},
    // the probe
    {Sense::hit, 0, either,
     "pos|posi|postive|positve|affirmative|afirmativo|positivo en|encontrada la|met|hitt|hti|confirmed|confirmad@|"
     "localizo|ubique|si hay|si dio|acerto|penetro|success|successful|exito|detected tunnel"},
    {Sense::hit, 1, either,
     "drops in|dropped right in|dropped down|dropped in easy|broke into|punched into|slid through|slid thru|"
     "sank through|rod dropped|rod sank|rod fell|probe dropped|probe sank|probe fell|probe slid|se fue la varilla|"
     "se fue la sonda|se hundio la varilla|se hundio la sonda|cayo la varilla|cayo la sonda|cedio la tierra|"
     "hizo hueco|tope el tunel|tope la galeria|hit pay dirt|broke through into|cayo en hueco|dio en hueco|"
     "pegue en hueco|pegue con el tunel|atine al tunel|le atine al tunel|topo con el tunel|di con tunel|di con galeria"},
    {Sense::miss, 0, either,
     "neg|negs|negative result|ngtv|nega|negatvo|negtive|negitive|negativos|negatives|sin dar|zilch|zip nada|bupkis|"
     "nuthn|nothin yet|nothing yet|nothing found|nothing so far|nothing doing|nothing at all|nada aun|nada todavia|"
     "nada por ahora|dud|all solid|all hard|all negative|missing it|no soft spot|no soft spots|drew a blank|"
     "drew blank|struck out|empty handed|no give at all|unsuccesful|fruitless|in vain|infructuos@|resultado negativo|"
     "no dio|no sale nada|no salio nada|no encuentra|puro macizo|todo macizo|todo duro|tierra dura abajo|pura tierra"},
    {Sense::miss, 1, either,
     "dry hole|dry holes|didnt find the run|couldnt find the run|cant find the run|couldnt find run|cant find run|"
     "never found the run|no void|sin ver el tunel|sin encontrar el tunel|no tope|no le atine|no encontre el tunel|"
     "no encontre tunel|no halle tunel|no halle el tunel|no se hallo tunel|no se encontro galeria|no hubo hueco|"
     "no hubo tunel"},
    {Sense::probe, 0, either,
     "probings|probes made|probe holes|probeing|prbng|prbe|prboe|porbe|porbed|proobed|prombed|tested w probe|"
     "tested with probe|tried the probe|tried with probe|tried with the probe|tried probe|rodded|rodding|"
     "checked with probe|checked w probe|sounded|sounding|stabbed around|poked around|sondeos|sondeamos|sondie|"
     "sondeos hechos|probamos con varilla|probe con varilla|varillee|varilleo|pinchazos|piquetes|piquetee|tantear|"
     "tienta|con la barrilla|calado|cale|calamos|calicata|introduje la varilla|introduje la sonda|meti la sonda|"
     "meti sonda|meti varilla"},
    {Sense::depth, 0, either,
     "in depth|depth of|a depth of|at a depth of|hondo de|hondos|de prof|profundo de|bajo superficie|bgs|"
     "beneath the surface|bajo la tierra|deeep|dep|dpth|deepness|dpt"},
    // what went over it, and how
    {Sense::crushed, 0, en,
     "smash|smsh|smashd|smooshed|smushed flat|squash|crush|crushing|trample|stomp|stomping|mash|runover|run ovr|"
     "ran ovr|driven through|drove through it|drove on it|drove across|drove across it|drove right over|driven across|"
     "rode across|went over it|went over this|went right over|gone over|gone over it|been over it|went across it|"
     "passed over it|rolled over it|rolled out|raked flat|raked out|raked over|raked down|raked up|raked away|"
     "raked smooth|rakd|shoveled|shovelled|shoveled flat|hoed|hoed flat|hoed down|leveled out|levelled out|"
     "blown out by mower|chopped up|mulched over|mulched up|shaved off|skimmed off|scalped|topdressed over|"
     "bush hogged over|flail mowed|flailed|disked in|disked under|disked up|disked over|disced under|disced over|"
     "disc over|plowed over|plowed up|ploughed over|tilled under|tilled over|tilled up|ripped|ripped up|chiseled|"
     "subsoiled|bedded over|cultipacked|landplaned|laser leveled|dozed|dozed over|scuffed|scuffed out|kicked out flat|"
     "walked through|walked down|walked flat|walkd on|jumped on|played on|sat on|laid on|rolled in|wallowed in|pawed|"
     "pawed at|hoof marks all over|tramped|tramped on|tramped down|tramped flat|stampeded|steped on|stepd on|"
     "stepped all over it|squished flat|flattened out|flattened down|flatened|flatend|flattned|flat now|knocked out|"
     "knocked apart|driven flat|pressed flat|pressed in|compressed|packed flat|wheel marks|tire marks|tyre marks|"
     "tire tracks on|car tracks|truck tracks|bike tracks|cart tracks|mower tracks|mower tracks over|tractor tracks|"
     "footprints|foot prints|footprints on it|footprints all over|boot prints|bootprints|mower over it|mower hit it|"
     "mower took it|mower clipped|mower went over|mower ran over|mowed through|mowed down|mowed flat|mowed right over|"
     "mowed out|mower got to it|mower got here first|hayed over|swathed over|crumbled underfoot|underfoot|"
     "bulldozed over|bladed off|graded off|graded over|scraped away|scraped over|torn apart|tore apart|plowed thru|"
     "plowed through|drug|drug over|dragged over|dragged flat|dragged out|harrowed over|harrowed out|rototilled under|"
     "buried by mower|shaker tracks|sweeper got it|swept flat|swept over|swept up|blown over"},
    {Sense::crushed, 0, es,
     "machuco|machucaron|lo machuco|la machuco|lo machucaron|pisotiad@|pisotiaron|lo pisotearon|lo pisoteo|"
     "la pisotearon|los pisotearon|pisada de|pisadas|pisadas encima|huellas encima|huellas de caballo|huellas de vaca|"
     "huellas de vacas|huellas de carro|huellas de moto|huella de tractor|huellas del tractor|huellas de rueda|rodera|"
     "roderas|rodadas de tractor|roderas de tractor|marcas de rueda|marcas de ruedas|pasado por encima|"
     "le paso por encima|pasaron encima|paso encima|paso por encima|paso por arriba|le paso por arriba|"
     "le pasaron por arriba|lo paso el tractor|lo paso la troca|lo paso a traer|lo piso la troca|lo piso el carro|"
     "lo piso la camioneta|la piso el tractor|lo apachurro|lo apachurraron|apachurro|apachurraron|apachurr@|"
     "aplastando|aplasto|lo aplastaron|la aplasto|los aplasto|aplastaron todo|lo aplano|aplanaron|lo aplanaron|"
     "lo deshizo|lo deshicieron|lo desbarato|lo desbarataron|desbarato|desbarataron|despanzurrad@|"
     "esparcido por el tractor|lo rastrillaron|lo rastrearon|rastrillado plano|lo araron|la araron|lo nivelaron|"
     "nivelaron|lo emparejaron|lo barrieron|barrieron|lo podaron|lo cortaron|lo segaron|lo chapearon|chapearon|"
     "chapiad@|chapiaron|chaponad@|guadanad@|macheteado|machetead@|rozad@|volteado por el arado|pase de rastra|"
     "paso de rastra|paso de arado|removido por la rastra|pasaron la rastra|pasaron la maquina|pasaron el rodillo|"
     "pasaron el tractor|pasaron la segadora|pasaron la podadora|paso la podadora|paso la rastra|paso el rodillo|"
     "paso la camioneta|paso la troca|paso el camion|laminad@|prensad@|hollad@|estripad@|espichad@|destripad@|pateado|"
     "patead@|lo patearon|desparramado a patadas|atropello|atropellaron|arroyad@|arrollad@|lo arrollo|"
     "pelon por la maquina|lo tumbo la maquina|revolcad@|revolcaron|escarbado por perros"},
    {Sense::crusher, 0, en,
     "bikes|dirt bikes|ebike|e bike|bicycle|bicycles|cart|carts|golf carts|utility cart|greens mower|fairway mower|"
     "gang mower|reel mower|sprayers|spray rig|spray rigs|spray truck|shaker|shakers|sweeper|sweepers|blower|blowers|"
     "picker machine|pickup truck|p u|fork lift|forklifts|bin trailer|manure spreader|seeder|drill seeder|hay truck|"
     "hay wagon|balers|bale wagon|baler tractor|flail|flail mower|flail chopper|rotary mower|push mower|robot mower|"
     "weed eater|weed whacker|string trimmer|aerator|verti cutter|verticutter|verti cut|topdresser|top dresser|"
     "turf roller|sod cutter|scraper|land plane|landplane|ripper|chisel plow|disc harrow|disk harrow|disker|discer|"
     "disking|cultipacker|ring roller|spring tooth|quad bike|side x side|ranger|skid loader|skidsteer|bobcat loader|"
     "track hoe|mini excavator|trencher|crane truck|dump truck|water truck|tanker|semi|semi truck|delivery truck|suv|"
     "hauler|combine header|grape harvester|machine harvester|cotton picker|swather tire|pivot wheel|pivot wheels|"
     "pivot tire|pivot track|wheel line|stroller|wheelbarrow|scooter|skateboard|wagon wheels|sled|snowmobile|sneakers|"
     "shoes|cleats|hoof|paws|horse hooves|cow hooves|cattle hooves|cow hoof|rig|tracktor|tractr|tracter|trakter|"
     "tracor|mowr|moer|lawn tractor|garden tractor|implement|roller packer|packer"},
    {Sense::crusher, 0, es,
     "tractorcito|tractorista|troca blanca|trocas|picop|picap|pickap|pick up|camioneton|trailer|trayler|trailers|"
     "tolva|batea|carretilla|carretillas|carrito|carrito de golf|carritos|carreton|cuatriciclo|cuatriciclos|quadri|"
     "cuatri|cuatris|motoneta|motocicleta|motocicletas|cuatrimotor|rasrta|rastras|rastrillo|arados|subsuelo|"
     "subsolador|surcadora|sembradora|sembradoras|abonadora|esparcidora|pulverizador|pulverizadora|fumigadoras|"
     "tanque de fumigar|vibrador|sacudidora|barredora|sopladora|picadora|trituradora|desmenuzadora|chapeadoras|"
     "chapiadora|machete|motoguadana|orilladora|cosechadoras|segadora de discos|enfardadora|rotoempacadora|cargador|"
     "cargadora|montacargas|pala mecanica|bulldozer|buldozer|tractor oruga|oruga|orugas|volquete|volqueta|"
     "camion de carga|chapulin tractor|motoconformadora|pata|patas|pezuna|zapatos|tenis|pies|carroza|carruaje|autobus|"
     "bus|autos|auto|automovil|pisada"},
    {Sense::passing, 0, en,
     "drove across|been through|went through|wandered|walked|trotted|galloped|wandering|rumbled|drove past|crossed|"
     "crosses|crossing|rolls|rolling|running back and forth|have been|has been|had been|hav been"},
    {Sense::passing, 0, es,
     "cruzo|cruzaron|rodo|rodaron|se metio|se metieron|lo pasaron|la pasaron|los paso|la paso|pasaba|pasaban|"
     "caminaron|camino por|trotaron|andan|brinco|brincaron|se subio|se subieron"},
    {Sense::over, 0, either,
     "over this one|over that one|all over this|all over it|across this|right across|por encimita|encimita|"
     "encima de el|sobre este"},
    // how fresh
    {Sense::fresh, 0, en,
     "freshie|freshies|frehs|freash|frsch|freh|fres|frseh|freshish|fresh as|fresh as can be|real fresh|super fresh|"
     "so fresh|supr fresh|todays dirt|yesterdays dirt|today dirt|yesterdays soil|todays soil|day old|one day old|"
     "hours old|few hours old|a few hours old|couple hours old|made today|made overnight|dug overnight|since this am|"
     "soil still moist|soil is moist|soil moist and dark|sticky soil|clumpy|moistened|wett|moistish|damp and dark|"
     "dark and damp|dark and moist|dark and wet|cool and damp|damp to touch|moist to the touch|moist under|wet under|"
     "moist inside|damp inside|friable|loamy and dark|unweathered|not yet crusted|not crusted|no crust|no crust yet|"
     "uncrusted|still soft|still loose|still fluffy|brand spanking new|spanking new|this mornings|new as of today|"
     "new as of|newish|newer looking|just popped|just popped up|just came up|just pushed|just pushed up|"
     "just turned up|just up|just out|just thrown up|just now pushed|just appeared|new since|new overnight|"
     "newly pushed|newly thrown up|newly formed|recently pushed|recently thrown|recently worked|very recent|"
     "wasnt here yesterday|wasn't here yesterday|was not here yesterday|wasnt there yesterday|wasn't there yesterday|"
     "was not there yesterday|not here yesterday|not there yesterday|wasnt here last time|wasn't here last time|"
     "most recent|still working|still active|actively|actively worked|active digging|currently active"},
    {Sense::fresh, 0, es,
     "fresquesit@|freskit@|fresqecit@|fresquisim@|muy fresc@|recientito|recientitos|muy reciente|muy recientes|"
     "bien reciente|recien salido|recien amanecid@|recien abiert@|recien botad@|recien volcad@|recien volteada|"
     "recien aventada|recien sacadita|acabado de sacar|acabada de sacar|acabado de salir|acaba de salir|"
     "acaban de salir|acaba de salir hoy|acabadito de hacer|acaban de hacerlo|acaban de sacar|acaban de aventar|"
     "no estaba ayer|ayer no estaba|antes no estaba|"
     "lo acaban de hacer|nuevo de hoy|nuevo de ayer|nuevesito|nuevesita|nuebo|nueba|nuevesitos|de hace rato nomas|"
     "de hace un rato|hace un rato|hace ratito|hace un ratito|de hace ratito|hace poquito rato|hace poco|"
     "hace poco rato|de hace poco|de esta misma manana|esta misma manana|de esta madrugada|esta madrugada|"
     "en la madrugada|de madrugada|de la madrugada|de anoche mismo|de hoy temprano|hoy temprano|tempranito|"
     "de hoy tempranito|de ayer tarde|ayer noche|ayer por la noche|ayer tarde|tierra aun humeda|tierra todavia humeda|"
     "tierra suelta y humeda|tierra humedita|tierra fresquita|tierra mojadita|tierra prieta|tierra morena|"
     "tierra obscura|obscura|tierra esponjosa|esponjos@|suelt@ y humed@|lodos@|enlodad@|empapad@|remojad@|"
     "en actividad|con actividad|bien activ@|muy activ@|vigente|calient@|tiernit@|tiern@"},
    {Sense::older, 0, en,
     "oldd|odl|ollld|oldest|real old|super old|way old|kinda old|dried up soil|dry crust|crust|crusting|crusting over|"
     "crust forming|crusted up|crusty top|hard crust|crust over|crsty|crustd|dryed|dryed out|dryd|dry as a bone|"
     "dry as dust|bone dry soil|parched|sunbleached|sun bleached|light colored|light coloured|pale soil|faded out|"
     "flattened by rain|rain flattened|rain washed|rainwashed|rain smoothed|rain pitted|pitted|pocked by rain|"
     "washed down|washed by rain|beaten by rain|beat down by rain|sunken in|sagging|slumping|sloughed|compact and dry|"
     "hard as rock|hard as a rock|hard as concrete|like concrete|setup hard|set up hard|set hard|hard and dry|"
     "dry and hard|firmed up|greened over|greening over|green on top|green growth on it|vegetated|revegetated|regrown|"
     "grass coming through|grass growing through|grass grown through|grass through it|grass poking through|"
     "weeds coming through|weeds growing through|weeds through it|seedlings on it|seedlings on top|sprouts on it|"
     "sprouted|weeds sprouting|covered over with grass|cobwebs|cobwebs on it|cobwebby|spiderwebs|leaf litter on it|"
     "leaves on top|disused|not active|not in use|no longer active|no activity|no recent activity|no fresh sign|"
     "no fresh dirt|no new dirt|nothing fresh|nothing new|not new|dead looking|not so fresh|not that fresh|"
     "not too fresh|less fresh|none fresh|from last month|from winter|from last winter|winter old|from spring|"
     "from the spring|last years|last seasons|weeks old|months old|years old|some weeks old|a few weeks old|"
     "couple weeks old|been a while|quite aged|oldie|oldies|oldy"},
    {Sense::older, 0, es,
     "biej@|viejon|viejones|bien viej@|muy viej@|puro viej@|puros viejos|ya viej@|medio viej@|algo viej@|mas viej@|"
     "no reciente|no recientes|nada fresc@|nada reciente|poco reciente|no es fresc@|no activ@|sin actividad|"
     "sin actividad reciente|dur@ y sec@|sec@ y dur@|tierra reseca|tierra muy seca|tierra tiesa|tierra palida|"
     "descolorad@|deslavad@ por la lluvia|lavado por la lluvia|golpeado por la lluvia|asentad@|asentado por la lluvia|"
     "hundid@|ya hundid@|bajad@|aplacad@|encostrado|con costra seca|costra dura|costra encima|costros@|con costras|"
     "costrud@|con grama|con grama encima|con quelite|con quelites|lleno de quelites|lleno de quelite|lleno de monte|"
     "llenos de monte|lleno de yerba|lleno de hierbas|llenos de hierba|tapado de monte|tapado de hierbas|"
     "con monte encima|con plantas|con plantas encima|con brotes|con nacencia|nacido el zacate|nacid@ de zacate|"
     "ya nacio el zacate|ya nacio pasto|ya le nacio|le nacio pasto|le nacio zacate|le nacio hierba|le crecio el pasto|"
     "le crecio zacate|crecio el zacate|con telaranas|telaranas|con musgo|con hojas encima|de hace mucho|"
     "de hace mucho tiempo|de la temporada pasada|temporada pasada|del invierno|del invierno pasado|de meses|"
     "de semanas|de varias semanas|de varios dias|de dias|de hace dias|hace dias|hace varios dias|hace muchos dias|"
     "de hace semanas|hace semanas|de hace meses|hace meses|de anos|de hace anos|hace anos|de la vez pasada|"
     "vejestorio|rucos|ruco|ya pasad@|pasadit@|sequitos|reseca y dura|terron duro|terrones duros|terron seco|"
     "terrones secos"},
    {Sense::growth, 0, either,
     "quelite|quelites|zarza|zarzas|ortiga|ortigas|mala hierba|malas hierbas|malezal|pasto alto|zacate alto|"
     "hierba alta|hierbajo|hierbajos|tall grass|tall weeds|pigweed|thistle|thistles|mallow|nettles|dandelion|"
     "dandelions|foxtail|foxtails|wild oats|cheatgrass|burclover|bermuda|johnsongrass|nutsedge|seedlings|ferns|"
     "bracken|vines all over"},
    {Sense::when, 0, either,
     "todays|yesterdays|earlier this morning|this very morning|this mornin|this mornng|this mrning|ths morning|ystday|"
     "yday|yestrday|yesterdy|yesturday|yesterday evening|yesterday afternoon|yesterday morning|yesterday pm|"
     "yesterday am|last evening|last nite|lst night|overnite|ovrnight|over night|overnigt|over nite|during the night|"
     "in the night|through the night|since dawn|at dawn|early today|since the rain|since last rain|after the rain|"
     "since the last rain|since last irrigation|since irrigation|since my last visit|since last visit|"
     "since last check|just today|as of today|as of this morning|the other night|within the day|within the hour|"
     "an hour ago|hours ago|minutes ago|moments ago|a moment ago|a minute ago|just a minute ago|in the last hour|"
     "within hours|within the last day|in the last day|last 24 hours|last 24 hrs|in last 24h|not long ago|"
     "the last day|recien hoy|hoy por la manana|hoy x la manana|esta mananita|de esta mananita|por la manana temprano|"
     "en la noche|por la noche|desde esta manana|desde hoy|desde antier|de antier|de anteayer|de ayer mismo|"
     "ayer mismo|apenas ayer|apenas hoy|apenas anoche|apenas ahorita|apenitas|apenas|desde la lluvia|"
     "despues de la lluvia|despues del riego|desde el riego|desde la ultima vez|desde la ultima visita|"
     "hace unas horas|de hace unas horas|hace horas|hace una hora|hace minutos|de hace minutos|de oy|de aller|aller"},
    {Sense::when, 1, either,
     "ages ago|ages|years ago|yrs ago|last wk|last mo|last yr|last month sometime|a week back|weeks back|months back|"
     "couple weeks ago|a couple weeks ago|couple of weeks ago|few weeks ago|a few weeks ago|some time ago|"
     "some while ago|quite a while|quite a while ago|awhile ago|a while back|awhile back|way back|before the rains|"
     "before the rain|since winter|since spring|over a week|over a week ago|more than a week|el ano antepasado|"
     "el mes antepasado|la semana antepasada|hace ya tiempo|hace bastante|hace bastante tiempo|hace mucho tiempo|"
     "hace un mes|de hace un mes|hace un chorro|de hace rato|de la otra vez|de otros dias|antes de la lluvia|"
     "antes de las lluvias|desde hace tiempo"},
    // signs and their makers
    {Sense::mound, 0, en,
     "moudn|moudns|muonds|muond|mounnd|moounds|moumd|moumds|mpund|mpunds|mounfs|mnds|mds|dirt mnd|castings pile|"
     "workings|soil heap|soil heaps|dirt hump|dirt humps|spoil heap|spoil pile|spoil piles|mnnd|dirt hill|dirt hills|"
     "mound of earth|earth mound|earth mounds|throw up mound"},
    {Sense::mound, 0, es,
     "montculo|monticuo|monticolo|monticlos|monticulos de tuza|montcilo|mnticulo|montn|montnes|moton|motones|"
     "monton de la tuza|montoncillo|montoncillos|montanita|montanitas|cumulo|cumulos|tierrita amontonada|"
     "bola de tierra|cerrito de tierra|cerritos de tierra|montos|amontonamiento|amontonamientos|toperita|"
     "borditos de tierra|mogote|mogotes"},
    {Sense::animal, of(SignKind::gopher_mound), en,
     "goper|gopers|gohper|gophre|ghoper|gophor|gophers|ghofer|gopheer|pocket goph|p gopher|gopher mnd|gopher mnds|"
     "gopher hole|gopher holes|gopher dirt|gopher digging|gopher diggings|gopher throw|bottas pocket gopher|"
     "valley gopher"},
    {Sense::animal, of(SignKind::gopher_mound), es,
     "tuzas|tuzass|tuzita|tuzitas|tucita|tuzon|tusas|tussa|thuza|tuza real|taltusa|taltusas|taltuzita|rata taltuza|"
     "tuza de tierra"},
    {Sense::animal, of(SignKind::mole), either,
     "molehil|molehils|mole mnd|mole dirt|mole tunnel|mole tunnels|mole runs|mole ridging|mole work|mole hils|"
     "topo comun|topo europeo|toperitas|topineria|galeria de topo|monticulo de topo|monticulos de topo|monton de topo|"
     "montones de topo"},
    {Sense::animal, of(SignKind::ground_squirrel), either,
     "sqirrel|sqirel|squirrl|squirrell|squirell|squirells|squirle|squirle hole|squirril|skwirl|squrrel|sqerl|"
     "squirrel den|squirrel burrow|squirrel burrows|squirrel holes|squirrel hole|squirrel dig|squirrel digging|"
     "squirrel colony|california ground squirrel|beldings|beldings ground squirrel|ground squirell|grnd squirrels|"
     "gnd squirel|g squirrels|gsquirrel|ardila|ardilas|ardillas del suelo|ardillon de tierra|hoyo de juancito|"
     "hoyos de juancito|juancito|ardilla gris|chichimoco|chichimocos"},
    {Sense::animal, of(SignKind::vole), either,
     "voles holes|vole hole|vole holes|vole run|vole runs|vole runway|vole runways|vole trail|vole trails|vole path|"
     "vole paths|vole damage|vole sign|vole tunnel|vole tunnels|microtus|meadow mouse runs|mouse runs|mouse runway|"
     "topilos|topiyo|topiyos|topillo rojo|topillos campesinos|raton topo|raton de alfalfar|sendas de topillo|"
     "huras de topillo|hura de topillo|ratones del campo|metorito mexicano"},
    {Sense::animal, of(SignKind::other), either,
     "rabbit hole|rabbit holes|rabbit burrow|rabbit scrape|rabbit scrapes|rabbit dig|rabbit digging|rabbit diggings|"
     "rabbit warren|warren|badger dig|badger digs|badger hole|badger den|badger digging|badger excavation|ant hill|"
     "ant hills|anthils|antill|ant nests|ants hill|red ants|harvester ants|harvester ant|carpenter ants|"
     "fire ant mound|fire ant mounds|fireants|ground bees nest|mole crickets|mole cricket|crayfish chimney|"
     "crayfish mound|crawfish mound|crawdad hole|crawdad mound|dung beetle|dung beetles|earthworm castings|worm cast|"
     "worm casts|skunk dig|skunk digs|skunk hole|skunk digging|pig rooting|hog rooting|boar rooting|rat hole|"
     "rat holes|rat burrow|rat burrows|mouse hole|mouse holes|mouse burrow|mice holes|gerbil|hamster|prairie dog town|"
     "dog town|chipmunk hole|woodrat|pack rat midden|armadillo hole|armadillo dig|armadillo digs|groundhog hole|"
     "woodchuck hole|marmot hole|hueco de armadillo|hoyo de armadillo|cueva de armadillo|armadillo|cusuco|cusucos|"
     "hoyo de conejo|hoyos de conejo|cueva de conejo|hura de conejo|madriguera de conejo|madriguera de tejon|"
     "hoyo de rata|hoyos de rata|cueva de rata|hueco de rata|hoyo de raton|hoyos de raton|hormiguero grande|"
     "hormiguita|hormigas rojas|hormiga roja|zompopo|zompopos|zompopera|zompoperas|bachaco|bachacos|bibijagua|mochomo|"
     "mochomos|cuatalata|chicatana|asquel|asqueles|hozada de jabali|hozadas|hozadura|hozaduras|lombrices de tierra|"
     "grillotopo|grillo topo|grillo real|alacran cebollero|escarabajo pelotero|cangrejera|tuco|conejo de campo|"
     "lirones|liron"},
    {Sense::digging, 0, either,
     "excavation|excavations|scrape|scrapes|entrance|entrances|openings|hura|huras|toperas de|escarbadas|escarbada|"
     "escarbado|excavaciones|boca|bocas|entrada de madriguera|castings|midden|colony|colonia"},
    {Sense::surface_plug, 0, either,
     "plug no mound|plug without mound|plug without a mound|plug w o mound|plug with no mound|no mound just plug|"
     "plug flat on ground|plug level with ground|plug flush w ground|plug level with soil|plug even with ground|"
     "level plug|flush plug|plug no throw|plug with no throw|tapon sin tierra|tapon nada mas|tapon nomas|"
     "tapon solamente|tapon parejo|tapon a nivel|tapon plano|solo se ve tapon|nada mas tapon|tapon sin montoncito|"
     "tapon raso|a ras de piso|al ras del piso"},
    {Sense::surface, 0, either,
     "flush w ground|flush w the ground|flush w surface|flush w soil|flush with soil|flush with the soil|"
     "flush with surface|flush to ground|at grade|at grade level|grade level|at surface|at the surface|"
     "at ground level|ground flush|even with ground|even with the ground|level w ground|level w the ground|"
     "level with soil|level with surface|a ras d suelo|al ras d suelo|a ras del piso|a ras de piso|raso|"
     "parejo con el suelo|al nivel del suelo|al nivel del piso|al mismo nivel|nivel del suelo"},
    {Sense::group, 0, either,
     "cnt|qty|quantity|num of mounds|number of mounds|mound count|numero de montones|numero de monticulos|cantidad|"
     "no of mounds|nr of mounds|how many"},
    {Sense::more, 0, en, "newest|oldest|medium|separate|distinct|individual|different|adjacent|neighboring"},
    // known and plain, so that nothing is taken for them or they for something
    {Sense::plain, 0, en,
     "flat tire|flat tires|flat tyre|screen cracked|cracked screen|wells|well|sheds|weather|weathers|ladder|roots|"
     "root|rooted|rotten|rotted|rotation|gnawed|chewed|girdled|gnawing|chewing|eats|easy|ease|easily|early|earlier|"
     "easter|eaten|weak|souls|nose|nurse|nuts|noon|note to self|blade|blades|tell|tells|told|says|said|call|called|"
     "ask|asked|asks|meet|bring|brings|bought|buy|sell|fix|fixed|fixes|repair|repaired|broke|broken|leaks|leak|"
     "leaking|stuck|locked|lock|unlock|keys|chain|paint|oil|fuel|gas|diesel|parts|part number|shop|order form|invoice|"
     "lease|rent|tax|insurance|permit|monday|tuesday|wednesday|thursday|friday|saturday|sunday|week end|weekend|radio|"
     "channel|charger|charge|gloves|glove|hat|jacket|coat|lunchbox|cooler|bottle|snack|bathroom|toilet|office|sample|"
     "samples|sampled|station|transect|plot|plots|grid|point number|waypoint|marker|tag|tags|tagged|label|sunrise|"
     "sunset|cloud|clouds|cloudy|wind|windy|breeze|fog|foggy|frost|freeze|frozen|hail|snow|snowy|storm|stormy|drizzle|"
     "forecast|temp|temperature|humidity|mph|kph|lime|manure|compost|fertilizer|urea|nitrogen|seed|seeds|seeded|sown|"
     "sowing|pruned|pruning|prune|thinned|thinning|harvest|harvested|picking|spraying|irrigated|irrigation|irrigate|"
     "sprinkler|sprinklers|emitter|emitters|drip line|dripper|filter|manhole|hydrant|riser|risers|canal|reservoir|"
     "tank|tanks|trough|troughs|shed|barn|silo|greenhouse|hoop house|tunnel house|high tunnel|poly tunnel|polytunnel|"
     "wheel barrow|cabin|cottage|church|cemetery|airport|highway|street|avenue|lot|lots|block|blocks|section|parcel|"
     "quarter section|bunker|bunkers|fairway|tee|tees|tee box|rough area|putting green|goal|goals|goalpost|bleachers|"
     "dugout|outfield|infield|base|pitch|scoreboard|flagpole|tower|towers|clubhouse|club house|leaning|dying|"
     "dead tree|trunk|trunks|bark|canopy|cluster of trees|branch|branches|limb|limbs|twig|twigs|blossom|blossoms|"
     "bloom|blooming|buds|fruit|fruits|nut|peach|peaches|plum tree|prunes|cherries|cherry|apple|apples|pear|pears|"
     "citrus|lemon|lemons|orange|oranges|olive|olives|avocado|avocados|pistachio|pistachios|pecan|pecans|hops|onions|"
     "onion|garlic|squash vine|squash plants|pumpkin|pumpkins|melon|melons|peas|oats|rye|sorghum|cotton|sunflower|"
     "sunflowers|straw|bale|bales|windrow|windrows|stubble|fallow|tarp|drench hose|winter wheat|cover crop|"
     "crop circle|tall|short|deep mud|mud|puddle|puddles|standing water|flooded|flood|slippery|steep|hill side|"
     "hillside|hilltop|knoll|ridge top|ridgetop|gully|draw|wash|creekbed|riverbank|river|stream|lake|swamp|marsh|"
     "meadow|prairie|forest|woods|willow|oak|oaks|pine|pines|eucalyptus|cottonwood|poplar|cypress|redwood|juniper|"
     "sagebrush|cactus|density|dense|high|low|accuracy|error|redo|skip|skipped|skipping|retry|repeat|continue|finish|"
     "finished|done|begin|began|broken line|map|maps|screen|app|file|camera|video|picture|pic|pics|img|recess|"
     "recess time|dusk|dawn time|waiting|walking|standing|sitting|talking|playing|working on|mowing|whatever|lol|omg|"
     "haha|jk|smh|idk|imo|tbh|wtf|thx|thanks|hello|bye|mr|mrs|ms|dr|leash|unleashed|off leash|pellets|pellet|overhead|"
     "perched|basking|grazing|browsing|roaming|running loose"},
    {Sense::plain, 0, es,
     "plaga|plagas|llamar|llame|llamo|llamada|llave|llaves|gotea|gotera|fuga|rompio|descompuesta|descompuesto|"
     "apagada la|prendida|encendida|prender|apagar|gasolina|aceite|diesel|refaccion|refacciones|taller|radio|"
     "canal de riego|estaca|cinta|pintura|mapa|mapas|pantalla|archivo|camara|lunes|martes|miercoles|jueves|viernes|"
     "sabado|domingo|semanal|enero|febrero|marzo|abril|mayo|junio|julio|agosto|septiembre|octubre|noviembre|diciembre|"
     "nublado|nubes|nube|neblina|niebla|helada|heladas|hielo|granizo|llover|llueve|llovera|lloviendo|lluvioso|calor|"
     "frio|soleado|ventoso|aire fuerte|tormenta|trueno|lodo|lodazal|charco|charcos|inundado|resbaloso|empinado|"
     "ladera norte|pendiente|linde|margen|acequia|acequias|regadio|regadios|goteo|gotero|goteros|aspersor|aspersores|"
     "compuerta|compuertas|tuberia|tuberias|llave de paso|rodilla|altura|estiercol|abono|fertilizante|cal viva|"
     "composta|sembrado|sembrada|sembrar|cosechar|cosechado|cosechada|podar|poda|regar|riegan|reguar|produccion|"
     "cafetal|cafetales|cafe|cacao|cana de azucar|platano|platanos|platanal|mango|mangos|papaya|papayas|fresas|fresa|"
     "fresal|cebolla|cebollas|ajo|ajos|chile|chiles|jitomate|jitomates|tomate|tomates|calabaza|calabazas|melones|"
     "sandia|sandias|pepino|pepinos|trigo|avena|sorgo|girasol|girasoles|algodon|garbanzo|lenteja|remolacha|zanahoria|"
     "zanahorias|col|coles|brocoli|nopal|nopales|agave|agaves|maguey|magueyes|raiz|raices|tronco|troncos|rama|ramas|"
     "corteza|brote|roido|roida|roidas|roidos|mordido|mordida|mordidas|comido|comida|comidas|lote|lotes|cuartel|"
     "cuarteles|bancal|bancales|finca|fincas|rancho|hacienda|ejido|predio|predios|lindero norte|mojon|mojones|"
     "cerco vivo|alambrada|malla|tranca|tranquera|falsete|portillo|galera|bodega|bodegas|cobertizo|silo|silos|granja|"
     "iglesia|carretera|autopista|calle|vereda alta|vado|rio|laguna|lago|estanque|esteros|playa|arena|grava|cascajo|"
     "tepetate|caliche|avisar|aviso|avise|preguntar|pregunte|dile|decirle|comprar|compre|vender|arreglar|arreglado|"
     "reparar|suelto|suelta|sueltos|sueltas|bravo|picoteando|pastando|comiendo|jugando|trabajando|regando|caminando|"
     "parado|falda|listo|lista|terminado|terminar|empezar|empieza|seguir|sigue la|saltar|salte|saltamos|pendiente de|"
     "ojo con|ojo al|gracias|saludos|don|dona|ing|ingeniero llego"},
    {Sense::filler, 0, either,
     "all around|about here|hereabouts|round here|in here|in there|stil|stll|bth|both|each|every|otherwise|else|"
     "also here|mismo|misma|mismos|mismas|nomas aqui|puro|pura|puros|puras|algo de|any more|anymore|of it|supr|vry|"
     "veryy|realy|rly|prety|im pretty sure|i believe|believe|imho|says it|whole|entire|entirely|quite a bit|a lot|"
     "a whole|such|fairly sure|aun asi|o sea|osea|verdad|creo yo|segun yo|segun|osease|compa|wey|guey|vato|bro|dude"},
};

}  // namespace

std::span<const Entry> words_as_spoken() { return entries; }

}  // namespace plugside::note_words
