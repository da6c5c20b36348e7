package culm.design;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import culm.model.text.Located;

/** Where in a file each input of a blank stands, by input path. */
public final class Places {
    /** A place in a file: the file's name for messages and the line, 0 when unknown. */
    public record Place(String file, int line) {
    }

    private final Map<String, Place> places = new LinkedHashMap<>();

    void put(String path, String file, EObject element) {
        places.put(path, new Place(file, Located.lineOf(element)));
    }

    /** The place of an input; for a path without one, that of the nearest thing around it ({@code shape.places[3].width}, then the row, the table, the part). */
    public Optional<Place> of(String path) {
        for (String at = path; !at.isEmpty(); at = around(at)) {
            Place place = places.get(at);
            if (place != null) {
                return Optional.of(place);
            }
        }
        return Optional.empty();
    }

    private static String around(String path) {
        int cut = Math.max(path.lastIndexOf('.'), path.lastIndexOf('['));
        return cut < 0 ? "" : path.substring(0, cut);
    }
}
