package undercroft.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import undercroft.bottling.WeakestCommon;
import undercroft.calc.chill.Frost;
import undercroft.calc.gas.Atmosphere;
import undercroft.calc.gas.BeerFactor;
import undercroft.calc.gas.BottleState;
import undercroft.calc.gas.ClosedBottle;
import undercroft.calc.gas.FinishedPressure;
import undercroft.calc.gas.PossibleContents;
import undercroft.calc.gas.PressureLimits;
import undercroft.calc.gas.RealExtract;
import undercroft.calc.gas.TrappedAir;
import undercroft.calc.priming.Dosing;
import undercroft.calc.priming.ResidualCarbonation;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Listed;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Check;
import undercroft.quantity.Interval;
import undercroft.quantity.Phrase;
import undercroft.quantity.Temperature;
import undercroft.report.Answer;

@Command
final class PressureCommand extends AnswerCommand {
    private static final double ROOM_CELSIUS = 20;
    private static final double NEAR_FREEZING_KELVIN = 0.5;

    /** What weighing, volume and yield make of a dose, as factors (assumption). */
    private static final Interval DOSE_SPREAD = Interval.of(0.92, 1, 1.08);

    /** What becomes of the air that was capped in. */
    enum Air implements Listed {
        NONE("none", 0, 0, TrappedAir.NONE),
        DISSOLVING("dissolving", 1, 0, TrappedAir.of(FillingMethod.CAREFUL)),
        TRAPPED("trapped", 1, 1, TrappedAir.ALL_KEPT);

        private final String id;
        private final double amount;
        private final double trapped;
        private final TrappedAir air;

        Air(String id, double amount, double trapped, TrappedAir air) {
            this.id = id;
            this.amount = amount;
            this.trapped = trapped;
            this.air = air;
        }

        @Override
        public String id() {
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

    @Option(names = "--bottles", defaultValue = "" + WeakestCommon.USUAL_BOTTLES)
    private int bottles;

    @Option(names = "--dosing", defaultValue = "syrup")
    private String dosing;

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
        Interval usual = BeerFactor.of(strength, RealExtract.USUAL_GRAMS_PER_LITRE);
        Interval factor =
                beerFactor == null ? usual : Interval.exactly(Typed.number("--beer-factor", beerFactor, 0.56, 1.1, ""));
        Dosing how = Listed.find(Dosing.class, dosing, "--dosing");
        Check.within("--bottles", bottles, 1, 10_000);
        ClosedBottle closed = OptionFaults.naming(
                () -> ClosedBottle.of(type, strength, capping, atmosphere),
                "cappedAtCelsius",
                "--capped-at",
                "fillMillilitres",
                "--fill");
        FinishedPressure finished = FinishedPressure.of(closed, contents(grams, factor, atmosphere, capped));
        double strongest = how.strongestOf(bottles);
        BottleState asked = closed.at(celsius, grams, factor.median(), capped.amount, capped.trapped);
        Interval gauge = gauge(asked, finished.gaugeBar(celsius, 1));
        double upperEstimate =
                Math.max(gauge.high(), finished.gaugeBar(celsius, strongest).high());
        PressureLimits limits = PressureLimits.of(type);
        double heatLimit = finished.heatLimit(strongest, limits).orInfinite();
        Answer answer = reply().put("gaugeBar", gauge)
                .put("upperEstimateGaugeBar", upperEstimate)
                .put("strongestOfBottles", bottles)
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
                .put("heatLimitCelsius", heatLimit);
        answer.say(
                "command.pressure.gauge",
                console().messages().name(type),
                words().bars(gauge),
                words().barWorst(upperEstimate),
                bottles);
        answer.say(
                "command.pressure.limit",
                words().barLimit(limits.workingPressureBar()),
                PressureLimits.workingClass(type),
                words().barLimit(limits.cautionBar()),
                words().heatLimit(heatLimit));
        frost(answer, Frost.of(type, strength, RealExtract.USUAL_GRAMS_PER_LITRE), celsius);
        if (asked.liquidFull()) {
            answer.warn(Phrase.of("command.pressure.liquid-full"));
        }
        if (upperEstimate > limits.workingPressureBar()) {
            answer.warn(Phrase.of("command.pressure.over"));
        }
        return answer.estimate();
    }

    private static void frost(Answer answer, Frost frost, double celsius) {
        if (frost.at(celsius) == Frost.State.MAY_HAVE_BURST) {
            answer.warn(Phrase.of("command.pressure.frozen"));
        } else if (celsius < frost.freezingCelsius() + NEAR_FREEZING_KELVIN) {
            answer.warn(Phrase.of("command.pressure.freezes"));
        }
    }

    /**
     * The gas asked for as that of a batch's average bottle: what beer keeps at room temperature, the rest from priming with
     * the spread of weighing, volume and yield.
     */
    private static PossibleContents contents(double grams, Interval factor, double atmosphereBar, Air capped) {
        Interval usual = ResidualCarbonation.gramsPerLitre(ROOM_CELSIUS, atmosphereBar);
        boolean primed = grams > usual.median();
        return PossibleContents.of(
                primed ? usual : Interval.exactly(grams),
                primed ? DOSE_SPREAD.times(grams - usual.median()) : Interval.exactly(0),
                Interval.exactly(0),
                factor,
                capped.air);
    }

    /** The interval of the average bottle, widened if need be to hold the case that was asked for. */
    private static Interval gauge(BottleState asked, Interval average) {
        double median = asked.gaugeBar();
        return Interval.of(Math.min(median, average.low()), median, Math.max(median, average.high()));
    }
}
