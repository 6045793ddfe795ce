package undercroft.calc.learning;

/**
 * With what a batch was made: batches that agree here share the brewer's part of a {@link Trait}.
 *
 * @param strain the yeast
 * @param state how much of it, in what state
 * @param method how the bottles were filled
 * @param place where they stood, and how its temperature is told
 * @param gauge what was read with; empty when no gauge was
 */
public record BatchKeys(String strain, String state, String method, String place, String gauge) {
    String of(Trait trait) {
        return switch (trait.bond()) {
            case YEAST -> strain + "/" + state;
            case STRAIN -> strain;
            case BREWER -> "";
            case METHOD -> method;
            case PLACE -> place;
            case GAUGE -> gauge;
        };
    }
}
