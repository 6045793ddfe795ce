package undercroft.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import undercroft.calc.gas.Atmosphere;
import undercroft.calc.priming.PrimingDose;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sugar;
import undercroft.catalogue.Sugars;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Phrase;
import undercroft.quantity.Temperature;
import undercroft.quantity.Volume;
import undercroft.report.Answer;
import undercroft.wording.DoseLine;

@Command(name = "dose")
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
        return answer.estimate();
    }
}
