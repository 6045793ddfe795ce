package undercroft.command;

import java.util.Locale;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import undercroft.bottling.DoseLine;
import undercroft.calc.gas.Atmosphere;
import undercroft.calc.priming.PrimingDose;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sugar;
import undercroft.catalogue.Sugars;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;
import undercroft.quantity.Volume;
import undercroft.report.Answer;

@Command(name = "dose", description = "Priming sugar for a batch.")
final class DoseCommand extends AnswerCommand {
    @Option(names = "--beer", required = true, description = "beer to be primed, like 19L or 5gal")
    private String beer;

    @Option(names = "--warmest", required = true, description = "warmest since fermentation ended, like 20C or 68F")
    private String warmest;

    @Option(names = "--target", required = true, description = "carbonation wanted, like 2.4vol")
    private String target;

    @Option(names = "--sugar", defaultValue = "dextrose", description = "kind of sugar (default: ${DEFAULT-VALUE})")
    private String sugarId;

    @Option(
            names = "--altitude",
            defaultValue = "0",
            description = "metres above sea level (default: ${DEFAULT-VALUE})")
    private String altitude;

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
        PrimingDose dose = OptionFaults.naming(
                () -> PrimingDose.forTarget(
                        sugar, volume.litres(), temperature.celsius(), wanted, Atmosphere.barAt(metres)),
                "beerLitres",
                "--beer",
                "warmestCelsius",
                "--warmest",
                "target",
                "--target");
        Answer answer = new Answer()
                .put("sugar", sugar.id())
                .put("grams", dose.grams())
                .put("gramsPerLitre", dose.gramsPerLitre())
                .put("residualVolumes", dose.residualVolumes())
                .put("addedVolumes", dose.addedVolumes())
                .put("totalVolumes", dose.totalVolumes())
                .put("syrupWaterMillilitres", dose.syrupWaterMillilitres());
        if (dose.notNeeded()) {
            answer.say(String.format(
                    Locale.ROOT,
                    "No sugar: the beer already holds %.2f vol, the target is %.2f vol.",
                    dose.residualVolumes(),
                    wanted.volumes()));
        }
        DoseLine.of(dose, UnitSystem.METRIC).forEach(line -> answer.say(line.label() + ": " + line.value()));
        if (!sugar.advice().isEmpty()) {
            answer.say("Mind: " + sugar.advice() + ".");
        }
        return answer;
    }
}
