package undercroft.session.watch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import undercroft.cellar.Cellar;
import undercroft.cellar.FollowedLog;
import undercroft.cellar.Place;
import undercroft.quantity.InvalidInput;
import undercroft.store.logger.Choices;
import undercroft.store.logger.FollowedFile;

/** The loggers' files that the places of a cellar follow. */
final class GrowingLogs implements AutoCloseable {
    private final Pending pending;
    private final Told told;
    private final Map<String, Followed> followed = new HashMap<>();

    private record Followed(FollowedLog log, FollowedFile file) {}

    GrowingLogs(Pending pending, Told told) {
        this.pending = pending;
        this.told = told;
    }

    /** Follows what the places follow now. */
    void look(Cellar cellar) {
        Set<String> wanted = new HashSet<>();
        for (Place place : cellar.places()) {
            place.followed().ifPresent(log -> {
                wanted.add(place.id());
                told.attempt("follow/" + place.id(), () -> follow(place, log));
            });
        }
        Set.copyOf(followed.keySet()).stream()
                .filter(id -> !wanted.contains(id))
                .forEach(this::leave);
    }

    private void follow(Place place, FollowedLog log) {
        try {
            Path path = Path.of(log.path());
            Followed now = followed.get(place.id());
            if (now == null || !now.log().equals(log)) {
                leave(place.id());
                FollowedFile file =
                        FollowedFile.follow(path, Choices.from(log), samples -> pending.add(place.id(), samples));
                followed.put(place.id(), new Followed(log, file));
            }
            if (!Files.exists(path)) {
                throw new InvalidInput("", "follow.fault.gone", place.name(), log.path());
            }
        } catch (IOException | InvalidPathException cannot) {
            throw new InvalidInput("", "follow.fault.folder", place.name(), log.path());
        }
    }

    private void leave(String placeId) {
        Followed left = followed.remove(placeId);
        if (left != null) {
            left.file().close();
        }
    }

    @Override
    public void close() {
        Set.copyOf(followed.keySet()).forEach(this::leave);
    }
}
