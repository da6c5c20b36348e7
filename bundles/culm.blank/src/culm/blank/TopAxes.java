package culm.blank;

import java.util.List;
import java.util.Optional;

import culm.geometry.profile.Parameter;
import culm.geometry.profile.TableParameter;
import culm.geometry.staple.StapleType;

/**
 * The two inputs that tell a staple's top from outside.
 *
 * @param wide   path of its wide axis
 * @param narrow path of its narrow axis
 */
public record TopAxes(String wide, String narrow) {
    /** Where a blank's staple tells them: as numbers of its own, or in the last of its measured places; empty when its type tells its top otherwise. */
    public static Optional<TopAxes> of(Blank blank) {
        StapleType type = blank.staple().type();
        if (ids(type.parameters()).containsAll(List.of("topWide", "topNarrow"))) {
            return Optional.of(new TopAxes("staple.topWide", "staple.topNarrow"));
        }
        if (type.tables().size() != 1 || !ids(type.tables().get(0).columns()).containsAll(List.of("wide", "narrow"))) {
            return Optional.empty();
        }
        TableParameter table = type.tables().get(0);
        int rows = blank.staple().values().table(table.id()).rows();
        String last = "staple." + table.id() + "[" + (rows - 1) + "].";
        return rows == 0 ? Optional.empty() : Optional.of(new TopAxes(last + "wide", last + "narrow"));
    }

    private static List<String> ids(List<Parameter> parameters) {
        return parameters.stream().map(Parameter::id).toList();
    }
}
