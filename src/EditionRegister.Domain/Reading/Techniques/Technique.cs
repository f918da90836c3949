namespace EditionRegister.Domain.Reading.Techniques;

/// <summary>A technique of printmaking: its word, its name, the id it has in the Getty Art &amp; Architecture Thesaurus where one was verified, and how people write it.</summary>
/// <param name="Word">Permanent, in kebab case.</param>
/// <param name="Name">As screens show it.</param>
/// <param name="Aat">The id, checked against a published mapping by its label; null where none was.</param>
/// <param name="Writings">Words as people write them, in small letters without accents; a plural s may follow the last.</param>
public sealed record Technique(string Word, string Name, string? Aat, IReadOnlyList<string> Writings)
{
    // Ids: american-art/ima at 8d1014e and AAT-Term-Mappings at 821b571, whose labels say what they are for. What they do not have is blank.
    public static IReadOnlyList<Technique> All { get; } =
    [
        new("reduction-linocut", "reduction linocut", null, ["reduction linocut", "reduction lino cut", "reduction linoleum cut", "linogravure a planche perdue", "reduktionslinolschnitt"]),
        new("reduction-woodcut", "reduction woodcut", null, ["reduction woodcut", "reduction woodblock print", "bois a planche perdue", "reduktionsholzschnitt"]),
        new("linocut", "linocut", "300041393", ["linocut", "lino cut", "linoleum cut", "linoleum block print", "linoleum block", "linoleumcut", "linolschnitt", "linogravure", "linoleografia", "linografia"]),
        new("colour-woodcut", "colour woodcut", "300041412", ["color woodcut", "colour woodcut", "color woodblock print", "colour woodblock print", "color wood block print", "color woodblock", "farbholzschnitt"]),
        new("wood-engraving", "wood engraving", "300041402", ["wood engraving", "wood-engraving", "holzstich", "xylographie", "gravure sur bois debout"]),
        new("woodcut", "woodcut", "300041405", ["woodcut", "wood cut", "woodblock print", "wood block print", "woodblock", "holzschnitt", "gravure sur bois", "xilografia", "xylografia", "bois grave"]),
        new("relief-etching", "relief etching", "300041375", ["relief etching"]),
        new("relief-print", "relief print", "300041391", ["relief print", "relief printing", "relief", "hochdruck"]),
        new("collagraph", "collagraph", "300041339", ["collagraph", "collograph", "collagraphy", "collagrafie", "colografia"]),
        new("soft-ground-etching", "soft-ground etching", "300041376", ["soft ground etching", "soft-ground etching", "softground etching", "soft ground", "soft-ground", "vernis mou"]),
        new("lift-ground", "lift ground", "300053243", ["lift ground", "lift-ground"]),
        new("sugar-lift", "sugar lift", "300190346", ["sugar lift", "sugar-lift", "sugarlift", "spit bite sugar lift"]),
        new("line-etching", "line etching", null, ["line etching"]),
        new("photo-etching", "photo-etching", null, ["photo etching", "photo-etching", "photoetching"]),
        new("etching", "etching", "300041365", ["etching", "eau forte", "eau-forte", "radierung", "acquaforte", "aguafuerte", "etched"]),
        new("aquatint", "aquatint", "300041366", ["aquatint", "aquatinta", "aquatinte", "acquatinta"]),
        new("drypoint", "drypoint", "300041349", ["drypoint", "dry point", "dry-point", "pointe seche", "kaltnadel", "kaltnadelradierung", "puntasecca", "punta secca", "punta seca"]),
        new("mezzotint", "mezzotint", "300041356", ["mezzotint", "mezzotinto", "maniere noire", "schabkunst"]),
        new("line-engraving", "line engraving", "300041352", ["line engraving"]),
        new("stipple-engraving", "stipple engraving", null, ["stipple engraving", "stipple"]),
        new("type-metal-engraving", "type-metal engraving", null, ["type-metal engraving", "type metal engraving"]),
        new("photogravure", "photogravure", "300154382", ["photogravure", "heliogravure", "photo gravure", "photo-gravure"]),
        new("photoengraving", "photoengraving", null, ["photoengraving", "photo engraving", "photo-engraving", "halftone", "half-tone"]),
        new("collotype", "collotype", null, ["collotype", "lichtdruck", "phototypie"]),
        new("spit-bite", "spit bite", null, ["spit bite", "spit-bite", "spitbite"]),
        new("open-bite", "open bite", null, ["open bite", "open-bite", "deep bite"]),
        new("engraving", "engraving", "300041340", ["engraving", "engraved", "burin", "kupferstich", "gravure", "gravure au burin", "bulino", "steel engraving", "copper engraving"]),
        new("intaglio-print", "intaglio print", "300041338", ["intaglio print", "intaglio", "tiefdruck", "taille douce", "taille-douce", "calcografia"]),
        new("transfer-lithograph", "transfer lithograph", "300263141", ["transfer lithograph", "transfer lithography"]),
        new("offset-lithograph", "offset lithograph", "300192896", ["offset lithograph", "offset lithography", "photo offset lithograph", "photo-offset lithograph", "photo offset", "offset print", "offset"]),
        new("photolithograph", "photolithograph", "300154386", ["photolithograph", "photo lithograph", "photo-lithograph", "photolithography", "photolithographic"]),
        new("chromolithograph", "chromolithograph", null, ["chromolithograph", "chromolithography", "chromo lithograph", "chromolithographic"]),
        new("colour-lithograph", "colour lithograph", "300041383", ["color lithograph", "colour lithograph", "color lithography", "farblithographie", "color lithographic"]),
        new("lithograph", "lithograph", "300041379", ["lithograph", "lithography", "litho", "lithographie", "litografia", "steindruck", "lithographed", "lithographic", "lithogragh"]),
        new("planographic-print", "planographic print", "300178376", ["planographic print", "planograph"]),
        new("photo-screenprint", "photo-screenprint", "300265560", ["photo screenprint", "photo-screenprint", "photoscreenprint", "photo silkscreen"]),
        new("screenprint", "screenprint", "300178688", ["screenprint", "screen print", "screen-print", "silkscreen", "silk screen", "silk-screen", "serigraph", "serigraphy", "serigraphie", "serigrafia", "siebdruck", "screenprinting"]),
        new("pochoir", "pochoir", "300053436", ["pochoir"]),
        new("stencil", "stencil print", "300053433", ["stencil print", "stencil", "stenciling", "stencilled", "stencilling"]),
        new("monotype", "monotype", "300041538", ["monotype", "monotypie", "monotipo"]),
        new("monoprint", "monoprint", null, ["monoprint", "mono print"]),
        new("inkjet-print", "inkjet print", "300265621", ["inkjet print", "ink jet print", "ink-jet print", "inkjet", "giclee", "giclee print", "pigment print", "archival pigment print", "iris print"]),
        new("digital-print", "digital print", "300312222", ["digital print", "digital printing"]),
        new("block-print", "block print", "300053289", ["block print", "block printing", "block printed", "hand block print"]),
        new("letterpress", "letterpress", null, ["letterpress", "letterpress print", "buchdruck", "typographie"]),
        new("chine-colle", "chine collé", null, ["chine colle", "chine applique", "chine-colle"]),
        new("embossing", "embossing", null, ["embossing", "embossed", "debossing", "blind embossing", "blind stamp", "embossment", "gaufrage"]),
        new("hand-colouring", "hand-colouring", "300133555", ["hand coloring", "hand colouring", "hand colored", "hand coloured", "hand-colored", "hand-coloured", "hand-coloring", "hand-colouring", "handcolored", "handcoloured", "applied watercolor", "hand painting", "hand-painted"]),
        new("viscosity-print", "viscosity print", null, ["viscosity print", "viscosity etching", "viscosity"]),
        new("carborundum-print", "carborundum print", null, ["carborundum", "carborundum print", "carborundum etching"]),
        new("cliche-verre", "cliché-verre", null, ["cliche verre", "cliche-verre"]),
        new("mokuhanga", "mokuhanga", null, ["mokuhanga"]),
        new("print", "print", "300041273", ["print", "prints", "estampe", "druckgraphik", "stampa", "grabado"]),
    ];
}
