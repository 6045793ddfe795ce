package undercroft.catalogue;

import java.util.List;
import undercroft.quantity.Interval;

/** The priming sugars that come with the tool, computed from composition limits in the sources named. */
public final class Sugars {
    private static final String WIDE = "catalogue.advice.varies";

    public static final List<Sugar> STANDARD = List.of(
            new Sugar(
                    "dextrose",
                    "corn sugar (dextrose monohydrate)",
                    Interval.of(0.440, 0.444, 0.449),
                    "solids ≥ 90.0 %, glucose ≥ 99.5 % of them (Codex CXS 212-1999)",
                    ""),
            new Sugar(
                    "dextrose-anhydrous",
                    "dextrose, water-free",
                    Interval.of(0.478, 0.487, 0.489),
                    "solids ≥ 98 % (Codex CXS 212-1999)",
                    ""),
            new Sugar(
                    "sucrose",
                    "table sugar",
                    Interval.of(0.512, 0.513, 0.514),
                    "sucrose ≥ 99.7 °Z; plantation white ≥ 99.5 (Codex CXS 212-1999)",
                    ""),
            new Sugar(
                    "brown-sugar",
                    "soft brown sugar",
                    Interval.of(0.453, 0.483, 0.499),
                    "sucrose and invert ≥ 88 % (Codex CXS 212-1999)",
                    ""),
            new Sugar(
                    "honey",
                    "honey",
                    Interval.of(0.293, 0.384, 0.417),
                    "fructose and glucose ≥ 60 % (honeydew ≥ 45), moisture ≤ 20 % (EU 2001/110 Annex II)",
                    WIDE),
            new Sugar(
                    "maple-syrup",
                    "maple syrup",
                    Interval.of(0.312, 0.330, 0.354),
                    "66.0 to 68.9 °Brix (USDA grade standard), mostly sucrose",
                    ""),
            new Sugar(
                    "invert-syrup",
                    "invert syrup",
                    Interval.of(0.342, 0.357, 0.376),
                    "70 to 77 % solids, all hexose (common practice, no source)",
                    "catalogue.advice.solids"),
            new Sugar(
                    "dark-syrup",
                    "dark or golden syrup",
                    Interval.of(0.376, 0.399, 0.427),
                    "81 to 83 % solids (from memory)",
                    "catalogue.advice.partly"),
            new Sugar(
                    "dry-malt-extract",
                    "dry malt extract",
                    Interval.of(0.269, 0.306, 0.349),
                    "moisture 3 to 5 %, real fermentability 55 to 70 % counted as maltose (common practice, no source)",
                    WIDE),
            new Sugar(
                    "liquid-malt-extract",
                    "liquid malt extract",
                    Interval.of(0.221, 0.255, 0.295),
                    "78 to 82 % solids, real fermentability 55 to 70 % (common practice, no source)",
                    WIDE));

    private Sugars() {}
}
