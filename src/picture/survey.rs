//! Colours as people called them: from the color survey of Randall Munroe (xkcd, 2010), in which 222,500 people named colours on
//! their screens. For each of 949 names he published the colour that was most often called so, for anybody to use (CC0).
//!
//! Of these names those that say a colour of an ordinary box of pencils, by themselves ("teal") or by their kind ("evergreen"), with
//! the word that a child finds on such a pencil. Names and values are the survey's and are compared with another copy of them in
//! `tools/outside/colours.py`; the words are our own choice.

use super::word::{Shade, Word};

/// Colours of the survey that share a word and a shade.
#[derive(Copy, Clone, Debug)]
pub struct Called {
    /// What a child calls them.
    pub word: Word,
    /// Whether they are light or dark ones of these.
    pub shade: Shade,
    /// The survey's names, each with red, green and blue as `0xrrggbb`.
    pub colours: &'static [(&'static str, u32)],
}

impl Called {
    /// Their red, green and blue.
    pub fn srgb(&self) -> impl Iterator<Item = [u8; 3]> {
        self.colours.iter().map(|(_, rgb)| {
            let [_, r, g, b] = rgb.to_be_bytes();
            [r, g, b]
        })
    }
}

/// All of them, by word and from light to dark.
#[rustfmt::skip]
pub const SURVEY: [Called; 39] = [
    Called { word: Word::Red, shade: Shade::Plain, colours: &[
        ("blood orange", 0xfe4b03), ("bright red", 0xff000d), ("carmine", 0x9d0216), ("cherry", 0xcf0234),
        ("cherry red", 0xf7022a), ("coral", 0xfc5a50), ("dull red", 0xbb3f3f), ("dusty red", 0xb9484e), ("faded red", 0xd3494e),
        ("fire engine red", 0xfe0002), ("grapefruit", 0xfd5956), ("light red", 0xff474c), ("lightish red", 0xfe2f4a),
        ("orange red", 0xfd411e), ("orangey red", 0xfa4224), ("orangish red", 0xf43605), ("pale red", 0xd9544d),
        ("pink red", 0xf5054f), ("pinkish red", 0xf10c45), ("pinky red", 0xfc2647), ("red", 0xe50000), ("red pink", 0xfa2a55),
        ("reddish", 0xc44240), ("reddish pink", 0xfe2c54), ("ruby", 0xca0147), ("scarlet", 0xbe0119), ("strawberry", 0xfb2943),
        ("tomato", 0xef4026), ("tomato red", 0xec2d01), ("vermillion", 0xf4320c), ("watermelon", 0xfd4659),
    ] },
    Called { word: Word::Red, shade: Shade::Dark, colours: &[
        ("blood red", 0x980002), ("bordeaux", 0x7b002c), ("brick", 0xa03623), ("brick red", 0x8f1402),
        ("brownish red", 0x9e3623), ("burgundy", 0x610023), ("burnt red", 0x9f2305), ("claret", 0x680018),
        ("crimson", 0x8c000f), ("dark maroon", 0x3c0008), ("dark red", 0x840000), ("darkish red", 0xa90308),
        ("deep red", 0x9a0200), ("light maroon", 0xa24857), ("maroon", 0x650021), ("red wine", 0x8c0034), ("rouge", 0xab1239),
        ("rust red", 0xaa2704), ("wine", 0x80013f), ("wine red", 0x7b0323),
    ] },
    Called { word: Word::Orange, shade: Shade::Light, colours: &[
        ("apricot", 0xffb16d), ("butterscotch", 0xfdb147), ("light orange", 0xfdaa48), ("light salmon", 0xfea993),
        ("pale orange", 0xffa756), ("pale salmon", 0xffb19a), ("pastel orange", 0xff964f), ("peach", 0xffb07c),
        ("peachy pink", 0xff9a8a), ("salmon", 0xff796c),
    ] },
    Called { word: Word::Orange, shade: Shade::Plain, colours: &[
        ("bright orange", 0xff5b00), ("brownish orange", 0xcb7723), ("dark peach", 0xde7e5d), ("dirty orange", 0xc87606),
        ("dull orange", 0xd8863b), ("dusty orange", 0xf0833a), ("faded orange", 0xf0944d), ("mango", 0xffa62b),
        ("melon", 0xff7855), ("orange", 0xf97306), ("orangeish", 0xfd8d49), ("orangish", 0xfc824a),
        ("pinkish orange", 0xff724c), ("pumpkin", 0xe17701), ("pumpkin orange", 0xfb7d07), ("red orange", 0xfd3c06),
        ("reddish orange", 0xf8481c), ("tangerine", 0xff9408), ("terra cotta", 0xc9643b), ("terracotta", 0xca6641),
        ("yellowish orange", 0xffab0f),
    ] },
    Called { word: Word::Orange, shade: Shade::Dark, colours: &[
        ("brick orange", 0xc14a09), ("burnt orange", 0xc04e01), ("dark orange", 0xc65102), ("deep orange", 0xdc4d01),
        ("rust orange", 0xc45508), ("rusty orange", 0xcd5909),
    ] },
    Called { word: Word::Yellow, shade: Shade::Light, colours: &[
        ("banana", 0xffff7e), ("buff", 0xfef69e), ("butter", 0xffff81), ("butter yellow", 0xfffd74), ("custard", 0xfffd78),
        ("dark cream", 0xfff39a), ("faded yellow", 0xfeff7f), ("light yellow", 0xfffe7a), ("pale yellow", 0xffff84),
        ("pastel yellow", 0xfffe71), ("wheat", 0xfbdd7e),
    ] },
    Called { word: Word::Yellow, shade: Shade::Plain, colours: &[
        ("amber", 0xfeb308), ("bright yellow", 0xfffd01), ("canary yellow", 0xfffe40), ("dandelion", 0xfedf08),
        ("dull yellow", 0xeedc5b), ("golden", 0xf5bf03), ("golden rod", 0xf9bc08), ("golden yellow", 0xfec615),
        ("goldenrod", 0xfac205), ("lemon", 0xfdff52), ("lemon yellow", 0xfdff38), ("light mustard", 0xf7d560),
        ("maize", 0xf4d054), ("marigold", 0xfcc006), ("orange yellow", 0xffad01), ("orangey yellow", 0xfdb915),
        ("saffron", 0xfeb209), ("sandy yellow", 0xfdee73), ("squash", 0xf2ab15), ("straw", 0xfcf679), ("sun yellow", 0xffdf22),
        ("sunflower", 0xffc512), ("sunflower yellow", 0xffda03), ("sunshine yellow", 0xfffd37), ("yellow", 0xffff14),
        ("yellow orange", 0xfcb001), ("yellowish", 0xfaee66),
    ] },
    Called { word: Word::Yellow, shade: Shade::Dark, colours: &[
        ("brownish yellow", 0xc9b003), ("burnt yellow", 0xd5ab09), ("dark gold", 0xb59410), ("dark mustard", 0xa88905),
        ("dark yellow", 0xd5b60a), ("dirty yellow", 0xcdc50a), ("gold", 0xdbb40c), ("muddy yellow", 0xbfac05),
        ("mustard", 0xceb301), ("mustard yellow", 0xd2bd0a), ("ochre", 0xbf9005), ("yellow ochre", 0xcb9d06),
    ] },
    Called { word: Word::LimeGreen, shade: Shade::Light, colours: &[
        ("celery", 0xc1fd95), ("key lime", 0xaeff6e), ("light lime", 0xaefd6c), ("light lime green", 0xb9ff66),
        ("light yellow green", 0xccfd7f), ("light yellowish green", 0xc2ff89), ("pale lime", 0xbefd73),
        ("pale lime green", 0xb1ff65), ("pistachio", 0xc0fa8b),
    ] },
    Called { word: Word::LimeGreen, shade: Shade::Plain, colours: &[
        ("acid green", 0x8ffe09), ("apple", 0x6ecb3c), ("apple green", 0x76cd26), ("avocado", 0x90b134),
        ("avocado green", 0x87a922), ("bright lime", 0x87fd05), ("bright lime green", 0x65fe08),
        ("bright yellow green", 0x9dff00), ("chartreuse", 0xc1f80a), ("dark lime", 0x84b701), ("dark lime green", 0x7ebd01),
        ("electric lime", 0xa8ff04), ("fresh green", 0x69d84f), ("green yellow", 0xc9ff27), ("greenish beige", 0xc9d179),
        ("greenish tan", 0xbccb7a), ("greenish yellow", 0xcdfd02), ("greeny yellow", 0xc6f808), ("kiwi", 0x9cef43),
        ("kiwi green", 0x8ee53f), ("leaf", 0x71aa34), ("lemon green", 0xadf802), ("lemon lime", 0xbffe28),
        ("light moss green", 0xa6c875), ("light olive", 0xacbf69), ("light olive green", 0xa4be5c),
        ("light pea green", 0xc4fe82), ("lime", 0xaaff32), ("lime green", 0x89fe05), ("lime yellow", 0xd0fe1d),
        ("pale olive", 0xb9cc81), ("pale olive green", 0xb1d27b), ("pea", 0xa4bf20), ("pea green", 0x8eab12),
        ("pear", 0xcbf85f), ("poison green", 0x40fd14), ("sick green", 0x9db92c), ("slime green", 0x99cc04),
        ("tan green", 0xa9be70), ("yellow green", 0xc0fb2d), ("yellowish green", 0xb0dd16), ("yellowy green", 0xbff128),
    ] },
    Called { word: Word::Olive, shade: Shade::Light, colours: &[
        ("bright olive", 0x9cbb04), ("dark khaki", 0x9b8f55), ("khaki", 0xaaa662),
    ] },
    Called { word: Word::Olive, shade: Shade::Plain, colours: &[
        ("army green", 0x4b5d16), ("brown green", 0x706c11), ("brownish green", 0x6a6e09), ("camo", 0x7f8f4e),
        ("camo green", 0x526525), ("camouflage green", 0x4b6113), ("drab", 0x828344), ("drab green", 0x749551),
        ("greenish brown", 0x696112), ("khaki green", 0x728639), ("military green", 0x667c3e), ("moss", 0x769958),
        ("moss green", 0x658b38), ("mossy green", 0x638b27), ("muddy green", 0x657432), ("murky green", 0x6c7a0e),
        ("olive", 0x6e750e), ("olive drab", 0x6f7632), ("olive green", 0x677a04), ("olive yellow", 0xc2b709),
        ("swamp", 0x698339), ("swamp green", 0x748500),
    ] },
    Called { word: Word::Olive, shade: Shade::Dark, colours: &[
        ("dark olive", 0x373e02), ("dark olive green", 0x3c4d03), ("navy green", 0x35530a),
    ] },
    Called { word: Word::Green, shade: Shade::Light, colours: &[
        ("baby green", 0x8cff9e), ("celadon", 0xbefdb7), ("foam green", 0x90fda9), ("hospital green", 0x9be5aa),
        ("light grass green", 0x9af764), ("light green", 0x96f97b), ("light mint", 0xb6ffbb), ("light sage", 0xbcecac),
        ("light sea green", 0x98f6b0), ("lighter green", 0x75fd63), ("mint", 0x9ffeb0), ("mint green", 0x8fff9f),
        ("pale green", 0xc7fdb5), ("pale light green", 0xb1fc99), ("pastel green", 0xb0ff9d), ("sea green", 0x53fca1),
        ("seafoam green", 0x7af9ab), ("spring green", 0xa9f971), ("tea green", 0xbdf8a3), ("very light green", 0xd1ffbd),
        ("very pale green", 0xcffdbc), ("washed out green", 0xbcf5a6),
    ] },
    Called { word: Word::Green, shade: Shade::Plain, colours: &[
        ("algae", 0x54ac68), ("asparagus", 0x77ab56), ("boring green", 0x63b365), ("bright green", 0x01ff07),
        ("cool green", 0x33b864), ("dark mint", 0x48c072), ("dark mint green", 0x20c073), ("dark pastel green", 0x56ae57),
        ("dark sage", 0x598556), ("dark sea green", 0x11875d), ("dark seafoam green", 0x3eaf76), ("dusty green", 0x76a973),
        ("emerald", 0x01a049), ("emerald green", 0x028f1e), ("faded green", 0x7bb274), ("fern", 0x63a950),
        ("fern green", 0x548d44), ("flat green", 0x699d4c), ("frog green", 0x58bc08), ("grass", 0x5cac2d),
        ("grass green", 0x3f9b0b), ("grassy green", 0x419c03), ("green", 0x15b01a), ("green apple", 0x5edc1f),
        ("greenish", 0x40a368), ("grey green", 0x789b73), ("greyish green", 0x82a67d), ("hot green", 0x25ff29),
        ("irish green", 0x019529), ("jade", 0x1fa774), ("jade green", 0x2baf6a), ("jungle green", 0x048243),
        ("kelly green", 0x02ab2e), ("lawn green", 0x4da409), ("leaf green", 0x5ca904), ("leafy green", 0x51b73b),
        ("lichen", 0x8fb67b), ("light forest green", 0x4f9153), ("lightish green", 0x61e160), ("medium green", 0x39ad48),
        ("mid green", 0x50a747), ("muted green", 0x5fa052), ("neon green", 0x0cff0c), ("ocean green", 0x3d9973),
        ("off green", 0x6ba353), ("sage", 0x87ae73), ("sage green", 0x88b378), ("sap green", 0x5c8b15), ("sea", 0x3c9992),
        ("seaweed green", 0x35ad6b), ("shamrock", 0x01b44c), ("shamrock green", 0x02c14d), ("slate green", 0x658d6d),
        ("soft green", 0x6fc276), ("tea", 0x65ab7c), ("tree green", 0x2a7e19), ("true green", 0x089404),
        ("turtle green", 0x75b84f), ("vibrant green", 0x0add08), ("viridian", 0x1e9167), ("vivid green", 0x2fef10),
    ] },
    Called { word: Word::Green, shade: Shade::Dark, colours: &[
        ("bottle green", 0x044a05), ("british racing green", 0x05480d), ("dark forest green", 0x002d04),
        ("dark grass green", 0x388004), ("dark green", 0x033500), ("darkish green", 0x287c37), ("deep green", 0x02590f),
        ("evergreen", 0x05472a), ("forest", 0x0b5509), ("forest green", 0x06470c), ("hunter green", 0x0b4008),
        ("pine", 0x2b5d34), ("pine green", 0x0a481e), ("racing green", 0x014600), ("spruce", 0x0a5f38),
        ("very dark green", 0x062e03),
    ] },
    Called { word: Word::Teal, shade: Shade::Light, colours: &[
        ("light teal", 0x90e4c1), ("pale teal", 0x82cbb2), ("seafoam blue", 0x78d1b6),
    ] },
    Called { word: Word::Teal, shade: Shade::Plain, colours: &[
        ("blue green", 0x137e6d), ("blue/green", 0x0f9b8e), ("bluegreen", 0x017a79), ("bluish green", 0x10a674),
        ("dark aqua", 0x05696b), ("dark aquamarine", 0x017371), ("dark cyan", 0x0a888a), ("dark turquoise", 0x045c5a),
        ("deep aqua", 0x08787f), ("deep turquoise", 0x017374), ("dull teal", 0x5f9e8f), ("dusty teal", 0x4c9085),
        ("green blue", 0x06b48b), ("greenish blue", 0x0b8b87), ("greeny blue", 0x42b395), ("grey teal", 0x5e9b8a),
        ("greyish teal", 0x719f91), ("ocean", 0x017b92), ("ocean blue", 0x03719c), ("peacock blue", 0x016795),
        ("sea blue", 0x047495), ("teal", 0x029386), ("teal blue", 0x01889f), ("teal green", 0x25a36f), ("tealish", 0x24bca8),
        ("topaz", 0x13bbaf),
    ] },
    Called { word: Word::Teal, shade: Shade::Dark, colours: &[
        ("dark blue green", 0x005249), ("dark green blue", 0x1f6357), ("dark teal", 0x014d4e), ("deep teal", 0x00555a),
        ("petrol", 0x005f6a),
    ] },
    Called { word: Word::Turquoise, shade: Shade::Light, colours: &[
        ("duck egg blue", 0xc3fbf4), ("eggshell blue", 0xc4fff7), ("ice blue", 0xd7fffe), ("light aqua", 0x8cffdb),
        ("light aquamarine", 0x7bfdc7), ("light cyan", 0xacfffc), ("light turquoise", 0x7ef4cc), ("pale aqua", 0xb8ffeb),
        ("pale cyan", 0xb7fffa), ("pale turquoise", 0xa5fbd5), ("robin egg blue", 0x8af1fe), ("robin's egg blue", 0x98eff9),
        ("very light blue", 0xd5ffff),
    ] },
    Called { word: Word::Turquoise, shade: Shade::Plain, colours: &[
        ("aqua", 0x13eac9), ("aqua blue", 0x02d8e9), ("aqua green", 0x12e193), ("aqua marine", 0x2ee8bb),
        ("aquamarine", 0x04d8b2), ("bright aqua", 0x0bf9ea), ("bright cyan", 0x41fdfe), ("bright turquoise", 0x0ffef9),
        ("cyan", 0x00ffff), ("robin's egg", 0x6dedfd), ("turquoise", 0x06c2ac), ("turquoise blue", 0x06b1c4),
    ] },
    Called { word: Word::Blue, shade: Shade::Light, colours: &[
        ("baby blue", 0xa2cffe), ("blue grey", 0x607c8e), ("bluegrey", 0x85a3b2), ("cloudy blue", 0xacc2d9),
        ("grey blue", 0x6b8ba4), ("greyblue", 0x77a1b5), ("light blue", 0x95d0fc), ("light blue grey", 0xb7c9e2),
        ("light grey blue", 0x9dbcd4), ("light light blue", 0xcafffb), ("light periwinkle", 0xc1c6fc),
        ("light sky blue", 0xc6fcff), ("lightblue", 0x7bc8f6), ("pale blue", 0xd0fefe), ("pale sky blue", 0xbdf6fe),
        ("pastel blue", 0xa2bffe), ("periwinkle blue", 0x8f99fb), ("powder blue", 0xb1d1fc), ("sky", 0x82cafc),
        ("sky blue", 0x75bbfd),
    ] },
    Called { word: Word::Blue, shade: Shade::Plain, colours: &[
        ("azul", 0x1d5dec), ("azure", 0x069af3), ("blue", 0x0343df), ("blue blue", 0x2242c7), ("bluish", 0x2976bb),
        ("bright blue", 0x0165fc), ("cadet blue", 0x4e7496), ("cerulean", 0x0485d1), ("cerulean blue", 0x056eee),
        ("clear blue", 0x247afd), ("cobalt blue", 0x030aa7), ("cool blue", 0x4984b8), ("cornflower", 0x6a79f7),
        ("cornflower blue", 0x5170d7), ("dark sky blue", 0x448ee4), ("deep sky blue", 0x0d75f8), ("denim", 0x3b638c),
        ("denim blue", 0x3b5b92), ("dirty blue", 0x3f829d), ("dodger blue", 0x3e82fc), ("dull blue", 0x49759c),
        ("dusky blue", 0x475f94), ("dusty blue", 0x5a86ad), ("electric blue", 0x0652ff), ("faded blue", 0x658cbb),
        ("flat blue", 0x3c73a8), ("french blue", 0x436bad), ("greyish blue", 0x5e819d), ("lightish blue", 0x3d7afd),
        ("medium blue", 0x2c6fbb), ("metallic blue", 0x4f738e), ("mid blue", 0x276ab3), ("muted blue", 0x3b719f),
        ("nice blue", 0x107ab0), ("off blue", 0x5684ae), ("primary blue", 0x0804f9), ("pure blue", 0x0203e2),
        ("royal blue", 0x0504aa), ("sapphire", 0x2138ab), ("slate blue", 0x5b7c99), ("soft blue", 0x6488ea),
        ("steel blue", 0x5a7d9a), ("stormy blue", 0x507b9c), ("strong blue", 0x0c06f7), ("true blue", 0x010fcc),
        ("ultramarine", 0x2000b1), ("ultramarine blue", 0x1805db), ("vibrant blue", 0x0339f8), ("vivid blue", 0x152eff),
        ("warm blue", 0x4b57db), ("water blue", 0x0e87cc),
    ] },
    Called { word: Word::Blue, shade: Shade::Dark, colours: &[
        ("cobalt", 0x1e488f), ("dark blue", 0x00035b), ("dark blue grey", 0x1f3b4d), ("dark grey blue", 0x29465b),
        ("dark navy", 0x000435), ("dark navy blue", 0x00022e), ("dark royal blue", 0x02066f), ("dark slate blue", 0x214761),
        ("darkish blue", 0x014182), ("deep blue", 0x040273), ("deep sea blue", 0x015482), ("dusk blue", 0x26538d),
        ("light navy", 0x155084), ("light navy blue", 0x2e5a88), ("marine", 0x042e60), ("marine blue", 0x01386a),
        ("midnight", 0x03012d), ("midnight blue", 0x020035), ("navy", 0x01153e), ("navy blue", 0x001146),
        ("night blue", 0x040348), ("prussian blue", 0x004577), ("royal", 0x0c1793), ("twilight blue", 0x0a437a),
        ("very dark blue", 0x000133),
    ] },
    Called { word: Word::Purple, shade: Shade::Light, colours: &[
        ("baby purple", 0xca9bf7), ("dusty lavender", 0xac86a8), ("easter purple", 0xc071fe), ("heather", 0xa484ac),
        ("lavender", 0xc79fef), ("lavender blue", 0x8b88f8), ("light lavender", 0xdfc5fe), ("light lilac", 0xedc8ff),
        ("light purple", 0xbf77f6), ("light violet", 0xd6b4fc), ("lighter purple", 0xa55af4), ("lilac", 0xcea2fd),
        ("pale lavender", 0xeecffe), ("pale lilac", 0xe4cbff), ("pale purple", 0xb790d4), ("pale violet", 0xceaefa),
        ("pastel purple", 0xcaa0ff), ("very light purple", 0xf6cefc), ("wisteria", 0xa87dc2),
    ] },
    Called { word: Word::Purple, shade: Shade::Plain, colours: &[
        ("amethyst", 0x9b5fc0), ("blue purple", 0x5729ce), ("blue violet", 0x5d06e9), ("bluey purple", 0x6241c7),
        ("bluish purple", 0x703be7), ("bright purple", 0xbe03fd), ("bright violet", 0xad0afd), ("dark lavender", 0x856798),
        ("dark lilac", 0x9c6da5), ("dark periwinkle", 0x665fd1), ("deep lavender", 0x8d5eb7), ("deep lilac", 0x966ebd),
        ("dull purple", 0x84597e), ("dusky purple", 0x895b7b), ("dusty purple", 0x825f87), ("electric purple", 0xaa23ff),
        ("faded purple", 0x916e99), ("grape", 0x6c3461), ("greyish purple", 0x887191), ("indigo", 0x380282), ("iris", 0x6258c4),
        ("light indigo", 0x6d5acf), ("light plum", 0x9d5783), ("medium purple", 0x9e43a2), ("muted purple", 0x805b87),
        ("neon purple", 0xbc13fe), ("periwinkle", 0x8e82fe), ("pinkish purple", 0xd648d7), ("purple", 0x7e1e9c),
        ("purple blue", 0x632de9), ("purplish", 0x94568c), ("purplish blue", 0x601ef9), ("purply", 0x983fb2),
        ("purply blue", 0x661aee), ("reddish purple", 0x910951), ("royal purple", 0x4b006e), ("soft purple", 0xa66fb5),
        ("violet", 0x9a0eea), ("violet blue", 0x510ac9), ("vivid purple", 0x9900fa), ("warm purple", 0x952e8f),
    ] },
    Called { word: Word::Purple, shade: Shade::Dark, colours: &[
        ("aubergine", 0x3d0734), ("dark indigo", 0x1f0954), ("dark plum", 0x3f012c), ("dark purple", 0x35063e),
        ("dark violet", 0x34013f), ("darkish purple", 0x751973), ("deep purple", 0x36013f), ("deep violet", 0x490648),
        ("eggplant", 0x380835), ("grape purple", 0x5d1451), ("midnight purple", 0x280137), ("plum", 0x580f41),
        ("plum purple", 0x4e0550), ("rich purple", 0x720058), ("very dark purple", 0x2a0134),
    ] },
    Called { word: Word::Pink, shade: Shade::Light, colours: &[
        ("baby pink", 0xffb7ce), ("light mauve", 0xc292a1), ("light pink", 0xffd1df), ("light rose", 0xffc5cb),
        ("pale mauve", 0xfed0fc), ("pale pink", 0xffcfdc), ("pale rose", 0xfdc1c5), ("pastel pink", 0xffbacd),
        ("powder pink", 0xffb2d0), ("soft pink", 0xfdb0c0),
    ] },
    Called { word: Word::Pink, shade: Shade::Plain, colours: &[
        ("blush", 0xf29e8e), ("blush pink", 0xfe828c), ("bright magenta", 0xff08e8), ("bright pink", 0xfe01b1),
        ("brownish pink", 0xc27e79), ("bubble gum pink", 0xff69af), ("bubblegum", 0xff6cb5), ("bubblegum pink", 0xfe83cc),
        ("candy pink", 0xff63e9), ("carnation", 0xfd798f), ("carnation pink", 0xff7fa7), ("coral pink", 0xff6163),
        ("darkish pink", 0xda467d), ("dirty pink", 0xca7b80), ("dull pink", 0xd5869d), ("dusky pink", 0xcc7a8b),
        ("dusky rose", 0xba6873), ("dusty pink", 0xd58a94), ("dusty rose", 0xc0737a), ("electric pink", 0xff0490),
        ("faded pink", 0xde9dac), ("fuchsia", 0xed0dd9), ("greyish pink", 0xc88d94), ("hot pink", 0xff028d),
        ("lavender pink", 0xdd85d7), ("light magenta", 0xfa5ff7), ("mauve", 0xae7181), ("medium pink", 0xf36196),
        ("muted pink", 0xd1768f), ("neon pink", 0xfe019a), ("old pink", 0xc77986), ("old rose", 0xc87f89),
        ("pale magenta", 0xd767ad), ("pig pink", 0xe78ea5), ("pink", 0xff81c0), ("pink purple", 0xdb4bda),
        ("pinkish", 0xd46a7e), ("pinky", 0xfc86aa), ("pinky purple", 0xc94cbe), ("purple pink", 0xe03fd8),
        ("purplish pink", 0xce5dae), ("rosa", 0xfe86a4), ("rose", 0xcf6275), ("rose pink", 0xf7879a), ("rosy pink", 0xf6688e),
        ("salmon pink", 0xfe7b7c), ("shocking pink", 0xfe02a2), ("strong pink", 0xff0789), ("violet pink", 0xfb5ffc),
        ("warm pink", 0xfb5581),
    ] },
    Called { word: Word::Pink, shade: Shade::Dark, colours: &[
        ("berry", 0x990f4b), ("cerise", 0xde0c62), ("cranberry", 0x9e003a), ("dark fuchsia", 0x9d0759),
        ("dark hot pink", 0xd90166), ("dark magenta", 0x960056), ("dark mauve", 0x874c62), ("dark pink", 0xcb416b),
        ("dark rose", 0xb5485d), ("deep magenta", 0xa0025c), ("deep pink", 0xcb0162), ("deep rose", 0xc74767),
        ("magenta", 0xc20078), ("mulberry", 0x920a4e), ("raspberry", 0xb00149), ("red purple", 0x820747),
        ("red violet", 0x9e0168), ("rose red", 0xbe013c), ("violet red", 0xa50055),
    ] },
    Called { word: Word::Brown, shade: Shade::Light, colours: &[
        ("camel", 0xc69f59), ("coffee", 0xa6814c), ("dark beige", 0xac9362), ("dark sand", 0xa88f59), ("dark tan", 0xaf884a),
        ("desert", 0xccad60), ("fawn", 0xcfaf7b), ("light brown", 0xad8150), ("mushroom", 0xba9e88), ("pale brown", 0xb1916e),
        ("pinkish tan", 0xd99b82), ("puce", 0xa57e52), ("putty", 0xbeae8a), ("sand brown", 0xcba560), ("sandstone", 0xc9ae74),
        ("sandy brown", 0xc4a661), ("stone", 0xada587), ("tan", 0xd1b26f), ("tan brown", 0xab7e4c), ("taupe", 0xb9a281),
        ("toupe", 0xc7ac7d), ("very light brown", 0xd3b683),
    ] },
    Called { word: Word::Brown, shade: Shade::Plain, colours: &[
        ("adobe", 0xbd6c48), ("auburn", 0x9a3001), ("bronze", 0xa87900), ("brown", 0x653700), ("brown orange", 0xb96902),
        ("brown red", 0x922b05), ("brownish", 0x9c6d57), ("brownish purple", 0x76424e), ("burnt sienna", 0xb04e0f),
        ("burnt umber", 0xa0450e), ("caramel", 0xaf6f09), ("chestnut", 0x742802), ("cinnamon", 0xac4f06), ("clay", 0xb66a50),
        ("clay brown", 0xb2713d), ("cocoa", 0x875f42), ("copper", 0xb66325), ("dark taupe", 0x7f684e), ("dirt", 0x8a6e45),
        ("dirt brown", 0x836539), ("dull brown", 0x876e4b), ("earth", 0xa2653e), ("golden brown", 0xb27a01),
        ("grey brown", 0x7f7053), ("greyish brown", 0x7a6a4f), ("hazel", 0x8e7618), ("leather", 0xac7434),
        ("medium brown", 0x7f5112), ("milk chocolate", 0x7f4e1e), ("mocha", 0x9d7651), ("mud", 0x735c12),
        ("mud brown", 0x60460f), ("muddy brown", 0x886806), ("olive brown", 0x645403), ("orange brown", 0xbe6400),
        ("orangey brown", 0xb16002), ("orangish brown", 0xb25f03), ("pinkish brown", 0xb17261), ("purple brown", 0x673a3f),
        ("purplish brown", 0x6b4247), ("raw sienna", 0x9a6200), ("red brown", 0x8b2e16), ("reddish brown", 0x7f2b0a),
        ("russet", 0xa13905), ("rust", 0xa83c09), ("rust brown", 0x8b3103), ("sepia", 0x985e2b), ("sienna", 0xa9561e),
        ("umber", 0xb26400), ("warm brown", 0x964e02), ("yellow brown", 0xb79400), ("yellowish brown", 0x9b7a01),
    ] },
    Called { word: Word::Brown, shade: Shade::Dark, colours: &[
        ("chocolate", 0x3d1c02), ("chocolate brown", 0x411900), ("dark brown", 0x341c02), ("deep brown", 0x410200),
        ("mahogany", 0x4a0100), ("very dark brown", 0x1d0200),
    ] },
    Called { word: Word::Cream, shade: Shade::Plain, colours: &[
        ("beige", 0xe6daa6), ("cream", 0xffffc2), ("creme", 0xffffb6), ("ecru", 0xfeffca), ("egg shell", 0xfffcc4),
        ("eggshell", 0xffffd4), ("ivory", 0xffffcb), ("light beige", 0xfffeb6), ("light peach", 0xffd8b1),
        ("light tan", 0xfbeeac), ("manilla", 0xfffa86), ("off white", 0xffffe4), ("pale", 0xfff9d0), ("pale peach", 0xffe5ad),
        ("parchment", 0xfefcaf), ("sand", 0xe2ca76), ("sandy", 0xf1da7a), ("very light pink", 0xfff4f2),
    ] },
    Called { word: Word::White, shade: Shade::Plain, colours: &[
        ("pale grey", 0xfdfdfe), ("white", 0xffffff),
    ] },
    Called { word: Word::Grey, shade: Shade::Light, colours: &[
        ("light grey", 0xd8dcd6), ("silver", 0xc5c9c7),
    ] },
    Called { word: Word::Grey, shade: Shade::Plain, colours: &[
        ("battleship grey", 0x6b7c85), ("bluey grey", 0x89a0b0), ("bluish grey", 0x748b97), ("cement", 0xa5a391),
        ("cool grey", 0x95a3a6), ("grey", 0x929591), ("greyish", 0xa8a495), ("gunmetal", 0x536267), ("medium grey", 0x7d7f7c),
        ("pinkish grey", 0xc8aca9), ("slate", 0x516572), ("slate grey", 0x59656d), ("steel", 0x738595),
        ("steel grey", 0x6f828a), ("warm grey", 0x978a84),
    ] },
    Called { word: Word::Grey, shade: Shade::Dark, colours: &[
        ("charcoal", 0x343837), ("charcoal grey", 0x3c4142), ("dark grey", 0x363737),
    ] },
    Called { word: Word::Black, shade: Shade::Plain, colours: &[
        ("almost black", 0x070d0d), ("black", 0x000000),
    ] },
];
