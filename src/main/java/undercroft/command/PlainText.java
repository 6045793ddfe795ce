package undercroft.command;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.PrintWriter;

/**
 * What goes to a console, without the characters that steer it: a cellar or a file name may come from a stranger, and an
 * escape sequence in it could move the cursor, rename the window or hide what was printed (CWE-150). Line ends and tabs
 * stay; other control characters and marks that turn the direction of what follows become U+FFFD.
 */
final class PlainText extends FilterWriter {
    private final PrintWriter console;

    private PlainText(PrintWriter console) {
        super(console);
        this.console = console;
    }

    static PrintWriter on(PrintWriter out) {
        return out instanceof Plain ? out : new Plain(new PlainText(out));
    }

    /** A console that is looked after already. */
    private static final class Plain extends PrintWriter {
        Plain(PlainText out) {
            super(out);
        }
    }

    @Override
    public void write(int c) throws IOException {
        out.write(isPlain(c) ? c : 0xFFFD);
    }

    @Override
    public void write(char[] text, int from, int count) throws IOException {
        for (int i = from; i < from + count; i++) {
            write(text[i]);
        }
    }

    @Override
    public void write(String text, int from, int count) throws IOException {
        for (int i = from; i < from + count; i++) {
            write(text.charAt(i));
        }
    }

    /** Hands on what the console kept to itself: that it could not be written to. */
    @Override
    public void flush() throws IOException {
        if (console.checkError()) {
            throw new IOException("the console could not be written to");
        }
    }

    private static boolean isPlain(int c) {
        boolean control = (c < 0x20 && c != '\n' && c != '\r' && c != '\t') || (c >= 0x7F && c < 0xA0);
        boolean turns = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
        return !control && !turns;
    }
}
