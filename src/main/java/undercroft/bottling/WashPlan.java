package undercroft.bottling;

import java.util.List;
import undercroft.catalogue.Cleaner;
import undercroft.catalogue.Sanitiser;
import undercroft.cellar.FillingPlan;
import undercroft.quantity.Phrase;

/**
 * What to mix for cleaning and sanitising. Bottles are soaked full, a crate at a time; sanitiser goes from bottle to bottle,
 * a tenth of each stays in use. A bucket for tubes, filler and caps comes on top (amounts: assumption, in line with practice).
 */
public record WashPlan(Solution cleaning, Solution sanitising) {
    private static final double BUCKET_LITRES = 4;
    private static final int SOAKED_AT_ONCE = 12;
    private static final double SANITISER_SHARE = 0.1;
    private static final double STEP_LITRES = 0.5;
    private static final double ROUNDING = 1e-9;

    static WashPlan of(FillingPlan.Wash wash, FillOrder order) {
        int filled = order.filled();
        double brimful = order.rows().stream()
                .mapToDouble(row -> row.filled() * row.bottle().brimfulMillilitres() / 1000)
                .sum();
        double soak = filled == 0 ? 0 : brimful / filled * Math.min(SOAKED_AT_ONCE, filled);
        Cleaner cleaner = wash.cleaner();
        double washLitres = roundedUp(soak + BUCKET_LITRES);
        double gramsPerLitre =
                wash.cleanerGramsPerLitre().orElse(cleaner.usualGramsPerLitre().orElse(0));
        Solution cleaning = new Solution(
                cleaner,
                washLitres,
                gramsPerLitre * washLitres,
                false,
                wash.cleanerGramsPerLitre().isPresent(),
                cleaner.soakMinutes(),
                true,
                cleaner.basis(),
                List.of(Phrase.of("bottling.cleaner." + cleaner.id()), Solution.LABEL_WINS));
        Sanitiser sanitiser = wash.sanitiser();
        double sanitiserLitres = roundedUp(brimful * SANITISER_SHARE + BUCKET_LITRES);
        double millilitresPerLitre = sanitiser == Sanitiser.HEAT
                ? 0
                : wash.sanitiserMillilitresPerLitre()
                        .orElse(sanitiser.usualMillilitresPerLitre().orElse(0));
        Solution sanitising = new Solution(
                sanitiser,
                sanitiserLitres,
                millilitresPerLitre * sanitiserLitres,
                true,
                wash.sanitiserMillilitresPerLitre().isPresent(),
                sanitiser.contactMinutes(),
                !sanitiser.isNoRinse(),
                sanitiser.basis(),
                List.of(
                        Phrase.of("bottling.sanitiser." + sanitiser.id()),
                        Phrase.of("bottling.wash.always"),
                        Solution.LABEL_WINS));
        return new WashPlan(cleaning, sanitising);
    }

    private static double roundedUp(double litres) {
        return Math.ceil(litres / STEP_LITRES - ROUNDING) * STEP_LITRES;
    }
}
