package boltlore.resolution.rules;

import boltlore.catalogue.Hand;
import boltlore.catalogue.Role;
import boltlore.measure.LineName;
import boltlore.measure.PartNumber;
import boltlore.measure.PositionName;
import boltlore.resolution.Requirer;
import boltlore.resolution.Way;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** The facts that the rules read and the conclusions they draw: records, nothing else. */
public interface Facts {

    /** How many of a part, or how many lines at a position, are in the kit; a part's target is its number. */
    record Amount(String target, BigDecimal quantity) {

        /** What lines at that position are counted under: some names are a part's number and a position's name. */
        public static String linesAt(PositionName position) {
            return "lines at " + position.text();
        }
    }

    /** A thread, face or earth point of a coated part that is masked. */
    record BareFeature(Requirer part, String feature) {}

    /** What an asker brings that way, when the condition holds. */
    record Brings(Requirer asker, Way way, PartNumber part, ConditionKey condition) {}

    /** A line whose part is a cable of that length in mm. */
    record Cable(LineName line, Requirer asker, PositionName position, int lengthMm) {}

    /** The bracket line carries whatever is called for at that position. */
    record Carries(LineName bracket, PositionName position) {}

    /** That case asks for that position to be empty. */
    record CaseAsksEmpty(ConditionKey condition, int number, PositionName position) {}

    /** That case asks for that position to be filled. */
    record CaseAsksFilled(ConditionKey condition, int number, PositionName position) {}

    /** Concluded: something that the case asks for is not so. */
    record CaseFails(ConditionKey condition, int number) {}

    /** Concluded: this kit's sheet carries the caution. */
    record CautionOn(String sheet, String caution) {}

    /** The workshop wants that caution on that sheet. */
    record CautionStands(String caution, String sheet) {}

    /** The part is coated in the finish of that role; a fixed finish is its own role. */
    record Coated(Requirer part, PartNumber number, String role) {}

    /** One of the cases in which a condition holds. */
    record ConditionCase(ConditionKey condition, int number) {}

    /** Stands for a condition among the facts; conditions of which the choices leave the same open have one key. */
    record ConditionKey(int number) {

        /** Of conditions that the choices alone make true. */
        public static final ConditionKey ALWAYS = new ConditionKey(-1);

        /** Of conditions that the choices alone make false. */
        public static final ConditionKey NEVER = new ConditionKey(-2);
    }

    /** The position must be filled when the condition holds. */
    record Due(PositionName position, ConditionKey condition) {}

    /** The position should be filled only when the condition holds. */
    record DueOnly(PositionName position, ConditionKey condition) {}

    /** The chosen value in an electrical role with its facts; phases 0 and null where a fact is not known. */
    record Electric(
            Role role,
            String value,
            int phases,
            @Nullable BigDecimal amps,
            @Nullable BigDecimal volts,
            @Nullable String socket,
            @Nullable Boolean twoWay,
            @Nullable BigDecimal exportKw) {

        /** What the outlet can give: volts × amps in kW, or null where one is not known. */
        public @Nullable BigDecimal outletKw() {
            return volts == null || amps == null ? null : volts.multiply(amps).movePointLeft(3);
        }
    }

    /**
     * The asker expects at least that many of a part, or lines at a position, when the condition holds.
     *
     * @param target name for people
     * @param counted name of the {@link Amount} that tells it
     */
    record Expects(Requirer asker, String target, String counted, BigDecimal atLeast, ConditionKey condition) {}

    /** Concluded: some line of the position is called for. */
    record Filled(PositionName position) {}

    /**
     * A high-voltage connector of a part in the kit.
     *
     * @param blank empty where none is named
     * @param mayStayOpen whether it may stay open although mates and blanks close as many connectors as they can
     */
    record FittedPort(String part, String port, String blank, boolean mayStayOpen) {}

    /** Concluded: a part of that hand of the pair is in the kit. */
    record HandInKit(String pair, Hand hand) {}

    /** The part is that hand of that pair. */
    record HandedPart(Requirer part, String pair, Hand hand) {}

    /** Concluded: a bracket of that list is in the kit. */
    record Held(PositionName position, int list) {}

    /** One bracket of that list must hold the position; brackets names them for people. */
    record HeldByOneOf(PositionName position, int list, String brackets) {}

    /** The bracket line is in that list of the position. */
    record Holder(PositionName position, int list, Requirer bracket) {}

    /** The condition of that key holds. */
    record Holds(ConditionKey condition) {}

    /** Concluded: the line or the part is in the kit. */
    record InKit(Requirer asker) {}

    /** The language of labels and manual. */
    record LabelLanguage(String language) {}

    /** A loose cable for public charging points, with phases and A of each. */
    record Lead(String part, Requirer asker, int phases, BigDecimal amps) {}

    /** A line that the choices do not rule out; it is called for when its condition holds. */
    record LineOffered(LineName line, PositionName position, boolean bracket, ConditionKey condition) {

        public Requirer asker() {
            return new Requirer.OfLine(line);
        }
    }

    /** Concluded: the line's condition holds. */
    record LineSelected(LineName line, PositionName position, boolean bracket) {}

    /** It is known which sockets, inlets or languages that market uses. */
    record MarketLists(String market, Use kind) {}

    /** The market uses that socket, inlet or language. */
    record MarketUses(Use kind, String name) {}

    /** What a market has of its own. */
    enum Use {
        SOCKET,
        INLET,
        LANGUAGE
    }

    /** The coating shop holds a mask for that kind and size of feature. */
    record MaskHeld(String feature) {}

    /**
     * A stage, said as a fact: all lines that the order leaves out have been stated. Which brackets are unused the rules have
     * to say first, from all lines that are called for; nothing joins the kit before only to be withdrawn.
     */
    record OmissionsStageDone() {}

    /** The position takes one line. */
    record OneLineOnly(PositionName position) {}

    /** How many left and right parts of a pair that ships both are in the kit. */
    record PairCount(String pair, BigDecimal left, BigDecimal right) {

        public boolean equal() {
            return left.compareTo(right) == 0;
        }
    }

    /** One hand of the pair ships: this one; it must be there when the condition holds. */
    record PairFollows(String pair, Hand wanted, Hand other, ConditionKey condition) {}

    /** The part calls for that caution. */
    record PartCaution(Requirer part, String caution) {}

    /** A part at whose picking the rules must look: it has no bin of its own, or it is taken apart for picking. */
    record PickWatched(Requirer part, PartNumber number) {}

    /** A part that stores hand out as it is: a leaf, a stocked, a welded or a coated assembly. */
    record PickedWhole(Requirer part, boolean hasBin) {}

    /** The finish that the order chose, or the family fixed, for the role. */
    record RoleFinish(String role, String finish, boolean ownOven) {}

    /** A cable at that position is at least and at most so long, in mm, when the condition holds. */
    record RouteWindow(PositionName position, int leastMm, int mostMm, ConditionKey condition) {

        public String window() {
            return leastMm + " to " + mostMm + " mm";
        }
    }

    /** The order leaves that line out. */
    record StaysOut(LineName line) {}

    /** Concluded: the part takes that finish. */
    record TakesFinish(PartNumber part, String finish) {}

    /** Concluded: stores come upon the part outside anything that is picked whole. */
    record ToPick(Requirer part) {}

    /** The position hangs on its parent position. */
    record Under(PositionName position, PositionName parent) {}

    /** Concluded: the bracket is in the kit and carries nothing in it. */
    record Unused(LineName bracket) {}

    /** Whether the order has decided what becomes of unused brackets. */
    record UnusedBrackets(boolean decided) {}

    /** Concluded: the bracket carries something in this kit. */
    record Useful(LineName bracket) {}
}
