package undercroft.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import undercroft.bottling.BottlePressure;
import undercroft.bottling.WeakestCommon;
import undercroft.calc.gas.Atmosphere;
import undercroft.calc.priming.PrimingDose;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sugar;
import undercroft.catalogue.Sugars;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Check;
import undercroft.quantity.Phrase;
import undercroft.quantity.Pressure;
import undercroft.quantity.Temperature;
import undercroft.quantity.Volume;
import undercroft.report.Answer;
import undercroft.wording.DoseLine;

@Command
final class DoseCommand extends AnswerCommand {
    @Option(names = "--beer", required = true)
    private String beer;

    @Option(names = "--warmest", required = true)
    private String warmest;

    @Option(names = "--target", required = true)
    private String target;

    @Option(names = "--sugar", defaultValue = "dextrose")
    private String sugarId;

    @Option(names = "--altitude", defaultValue = "0")
    private String altitude;

    @Option(names = "--bottles", defaultValue = "" + WeakestCommon.USUAL_BOTTLES)
    private int bottles;

    private static final double ROOM_CELSIUS = 20;

    DoseCommand(Console console) {
        super(console);
    }

    @Override
    Answer answer() {
        Volume volume = Typed.read("--beer", beer, Volume::parse);
        Temperature temperature = Typed.read("--warmest", warmest, Temperature::parse);
        Carbonation wanted = Typed.read("--target", target, Carbonation::parse);
        Sugar sugar = Listed.find(Sugars.STANDARD, sugarId, "--sugar");
        double metres = Typed.number("--altitude", altitude, -400, 5000, "m");
        Check.within("--bottles", bottles, 1, 10_000);
        double atmosphere = Atmosphere.barAt(metres);
        PrimingDose dose = OptionFaults.naming(
                () -> PrimingDose.forTarget(sugar, volume.litres(), temperature.celsius(), wanted, atmosphere),
                "beerLitres",
                "--beer",
                "warmestCelsius",
                "--warmest",
                "target",
                "--target");
        Answer answer = reply().put("sugar", sugar.id())
                .put("grams", dose.grams())
                .put("gramsPerLitre", dose.gramsPerLitre())
                .put("residualVolumes", dose.residualVolumes())
                .put("addedVolumes", dose.addedVolumes())
                .put("totalVolumes", dose.totalVolumes())
                .put("syrupWaterMillilitres", dose.syrupWaterMillilitres());
        if (dose.notNeeded()) {
            answer.warn(Phrase.of("command.dose.none", Carbonation.ofVolumes(dose.residualVolumes()), wanted));
        }
        DoseLine.of(dose, words()).forEach(line -> answer.say("command.dose.line", line.label(), line.value()));
        if (!sugar.advice().isEmpty()) {
            answer.warn(Phrase.of("command.dose.advice", Phrase.of(sugar.advice())));
        }
        WeakestCommon clean = WeakestCommon.of(dose, temperature.celsius(), atmosphere, bottles, false);
        WeakestCommon scuffed = WeakestCommon.of(dose, temperature.celsius(), atmosphere, bottles, true);
        bottle(answer, clean, "", BottlePressure.CHECKED_CELSIUS);
        bottle(answer, scuffed, "scuffed", ROOM_CELSIUS);
        return answer.estimate();
    }

    /** What the dose comes to in a bottle, and a warning where that is over its limit at a warmth it will see. */
    private void bottle(Answer answer, WeakestCommon weakest, String prefix, double expectedCelsius) {
        double limit = weakest.heatLimit().orInfinite();
        String kind = prefix.isEmpty() ? "clean" : prefix;
        if (prefix.isEmpty()) {
            answer.put("bottle", weakest.bottle().id())
                    .put("strongestOfBottles", weakest.bottles())
                    .put("heatLimitCelsius", limit);
        } else {
            answer.put("scuffedHeatLimitCelsius", limit);
        }
        answer.say(
                "command.dose.bottle." + kind,
                console().messages().name(weakest.bottle()),
                weakest.bottles(),
                words().heatLimit(limit));
        if (limit < expectedCelsius) {
            answer.warn(Phrase.of(
                    "command.dose.over." + kind,
                    weakest.bottle(),
                    Pressure.ofBar(weakest.limits().workingPressureBar()),
                    Temperature.ofCelsius(Math.floor(Math.max(0, limit)))));
        }
    }
}
