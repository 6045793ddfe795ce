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
import undercroft.quantity.Phrase;
import undercroft.quantity.Temperature;
import undercroft.report.Answer;

@Command(name = "pressure")
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

    @Option(names = "--volumes", required = true)
    private String volumes;

    @Option(names = "--temp", required = true)
    private String temperature;

    @Option(names = "--abv", defaultValue = "5")
    private String abv;

    @Option(names = "--beer-factor")
    private String beerFactor;

    @Option(names = "--air", defaultValue = "dissolving")
    private String air;

    @Option(names = "--capped-at", defaultValue = "20C")
    private String cappedAt;

    @Option(names = "--altitude", defaultValue = "0")
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
        Answer answer = reply().put("gaugeBar", gauge)
                .put("upperEstimateGaugeBar", estimates.safety().gaugeBar())
                .put("carbonDioxideBar", asked.carbonDioxideBar())
                .put("airBar", asked.airBar())
                .put("waterVapourBar", asked.waterVapourBar())
                .put("headspaceMillilitres", asked.headspaceMillilitres())
                .put("dissolvedGramsPerLitre", asked.dissolvedGramsPerLitre())
                .put("beerFactor", factor.median())
                .put("liquidFull", asked.liquidFull())
                .put("bottleClass", PressureLimits.workingClass(type).id())
                .put("cautionGaugeBar", limits.cautionBar())
                .put("workingPressureGaugeBar", limits.workingPressureBar())
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

    private Answer words(
            Answer answer,
            BottleType type,
            Interval gauge,
            double upperEstimate,
            PressureLimits limits,
            HeatLimit heat,
            boolean liquidFull,
            boolean freezes) {
        answer.say(
                "command.pressure.gauge",
                console().messages().name(type),
                words().bars(gauge),
                words().barWorst(upperEstimate));
        double heatLimit = switch (heat.reach()) {
            case NOT_REACHED -> Double.POSITIVE_INFINITY;
            case BEYOND_WHEN_COLD -> -1;
            case PRESSURE, LIQUID_FULL, MATERIAL -> heat.celsius();
        };
        answer.say(
                "command.pressure.limit",
                words().barLimit(limits.workingPressureBar()),
                PressureLimits.workingClass(type),
                words().barLimit(limits.cautionBar()),
                words().heatLimit(heatLimit));
        if (freezes) {
            answer.warn(Phrase.of("command.pressure.freezes"));
        }
        if (liquidFull) {
            answer.warn(Phrase.of("command.pressure.liquid-full"));
        }
        if (upperEstimate > limits.workingPressureBar()) {
            answer.warn(Phrase.of("command.pressure.over"));
        }
        return answer.estimate();
    }
}
