package undercroft.app.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import undercroft.wording.Messages;

/** Fields that belong together, each known by the path under which the cellar's checks speak of it. */
public abstract class Group {
    private final List<Field<?>> fields = new ArrayList<>();
    private final Map<String, Field<?>> byPath = new LinkedHashMap<>();
    private final Map<String, Rows<?>> rowsByPath = new LinkedHashMap<>();
    private final Messages messages;
    private Runnable onChange = () -> {};

    protected Group(Messages messages) {
        this.messages = messages;
    }

    /** The language of the labels, hints and faults. */
    public final Messages messages() {
        return messages;
    }

    public final <F extends Field<?>> F add(F field, String... paths) {
        fields.add(field);
        for (String path : paths) {
            byPath.put(path, field);
        }
        field.listen(this::changed);
        return field;
    }

    public final <R extends Group> Rows<R> addRows(String path) {
        Rows<R> rows = new Rows<>(this::changed);
        rowsByPath.put(path, rows);
        return rows;
    }

    final void listen(Runnable listener) {
        onChange = listener;
    }

    protected final void changed() {
        onChange.run();
    }

    /** Every field in order, those of rows last. */
    public final List<Field<?>> allFields() {
        List<Field<?>> all = new ArrayList<>(fields);
        rowsByPath.values().forEach(rows -> rows.list().forEach(row -> all.addAll(row.allFields())));
        return all;
    }

    /** The field a checked path such as {@code lots[1].count} belongs to: the one with the longest path it begins with. */
    final Optional<Field<?>> at(String where) {
        for (Map.Entry<String, Rows<?>> entry : rowsByPath.entrySet()) {
            String opening = entry.getKey() + "[";
            int close = where.indexOf(']');
            if (where.startsWith(opening) && close > 0) {
                int index = Integer.parseInt(where.substring(opening.length(), close));
                String rest = where.substring(close + 1).replaceFirst("^\\.", "");
                if (index < entry.getValue().list().size()) {
                    return entry.getValue().list().get(index).at(rest);
                }
            }
        }
        return byPath.entrySet().stream()
                .filter(entry -> where.equals(entry.getKey())
                        || where.startsWith(entry.getKey() + ".")
                        || where.startsWith(entry.getKey() + "["))
                .max(Map.Entry.comparingByKey(Comparator.comparingInt(String::length)))
                .map(Map.Entry::getValue);
    }
}
