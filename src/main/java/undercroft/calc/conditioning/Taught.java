package undercroft.calc.conditioning;

import undercroft.calc.learning.TraitLikelihood;

/**
 * What a batch's readings teach beyond the batch.
 *
 * @param traits what they say of the constants that later batches may share
 * @param logEvidence log of how probable they were before they were known, in the stratum without hidden extract
 */
record Taught(TraitLikelihood traits, double logEvidence) {
    static final Taught NOTHING = new Taught(TraitLikelihood.NONE, 0);
}
