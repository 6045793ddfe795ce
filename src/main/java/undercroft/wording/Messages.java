package undercroft.wording;

import java.text.Format;
import java.text.MessageFormat;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.ResourceBundle;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import undercroft.catalogue.Listed;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Phrase;
import undercroft.quantity.UnitSystem;

/**
 * All sentences of one language, by key. The first word of a key names the bundle it stands in: {@code batch.figure.light}
 * is a line of {@code batch.properties}. A language is spoken when its bundles lie beside the English ones, which are
 * complete; anybody else hears English, numbers and dates included, so that no page is in two languages.
 */
public final class Messages {
    private static final int LONGEST_FAULT = 2_000;

    /** Line ends, control characters, and what turns the direction of writing. */
    private static final Pattern STEERING =
            Pattern.compile("[\\p{Cntrl}\\u0085\\u2028\\u2029\\u202a-\\u202e\\u2066-\\u2069]+");

    /** English as it is written here: British, which also settles the order of dates. */
    private static final Locale ENGLISH = Locale.UK;

    private static final String FOLDER = "undercroft.wording.";
    /** The bundle every language has: it tells which languages are spoken. */
    private static final String LEAST = "quantity";

    private static final Pattern KEY = Pattern.compile("([a-z][a-z0-9-]*)(?:\\.[a-z0-9-]+)+");
    /** The system's own language must never stand in for a missing one. */
    private static final ResourceBundle.Control NO_FALLBACK =
            ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);

    private final Locale locale;
    private final Map<String, ResourceBundle> bundles = new ConcurrentHashMap<>();

    private Messages(Locale locale) {
        this.locale = locale;
    }

    /** The sentences in the language asked for, or in English where it is not spoken. */
    public static Messages in(Locale asked) {
        boolean spoken = bundle(LEAST, asked).getLocale().getLanguage().equals(asked.getLanguage());
        return new Messages(spoken && !asked.getLanguage().isEmpty() ? asked : ENGLISH);
    }

    private static ResourceBundle bundle(String name, Locale locale) {
        return ResourceBundle.getBundle(FOLDER + name, locale, Messages.class.getClassLoader(), NO_FALLBACK);
    }

    /** The sentences of JSON and CSV, which are in English for every reader. */
    public static Messages english() {
        return new Messages(ENGLISH);
    }

    /** The language, with its country's numbers and dates. */
    public Locale locale() {
        return locale;
    }

    /**
     * The sentence, its arguments set in.
     *
     * @param arguments texts, numbers (which also choose between one and many), enum constants, entries of the
     *     catalogue, phrases, lists of them; quantities are best worded before, since only {@link QuantityFormat} knows
     *     the units
     */
    public String of(String key, Object... arguments) {
        return formatted(pattern(key), UnitSystem.METRIC, arguments);
    }

    /** A phrase that a room below has handed on, quantities in it in metric units. */
    public String of(Phrase phrase) {
        return of(phrase, UnitSystem.METRIC);
    }

    String of(Phrase phrase, UnitSystem units) {
        Object[] arguments = phrase.arguments().toArray();
        return has(phrase.key()) ? formatted(pattern(phrase.key()), units, arguments) : phrase.key();
    }

    /** Whether there is a sentence with the key. */
    public boolean has(String key) {
        return KEY.matcher(key).matches() && isBundle(key) && bundleOf(key).containsKey(key);
    }

    /** What a person calls it: an entry of the catalogue, or a constant. A user's own entry has its own name. */
    public String name(Listed one) {
        String key = "name." + Keys.type(one.getClass()) + "." + one.id();
        return has(key) ? of(key) : one.label();
    }

    /** What a person calls a constant. */
    public String nameOf(Enum<?> one) {
        return one instanceof Listed listed
                ? name(listed)
                : of(Keys.of("name." + Keys.type(one.getDeclaringClass()), one));
    }

    /** What is wrong and what to do, without the place. */
    public String what(InvalidInput fault) {
        return oneLine(of(fault.phrase()));
    }

    /** A sentence may name what a stranger wrote: it stays one line, goes one way, and does not fill the screen. */
    private static String oneLine(String sentence) {
        String line = STEERING.matcher(sentence).replaceAll(" ");
        return line.length() <= LONGEST_FAULT
                ? line
                : line.substring(0, line.offsetByCodePoints(0, LONGEST_FAULT / 2)) + "…";
    }

    /** Where it stands, what is wrong and what to do. */
    public String fault(InvalidInput fault) {
        return fault.where().isEmpty() ? what(fault) : oneLine(of("fault.placed", fault.where(), what(fault)));
    }

    /** The words as a sentence of their own: a capital first, a full stop last unless there is a mark already. */
    public String sentence(String words) {
        String begun = capital(words);
        return begun.isEmpty() || ".!?…".indexOf(begun.charAt(begun.length() - 1)) >= 0
                ? begun
                : of("fault.plain", begun);
    }

    /** The words with a capital first. */
    public String capital(String words) {
        if (words.isEmpty()) {
            return words;
        }
        int first = words.offsetByCodePoints(0, 1);
        return words.substring(0, first).toUpperCase(locale) + words.substring(first);
    }

    /** {@code a, b and c}. */
    public String list(List<String> parts) {
        if (parts.size() < 2) {
            return String.join("", parts);
        }
        String first = parts.get(0);
        for (String next : parts.subList(1, parts.size() - 1)) {
            first = of("list.more", first, next);
        }
        return of("list.last", first, parts.get(parts.size() - 1));
    }

    /** The lines of one bundle as they stand, for a library that fills them in itself. */
    public ResourceBundle bundle(String name) {
        return bundle(name, locale);
    }

    private String pattern(String key) {
        if (!has(key)) {
            throw new MissingResourceException("no sentence has the key " + key, Messages.class.getName(), key);
        }
        return bundleOf(key).getString(key);
    }

    private boolean isBundle(String key) {
        return Messages.class.getResource(bundleName(key) + ".properties") != null;
    }

    private ResourceBundle bundleOf(String key) {
        return bundles.computeIfAbsent(bundleName(key), name -> bundle(name, locale));
    }

    private static String bundleName(String key) {
        return key.substring(0, key.indexOf('.'));
    }

    private String formatted(String pattern, UnitSystem units, Object... arguments) {
        MessageFormat format = new MessageFormat(pattern, locale);
        Format[] asked = format.getFormatsByArgumentIndex();
        Object[] said = new Object[arguments.length];
        for (int i = 0; i < said.length; i++) {
            boolean plain = arguments[i] instanceof Double && (i >= asked.length || asked[i] == null);
            said[i] = plain ? new Figures(locale).plain((Double) arguments[i]) : said(arguments[i], units);
        }
        return format.format(said);
    }

    /** An argument as it is put into its sentence; numbers stay numbers, so that they can choose the plural. */
    private Object said(Object argument, UnitSystem units) {
        if (argument instanceof Phrase phrase) {
            return of(phrase, units);
        }
        if (argument instanceof InvalidInput fault) {
            return of(fault.phrase(), units);
        }
        if (argument instanceof Listed listed) {
            return name(listed);
        }
        if (argument instanceof Enum<?> constant) {
            return nameOf(constant);
        }
        if (argument instanceof List<?> parts) {
            return parts.stream()
                    .map(part -> String.valueOf(said(part, units)))
                    .reduce((first, next) -> of("list.more", first, next))
                    .orElse("");
        }
        return argument instanceof Number
                ? argument
                : String.valueOf(QuantityArgument.worded(argument, QuantityFormat.of(this, units, ZoneOffset.UTC)));
    }
}
