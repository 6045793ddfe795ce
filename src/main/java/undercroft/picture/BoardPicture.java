package undercroft.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import undercroft.outlook.lot.Alert;
import undercroft.plot.mark.Anchor;
import undercroft.plot.mark.Frame;
import undercroft.plot.mark.Mark;
import undercroft.plot.mark.Pen;
import undercroft.plot.mark.Points;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.plot.mark.TextMeasure;
import undercroft.plot.mark.TextStyle;
import undercroft.plot.scale.TickLadder;
import undercroft.plot.scale.TimeScale;
import undercroft.plot.scale.TimeTick;
import undercroft.wording.AlertWords;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/**
 * The board of spells as a picture: names on the left, a bar for each spell along the row of its batch, at its beginning
 * the sign of its alert and, where there is room, the word for it.
 */
public final class BoardPicture {
    /** Height of a row in pixels. */
    public static final double ROW = 30;

    private static final double AXIS = 26;
    private static final double NAME_SHARE = 0.24;
    private static final double NAME_MOST = 190;
    private static final double RIGHT = 12;
    private static final double BAR = 12;
    private static final double LEAST_BAR = 5;
    private static final double SIGN = 5;
    private static final double REACH = 4;
    private static final double PIXELS_A_TICK = 76;

    private final List<Mark> marks = new ArrayList<>();
    private final List<Spot> spots = new ArrayList<>();
    private final TextMeasure measure;
    private final Messages messages;
    private final TimeScale time;
    private final double width;

    private record Spot(Frame frame, SpellBoard.Mark mark) {}

    private BoardPicture(double width, double left, SpellBoard board, Messages messages, TextMeasure measure) {
        this.width = width;
        this.measure = measure;
        this.messages = messages;
        this.time =
                new TimeScale(board.fromInclusive(), board.untilExclusive(), left, Math.max(left + 40, width - RIGHT));
    }

    /** Height a board wants, in pixels. */
    public static double height(SpellBoard board) {
        return board.rows().size() * ROW + AXIS;
    }

    /** Lays the board out in a width; {@code chosen} may be null. */
    public static BoardPicture of(
            SpellBoard board, SpellBoard.Mark chosen, double width, QuantityFormat format, TextMeasure measure) {
        double left = Math.min(NAME_MOST, Math.floor(width * NAME_SHARE));
        BoardPicture picture = new BoardPicture(width, left, board, format.messages(), measure);
        List<TimeTick> ticks = TickLadder.ticks(
                board.fromInclusive(),
                board.untilExclusive(),
                format.zone(),
                format.messages().locale(),
                Math.max(2, (int) ((width - left) / PIXELS_A_TICK)));
        double bottom = board.rows().size() * ROW;
        for (TimeTick tick : ticks) {
            double x = Math.floor(picture.time.xAt(tick.epochSecond())) + 0.5;
            picture.line(x, 0, x, bottom, Role.GRID);
            double half = measure.width(tick.label(), TextStyle.TICK) / 2;
            if (x - half > left - 20 && x + half < width) {
                TextStyle style = tick.major() ? TextStyle.LABEL : TextStyle.TICK;
                picture.text(tick.label(), x, bottom + 18, Anchor.MIDDLE, style, Role.FAINT_INK);
            }
        }
        for (int row = 0; row < board.rows().size(); row++) {
            picture.row(board.rows().get(row), row * ROW, left, chosen);
        }
        return picture;
    }

    private void row(SpellBoard.Row row, double top, double left, SpellBoard.Mark chosen) {
        double middle = top + ROW / 2;
        boolean isChosen =
                chosen != null && row.batchId().equals(chosen.impact().batchId());
        line(0, top + ROW - 0.5, width, top + ROW - 0.5, Role.GRID);
        text(
                measure.fitted(row.name(), TextStyle.NOTE, left - 14),
                2,
                middle + 4,
                Anchor.START,
                isChosen ? TextStyle.TITLE : TextStyle.NOTE,
                Role.INK);
        for (int i = 0; i < row.marks().size(); i++) {
            SpellBoard.Mark mark = row.marks().get(i);
            double next = i + 1 < row.marks().size()
                    ? time.xAt(row.marks().get(i + 1).impact().since().getEpochSecond())
                    : width;
            bar(mark, middle, next, chosen != null && mark.isSameAs(chosen));
        }
    }

    private void bar(SpellBoard.Mark mark, double middle, double next, boolean isChosen) {
        double from = time.xAt(mark.impact().since().getEpochSecond());
        double length = Math.max(LEAST_BAR, time.xAt(mark.impact().until().getEpochSecond()) - from);
        Role role = role(mark);
        Frame frame = new Frame(from, middle - BAR / 2, length, BAR);
        if (isChosen) {
            Frame around = new Frame(
                    from - REACH - SIGN, middle - BAR / 2 - REACH, length + 2 * REACH + SIGN, BAR + 2 * REACH);
            marks.add(new Mark.Rect(around, 5, role, 0.22));
            outline(around, Role.INK);
        }
        marks.add(new Mark.Rect(frame, 3, role, mark.spell().certain() ? 0.55 : 0.28));
        if (!mark.spell().certain()) {
            outline(frame, role);
        }
        marks.add(new Mark.Marker(
                AlertSigns.shape(mark.impact().alert()),
                from,
                middle,
                SIGN,
                mark.impact().alert() == Alert.ACT ? role : Role.PAPER,
                role));
        String word = new AlertWords(messages).word(mark.impact().alert());
        double wordAt = from + Math.max(length, SIGN) + 6;
        if (!word.isEmpty() && wordAt + measure.width(word, TextStyle.TICK) + 10 < Math.min(next, width)) {
            text(word, wordAt, middle + 4, Anchor.START, TextStyle.TICK, wordRole(mark));
        }
        Frame touch = new Frame(from - SIGN - 2, middle - ROW / 2, length + SIGN + 4, ROW);
        spots.add(new Spot(touch, mark));
    }

    private static Role role(SpellBoard.Mark mark) {
        return switch (mark.impact().alert()) {
            case ACT -> Role.LIMIT;
            case WATCH -> Role.SPELL;
            case CLEAR -> mark.spell().warm() ? Role.READY : Role.ROOM;
        };
    }

    private static Role wordRole(SpellBoard.Mark mark) {
        return mark.impact().alert() == Alert.CLEAR ? Role.FAINT_INK : role(mark);
    }

    private void outline(Frame frame, Role role) {
        marks.add(new Mark.Polyline(
                Points.of(
                        frame.x(),
                        frame.y(),
                        frame.right(),
                        frame.y(),
                        frame.right(),
                        frame.bottom(),
                        frame.x(),
                        frame.bottom(),
                        frame.x(),
                        frame.y()),
                Stroke.of(role, 1)));
    }

    private void line(double x1, double y1, double x2, double y2, Role role) {
        marks.add(new Mark.Polyline(Points.of(x1, y1, x2, y2), Stroke.of(role, 1)));
    }

    private void text(String text, double x, double y, Anchor anchor, TextStyle style, Role role) {
        marks.add(new Mark.Text(text, x, y, anchor, style, role, false));
    }

    public void drawWith(Pen pen) {
        marks.forEach(mark -> mark.drawWith(pen));
    }

    /** The spell under a point. */
    public Optional<SpellBoard.Mark> at(double x, double y) {
        Optional<SpellBoard.Mark> found = Optional.empty();
        for (Spot spot : spots) {
            if (spot.frame().contains(x, y)) {
                found = Optional.of(spot.mark());
            }
        }
        return found;
    }

    /** Where a spell stands on the picture. */
    public Optional<Frame> frameOf(SpellBoard.Mark mark) {
        return spots.stream()
                .filter(spot -> spot.mark().isSameAs(mark))
                .map(Spot::frame)
                .findFirst();
    }
}
