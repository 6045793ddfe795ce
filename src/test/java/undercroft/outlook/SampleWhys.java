package undercroft.outlook;

import java.util.List;
import undercroft.outlook.lot.Why;

/** Invented grounds for figures. */
final class SampleWhys {
    static final List<Why> ALL = List.of(
            new Why(
                    "Carbonation, 2.3 vol",
                    "What the beer held when it was bottled, plus what the yeast has made of the sugar so far.",
                    List.of(
                            new Why.Input("warmest since fermentation", "20.0 °C"),
                            new Why.Input("table sugar", "110 g in 19.0 L"),
                            new Why.Input("bottles since capping", "17.4 °C on average, 93 % measured")),
                    List.of(
                            new Why.Assumption(
                                    "Yeast takes sugar up at the rate of an ale yeast.", Why.Grade.PUBLISHED),
                            new Why.Assumption(
                                    "Four of a hundred grams of sugar go into new yeast.", Why.Grade.ASSUMED)),
                    "Weiss 1974 for the gas in water, with a factor for beer"),
            new Why(
                    "Pressure, 2.2 bar",
                    "The gas that beer and headspace share at the temperature of the bottles.",
                    List.of(new Why.Input("headspace", "14 mL")),
                    List.of(new Why.Assumption("The bottle was filled as its make says.", Why.Grade.COMMON_PRACTICE)),
                    "Weiss 1974"));

    private SampleWhys() {}
}
