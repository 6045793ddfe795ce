package undercroft.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import undercroft.calc.chill.Freezing;
import undercroft.calc.gas.Atmosphere;
import undercroft.calc.gas.BeerDensity;
import undercroft.calc.gas.BeerFactor;
import undercroft.calc.gas.BottleEstimates;
import undercroft.calc.gas.BottleState;
import undercroft.calc.gas.ClosedBottle;
import undercroft.calc.gas.HeatLimit;
import undercroft.calc.gas.PressureLimits;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Listed;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Check;
import undercroft.quantity.Interval;
import undercroft.quantity.Temperature;
import undercroft.report.Answer;

@Command(name = "pressure", description = "Pressure at rest in a closed bottle.")
final class PressureCommand extends AnswerCommand {
    private static final double USUAL_EXTRACT = 40;
    private static final double USUAL_PLATO = 12;

    /** What becomes of the air that was capped in. */
    enum Air implements Listed {
        NONE("none", 0, 0),
        DISSOLVING("dissolving", 1, 0),
        TRAPPED("trapped", 1, 1);

        private final String id;
        private final double amount;
        private final double trapped;

        Air(String id, double amount, double trapped) {
            this.id = id;
            this.amount = amount;
            this.trapped = trapped;
        }

        @Override
        public String id() {
            return id;
        }

        @Override
        public String label() {
            return id;
        }
    }

    @Mixin
    private BottleOption bottle = new BottleOption();

    @Option(names = "--volumes", required = true, description = "all CO2 in the bottle, like 2.5vol")
    private String volumes;

    @Option(names = "--temp", required = true, description = "temperature of the bottle, like 20C or 68F")
    private String temperature;

    @Option(names = "--abv", defaultValue = "5", description = "strength, %% by volume (default: ${DEFAULT-VALUE})")
    private String abv;

    @Option(
            names = "--beer-factor",
            description = "solubility in beer against water, 0.5 to 1.1 (default: from strength)")
    private String beerFactor;

    @Option(
            names = "--air",
            defaultValue = "dissolving",
            description = "none, dissolving or trapped (default: ${DEFAULT-VALUE})")
    private String air;

    @Option(
            names = "--capped-at",
            defaultValue = "20C",
            description = "temperature when capped (default: ${DEFAULT-VALUE})")
    private String cappedAt;

    @Option(
            names = "--altitude",
            defaultValue = "0",
            description = "metres above sea level (default: ${DEFAULT-VALUE})")
    private String altitude;

    PressureCommand(Console console) {
        super(console);
    }

    @Override
    Answer answer() {
        BottleType type = bottle.type();
        double grams = Check.within(
                        "--volumes",
                        Typed.read("--volumes", volumes, Carbonation::parse).volumes(),
                        0,
                        11.9,
                        "vol")
                * Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME;
        double celsius = Check.within(
                "--temp", Typed.read("--temp", temperature, Temperature::parse).celsius(), -5, 60, "°C");
        double strength = Typed.number("--abv", abv, 0, 20, "%");
        Air capped = Listed.find(Air.class, air, "--air");
        double atmosphere = Atmosphere.barAt(Typed.number("--altitude", altitude, -400, 5000, "m"));
        double capping = Typed.read("--capped-at", cappedAt, Temperature::parse).celsius();
        Interval usual = BeerFactor.of(strength, USUAL_EXTRACT);
        Interval factor =
                beerFactor == null ? usual : Interval.exactly(Typed.number("--beer-factor", beerFactor, 0.56, 1.1, ""));
        ClosedBottle closed = OptionFaults.naming(
                () -> ClosedBottle.of(type.brimfulMillilitres(), type.fillMillilitres(), strength, capping, atmosphere),
                "cappedAtCelsius",
                "--capped-at",
                "fillMillilitres",
                "--fill");
        BottleEstimates estimates = BottleEstimates.of(closed, celsius, grams, factor, capped.amount);
        BottleState asked = closed.at(celsius, grams, factor.median(), capped.amount, capped.trapped);
        Interval gauge = gauge(asked, estimates);
        PressureLimits limits = PressureLimits.of(type);
        HeatLimit heat = HeatLimit.of(
                closed, grams, factor.median() - BeerFactor.SPREAD, capped.amount, 1, limits.workingPressureBar());
        Answer answer = new Answer()
                .put("gaugeBar", gauge)
                .put("safetyGaugeBar", estimates.safety().gaugeBar())
                .put("carbonDioxideBar", asked.carbonDioxideBar())
                .put("airBar", asked.airBar())
                .put("waterVapourBar", asked.waterVapourBar())
                .put("headspaceMillilitres", asked.headspaceMillilitres())
                .put("dissolvedGramsPerLitre", asked.dissolvedGramsPerLitre())
                .put("beerFactor", factor.median())
                .put("liquidFull", asked.liquidFull())
                .put("bottleClass", PressureLimits.workingClass(type).id())
                .put("cautionBar", limits.cautionBar())
                .put("limitBar", limits.workingPressureBar())
                .put("heatLimitCelsius", heat.reach() == HeatLimit.Reach.NOT_REACHED ? Double.NaN : heat.celsius());
        return words(
                answer,
                type,
                gauge,
                estimates.safety().gaugeBar(),
                limits,
                heat,
                asked.liquidFull(),
                celsius < freezing(strength) + 0.5);
    }

    private static double freezing(double abvPercent) {
        return Freezing.pointCelsius(BeerDensity.alcoholByWeightPercent(abvPercent), USUAL_PLATO);
    }

    /** The interval of the estimates, widened if need be to hold the case that was asked for. */
    private static Interval gauge(BottleState asked, BottleEstimates estimates) {
        double median = asked.gaugeBar();
        return Interval.of(
                Math.min(median, estimates.gaugeBar().low()),
                median,
                Math.max(median, estimates.gaugeBar().high()));
    }

    private static Answer words(
            Answer answer,
            BottleType type,
            Interval gauge,
            double safety,
            PressureLimits limits,
            HeatLimit heat,
            boolean liquidFull,
            boolean freezes) {
        answer.say(String.format(
                "%s: %.2f bar gauge (%.2f to %.2f), safety estimate %.2f.",
                type.label(), gauge.median(), gauge.low(), gauge.high(), safety));
        answer.say(String.format(
                "Limit %.1f bar (%s), caution from %.1f; heat limit %s.",
                limits.workingPressureBar(),
                PressureLimits.workingClass(type).label(),
                limits.cautionBar(),
                heat.reach() == HeatLimit.Reach.NOT_REACHED
                        ? "none up to 60 °C"
                        : heat.reach() == HeatLimit.Reach.BEYOND_WHEN_COLD
                                ? "passed even cold"
                                : String.format("%.0f °C", Math.floor(heat.celsius()))));
        if (freezes) {
            answer.say("Near or below its freezing point: freezing beer swells and bursts its bottle.");
        }
        if (liquidFull) {
            answer.say("The beer fills the bottle: pressure rises by bars for each degree. Take some out.");
        }
        if (safety > limits.workingPressureBar()) {
            answer.say(
                    "Over the limit on the safety estimate: cool it in a closed box before touching; cover eyes and hands.");
        }
        return answer.say("An estimate, no permission: the maker's word and local rules come first.");
    }
}
