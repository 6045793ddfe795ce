package undercroft.outlook.serving;

import java.util.List;

/**
 * A batch that might be poured on a day.
 *
 * @param probabilityReady that it is ready by then, 0 to 1
 * @param free bottles that are left and promised to no other pour
 * @param score by which choices are ranked, higher first
 * @param reasons for it or against it, in words
 */
public record ServingChoice(
        String batchId,
        String name,
        double probabilityReady,
        int free,
        boolean enough,
        double score,
        List<String> reasons) {
    public ServingChoice {
        reasons = List.copyOf(reasons);
    }
}
