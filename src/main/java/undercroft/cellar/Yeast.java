package undercroft.cellar;

import undercroft.catalogue.Flocculation;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;

/**
 * The yeast in the bottles.
 *
 * @param fermentsDextrins true for diastatic or wild yeast, which goes on slowly for months
 */
public record Yeast(YeastStrain strain, YeastState state, Flocculation flocculation, boolean fermentsDextrins) {}
