package undercroft.app.form;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import undercroft.quantity.InvalidInput;

/** A time zone as typed: its full name, such as {@code Europe/London}, or the town alone. */
public final class ZoneText {
    private ZoneText() {}

    /**
     * Reads it.
     *
     * @param where what a fault is put down to
     */
    public static ZoneId parse(String where, String text) {
        String typed = text.strip().replace(' ', '_');
        List<String> towns = new TreeSet<>(ZoneId.getAvailableZoneIds())
                .stream()
                        .filter(id -> town(id).equals(typed.toLowerCase(Locale.ROOT)))
                        .toList();
        try {
            return ZoneId.of(towns.size() == 1 ? towns.get(0) : typed);
        } catch (DateTimeException unknown) {
            throw new InvalidInput(where, "form.fault.zone", text.strip());
        }
    }

    private static String town(String id) {
        return id.substring(id.lastIndexOf('/') + 1).toLowerCase(Locale.ROOT);
    }
}
