package undercroft.cellar;

import undercroft.quantity.InvalidInput;

/**
 * Where a reading came from, as far as it was told; an empty text where it was not. Readings of one bottle share its
 * trapped air, those of one instrument its error, those of one taster their taste.
 *
 * @param bottle which bottle: a label of the user's, such as the number on its cap
 * @param instrument what it was read with
 * @param taster who judged it
 */
public record Origin(String bottle, String instrument, String taster) {
    public static final Origin UNTOLD = new Origin("", "", "");

    private static final int LONGEST = 120;

    public Origin {
        bottle = label("bottle", bottle);
        instrument = label("instrument", instrument);
        taster = label("taster", taster);
    }

    public static Origin instrument(String instrument) {
        return new Origin("", instrument, "");
    }

    private static String label(String where, String text) {
        String label = text == null ? "" : text.strip();
        if (label.length() > LONGEST) {
            throw new InvalidInput(where, "fault.too-long", 120);
        }
        return label;
    }
}
