package undercroft.wording;

import java.util.Locale;

/** How constants and types are written in a key. */
public final class Keys {
    private Keys() {}

    /** {@code task.what} and {@code Kind.MOVE_THERE} make {@code task.what.move-there}. */
    public static String of(String beginning, Enum<?> constant) {
        return beginning + "." + constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@code GlassColour} makes {@code glass-colour}, {@code Draw.Fate} makes {@code draw-fate}. */
    static String type(Class<?> given) {
        Class<?> type = given;
        // A constant with a body of its own has a class of its own.
        if (!type.isEnum()
                && type.getSuperclass() != null
                && type.getSuperclass().isEnum()) {
            type = type.getSuperclass();
        }
        String name =
                type.getSimpleName().replaceAll("(?<=[a-z0-9])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
        return type.getEnclosingClass() == null ? name : type(type.getEnclosingClass()) + "-" + name;
    }
}
