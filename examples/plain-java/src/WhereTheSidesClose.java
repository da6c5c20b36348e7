import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Profile;
import culm.geometry.gouge.MiddleAndSide;
import culm.geometry.shape.MeasuredShape;
import culm.geometry.staple.StraightSidedOval;

public final class WhereTheSidesClose {
    public static void main(String[] arguments) {
        Blank blank = new BlankBuilder(Profile.standard(new StraightSidedOval()), Profile.standard(new MiddleAndSide()), Profile.standard(new MeasuredShape()))
                .set("staple.length", 47).set("staple.topWide", 3.38).set("staple.topNarrow", 2.09).set("gouge.middle", 0.60).set("gouge.side", 0.45)
                .set("shape.places[5].width", 4.83).set("tie.length", 72).set("tie.wrapTop", 46.5).build();
        Assessment a = Assessor.assess(blank);
        a.closing().problem().ifPresent(System.err::println);
        a.turnsBand().ifPresent(band -> System.out.printf("The sides close at %.1f mm with %.1f turns left, give or take %.1f.%n",
                a.sidesCloseAt().getAsDouble(), a.turnsLeft().getAsDouble(), band.half()));
    }
}
