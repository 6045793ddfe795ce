package undercroft.report.experiment;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import undercroft.catalogue.Listed;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/** An experiment's file as read, perhaps a stranger's: every fault is told with its line. */
public final class ExperimentFile {
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,9}(\\.\\d{1,9})?");
    private static final int CELLS = 4;
    private static final double MOST_HOURS = 24 * 3650.0;
    private static final int MOST_FAULTS = 50;

    /** A value at hours after capping. */
    record Point(double hours, double value) {}

    private final Map<ExperimentEntry, Double> numbers = new EnumMap<>(ExperimentEntry.class);
    private final Map<ExperimentEntry, String> words = new EnumMap<>(ExperimentEntry.class);
    private final Map<ExperimentEntry, List<Point>> courses = new EnumMap<>(ExperimentEntry.class);
    private final List<InvalidInput> faults = new ArrayList<>();
    private final String name;
    private double tasteHours = Double.NaN;

    private ExperimentFile(String name) {
        this.name = name;
    }

    /**
     * Reads a file.
     *
     * @param name what the user calls it
     */
    public static ExperimentFile read(String name, String text) {
        ExperimentFile file = new ExperimentFile(name);
        String[] lines = text.split("\\r?\\n", -1);
        if (!lines[0].equals(ExperimentCsv.HEAD)) {
            file.fault(1, new InvalidInput("", "experiment.fault.head", ExperimentCsv.HEAD));
            return file;
        }
        for (int i = 1; i < lines.length && file.faults.size() < MOST_FAULTS; i++) {
            boolean last = i == lines.length - 1 && lines[i].isEmpty();
            if (!last) {
                file.line(i + 1, lines[i]);
            }
        }
        file.whole();
        return file;
    }

    /** What is wrong with it, in order; none of a sound file. */
    public List<InvalidInput> faults() {
        return List.copyOf(faults);
    }

    /** How often the gauge was read. */
    public int readings() {
        return course(ExperimentEntry.PRESSURE).size();
    }

    /** Days from capping to the last reading. */
    public double days() {
        List<Point> readings = course(ExperimentEntry.PRESSURE);
        return readings.isEmpty() ? 0 : readings.get(readings.size() - 1).hours() / 24;
    }

    double number(ExperimentEntry entry) {
        return numbers.get(entry);
    }

    OptionalDouble optional(ExperimentEntry entry) {
        Double found = numbers.get(entry);
        return found == null ? OptionalDouble.empty() : OptionalDouble.of(found);
    }

    <T extends Enum<T> & Listed> T word(ExperimentEntry entry, Class<T> list) {
        return Listed.find(list, words.get(entry), entry.kind());
    }

    List<Point> course(ExperimentEntry entry) {
        return courses.getOrDefault(entry, List.of());
    }

    private void fault(int line, InvalidInput fault) {
        faults.add(new InvalidInput(name, "experiment.fault.at-line", line, fault));
    }

    private void line(int number, String line) {
        try {
            String[] cells = line.split(",", -1);
            if (cells.length != CELLS) {
                throw new InvalidInput("", "experiment.fault.cells", cells.length);
            }
            ExperimentEntry entry = ExperimentEntry.of(cells[0])
                    .orElseThrow(() -> new InvalidInput("", "experiment.fault.kind", shortened(cells[0])));
            if (!cells[3].equals(entry.unit())) {
                throw entry.unit().isEmpty()
                        ? new InvalidInput("", "experiment.fault.no-unit", shortened(cells[3]), entry.kind())
                        : new InvalidInput(
                                "", "experiment.fault.unit", shortened(cells[3]), entry.kind(), entry.unit());
            }
            if (!entry.hasHours() && !cells[1].isEmpty()) {
                throw new InvalidInput("", "experiment.fault.no-hours", entry.kind());
            }
            double hours = entry.hasHours() ? parsed("hours", cells[1], 0, MOST_HOURS, "h") : Double.NaN;
            if (entry.isWord()) {
                word(entry, cells[2], hours);
            } else {
                number(entry, parsed("value", cells[2], entry.least(), entry.most(), entry.unit()), hours);
            }
        } catch (InvalidInput fault) {
            fault(number, fault);
        }
    }

    private static double parsed(String where, String text, double least, double most, String unit) {
        if (!NUMBER.matcher(text).matches()) {
            throw new InvalidInput(where, "experiment.fault.number", shortened(text));
        }
        return Check.within(where, Double.parseDouble(text), least, most, unit);
    }

    private void word(ExperimentEntry entry, String id, double hours) {
        Listed found = Listed.find(entry.words(), id.length() > 40 ? id.substring(0, 40) : id, "value");
        if (words.put(entry, found.id()) != null) {
            throw new InvalidInput("", "experiment.fault.twice", entry.kind());
        }
        if (entry == ExperimentEntry.TASTE) {
            tasteHours = hours;
        }
    }

    private void number(ExperimentEntry entry, double value, double hours) {
        if (!entry.isCourse()) {
            if (numbers.put(entry, value) != null) {
                throw new InvalidInput("", "experiment.fault.twice", entry.kind());
            }
            return;
        }
        List<Point> course = courses.computeIfAbsent(entry, any -> new ArrayList<>());
        if (!course.isEmpty() && hours <= course.get(course.size() - 1).hours()) {
            throw new InvalidInput("hours", "experiment.fault.order", entry.kind());
        }
        course.add(new Point(hours, value));
    }

    /** What no single line shows. */
    private void whole() {
        List<String> missing = new ArrayList<>();
        for (ExperimentEntry entry : ExperimentEntry.values()) {
            boolean there = numbers.containsKey(entry) || words.containsKey(entry) || courses.containsKey(entry);
            if (entry.isRequired() && !there) {
                missing.add(entry.kind());
            }
        }
        if (!missing.isEmpty()) {
            // What is missing may stand on a line with a fault, which is told already.
            if (faults.isEmpty()) {
                faults.add(new InvalidInput(
                        name, "experiment.fault.missing", missing.stream().collect(Collectors.joining(", "))));
            }
            return;
        }
        if (number(ExperimentEntry.BRIMFUL) <= number(ExperimentEntry.FILL)) {
            faults.add(new InvalidInput(name, "cellar.fault.no-headspace"));
        }
        boolean rises = number(ExperimentEntry.SUGAR_GAS_LOW) <= number(ExperimentEntry.SUGAR_GAS)
                && number(ExperimentEntry.SUGAR_GAS) <= number(ExperimentEntry.SUGAR_GAS_HIGH);
        if (!rises) {
            faults.add(new InvalidInput(name, "experiment.fault.sugar"));
        }
        List<Point> temperatures = course(ExperimentEntry.TEMPERATURE);
        List<Point> readings = course(ExperimentEntry.PRESSURE);
        double last = readings.get(readings.size() - 1).hours();
        if (temperatures.get(0).hours() > 24
                || temperatures.get(temperatures.size() - 1).hours() < last - 24) {
            faults.add(new InvalidInput(name, "experiment.fault.uncovered"));
        }
        if (tasteHours < last) {
            faults.add(new InvalidInput(name, "experiment.fault.after-taste"));
        }
    }

    private static String shortened(String text) {
        return text.length() > 40 ? text.substring(0, 40) + "…" : text;
    }
}
