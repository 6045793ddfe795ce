/**
 * What a brewer's earlier batches say of the next one. Each uncertain constant of a batch is split into what belongs to the brewer
 * (with this yeast, method, place, gauge) and what belongs to the batch; a batch with readings leaves a summary, from which the
 * brewer's part follows in closed form. All of it in standard normal deviates; nothing here knows what a constant means.
 *
 * <p>The split into shares is an assumption of this program and is shown as one. The algebra is that of linear mixed models with
 * known, unequal noise (Lindley and Smith 1972, J. R. Stat. Soc. B 34:1).
 */
package undercroft.calc.learning;
