/**
 * Light on bottles: how much of the dose that makes a beer taste lightstruck a place, a bottle and a time give. Spectral
 * power of the source × transmission of the filled bottle × action spectrum, summed over the wavelengths.
 */
package undercroft.calc.light;
