package undercroft.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import undercroft.cellar.FollowedLog;
import undercroft.cellar.Place;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.logger.Choices;
import undercroft.store.logger.FollowedFile;
import undercroft.store.logger.ImportMerge;

/**
 * Takes in what the loggers of a workspace's places add to their files. Made and closed on the window's thread; files are
 * read and merged off it.
 */
public final class FollowedLogs implements AutoCloseable {
    private final Workspace workspace;
    private final BackgroundTasks tasks;
    private final Executor window;
    private final Consumer<InvalidInput> whenFaulty;
    private final Map<String, Followed> followed = new HashMap<>();
    private boolean closed;

    private record Followed(FollowedLog log, FollowedFile file) {}

    /**
     * Begins at once with what the places follow now.
     *
     * @param window the window's thread
     */
    public FollowedLogs(
            Workspace workspace, BackgroundTasks tasks, Executor window, Consumer<InvalidInput> whenFaulty) {
        this.workspace = workspace;
        this.tasks = tasks;
        this.window = window;
        this.whenFaulty = whenFaulty;
        workspace.stateProperty().addListener((property, before, after) -> {
            if (!before.cellar().places().equals(after.cellar().places())) {
                look();
            }
        });
        look();
    }

    private void look() {
        if (closed || workspace.lookOnly().isPresent()) {
            return;
        }
        Set<String> wanted = new HashSet<>();
        for (Place place : workspace.getCellar().places()) {
            place.followed().ifPresent(log -> {
                wanted.add(place.id());
                Followed now = followed.get(place.id());
                if (now == null || !now.log().equals(log)) {
                    leave(place.id());
                    follow(place, log);
                }
            });
        }
        Set.copyOf(followed.keySet()).stream()
                .filter(id -> !wanted.contains(id))
                .forEach(this::leave);
    }

    private void follow(Place place, FollowedLog log) {
        try {
            Path path = Path.of(log.path());
            if (!Files.exists(path)) {
                whenFaulty.accept(new InvalidInput("", "follow.fault.gone", place.name(), log.path()));
            }
            FollowedFile file = FollowedFile.follow(
                    path, Choices.from(log), samples -> window.execute(() -> take(place.id(), log, samples)));
            followed.put(place.id(), new Followed(log, file));
        } catch (IOException | InvalidPathException cannot) {
            whenFaulty.accept(new InvalidInput("", "follow.fault.folder", place.name(), log.path()));
        } catch (InvalidInput unknown) {
            whenFaulty.accept(unknown);
        }
    }

    private void take(String placeId, FollowedLog log, TimeSeries samples) {
        boolean wanted =
                followed.containsKey(placeId) && followed.get(placeId).log().equals(log);
        if (closed || !wanted) {
            return;
        }
        TimeSeries known = workspace.getState().temperatures().getOrDefault(placeId, TimeSeries.empty());
        tasks.run(
                () -> ImportMerge.of(known, samples),
                merge -> {
                    if (!merge.changesNothing() && !workspace.takeIn(placeId, known, merge.series())) {
                        take(placeId, log, samples);
                    }
                },
                whenFaulty);
    }

    private void leave(String placeId) {
        Followed left = followed.remove(placeId);
        if (left != null) {
            left.file().close();
        }
    }

    @Override
    public void close() {
        closed = true;
        Set.copyOf(followed.keySet()).forEach(this::leave);
    }
}
