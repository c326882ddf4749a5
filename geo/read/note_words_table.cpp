#include "geo/read/note_words_table.h"

#include <algorithm>
#include <array>
#include <unordered_map>
#include <vector>

#include "core/survey/mound.h"
#include "geo/read/notes_grammar.h"

namespace plugside::note_words {

namespace {

using namespace std::string_view_literals;

struct Entry {
    Sense sense;
    double value;
    unsigned language;
    const char* phrases;  // separated by |; @ stands for o, a, os, as
};

constexpr double of(SignKind kind) { return static_cast<double>(kind); }
constexpr double of(MentionCategory category) { return static_cast<double>(category); }

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
     "fresh|frsh|frs|freshly dug|fresher|freshest|freshly|new|newer|newly dug|brand new|moist|damp|wet|recent|today|this "
     "morning|overnight|last night|active|just dug|very fresh|dug today|dug last night|dug this morning|dug "
     "yesterday|yesterday|dark soil|wet soil|moist soil|damp soil|fresh "
     "soil|new soil|fresh dirt|moist dirt|new dirt|fresh looking|looks fresh"},
    {Sense::fresh, 0, es,
     "fresc@|nuev@|reciente|recientes|recien hech@|recien|humed@|mojad@|de hoy|hoy|de ayer|ayer|activ@|fresquit@|esta "
     "manana|de esta manana|anoche|de anoche|tierra fresca|tierra humeda|tierra nueva|tierra mojada|tierra reciente"},
    {Sense::older, 0, en,
     "old|older|oldish|dry|dried|dried out|dried up|weathered|aged|stale|overgrown|grassed|grassed "
     "over|grassy|crusted|crusty|"
     "crusted over|rained on|settled|faded|grown over|weedy|sunken|eroded|inactive|abandoned|dry soil|dry dirt|last "
     "week|last month|last year|not recent|washed|very old"},
    {Sense::older, 0, es,
     "viej@|sec@|antigu@|resec@|deslavad@|enhierbad@|abandonad@|con pasto|con hierba|con zacate|con maleza|inactiv@|tierra "
     "seca|tierra vieja|con costra|costra|encostrad@|viejit@|erosionad@|desgastad@|envejecid@|de la semana pasada|semana "
     "pasada|del mes pasado|vieja tierra"},
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
    {Sense::hit, 1, es,
     "cedio|cede|se hundio|hundio|cayo|acierto|encontre galeria|di con la galeria|di con galeria|di con el tunel"},
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
     "mower|mowers|house|houses|stone|stones|mouth|flesh|worn|month's|round|sound|bound|castle|kettle|cover|covered|color|"
     "plum|plums|plumb|drip|corner|"
     "grasses|brush|bushes|trash|crust|fence|plant|plants|planted|worth|forth|pint|point|points of|fun|founder|north "
     "fence|grass|"
     "train|trees|tree|flag|flagged|weeds|weed|clover|alfalfa|sunny|shade|wire|stick|stack|block|rows|road"},
    {Sense::plain, 0, es,
     "fresno|fresnos|pesado|pesada|huevo|granado|granada|cabeza|cerca|cerco|camino|canal|zanja|arbol|surco|corte|parte|"
     "puerta|casa|"
     "cebada|campo|piedra|piedras|roca|sauce|pozo|bomba|riego|borde|poste|alambre|alfalfa|pasto|nogal|manzano|manzana"},
};

struct Table {
    std::unordered_map<std::string, Meaning> phrases;
    std::unordered_map<char, std::vector<std::pair<std::string, Meaning>>> likely;  // by first letter
};

bool may_be_mistyped(Sense sense, std::size_t letters) {
    switch (sense) {
        case Sense::fan:
        case Sense::plug:
        case Sense::compass:
        case Sense::fresh:
        case Sense::older:
        case Sense::crushed:
        case Sense::mound:
        case Sense::animal: return letters >= 5;
        case Sense::reference:
        case Sense::probe:
        case Sense::tunnel:
        case Sense::degree:
        case Sense::mention:
        case Sense::surface_plug:
        case Sense::facing:
        case Sense::toward: return letters >= 6;
        default: return false;
    }
}

void add(Table& table, const Entry& entry, std::string phrase) {
    Meaning meaning{entry.sense, entry.value, entry.language, false};
    meaning.plural = phrase.size() > 3 && phrase.back() == 's';
    const auto [place, added] = table.phrases.try_emplace(phrase, meaning);
    if (!added) {
        // a word that both languages have with one sense belongs to either; otherwise the first listed sense holds
        if (place->second.sense == entry.sense) place->second.language |= entry.language;
        return;
    }
    if (phrase.find(' ') == std::string::npos && may_be_mistyped(entry.sense, phrase.size())) {
        const char first = phrase.front();
        table.likely[first].emplace_back(std::move(phrase), meaning);
    }
}

Table made() {
    Table table;
    for (const Entry& entry : entries) {
        std::string_view rest = entry.phrases;
        while (!rest.empty()) {
            const std::string_view phrase = rest.substr(0, rest.find('|'));
            rest.remove_prefix(std::min(phrase.size() + 1, rest.size()));
            const auto ending = phrase.find('@');
            if (ending == std::string_view::npos) {
                add(table, entry, std::string(phrase));
                continue;
            }
            for (const std::string_view letters : {"o"sv, "a"sv, "os"sv, "as"sv})
                add(table, entry, std::string(phrase.substr(0, ending)).append(letters).append(phrase.substr(ending + 1)));
        }
    }
    return table;
}

const Table& table() {
    static const Table once = made();
    return once;
}

// One letter more, less, other, or two neighbours exchanged.
bool differs_by_one(std::string_view a, std::string_view b) {
    if (a.size() > b.size()) std::swap(a, b);
    if (b.size() - a.size() > 1) return false;
    std::size_t i = 0;
    while (i < a.size() && a[i] == b[i]) ++i;
    const std::string_view rest_a = a.substr(i);
    const std::string_view rest_b = b.substr(i);
    if (a.size() < b.size()) return rest_a == rest_b.substr(1);
    if (rest_a.empty()) return false;
    if (rest_a.substr(1) == rest_b.substr(1)) return true;
    return rest_a.size() > 1 && rest_a[0] == rest_b[1] && rest_a[1] == rest_b[0] && rest_a.substr(2) == rest_b.substr(2);
}

}  // namespace

std::optional<Meaning> meaning_of(std::string_view phrase) {
    const auto found = table().phrases.find(std::string(phrase));
    if (found != table().phrases.end()) return found->second;
    return std::nullopt;
}

std::optional<Meaning> likely_meaning_of(std::string_view word) {
    if (word.size() < 4 || is_thing(word)) return std::nullopt;
    const auto candidates = table().likely.find(word.front());
    if (candidates == table().likely.end()) return std::nullopt;
    std::optional<Meaning> likely;
    for (const auto& [known, meaning] : candidates->second) {
        if (!differs_by_one(word, known)) continue;
        if (likely && (likely->sense != meaning.sense || likely->value != meaning.value)) return std::nullopt;
        if (!likely) likely = meaning;
    }
    return likely;
}

bool is_thing(std::string_view word) {
    constexpr std::array things{"gate"sv,   "car"sv,     "truck"sv,   "pickup"sv,    "parking"sv, "house"sv,     "home"sv,
                                "barn"sv,   "shed"sv,    "well"sv,    "pump"sv,      "valve"sv,   "fence"sv,     "post"sv,
                                "corner"sv, "tree"sv,    "road"sv,    "ditch"sv,     "bridge"sv,  "start"sv,     "end"sv,
                                "camp"sv,   "culvert"sv, "hydrant"sv, "sprinkler"sv, "pole"sv,    "rock"sv,      "stump"sv,
                                "water"sv,  "office"sv,  "puerta"sv,  "porton"sv,    "casa"sv,    "camioneta"sv, "coche"sv,
                                "carro"sv,  "establo"sv, "granero"sv, "pozo"sv,      "bomba"sv,   "valvula"sv,   "cerca"sv,
                                "poste"sv,  "esquina"sv, "arbol"sv,   "camino"sv,    "zanja"sv,   "puente"sv,    "inicio"sv,
                                "fin"sv,    "roca"sv,    "agua"sv,    "oficina"sv,   "aspersor"sv};
    return std::find(things.begin(), things.end(), word) != things.end();
}

bool is_month(std::string_view word) {
    constexpr std::array months{"january"sv, "february"sv, "march"sv,     "april"sv,   "may"sv,      "june"sv,
                                "july"sv,    "august"sv,   "september"sv, "october"sv, "november"sv, "december"sv};
    if (word.size() < 3) return false;
    return std::any_of(months.begin(), months.end(),
                       [&](std::string_view month) { return month.substr(0, word.size()) == word; });
}

}  // namespace plugside::note_words
