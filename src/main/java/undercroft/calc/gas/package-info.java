/**
 * Carbon dioxide in beer and the pressure of a closed bottle: solubility, vapour, density, the balance of gas between beer
 * and headspace, what the bottle may bear, what time under load does to glass, heat limit and freezing. Pure functions on
 * doubles whose names carry their unit; "bar" is absolute unless it says gauge.
 */
package undercroft.calc.gas;
