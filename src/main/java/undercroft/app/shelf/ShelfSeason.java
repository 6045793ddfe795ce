package undercroft.app.shelf;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import undercroft.outlook.CellarOutlook;
import undercroft.picture.Season;
import undercroft.picture.SeasonRow;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/** The season of what stands on the drawn shelf, in its order: a lane for each plank, in it the rows of each crate. */
public record ShelfSeason(Season season) {
    /** {@code clock} is the present moment, whatever instant the shelf is seen at. */
    public static ShelfSeason of(CellarOutlook outlook, ShelfPlan plan, Messages messages, Instant clock) {
        Season whole = Season.whole(ShelfWords.of(outlook, messages), clock);
        List<Season.Lane> lanes = new ArrayList<>();
        for (ShelfPlan.Plank plank : plan.planks()) {
            whole.lanes().stream()
                    .filter(lane -> lane.placeId().equals(plank.placeId()))
                    .forEach(lane -> lanes.add(new Season.Lane(
                            lane.placeId(), lane.name(), lane.celsius(), lane.spells(), rows(lane, plank))));
        }
        return new ShelfSeason(whole.with(lanes));
    }

    private static List<SeasonRow> rows(Season.Lane lane, ShelfPlan.Plank plank) {
        List<SeasonRow> rows = new ArrayList<>();
        for (ShelfPlan.Crate crate : plank.crates()) {
            lane.rows().stream()
                    .filter(row -> row.batchId().equals(crate.batchId()))
                    .forEach(rows::add);
        }
        return rows;
    }

    /** How many rows a crate has: one for each of its lots, and one while it is not known yet. */
    public int rows(ShelfPlan.Crate crate) {
        return crate.pending()
                ? 1
                : (int) season.lanes().stream()
                        .filter(lane -> lane.placeId().equals(crate.placeId()))
                        .flatMap(lane -> lane.rows().stream())
                        .filter(row -> row.batchId().equals(crate.batchId()))
                        .count();
    }
}
