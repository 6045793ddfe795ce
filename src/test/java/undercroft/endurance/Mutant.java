package undercroft.endurance;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** Makes odd texts of sound ones: cut, doubled, swapped, with other numbers, signs and bytes. The same seed makes the same. */
final class Mutant {
    private static final Pattern NUMBER = Pattern.compile("-?\\d+(?:[.,]\\d+)?");
    private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z-]*");

    private static final List<String> NUMBERS = List.of(
            "0",
            "-0",
            "-1",
            "1e308",
            "1e-320",
            "9".repeat(40),
            "1E+99999",
            "0x10",
            "NaN",
            "Infinity",
            "-2147483649",
            "1.7976931348623159e308",
            "00012",
            "1,5",
            "1.234,5",
            "١٢",
            "½",
            "2026-02-30",
            "99:99",
            "+5",
            ".5",
            "5.");

    private static final List<String> PIECES = List.of(
            "\u0000",
            "\u001b[2J",
            "\u202e",
            "\ufeff",
            "🍺",
            "\r\n",
            "\n\n",
            "\t",
            ";",
            ",",
            "\"",
            "'",
            "\\",
            "/../",
            "${x}",
            "{}",
            "[]",
            "[[[[[[[[",
            "}}}}",
            "null",
            "true",
            "=1+1",
            "@",
            "--",
            "%n",
            "{0}",
            "<b>",
            "&",
            "ß",
            "Ö",
            "-",
            " ",
            "\u00a0",
            "°F",
            "\ud800");

    private final SplittableRandom random;

    Mutant(long seed) {
        this.random = new SplittableRandom(seed);
    }

    int below(int bound) {
        return random.nextInt(bound);
    }

    <T> T oneOf(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }

    /** One to six changes of a text. */
    String of(String sound) {
        String text = sound;
        int times = 1 + random.nextInt(6);
        for (int i = 0; i < times; i++) {
            text = once(text);
        }
        return text;
    }

    byte[] bytesOf(String sound) {
        byte[] bytes = of(sound).getBytes(StandardCharsets.UTF_8);
        if (bytes.length > 0 && random.nextInt(4) == 0) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return bytes;
    }

    private String once(String text) {
        if (text.isEmpty()) {
            return oneOf(PIECES);
        }
        int at = random.nextInt(text.length());
        int until = Math.min(text.length(), at + 1 + random.nextInt(1 + Math.min(40, text.length())));
        return switch (random.nextInt(8)) {
            case 0 -> text.substring(0, at) + text.substring(until);
            case 1 -> text.substring(0, until) + text.substring(at);
            case 2 -> text.substring(0, at) + oneOf(PIECES) + text.substring(at);
            case 3 -> text.substring(0, at);
            case 4 -> swapped(text, WORD);
            case 5 -> text.substring(0, at) + oneOf(PIECES).repeat(1 + random.nextInt(50)) + text.substring(until);
            default -> renumbered(text);
        };
    }

    private String renumbered(String text) {
        List<MatchResult> numbers = NUMBER.matcher(text).results().toList();
        if (numbers.isEmpty()) {
            return text + oneOf(NUMBERS);
        }
        MatchResult one = oneOf(numbers);
        return text.substring(0, one.start()) + oneOf(NUMBERS) + text.substring(one.end());
    }

    /** Two words change places. */
    private String swapped(String text, Pattern pattern) {
        List<MatchResult> words =
                new ArrayList<>(pattern.matcher(text).results().toList());
        if (words.size() < 2) {
            return text;
        }
        int i = random.nextInt(words.size() - 1);
        MatchResult one = words.get(i);
        MatchResult other = words.get(i + 1 + random.nextInt(words.size() - i - 1));
        return text.substring(0, one.start())
                + other.group()
                + text.substring(one.end(), other.start())
                + one.group()
                + text.substring(other.end());
    }
}
