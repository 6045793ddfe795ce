package undercroft.command;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import undercroft.calc.gas.Atmosphere;
import undercroft.calc.priming.OunceRule;
import undercroft.calc.priming.PrimingDose;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sugar;
import undercroft.catalogue.Sugars;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Mass;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;
import undercroft.quantity.Volume;
import undercroft.report.Answer;

@Command(name = "dose", description = "Priming sugar for a batch.")
final class DoseCommand extends Question {
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

    DoseCommand(Session session) {
        super(session);
    }

    @Override
    Answer answer() {
        Volume volume = Typed.read("--beer", beer, Volume::parse);
        Temperature temperature = Typed.read("--warmest", warmest, Temperature::parse);
        Carbonation wanted = Typed.read("--target", target, Carbonation::parse);
        Sugar sugar = Listed.find(Sugars.STANDARD, sugarId, "--sugar");
        double metres = Typed.number("--altitude", altitude, -400, 5000, "m");
        PrimingDose dose = Faults.naming(
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
            return answer.say(String.format(
                    "No sugar: the beer already holds %.2f vol, the target is %.2f vol.",
                    dose.residualVolumes(), wanted.volumes()));
        }
        Mass mass = Mass.ofGrams(dose.grams().median());
        answer.say(String.format(
                        "%s of %s (%s; %.2f g/L) in %.0f mL of water, boiled and cooled.",
                        mass.text(UnitSystem.METRIC),
                        sugar.label(),
                        mass.text(UnitSystem.US),
                        dose.gramsPerLitre(),
                        dose.syrupWaterMillilitres()))
                .say(String.format(
                        "It gives %.2f vol (%.2f to %.2f), of which %.2f were there before.",
                        dose.totalVolumes().median(),
                        dose.totalVolumes().low(),
                        dose.totalVolumes().high(),
                        dose.residualVolumes()))
                .say(String.format(
                        "An ounce of corn sugar a gallon would be %.0f g (common practice, %.1f vol added).",
                        OunceRule.grams(volume.litres()), OunceRule.expectedVolumes()));
        if (!sugar.advice().isEmpty()) {
            answer.say("Mind: " + sugar.advice() + ".");
        }
        return answer;
    }
}
