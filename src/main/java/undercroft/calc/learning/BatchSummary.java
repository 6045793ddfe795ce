package undercroft.calc.learning;

/**
 * What one batch teaches.
 *
 * @param keys with what it was made
 * @param readings how many readings made it, 1 or more
 * @param likelihood what they say of its traits
 */
public record BatchSummary(BatchKeys keys, int readings, TraitLikelihood likelihood) {}
