package undercroft.calc.priming;

import java.util.Locale;
import java.util.Objects;
import undercroft.catalogue.Sugar;
import undercroft.quantity.Check;
import undercroft.quantity.Interval;

/**
 * What a packet says of the user's own sugar.
 *
 * @param name what the user calls it
 * @param sugarsPercent fermentable sugars, g in 100 g of the product as sold, 5 to 100
 * @param kind which sugars they are
 */
public record SugarLabel(String name, double sugarsPercent, Kind kind) {
    /** Chemical kind of the sugars, which sets the carbon dioxide from a gram. */
    public enum Kind {
        /** Glucose, fructose, invert sugar; as dry mass. */
        HEXOSE(Stoichiometry.HEXOSE),
        /** Sucrose or maltose. */
        DISACCHARIDE(Stoichiometry.DISACCHARIDE);

        private final double gramsCarbonDioxidePerGram;

        Kind(double gramsCarbonDioxidePerGram) {
            this.gramsCarbonDioxidePerGram = gramsCarbonDioxidePerGram;
        }
    }

    public SugarLabel {
        name = Check.text("name", name);
        Check.within("sugarsPercent", sugarsPercent, 5, 100, "%");
        Objects.requireNonNull(kind, "kind");
    }

    /**
     * From a data sheet that counts sugars in the dry matter.
     *
     * @param sugarsPercentOfSolids g in 100 g of dry matter, 0 to 100
     * @param moisturePercent g of water in 100 g of the product, 0 to 90
     */
    public static SugarLabel ofSolids(String name, double sugarsPercentOfSolids, Kind kind, double moisturePercent) {
        Check.within("sugarsPercentOfSolids", sugarsPercentOfSolids, 0, 100, "%");
        Check.within("moisturePercent", moisturePercent, 0, 90, "%");
        return new SugarLabel(name, sugarsPercentOfSolids * (1 - moisturePercent / 100), kind);
    }

    /**
     * The sugar this label describes. Its spread is what food law lets a label be wrong by: 2 g in 100 g below 10 g, a fifth
     * up to 40 g, 8 g above (European Commission guidance on tolerances for the nutrition declaration, December 2012; from
     * memory), never above pure sugar.
     *
     * @param id under which the user's list keeps it
     */
    public Sugar toSugar(String id) {
        double tolerance = sugarsPercent < 10 ? 2 : sugarsPercent <= 40 ? 0.2 * sugarsPercent : 8;
        Interval yield = Interval.of(sugarsPercent - tolerance, sugarsPercent, Math.min(100, sugarsPercent + tolerance))
                .times(kind.gramsCarbonDioxidePerGram / 100);
        String basis =
                String.format(Locale.ROOT, "label: %.3g %% sugars, label tolerance %.2g %%", sugarsPercent, tolerance);
        return new Sugar(id, name, yield, basis, "");
    }
}
