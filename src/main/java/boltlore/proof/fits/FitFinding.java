package boltlore.proof.fits;

import static boltlore.findings.Severity.CHECK;
import static boltlore.findings.Severity.NOTE;
import static boltlore.findings.Severity.STOP;

import boltlore.catalogue.Condition;
import boltlore.findings.Finding;
import boltlore.findings.Kind;
import boltlore.findings.Severity;
import boltlore.measure.LineName;
import java.util.List;
import java.util.Optional;

/** What does not fit together in a kit: of some valid order where it is proved, of one order where its kit is made. */
public enum FitFinding implements Kind {
    /** Nothing stands at {position}, through which {run} goes. */
    NOTHING_ON_THE_WAY("path or circuit broken", STOP),
    /** Two ports meet that do not mate: {from}, {to}, {run}; each is a {@link #PORT} or so. */
    NEIGHBOURS_APART("path or circuit broken", STOP),
    /** {flows} of {unit} (0 V, 1 A, 2 phases) go through {port} of {part} on {run}, which is rated for {rated}. */
    PORT_BELOW_WHAT_FLOWS("port below what flows", STOP),
    /**
     * {port} of {part} is rated {rated} of {unit}, and its {device} (0 inlet, 1 charger, 2 V2L outlet, 3 inlet on direct
     * current) is said to be of {declared}.
     */
    PORT_UNLIKE_ITS_DEVICE("port unlike its device", STOP),
    /** {value} can be chosen, and no path joins its {device}: 0 inlet, 1 charger, 2 V2L outlet, 3 inlet for direct current. */
    DEVICE_WITHOUT_PATH("device without its path", STOP),
    /** {port} at {position} is joined to nothing. */
    PORT_LEADS_NOWHERE("port leads nowhere", STOP),
    /** More ports are joined to nothing than there are of {blank}, which closes {ports}. */
    BLANKS_TOO_FEW("port leads nowhere", STOP),
    /** More is joined to {port} at {position} than there are of it. */
    PORT_TAKEN_TWICE("port taken twice", STOP),
    /** {circuit} cannot be filled at {position}. */
    CIRCUIT_CANNOT_BE_FILLED("circuit cannot be filled", STOP),
    /** {circuit} cannot be bled at {position}. */
    CIRCUIT_CANNOT_BE_BLED("circuit cannot be bled", STOP),
    /** {many} of {inside} lie in {outside}, which takes {fits}. */
    CONTENTS_DO_NOT_FIT("contents do not fit", STOP),
    /** {many} of {inside} lie in {outside}, and one of the sizes is not known. */
    CONTENTS_OF_UNKNOWN_SIZE("contents do not fit", STOP),
    /** {part} of {length} mm stands between flanges {apart} mm apart and slides by {slide} mm. */
    SHAFT_DOES_NOT_REACH("shaft does not reach", STOP),
    /** The length of {part} is not known. */
    SHAFT_OF_UNKNOWN_LENGTH("shaft does not reach", STOP),
    /** {part}, a shaft, is held against no flanges. */
    SHAFT_NOT_NAMED("shaft does not reach", STOP),
    /** Nobody says where a flange of {part} stands: {end}, 0 in front, 1 behind. */
    FLANGE_STANDS_NOWHERE("shaft does not reach", STOP),
    /** There is another quantity of {what}, which holds something heavy or live, than follows: {because}. */
    SAFETY_QUANTITY_DOES_NOT_FOLLOW("safety quantity does not follow", STOP),
    /** There is another quantity of {what} than follows: {because}. */
    QUANTITY_DOES_NOT_FOLLOW("quantity does not follow", CHECK),
    /** {branch} is there, and {part}, which is its {fuse} or holds it, is not; {end}: 0 where it is fed, 1 at its other end. */
    BRANCH_WITHOUT_ITS_FUSE("branch without its fuse", STOP),
    /** {branch} hangs on what {feeds} it by {run} (0 pack, 1 12 V battery, 2 mains, 3 charger), and electrics.json has {said}. */
    BRANCH_FED_BY_ANOTHER("branch against its path", STOP),
    /** {other} lies behind {branch}, which does not name it ({name}) under 'feeds'. */
    BRANCH_LEAVES_OUT("branch against its path", STOP),
    /** {branch} names {other} ({name}) under 'feeds', which does not lie behind it. */
    BRANCH_FEEDS_BESIDES("branch against its path", STOP),
    /**
     * On {run} the {branch} {carries} something else than its 'feeds' says: 0 what a device draws, 1 what the charger gives,
     * 2 direct current from an inlet, 3 what the charger draws, 4 what the V2L outlet gives.
     */
    BRANCH_FEEDS_ANOTHER_KIND("branch against its path", STOP),
    /** {branch} is reckoned with {share} of what it feeds, and carries {least} of it at least. */
    BRANCH_SHARE_TOO_SMALL("branch against its path", STOP),
    /** {branch} is reckoned with {watts}, and {part} behind it takes {least} W. */
    BRANCH_POWER_TOO_SMALL("branch against its path", STOP),
    /** {branch} is reckoned with {watts}, and {part} on it is rated for {rated} W; {hours}: 0 at most, 1 for hours. */
    BRANCH_POWER_UNLIKE("branch against its path", STOP),
    /** {branch} is reckoned with {watts} W, {amps} A, and {circuits} behind it draw {load} A together. */
    BRANCH_BELOW_CIRCUITS("branch against its path", STOP),
    /** The fuse of {amps} in {part} lets through more than the {wire} A of the wire of {circuit}. */
    BLADE_FUSE_ABOVE_WIRE("blade fuse against its circuit", STOP),
    /** The fuse of {amps} in {part} blows at the {load} A of {circuit}, of which it bears {bears} for hours. */
    BLADE_FUSE_BELOW_LOAD("blade fuse against its circuit", STOP),
    /** No circuit of electrics.json is about the blade fuse {part}. */
    BLADE_FUSE_WITHOUT_CIRCUIT("blade fuse against its circuit", STOP),
    /** {circuit} is there, and no part with a rating stands at {position}. */
    CIRCUIT_WITHOUT_FUSE("blade fuse against its circuit", STOP),
    /** A cable stands at {position} that no branch is about. */
    CABLE_WITHOUT_BRANCH("cable without its branch", STOP),
    /** Two branches are about the cable at {position}. */
    CABLE_OF_TWO_BRANCHES("cable without its branch", STOP),
    /** {position} holds drive unit, battery, steering or brakes with {bolts}, and joints.json has no such joint to be signed for. */
    HEAVY_JOINT_NOT_NAMED("heavy joint not named", STOP),
    /** The {bolts} at {position} are large, or something keeps them from coming loose, and joints.json has no such joint. */
    JOINT_NOT_NAMED("joint not named", CHECK),
    /** {part}, drive unit, battery box or what lies in one, hangs on no mount of driving.json. */
    HANGS_ON_NO_MOUNT("hangs on no mount", STOP),
    /** An earth strap of {strap} is bolted to {part}, which is coated there. */
    EARTH_FACE_COATED("earth strap on a coat", STOP),
    /** An earth strap of {strap} is bolted to {position}, where nothing stands. */
    EARTH_STRAP_LOOSE("earth strap loose", STOP),
    /** There are more or fewer straps {strap} than fits.json says what they join. */
    EARTH_STRAPS_NOT_NAMED("earth straps not named", STOP),
    /** {run} goes into or out of {part} at {port}, which is the other way round (0 its outlet, 1 its inlet). */
    FLOWS_BACKWARDS("flows backwards", STOP),
    /** {part} is made for {option} {values}, and stands in other orders. */
    MADE_FOR_ANOTHER("made for another vehicle", STOP),
    /** {one} is bolted to {other} at {port} and {otherPort}, and neither says with which torque. */
    TERMINAL_WITHOUT_TORQUE("terminal not named", STOP),
    /** {one} with {thread} at {port} is bolted to {other} with {otherThread} at {otherPort}; a dash where nobody says. */
    LUG_UNLIKE_STUD("terminal not named", STOP),
    /** Something of the kind {with} is in the kit, and nothing of {kind}, which must go with it: {because} ({source}). */
    NEEDED_KIND_MISSING("what every vehicle needs is missing", STOP),
    /** Inside another: {part}, {port}, {flow}, {kind}, {half} (0 male, 1 female). */
    PORT("port", NOTE),
    /** Inside another: the same of a hose or spigot, with {bore} in mm. */
    PORT_OF_BORE("port", NOTE),
    /** Inside another: {part}, {port} of {kind}, of which nobody says what flows. */
    PORT_UNKNOWN("port", NOTE),
    /** Inside another: {part} has no {port}. */
    NO_SUCH_PORT("port", NOTE);

    /**
     * That orders may have it.
     *
     * @param when they do, as a condition over options; empty where that outgrew its bound
     * @param lines that it speaks of
     */
    record Possible(Finding finding, String about, String detail, Optional<Condition> when, List<LineName> lines) {}

    private final String code;
    private final Severity severity;

    FitFinding(String code, Severity severity) {
        this.code = code;
        this.severity = severity;
    }

    Possible when(Condition when, String about, String detail, List<LineName> lines, Object... named) {
        return when(Optional.of(when), about, detail, lines, named);
    }

    Possible when(Optional<Condition> when, String about, String detail, List<LineName> lines, Object... named) {
        String subject = detail.isEmpty() ? about : about + " (" + detail + ")";
        return new Possible(Finding.of(this, subject, named), about, detail, when, lines);
    }

    @Override
    public String code() {
        return code;
    }

    @Override
    public Severity severity() {
        return severity;
    }

    @Override
    public String room() {
        return "kit";
    }
}
