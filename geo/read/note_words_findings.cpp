#include "core/survey/mound.h"
#include "geo/read/note_words_entries.h"
#include "geo/read/notes_grammar.h"

namespace plugside::note_words {

namespace {

constexpr double of(SignKind kind) { return static_cast<double>(kind); }
constexpr double of(MentionCategory category) { return static_cast<double>(category); }

constexpr unsigned en = english;
constexpr unsigned es = spanish;

constexpr Entry entries[] = {
    // diggers
    {Sense::animal, of(SignKind::mole), en, "mole|moles|molehill|molehills"},
    {Sense::animal, of(SignKind::mole), es, "topo|topos|topera|toperas"},
    {Sense::animal, of(SignKind::ground_squirrel), en,
     "squirrel|squirrels|ground squirrel|ground squirrels|groundsquirrel|groundsquirrels|squirel|grnd squirrel|gsq|gs "
     "hole|gs holes|gs burrow|gr "
     "squirrel"},
    {Sense::animal, of(SignKind::ground_squirrel), es,
     "ardilla|ardillas|ardilla de tierra|ardillas de tierra|ardilla terrestre|ardillas terrestres|ardillon|ardillones"},
    {Sense::animal, of(SignKind::vole), en, "vole|voles|meadow vole|meadow voles|field vole|meadow mouse|meadow mice"},
    {Sense::animal, of(SignKind::vole), es,
     "topillo|topillos|raton de campo|ratones de campo|metorito|metoritos|meteorito|raton campestre|raton de pradera"},
    {Sense::animal, of(SignKind::gopher_mound), en,
     "gopher|gophers|pocket gopher|pocket gophers|gphr|gopher mound|gopher mounds"},
    {Sense::animal, of(SignKind::gopher_mound), es, "tuza|tuzas|taltuza|taltuzas"},
    {Sense::animal, of(SignKind::other), en,
     "ant|ants|anthill|anthills|badger|badgers|rabbit|rabbits|groundhog|groundhogs|woodchuck|marmot|rat|rats|mouse|mice|"
     "shrew|crayfish|crawfish|armadillo|beetle|worm|worms|other|prairie dog|prairie dogs|skunk|skunks|cricket|fire "
     "ants|fire ant|"
     "kangaroo rat|chipmunk|chipmunks"},
    {Sense::animal, of(SignKind::other), es,
     "hormiga|hormigas|hormiguero|hormigueros|tejon|tejones|conejo|conejos|liebre|rata|ratas|raton|ratones|perrito de la "
     "pradera|perritos de la pradera|lombriz|lombrices|escarabajo|zorrillo|otro animal|marmota|musarana|grillo"},
    {Sense::mound, 0, en,
     "mound|mounds|mnd|mnds|heap|heaps|pile|piles|dirt pile|soil pile|dirt mound|dirt mounds|mounds of dirt|ones"},
    {Sense::mound, 0, es,
     "monticulo|monticulos|monton|montones|mont|monts|monton de tierra|montones de tierra|monticulo de tierra|monticulos de "
     "tierra"},
    {Sense::surface_plug, 0, en,
     "surface plug|surface plugs|plug only|only a plug|just a plug|just plug|round plug|only plug"},
    {Sense::surface_plug, 0, es,
     "tapon superficial|tapones superficiales|solo tapon|solo el tapon|solo un tapon|tapon redondo"},
    {Sense::digging, 0, en,
     "hole|holes|hill|hills|ridge|ridges|burrow|burrows|trail|trails|den|dens|sign|signs|nest|nests|digging|diggings|"
     "dig|work|activity|runs|dug"},
    {Sense::digging, 0, es,
     "hoyo|hoyos|agujero|agujeros|madriguera|madrigueras|nido|nidos|senda|sendas|senderos|cueva|rastro|rastros|lomo|surco|"
     "cuevas"},
    {Sense::sighted, 0, en, "saw|seen|spotted|watched|sighted|saw a"},
    {Sense::sighted, 0, es, "vi|visto|vimos|se vio|avistado|vi un|vi una"},
    // counts
    {Sense::number, 1, en, "one|single"},
    {Sense::number, 2, either, "two|dos|couple|a couple|couple of|a couple of|pair of|a pair of|un par de|par de|un par"},
    {Sense::number, 3, either, "three|tres|trio"},
    {Sense::number, 4, either, "four|cuatro"},
    {Sense::number, 5, either, "five|cinco"},
    {Sense::number, 6, either, "six|seis"},
    {Sense::number, 7, either, "seven|siete"},
    {Sense::number, 8, either, "eight|ocho"},
    {Sense::number, 9, either, "nine|nueve"},
    {Sense::number, 10, either, "ten|diez"},
    {Sense::number, 11, either, "eleven|once"},
    {Sense::number, 12, either, "twelve|doce|dozen|a dozen|docena|una docena de"},
    {Sense::group, 0, either,
     "cluster of|group of|line of|row of|string of|grupo de|fila de|linea de|hilera de|a cluster of|a group of|a line of|un "
     "grupo de|"
     "una fila de|una linea de|a row of|bunch of|total of|total|count|conteo|cuenta"},
    {Sense::more, 0, either,
     "more|mas|additional|otros|otras|extra|others|another|small|big|large|little|tiny|larger|bigger|smaller|biggest|"
     "largest|last|first|newest|latest|ultim@|primer@|pequen@|grande|grandes|chic@"},
    {Sense::times, 0, either, "x|times|veces"},
    // denials and doubts
    {Sense::negation, 0, en,
     "not|without|isn't|isnt|wasn't|wasnt|aren't|didn't|didnt|don't|dont|can't|cant|cannot|couldn't|couldnt|could "
     "not|non|never|"
     "no longer|w/o|did not|does not|doesn't|is not|neither"},
    {Sense::negation, 0, es, "sin|ningun|ninguna|nunca|ya no|tampoco|ni"},
    {Sense::negation, 0, either, "no"},
    {Sense::none, 0, either, "none|n/a|na|nil|ninguno"},
    {Sense::visible, 0, en,
     "visible|clear|clearly|readable|legible|obvious|evident|distinct|see|read|tell|find|make "
     "out|real|discernible|seen|defined"},
    {Sense::visible, 0, es, "clar@|se distingue|se aprecia|definid@|reconocible|aparente|aparece"},
    {Sense::gone, 0, en,
     "gone|missing|lost|unclear|unreadable|illegible|invisible|obscured|washed out|washed "
     "away|blurred|indistinct|hidden|unknown|"
     "unsure|hard to read|hard to tell|not sure|wiped out|can't tell|cannot tell|cant tell"},
    {Sense::gone, 0, es, "borrad@|borros@|perdid@|ilegible|desaparecid@|confus@|dudos@|indefinid@|desconocid@|invisible"},
    {Sense::doubt, 0, either,
     "?|maybe|perhaps|possibly|probably|prob|poss|likely|quiza|quizas|tal "
     "vez|posible|posiblemente|probable|probablemente|puede ser|"
     "might be|could be|i guess|guess|supongo"},
    // the probe
    {Sense::probe, 0, en, "probe|probed|probing|probes|prb|prbd|probe hole|prodded|probe rod|rod|poked|probe result"},
    {Sense::probe, 0, es,
     "sonda|sonde|sondeo|sondeado|sondeada|sondear|sondado|sondee|sondeamos|varilla|con "
     "varilla|pinche|pinchado|pinchamos|tantee|tanteo|tiento"},
    {Sense::tunnel, 0, en,
     "tunnel|tunnels|run|main run|main tunnel|runway|lateral|cavity|the run|the tunnel|tunel|tnl|main"},
    {Sense::tunnel, 0, es,
     "hueco|galeria|galerias|tuneles|corrida|conducto|pasadizo|cavidad|la galeria|el tunel|galeria principal|gal"},
    {Sense::hit, 1, en, "hit|hits|dropped|drops|drop in|gave way|broke through|broke in|punched through|fell through|drop"},
    {Sense::hit, 1, es, "cedio|cede|se hundio|hundio|cayo|acierto|encontre galeria"},
    {Sense::hit, 0, en, "found|find|struck|got|got it|located|soft|open|yes|positive|soft spot|connected|reached"},
    {Sense::hit, 0, es,
     "encontrad@|encontre|encontramos|encontro|halle|hallad@|hallamos|dio|toque|toco|positiv@|si|blando|di con|localizad@"},
    {Sense::miss, 0, en, "nothing|miss|missed|misses|blank|solid|empty|failed|negative|nothing found|no luck|nada|zilch"},
    {Sense::miss, 0, es, "nada|negativ@|fallo|fallad@|vaci@|maciz@|falle|sin resultado|sin suerte|sin exito"},
    {Sense::depth, 0, en, "deep|depth|down|below|d|below surface|below the surface|under"},
    {Sense::depth, 0, es,
     "hond@|profund@|profundidad|de profundidad|de hondo|prof|bajo tierra|abajo|de prof|a una profundidad de"},
    {Sense::distance, 0, en,
     "away|distance|dist|out|from plug|from the plug|off plug|off the plug|from mound|from the mound|off the "
     "mound|off|behind plug|behind the plug|"
     "from edge|beyond plug"},
    {Sense::distance, 0, es,
     "distancia|de distancia|del tapon|desde el tapon|del monticulo|desde el monticulo|del monton|detras del tapon|a una "
     "distancia de"},
    // who and what is about
    {Sense::mention, of(MentionCategory::people), en,
     "child|children|kid|kids|people|person|neighbor|neighbors|neighbour|neighbours|worker|workers|farmer|farmers|owner|"
     "owners|family|school|"
     "playground|crew|landowner|tenant|tenants|lady|man|woman|boy|boys|girl|girls|toddler|toddlers|hikers|hiker|jogger|"
     "joggers|visitors|"
     "schoolyard|school kids|campers|irrigator|irrigators|picnic area|public|residents|folks|customers|guests"},
    {Sense::mention, of(MentionCategory::people), es,
     "nin@|gente|persona|personas|vecin@|trabajador|trabajadores|duen@|familia|familias|escuela|senor|senora|hombre|mujer|"
     "hij@|obrer@|"
     "peatones|muchach@|chamac@|parque infantil|visitantes|regador|turistas|alumnos|cuadrilla"},
    {Sense::mention, of(MentionCategory::pets), en,
     "dog|dogs|puppy|puppies|cat|cats|kitten|kittens|pet|pets|doggy|house cat|barn cat|barn "
     "cats|hound|hounds|sheepdog|guard dog"},
    {Sense::mention, of(MentionCategory::pets), es, "perr@|gat@|mascota|mascotas|cachorr@|perrit@|gatit@"},
    {Sense::mention, of(MentionCategory::stock), en,
     "cow|cows|cattle|calf|calves|horse|horses|sheep|lamb|lambs|ewe|ewes|goat|goats|hen|hens|chicken|chickens|pig|pigs|"
     "stock|livestock|llama|"
     "llamas|alpaca|alpacas|pony|ponies|mare|mares|foal|foals|heifer|heifers|steer|steers|bull|bulls|donkey|donkeys|mule|"
     "mules|ducks|geese|hogs|turkeys"},
    {Sense::mention, of(MentionCategory::stock), es,
     "vaca|vacas|ganado|caballo|caballos|oveja|ovejas|cabra|cabras|chiv@|gallina|gallinas|pollo|pollos|cerdo|cerdos|becerr@|"
     "terner@|borreg@|"
     "yegua|yeguas|burro|burros|toro|toros|puerco|puercos|marran@|potr@|novill@|mula|mulas|patos|guajolotes|cordero|"
     "corderos"},
    {Sense::mention, of(MentionCategory::wildlife), en,
     "owl|owls|burrowing owl|burrowing owls|hawk|hawks|fox|foxes|kit "
     "fox|coyote|coyotes|snake|snakes|rattlesnake|rattlesnakes|rattler|gopher "
     "snake|deer|tortoise|tortoises|desert "
     "tortoise|turtle|turtles|toad|toads|frog|frogs|salamander|salamanders|quail|bird|birds|bird nest|"
     "bird's nest|raptor|raptors|eagle|eagles|lizard|lizards|bee|bees|wasp|wasps|wasp "
     "nest|bobcat|weasel|weasels|wildlife|heron|herons|elk|"
     "barn owl|barn owls|ferret|killdeer|bull snake|bullsnake|king "
     "snake|raccoon|raccoons|opossum|possum|egret|egrets|pheasant|pheasants"},
    {Sense::mention, of(MentionCategory::wildlife), es,
     "buho|buhos|tecolote|tecolotes|lechuza|lechuzas|zorr@|culebra|culebras|serpiente|serpientes|vibora|viboras|cascabel|"
     "vibora de "
     "cascabel|venado|venados|tortuga|tortugas|sapo|sapos|rana|ranas|lagartija|lagartijas|pajaro|pajaros|ave|aves|halcon|"
     "halcones|aguila|"
     "aguilas|abeja|abejas|avispa|avispas|avispero|codorniz|codornices|comadreja|fauna|gavilan|gavilanes|garza|garzas|"
     "mapache|ciervo"},
    // what says nothing
    {Sense::article, 0, either, "the|a|an|el|la|los|las|un|una|unos|unas|lo|su|its|it's"},
    {Sense::filler, 0, en,
     "and|with|it|very|quite|-|&|+|here|this|that|there|but|just|only|looks|look|looking|seems|kinda|kind of|bit|a bit|a "
     "little|some|i|think|i "
     "think|pretty|really|has|have|are|were|be|also|too|still|w|then|sort "
     "of|all|rather|slightly|half|semi|partly|somewhat|fairly|like|so|or so|ish|twice|few|a few|several|many"},
    {Sense::filler, 0, es,
     "se ven|se ve|se nota|y|con|muy|aqui|hay|es|esto|se|poco|un poco|medio|bastante|algo|creo que|creo|parece|mas o "
     "menos|pero|solo|e|ya|tan|todo|toda|"
     "este|esta|son|estan|tiene|que|tambien|aun|todavia|parecen|varios|varias|algunos|algunas|unos pocos|unas "
     "pocas|pocos|pocas|much@|ahi|alli|media|bien|fue|era|u|ser"},
    // known and plain, so that nothing is taken for them or they for something
    {Sense::plain, 0, en,
     "nearby|house|houses|stone|stones|mouth|flesh|worn|month's|round|sound|bound|castle|kettle|cover|covered|color|"
     "plum|plums|plumb|drip|corner|"
     "grasses|brush|bushes|trash|crust|fence|plant|plants|planted|worth|forth|pint|point|points of|fun|founder|north "
     "fence|grass|"
     "train|trees|tree|flag|flagged|weeds|weed|clover|alfalfa|sunny|shade|wire|stick|stack|block|rows|road"},
    {Sense::plain, 0, es,
     "fresno|fresnos|pesado|pesada|huevo|granado|granada|cabeza|cerca|cerco|camino|canal|zanja|arbol|surco|corte|parte|"
     "puerta|casa|"
     "cebada|campo|piedra|piedras|roca|sauce|pozo|bomba|riego|borde|poste|alambre|alfalfa|pasto|nogal|manzano|manzana"},
    // more of the same families: regions, texting, spoken forms
    {Sense::animal, of(SignKind::mole), en, "mole hill|mole hills|mole mound|mole mounds|mole ridge|mole ridges|mole run"},
    {Sense::animal, of(SignKind::mole), es, "topitos|topito|tunel de topo|topera nueva|topineras|topinera"},
    {Sense::animal, of(SignKind::ground_squirrel), en,
     "sqrl|sqrls|squirl|squirls|squirrl|grd squirrel|grnd squirl|g squirrel|gr squirl|g sq|gr sq|grd sqrl|gnd squirrel|gnd "
     "sqrl|digger squirrel"},
    {Sense::animal, of(SignKind::ground_squirrel), es,
     "ardiya|ardilla terrera|ardilla de suelo|ardilla del suelo|ardillita|ardillitas|motocle|motocles|juancito|juancitos|"
     "techalote|techalotes|tachalote|hoyo de ardilla|cuinique|ardillon|ardilla de california"},
    {Sense::animal, of(SignKind::vole), en,
     "field mouse|field mice|meadow vole runs|pine vole|pine voles|prairie vole|voal"},
    {Sense::animal, of(SignKind::vole), es,
     "ratilla|ratillas|ratoncito de campo|raton de los prados|raton de pasto|meteoritos|raton meteoro|ratoncillo de "
     "campo|topillo campesino|raton de alfalfa|rata topera"},
    {Sense::animal, of(SignKind::gopher_mound), en,
     "gofer|gofers|goffer|goffers|gohper|gopfer|gopher sign|gopher work|gopher activity|gophr|gphrs|pkt gopher|pocketgopher|"
     "goph|gophs"},
    {Sense::animal, of(SignKind::gopher_mound), es,
     "tusa|tusas|tuzita|tucita|tozas|toza|tuzo|tuzos|tusita|tutza|rata de abazones|ratas de abazones"},
    {Sense::animal, of(SignKind::other), en,
     "ants nest|ant nest|ant hills|ant mound|ant mounds|termite|termites|termite mound|termite hill|crawdad|crawdads|"
     "crawfish chimney|hare|hares|jackrabbit|jackrabbits|cottontail|cottontails|bunny|bunnies|armadillos|woodchucks|marmots|"
     "shrews|beetles|earthworm|earthworms|worm castings|castings|cicada|cicadas|bumblebee nest|k rat|kangaroo rats|dillo|"
     "wild pig|wild pigs|feral hog|feral hogs|muskrat|muskrats|nutria|land crab|pack rat|wood rat"},
    {Sense::animal, of(SignKind::other), es,
     "hormigas arrieras|arriera|arrieras|hormiguitas|termitas|termita|comejen|tlalcoyote|tlalcoyotes|tejoncito|perro "
     "llanero|perros llaneros|perrito llanero|perritos "
     "llaneros|conejera|conejeras|conejitos|conejos|liebres|armadillos|mapurite|"
     "escarabajos|zorrillos|zorrino|chapulin|cangrejo|cangrejos|acocil|lombricera|marmotas|rata canguro|jabali|jabalies|"
     "cigarra|gusano|gusanos|ratas|musaranas|grillos|quirquincho|cuy|cuyes|vizcacha|vizcachas|tucotuco|tucu tucu"},
    {Sense::mound, 0, en,
     "mouns|mond|monds|moun|muond|mounded|dirt piles|piles of dirt|dirt heap|heap of dirt|pile of dirt|pile of soil|mound "
     "of "
     "dirt|mound of soil|hump|humps|hillock|hillocks|mnd of dirt"},
    {Sense::mound, 0, es,
     "montoncito|montoncitos|montecito|montecitos|monticulito|montesitos|monticlo|bordito|borditos|bulto|bultos|"
     "bola de tierra|bolas de tierra|monticulos de la tuza|tierrero|tierreros|terrero|terreros|cerrito|cerritos|morro de "
     "tierra|lomita|lomitas|pilita|pilitas|pila de tierra|pilas de tierra|monto"},
    {Sense::surface, 0, either,
     "surface|surf|srfc|sfc|ground level|grade|flush|flush with ground|flush with the ground|level with ground|level with "
     "the "
     "ground|level with the surface|flush with the surface|a ras|al ras|ras|a ras de suelo|a ras del suelo|a ras de "
     "tierra|al ras de suelo|al ras del suelo|a nivel del suelo|a nivel de suelo|a nivel|superficie|superficial|"
     "superficiales|a flor de tierra|a flor|en la superficie|ras del suelo"},
    {Sense::surface_plug, 0, either,
     "surface plug only|only surface plug|surf plug|surf plugs|surface pl|plain plug|lone plug|plug alone|bare plug|flat "
     "plug|tapon solo|nada mas el tapon|nomas el tapon|nomas tapon|puro tapon|tapon sin monton|tapon sin monticulo|tapon "
     "al ras|tapon solito|unicamente tapon|solamente tapon|solamente el tapon|feeder plug|nomas un tapon"},
    {Sense::digging, 0, en,
     "hol|hls|tunnels|opening in|openings|diggins|trails|pathway|tracks of|castle of|chimney|chimneys"},
    {Sense::digging, 0, es,
     "hoyito|hoyitos|oyo|oyos|boquete|boquetes|pozo de|cueva|cuevita|guarida|guaridas|escarbadero|escarbaderos|excavacion|"
     "chimenea|agujeros|orificio|orificios|abujero|abujeros|vereda|veredas|sendero|senderito|caminito|caminitos"},
    {Sense::sighted, 0, either,
     "sighting|noticed|spied|heard|sawa|se vieron|se oye|oi|mire|mire un|mire una|viste|vieron|avistamos"},
    {Sense::group, 0, either, "bunch|cluster|group|patch of|string|batch of|racimo de|grupito de|fila con|bola de"},
    {Sense::number, 12, either, "docena de|una docena"},
    {Sense::number, 2, either, "pair|par|couple uv|coupla|cupla"},
    {Sense::more, 0, either, "xtra|biggest one|otro|otra|mayor|menor|grandote|chiquit@|mediano|mediana|ultimito"},
    {Sense::negation, 0, en,
     "aint|ain't|won't|wont|wouldn't|wouldnt|doesnt|hasn't|hasnt|haven't|havent|w/out|cudnt|cuz no|nor|there's no|theres "
     "no|there is no|there are no|no sign of|no signs of|couldn t|can t|unable to|without a|without any|not any|hardly any"},
    {Sense::negation, 0, es,
     "sin ningun|sin ninguna|ni un|ni una|no hay|no hay ningun|nunk|no se|no c|no le|no lo|no tiene|no tiene "
     "ningun|jamas|ningunos"},
    {Sense::visible, 0, en,
     "be read|be seen|be made out|made out|readible|determine|determined|figure out|to see|to be seen|to read|discern|"
     "recognizable|identifiable|there|shows|showing|apparent|show|detectable|find any|make it out|c|any"},
    {Sense::visible, 0, es,
     "ve|ven|vi|ver|mira|nota|lee|leer|alcanza a ver|puede ver|puede leer|pude ver|distinguir|distingo|reconoce|veo|aprecia|"
     "nota bien|ve bien|ve claro|logro ver|legible|leible|se nota|se mira|se lee|encuentra|definir|deja ver"},
    {Sense::gone, 0, en,
     "not visible|cannot be read|can't be read|cant be read|wiped off|wiped|erased|rubbed out|destroyed fan|vanished|"
     "disappeared|unidentifiable|undefined|indeterminate|too messy|messed up|no good|impossible to read|impossible to "
     "tell|cant c|can't make out|obliterated|washd out|washed off|rained away|blown away|all gone|not there|unclr|trampled "
     "out"},
    {Sense::gone, 0, es,
     "no se nota|no se ve|borroso|deslavado y|desdibujad@|irreconocible|imposible de leer|imposible de ver|oculto|ocult@|se "
     "perdio|se borro|se deslavo|no se distingue|no se aprecia|ni se ve|no se lee|no se mira|no c ve|no se be|difuminad@|"
     "no visible|sin definir|no aparece|desvanecid@|no existe|irreconosible|no se alcanza a ver|no se puede ver"},
    {Sense::doubt, 0, either,
     "mebbe|mayb|mabe|perhap|unsure if|dunno|prolly|probly|i suppose|suppose|a lo mejor|alomejor|capaz|acaso|no estoy "
     "seguro|no estoy segura|quien sabe|sera|podria ser|pudiera ser|creo q|parece que|not certain|uncertain"},
    // the probe
    {Sense::probe, 0, en,
     "prob|probd|prbed|probbed|probe test|test probe|test hole|probe check|stuck the probe|stuck the "
     "rod|jabbed|stabbed|poke|"
     "poking|pokd|prodding|prod|proded|steel rod|soil probe|probe stick|with probe|with the probe|with rod"},
    {Sense::probe, 0, es,
     "pique|picado|picamos|pinchazo|pinchada|pincho|pinche con varilla|clave|clavamos|clavada|sondie|sondiamos|sondiado|"
     "zonda|sondas|varillazo|varillas|barrilla|vara de sondeo|con la varilla|con la sonda|con sonda|meti la "
     "varilla|metiendo la varilla|pique con varilla|hinque|tentee|tanteado|tantie|piquete|varille|sondiando|sondeando|"
     "picando|chuce|chuzo|probe"},
    {Sense::tunnel, 0, en,
     "tunl|tunnle|tunel main|main runway|mainline|main line|burrow system|passage|passageway|the main|runs "
     "below|void|tonnel|"
     "tunnell|tun"},
    {Sense::tunnel, 0, es,
     "la corrida|pasillo|tunelito|ducto|corredor|gal principal|el hueco|camino principal|tunel principal|galerilla|"
     "hueca|la gal|oquedad"},
    {Sense::hit, 1, en,
     "went in|goes in|slipped in|fell in|fell thru|went through|went thru|broke thru|popped through|popped thru|punched "
     "thru|sank in|slid in|dropped "
     "in|dropped through|dropped thru|gave in|gave out|drop through|dropt|dropd|htt|pushed through"},
    {Sense::hit, 1, es,
     "se fue hondo|se cayo|se metio|se sumio|sumio|dimos con|dio con|dieron con|tope con|topamos con|le di|le pegue|"
     "le dimos|acerte|atine|atinamos|atinado|pegue|le atine|di en"},
    {Sense::hit, 0, en,
     "fell|sank|sunk|hitting|struk|fnd|foud|gave|yep|contact|met|hollow|felt|encountered|hits run|feel|pocket"},
    {Sense::hit, 0, es,
     "entro|cayendo|halle|topo con|hallo|hallamos|toca|encuentro|encontrada|encontrado|encuentra|hay galeria|detecte|toque "
     "con|tocamos|senti|dimos|pego|dio en|hayamos|encontre|econtre|enkontre"},
    {Sense::miss, 0, en,
     "nuthin|nothin|nothn|nuttin|nothng|nuthing|nutin|zip|nope|zero|nil|no dice|no joy|came up empty|came up dry|dry "
     "hole|no "
     "give|no drop|hard ground|hard all the way|solid all the way|solid ground|didn't find anything|didnt find anything|"
     "unsuccessful|no go|nada there|not a thing|zippo|missd|fail|fails|nothing there|nothing here|no result|no results|came "
     "up "
     "with nothing|squat|hit nothing|found nothing|got nothing|nothing hit|firm"},
    {Sense::miss, 0, es,
     "nadita|ni rastro|en vano|cero|macizo|"
     "puro duro|firme|sin encontrar|nada de nada|sin nada|tierra firme|sin hallazgo|"
     "fallida|naa|nda"},
    {Sense::depth, 0, either,
     "dp|deep down|in depth|of depth|underground|below ground|under ground|de fondo|al fondo|abajo del suelo|de ondo|ondo|"
     "honda|para abajo|pa abajo|de hondura|hondura|under the surface|dwn|bajo el suelo|bajo la superficie"},
    {Sense::distance, 0, en,
     "away from plug|away from the plug|from the hole|out from|out from plug|out from the plug|outward|frm plug|frm the "
     "plug|from plg|off plg|frm mnd|frm mound|past the plug|past plug|beyond the plug|in front of plug|in front of the plug|"
     "out of plug|behind plg|awy|farther"},
    {Sense::distance, 0, es,
     "de tapon|del tpn|d tapon|dl tapon|dl tpn|atras del tapon|detras del monton|de separacion|de lejos|separado|retirado|"
     "desde tapon|mas alla del tapon|afuera|pasando el tapon|de monticulo|enfrente del tapon|delante del tapon"},
    // who and what is about
    {Sense::mention, of(MentionCategory::people), en,
     "kds|kiddo|kiddos|childrens|teen|teens|teenagers|baby|babies|infant|infants|student|students|pupils|runner|runners|"
     "walker|"
     "walkers|dog walker|dog walkers|cyclist|cyclists|biker|bikers|rider|riders|picnickers|picnic|golfer|golfers|gardener|"
     "gardeners|landscaper|landscapers|pickers|farmhand|farmhands|ranch hand|ranch hands|rancher|ranchers|mailman|"
     "grandkids|grandma|grandpa|grandparents|mom|moms|dad|dads|mother|mothers|father|parents|elderly|preschool|daycare|day "
     "care|kindergarten|playset|swing set|swingset|trampoline|sandbox|ppl|peeps|nbr|nbrs|neigbor|neighbr|neighbors kids|"
     "guest|tourist|tourists|bystanders|passers by|pedestrian|pedestrians|spectators|players|soccer team|team|wife|husband|"
     "son|daughter|guy|guys|men|women|volunteers|caretaker|foreman|renter|renters|homeowner|homeowners|congregation|"
     "toddlers|"
     "church group|scouts|crews|laborers|labourers|horse riders|customer|guest house|playing field|kid|school bus"},
    {Sense::mention, of(MentionCategory::people), es,
     "crio|crios|cria|crias de la casa|chaval|chavales|chavala|chavalas|chav@|morr@|morrit@|huerc@|plebe|plebes|plebit@|"
     "escuincle|escuincles|pibe|pibes|piba|pibas|nen@|bebe|bebes|chiquill@|pela@|pelad@|guagua|guaguas|guiri|cipote|cipotes|"
     "patojo|patojos|guir@|gurises|botija|botijas|ninit@|joven|jovenes|abuel@|abuelit@|peon|peones|jornaler@|mayordomo|"
     "capataz|jardiner@|pastor|pastores|vaquero|vaqueros|granjero|granjeros|ranchero|rancheros|agricultor|agricultores|"
     "campesin@|ciclista|ciclistas|corredores|senderista|senderistas|paseante|paseantes|caminante|caminantes|estudiante|"
     "estudiantes|alumn@|maestr@|guarderia|kinder|jardin de ninos|jardin infantil|columpio|columpios|juegos infantiles|"
     "esposa|esposo|mujeres|hombres|muchachit@|chamaquit@|mama|papa|senores|senoras|inquilin@|patron|patrones|encargad@|"
     "propietari@|veladores|velador|guardia|visita|visitas|turista|cliente|clientes|publico|transeuntes|chico|chicos|zagal|"
     "zagales|mozo|mozos|tio|parque de ninos|cuadrillas|piscadores|regadores|primos|jinete|jinetes|escolares|colegio"},
    {Sense::mention, of(MentionCategory::pets), en,
     "doggo|doggos|doggie|doggies|pup|pups|pooch|mutt|mutts|kitty|kitties|tomcat|stray dog|stray dogs|stray cat|stray cats|"
     "feral cat|feral cats|heeler|cattle dog|labrador|terrier|retriever|farm dog|farm dogs|farm cat|farm cats|outdoor "
     "cat|outdoor cats|dgs|house cats|border collie|collie|guard dogs|pet rabbit|hounds|cat's"},
    {Sense::mention, of(MentionCategory::pets), es,
     "chucho|chuchos|minino|mininos|michi|michis|misifus|firulais|lomito|lomitos|perrote|cachorrit@|gatos callejeros|"
     "perros callejeros|perro callejero|perro pastor|perro guardian|animal de casa|animales de casa|galgo|"
     "galgos|mastin|mastines|gatit@|michito"},
    {Sense::mention, of(MentionCategory::stock), en,
     "herd|flock|rooster|roosters|chicks|chick|hen house|chicken coop|coop|poultry|duck|goose|turkey "
     "flock|hog|sow|sows|piglet|"
     "piglets|ram|rams|buck goats|nanny goat|kid goats|ox|oxen|yearling|yearlings|beef|beef cows|dairy cows|milk cow|milk "
     "cows|bulls|stallion|stallions|gelding|colt|colts|filly|cws|hrs pasture|horseys|bison|emu|emus|ostrich|ostriches|"
     "longhorns|angus|donkeys|peacock|peacocks|guinea fowl|guineas|bee hives|beehive|beehives|hives|cattles|shp|burros|"
     "free range hens|barnyard animals|farm animals|animals grazing|mini horse"},
    {Sense::mention, of(MentionCategory::stock), es,
     "res|reses|buey|bueyes|chanch@|cochin@|lechon|lechones|cuch@|chivit@|borreguit@|becerrit@|torete|toretes|vaquilla|"
     "vaquillas|vaquita|vaquitas|caballit@|caballada|yeguada|rebano|hato|manada|piara|gallo|gallos|pollit@|gallinero|"
     "gallineros|pato|ganso|gansos|oca|ocas|pav@|guajolote|cocono|totole|cabrit@|ovejit@|carnero|carneros|asn@|jument@|mul@|"
     "potrill@|semental|llamas|llama|alpaca|alpacas|borregada|chivada|bestia|bestias|remuda|colmena|colmenas|conejos de "
     "granja|animales de corral|vacuno|vacunos|cuinos|cuino|ovinos|bovinos|equinos|corderit@|marranit@"},
    {Sense::mention, of(MentionCategory::wildlife), en,
     "barn owl box|owl box|owl boxes|great horned owl|hawks "
     "nest|falcon|falcons|kestrel|kestrels|kite|kites|buzzard|buzzards|"
     "vulture|vultures|red tail|redtail|red "
     "tails|harrier|crow|crows|raven|ravens|magpie|magpies|roadrunner|roadrunners|stork|"
     "storks|crane|cranes|wild turkey|wild turkeys|duck nest|quails|gopher snakes|gophersnake|gopher tortoise|gopher "
     "tortoises|gopher frog|garter snake|garter snakes|rat snake|kingsnake|king snakes|copperhead|cottonmouth|rattle "
     "snake|rattle snakes|rattlers|rattlr|snek|snakes nest|viper|vipers|lizard nest|horned toad|horned "
     "lizard|skink|skinks|newt|"
     "newts|salamandr|tiger salamander|pronghorn|antelope|moose|bear|bears|cougar|mountain "
     "lion|puma|lynx|wolf|wolves|badger "
     "family|otter|otters|mink|stoat|stoats|bats|hedgehog|hedgehogs|wolverine|fawn|fawns|doe|bambi|deers|fox kits|gopher "
     "turtle|yotes|yote|coyotes den|hornet|hornets|yellow jacket|yellow jackets|yellowjacket|yellowjackets|wasps "
     "nest|bumblebee|bumblebees|honey bees|honeybees|butterflies|songbird|songbirds|bluebird|meadowlark|meadowlarks|"
     "nesting birds|nestlings|plover|plovers|killdeers|kit foxes|weasle|ferrets|black footed ferret|burrowing owl nest|"
     "javelina|javelinas|gila monster|bobcats|tarantula|tarantulas|scorpion|scorpions|black widow"},
    {Sense::mention, of(MentionCategory::wildlife), es,
     "coyote|coyotes|tecolotito|tecolote llanero|tecolotes llaneros|buho llanero|mochuelo|mochuelos|autillo|cernicalo|"
     "cernicalos|aguilucho|aguililla|aguilillas|milano|milanos|ratonero|ratoneros|busardo|zopilote|zopilotes|buitre|buitres|"
     "cuervo|cuervos|urraca|urracas|correcaminos|cigüena|ciguena|ciguenas|grulla|grullas|garcita|perdiz|perdices|faisan|"
     "faisanes|pajarit@|nido de pajaro|nidos de pajaros|golondrina|golondrinas|cenzontle|serpiente de cascabel|viborita|"
     "viborilla|culebrita|culebron|cencuate|alicante|coralillo|casquabel|vivora|vivoras|bibora|biboras|tlacuache|tlacuaches|"
     "zarigueya|zarigueyas|mapaches|cacomixtle|cacomixtles|gato montes|lince|linces|gineta|ginetas|comadrejas|huron|hurones|"
     "erizo|erizos|nutrias|ciervos|corzo|corzos|venadit@|gamo|gamos|lobo|lobos|oso|osos|puma|pumas|leon de montana|"
     "tigrillo|zorrit@|lagarto|lagartos|lagartijo|iguana|iguanas|camaleon|camaleones|salamandra|salamandras|ajolote|"
     "ajolotes|ranita|ranitas|sapito|sapitos|galapago|galapagos|tortuguita|alacran|alacranes|tarantulas|avispon|avispones|"
     "avisperos|abejorro|abejorros|panal|panales|mariposa|mariposas|nido de avispas|murcielago|murcielagos|berrendo|"
     "berrendos|jaguar|fauna silvestre|animales silvestres|quebrantahuesos|lechucita|chuparrosa"},
    // what says nothing
    {Sense::preposition, 0, en,
     "beside|besides|near|nr|next to|under|underneath|beneath|between|inside|into|along|alongside|across|through|thru|"
     "against|above|past|beyond|outside|within|after|before|during|until|till|since|for||via|among|amongst|upon|"
     "opposite the|close to|close by|nxt to|in front of|on top of|at the|over by|down by|up by|out by|right by|amid"},
    {Sense::preposition, 0, es,
     "junto|sobre|bajo|dentro de|dentro del|encima de|encima del|debajo de|debajo del|al lado de|al lado "
     "del|cerca de|cerca del|detras de|detras del|delante de|delante del|frente a|frente al|enfrente de|enfrente del|"
     "contra|entre|hasta|segun|tras|ante|durante|desde|a lo largo de|a un lado de|a un lado del|fuera de|fuera del|afuera "
     "de|adentro de|adentro del|mediante|pegado a|pegado al|a orillas de|a orilla de"},
    {Sense::filler, 0, en,
     "this one|that "
     "one|me|my|mine|we|us|our|you|your|he|she|they|them|their|his|her|him|which|who|whose|these|those|been|being|had|"
     "having|do|"
     "does|"
     "did|will|would|can|may|if|as|than|when|while|where|there's|theres|there is|there are|there was|i'm|im|i've|ive|thru "
     "here|right here|over here|over there|nearby here|itself|looked|seemed|appears|appear|appeared|seem|totally|"
     "completely|fully|mostly all|actually|basically|already|now|again|kind|sorta|sort|lots|lots of|a lot of|lot of|"
     "maybe some|any|other than|wd|n'|u|ur|r|b|btw|fyi|note|please|plz|pls|ok|okay|thing|got some|super|real nice|nice|w th|"
     "th|teh|da|lil|lil bit|lotta|loads of|plenty of|plus|tho|though|altho|although|because|bc|cuz|cause|hey|yeah"},
    {Sense::filler, 0, es,
     "mi|mis|tu|tus|me|te|nos|le|les|ella|ellos|ellas|nosotros|yo|ud|usted|eso|esa|esos|esas|aquel|aquella|aca|alla|sus|q|"
     "qe|ke|k|porque|xq|pq|cuando|donde|aunque|si bien|pues|pos|nomas|nada mas|demasiado|harto|harta|re|super|bien "
     "bien|hace "
     "poquito|poquito|un poquito|tantito|un tanto|completamente|totalmente|ahora|ahorita mismo|ya esta|ya estan|esta "
     "ya|sigue|"
     "siguen|estaba|estaban|habia|hubo|habian|ha|han|he|ser|sido|estar|siendo|haber|c/u|otra vez|igual|tal|asi|"
     "c ve|c ven|c be|se be|se ben|se miran|ai|ahy|ay|ahi hay|tmb|tb|tbn|tambn|d|dl|xa|x aqui|x ahi|por aqui|por ahi|por "
     "alla|por aca|aki|aqi|alrededor|muy muy|ta|tan|toy|todos|todas|cada|ambos|ambas|porfa|ojo|oye|vaya|estas|estos"},
    {Sense::plain, 0, en,
     "state|based|base|plan|plans|planned|style|moved|moves|move|walked|worked|driver|drive|driveway|order|setting|most|"
     "stable|"
     "visit|sent|tries|try|ours|words|word|rough|sweet|trick|plane|loading|loaded|stage|carry|painted|paint|packet|boost|"
     "trunk|"
     "learning|leaving|thread|line|lines|scale|types|type|picked|stress|died|dies|badge|slope|pasture|yard|yards|orchard|"
     "vineyard|lane|ditch|creek|bank|berm|levee|terrace|pond|porch|patio|garden|bed|beds|path|pivot|hose|valve|pump|bench|"
     "swing|swings|slide|court|field|lawn|shrub|shrubs|hedge|stump|boulder|gravel|driveway|sidewalk|septic|drain|drains|"
     "pipe|"
     "pipes|bunches|crop|crops|place|placed|places|closed|close|share|shared|power|tower|lower|upper|price|prices|frame|"
     "phone|photo|photos|battery|signal|spring|summer|winter|autumn|north end|shadow|shovel|spade|barrel|bucket|trap|traps|"
     "pole|poles|stake|stakes|stage|stairs|store|party|space|corn|wheat|barley|beans|lettuce|vines|vine|grape|grapes|almond|"
     "almonds|walnut|walnuts|beet|beets|carrots|potato|potatoes|tomato|tomatoes|check|checked|later|tomorrow|lunch|count "
     "again|grades|graders|steps|stone wall|wall|walls|roof|ditches|lights|light|night "
     "light|flags|stopped|stop|helped|help"},
    {Sense::plain, 0, es,
     "plan|planes|placa|casas|carta|cosa|cosas|vaso|bano|banos|peso|mesa|queso|salida|entrada|palo|palos|bordo|bordos|cana|"
     "potrero|corral|corrales|tubo|tubos|manguera|valvula|surcos|lindero|ladera|loma|barranca|arroyo|presa|represa|sombra|"
     "parcela|parcelas|huerta|huerto|maiz|milpa|frijol|papas|uva|uvas|vina|vinas|naranjo|naranjos|limon|limones|aguacate|"
     "camellon|brecha|terraza|hilera|hileras|cuadro|tabla|esquina|banqueta|barda|bardas|tinaco|noria|letrero|basura|alberca|"
     "piscina|patio|jardin|pala|palas|trampa|trampas|bandera|banderas|estaca|estacas|pila|pilas|foto|fotos|senal|lluvia|sol|"
     "viento|tiempo|trabajo|manana|tarde|mediodia|luego|despues|antes|falta|revisar|volver|checar|llave|muro|pared|techo|"
     "piscas|pisca|cosecha|siembra|suelo|semilla|semillas|flor|flores|rosas|rosa|fruta|frutas|lechuga|lechugas|parra|parras|"
     "olivo|olivos|almendro|almendros|nogales|pinos|pino|encino|encinos|cuesta|canada|paredes|mesas|metros de|lejos"},
};

}  // namespace

std::span<const Entry> words_of_findings() { return entries; }

}  // namespace plugside::note_words
