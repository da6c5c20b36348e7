package culm.blank;

import java.util.Optional;

import culm.geometry.gouge.Gouge;
import culm.geometry.shape.ShapeWidth;
import culm.geometry.staple.Staple;

/**
 * The geometry of a blank's parts, mm.
 *
 * @param staple       outside and wall
 * @param gouge        tube and thickness
 * @param width        width of the cane as cut
 * @param inside       inside width, for edges of the kind "two widths"
 * @param foldedLength from the fold to the end of the cane
 */
public record Parts(Staple staple, Gouge gouge, ShapeWidth width, Optional<ShapeWidth> inside, double foldedLength) {
}
