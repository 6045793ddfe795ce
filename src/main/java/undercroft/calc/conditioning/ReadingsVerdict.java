package undercroft.calc.conditioning;

import java.util.List;

/**
 * How a batch's readings and the model get on.
 *
 * @param agreement in one word
 * @param oddOnes readings that even the members nearest to all of them cannot explain
 * @param effectiveSize how many equally weighted members the updated ensemble is worth; before any reading, its size
 */
public record ReadingsVerdict(Agreement agreement, List<Observation> oddOnes, double effectiveSize) {
    public ReadingsVerdict {
        oddOnes = List.copyOf(oddOnes);
    }

    /** What the readings say of the model. */
    public enum Agreement {
        /** Nothing was read yet. */
        NO_READINGS,
        /** The model explains them. */
        AGREES,
        /** No member explains them well: a wrong temperature history, gauge, date or dose, or a batch unlike the model. */
        DISAGREES,
        /**
         * The readings have made it more likely than not that there was more to ferment than was written down: matter that a
         * wild or diastatic yeast reaches, or beer that was not finished. A danger sign.
         */
        NEEDS_EXTRA_EXTRACT
    }
}
