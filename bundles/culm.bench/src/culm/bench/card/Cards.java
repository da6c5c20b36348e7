package culm.bench.card;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

import culm.bench.batch.BatchPlan;
import culm.bench.batch.Served;
import culm.bench.batch.Setting;
import culm.bench.batch.StapleOnBlank;
import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.Blank;
import culm.blank.Inputs;
import culm.blank.Limits;
import culm.blank.rules.Finding;
import culm.blank.rules.Rules;
import culm.blank.rules.Verdict;
import culm.figures.Numbers;

/** Makes cards: for one design, for each staple of a batch, for each setting, or one for the whole class. */
public final class Cards {
    private final Limits limits;
    private final Rules rules;

    public Cards(Limits limits, Rules rules) {
        this.limits = limits;
        this.rules = rules;
    }

    /** The card of one blank. */
    public Card of(Blank blank, CardHead head) {
        return card(blank, head, List.of(), "");
    }

    private Card card(Blank blank, CardHead head, List<StapleLine> staples, String example) {
        Assessment a = Assessor.assess(blank);
        List<Finding> findings = rules.judge(a, limits);
        Verdict verdict = Verdict.of(a, findings);
        String sentence = Character.toUpperCase(verdict.sentence().charAt(0)) + verdict.sentence().substring(1) + ".";
        return new Card(head, CardNumbers.of(a, limits), staples.isEmpty() ? sentence : several(staples, a), verdict.sign() != Verdict.Sign.DOES_NOT, staples,
                blank.number(Inputs.STAPLE_LENGTH) - blank.number(Inputs.WRAP_TOP), blank.tolerance(Inputs.STAPLE_LENGTH).measured(), example);
    }

    private static String several(List<StapleLine> staples, Assessment a) {
        double low = staples.stream().mapToDouble(StapleLine::turnsLeft).min().orElseThrow();
        double high = staples.stream().mapToDouble(StapleLine::turnsLeft).max().orElseThrow();
        return "Sides close with " + Numbers.fixed(low, 1) + " to " + Numbers.fixed(high, 1) + " turns left"
                + a.turnsBand().map(b -> ", each give or take " + Numbers.fixed(b.half(), 1) + ".").orElse(".");
    }

    /** One card a staple, in the order of the settings. Blanks are numbered by their staples. */
    public List<Card> perStaple(Blank design, BatchPlan plan, CardHead head) {
        List<Card> cards = new ArrayList<>();
        for (Setting setting : plan.settings()) {
            for (Served served : setting.staples()) {
                cards.add(ofStaple(design, plan, served, head));
            }
        }
        return cards;
    }

    /** One card a setting: its staples in a list; the strip and the turns are those of its staple in the middle. */
    public List<Card> perSetting(Blank design, BatchPlan plan, CardHead head) {
        List<Card> cards = new ArrayList<>();
        for (int i = 0; i < plan.settings().size(); i++) {
            cards.add(ofSetting(design, plan, i, head));
        }
        return cards;
    }

    /** The card of one staple of a batch. */
    public Card ofStaple(Blank design, BatchPlan plan, Served served, CardHead head) {
        String label = served.staple().label();
        return of(blank(design, plan, served), head.withStaple(label).withNumber(label));
    }

    /** The card of one setting. @param number its place in the plan, from 0 */
    public Card ofSetting(Blank design, BatchPlan plan, int number, CardHead head) {
        Setting setting = plan.settings().get(number);
        int count = setting.staples().size();
        CardHead own = head.withStaple(count + (count == 1 ? " staple" : " staples")).withNumber("set " + (number + 1));
        Served middle = middle(setting.staples());
        return card(blank(design, plan, middle), own, lines(setting.staples()), middle.staple().label());
    }

    /** One card for all. @throws IllegalArgumentException when no staple is served */
    public Card forClass(Blank design, BatchPlan plan, CardHead head) {
        List<Served> all = plan.settings().stream().flatMap(s -> s.staples().stream()).collect(Collectors.toList());
        if (all.isEmpty()) {
            throw new IllegalArgumentException("No staple of the batch can be used; there is nothing to put on a card.");
        }
        String ties = plan.settings().stream().map(s -> Numbers.fixed(s.tie(), 1)).collect(Collectors.joining(", "));
        CardHead own = head.withStaple(all.size() + " in " + plan.settings().size() + (plan.settings().size() == 1 ? " setting" : " settings")).withNumber("class");
        Served middle = middle(all);
        return card(blank(design, plan, middle), new CardHead(own.design() + ": tie " + ties, own.madeFor(), own.instrument(), own.blankNumber(), own.staple(), own.caneBatch(),
                own.shape(), own.thread(), own.ends()), lines(all), middle.staple().label());
    }

    private static Served middle(List<Served> staples) {
        List<Served> ordered = staples.stream().sorted(Comparator.comparingDouble(Served::turnsLeft)).toList();
        return ordered.get(ordered.size() / 2);
    }

    private static List<StapleLine> lines(List<Served> staples) {
        return staples.stream().map(s -> new StapleLine(s.staple().label(), s.tie(), s.caneAbove(), s.wrapTop(), s.turnsLeft())).toList();
    }

    private static Blank blank(Blank design, BatchPlan plan, Served served) {
        return StapleOnBlank.put(design, served.staple(), plan.batch().caliper(), plan.batch().wrapBelowTop()).with(Inputs.TIE_LENGTH, served.tie());
    }
}
