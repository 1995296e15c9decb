package boltlore.proof.fits;

import boltlore.catalogue.Catalogue;
import boltlore.choices.Choices;
import boltlore.findings.Findings;
import boltlore.findings.Severity;
import boltlore.measure.LineName;
import boltlore.proof.KitView;
import boltlore.proof.StatementKind;
import java.util.List;
import java.util.function.Predicate;

/** Every kind of statement on what must fit together, in the order in which they are asked and told. */
public final class FitKinds {

    private static final List<FitStatements> ALL = List.of(
            new FitStatements(
                    "path or circuit broken",
                    Severity.STOP,
                    "Every energy path and every circuit is joined from end to end.",
                    "Add a line for these orders at the position, or correct the ports that do not mate, or the steps of"
                            + " the path in fits.json.",
                    Broken::findings),
            new FitStatements(
                    "port below what flows",
                    Severity.STOP,
                    "Every port on an energy path bears what flows between its ends.",
                    "Give these orders a part that is rated for it, or correct the ratings of the ports.",
                    WeakPorts::findings),
            new FitStatements(
                    "port unlike its device",
                    Severity.STOP,
                    "Every port of inlet, charger and V2L outlet is rated as the options and electrics.json say of the device.",
                    "Take both from the device's data sheet: the port's ratings, and the facts of the option or electrics.json.",
                    RatedEnds::findings),
            new FitStatements(
                    "device without its path",
                    Severity.STOP,
                    "Every inlet, charger and V2L outlet that can be chosen is joined by an energy path.",
                    "Add the lines that these orders need and a path in fits.json through them, or correct the ratings of the"
                            + " ports, or take the value out of the option.",
                    DevicePaths::findings),
            new FitStatements(
                    "branch without its fuse",
                    Severity.STOP,
                    "Every branch of electrics.json has its fuses in the kit.",
                    "Add a line for these orders that brings the fuse, or name another in electrics.json.",
                    BranchFuses::findings),
            new FitStatements(
                    "branch against its path",
                    Severity.STOP,
                    "Every branch of electrics.json is fed and loaded as the energy paths through its cable show.",
                    "Correct 'fedBy' or 'feeds' of the branch in electrics.json, or the path in fits.json.",
                    BranchPaths::findings),
            new FitStatements(
                    "blade fuse against its circuit",
                    Severity.STOP,
                    "Every blade fuse bears its load and protects its wire.",
                    "Fit the fuse that goes with load and wire, or correct the circuit in electrics.json, or 'ratedAmps' of"
                            + " the part.",
                    BladeFuses::findings),
            new FitStatements(
                    "cable without its branch",
                    Severity.STOP,
                    "Every power cable has exactly one branch of electrics.json in each order.",
                    "Correct the conditions of the branches at that position in electrics.json.",
                    CableBranches::findings),
            new FitStatements(
                    "port leads nowhere",
                    Severity.STOP,
                    "Every port is joined to another or closed by its blank.",
                    "Join it by a path or circuit of fits.json for these orders, or let the kit bring its blank.",
                    PortsTaken::open),
            new FitStatements(
                    "port taken twice",
                    Severity.STOP,
                    "No port is joined more than once.",
                    "Correct the steps of the paths in fits.json, or fit one more of the part.",
                    PortsTaken::twice),
            new FitStatements(
                    "circuit cannot be filled",
                    Severity.STOP,
                    "Every circuit has one filling point that is joined to it.",
                    "Fit the tank for these orders, and join it to the circuit by a path.",
                    Fillings::unfilled),
            new FitStatements(
                    "circuit cannot be bled",
                    Severity.STOP,
                    "Every circuit has a place where its air gets out.",
                    "Fit a bleed screw for these orders on a part of the circuit.",
                    Fillings::unbled),
            new FitStatements(
                    "contents do not fit",
                    Severity.STOP,
                    "Every box takes what lies in it.",
                    "Take a larger box or smaller contents for these orders, or lay them in more layers.",
                    BoxContents::findings),
            new FitStatements(
                    "shaft does not reach",
                    Severity.STOP,
                    "Every shaft reaches from flange to flange.",
                    "Give these orders a shaft of another length, or measure the flanges again.",
                    Shafts::findings),
            new FitStatements(
                    "safety quantity does not follow",
                    Severity.STOP,
                    "Every quantity that holds drive unit or battery, or keeps people from high voltage, follows from what"
                            + " it is for.",
                    "Correct the quantity of the line, or of what it follows from.",
                    Quantities::safety),
            new FitStatements(
                    "quantity does not follow",
                    Severity.CHECK,
                    "Every quantity that follows from another does.",
                    "Correct the quantity of the line, or of what it follows from.",
                    Quantities::others),
            new FitStatements(
                    "heavy joint not named",
                    Severity.STOP,
                    "Every bolted joint that holds drive unit, shaft, battery, steering or brakes is signed for.",
                    "Name the position in joints.json, with 'safety'.",
                    JointsNamed::heavy),
            new FitStatements(
                    "joint not named",
                    Severity.CHECK,
                    "Every joint with secured or large bolts is named in joints.json.",
                    "Name the position in joints.json, with 'safety' where somebody signs for it.",
                    JointsNamed::others),
            new FitStatements(
                    "hangs on no mount",
                    Severity.STOP,
                    "Drive unit, battery boxes and what they hold hang on mounts that are judged.",
                    "Name the position under 'carries' of its mounts in driving.json.",
                    JointsNamed::unmounted),
            new FitStatements(
                    "earth strap on a coat",
                    Severity.STOP,
                    "Every earth strap is bolted to bare metal.",
                    "Give the coated part a masked earth face, or bolt the strap to another part.",
                    EarthStraps::coated),
            new FitStatements(
                    "earth strap loose",
                    Severity.STOP,
                    "Every earth strap is bolted to something at both ends.",
                    "Fit the part, or correct 'straps' in fits.json.",
                    EarthStraps::loose),
            new FitStatements(
                    "earth straps not named",
                    Severity.STOP,
                    "Of every earth strap it is said what it joins.",
                    "Correct the quantity of the line, or 'straps' in fits.json.",
                    EarthStraps::unnamed),
            new FitStatements(
                    "flows backwards",
                    Severity.STOP,
                    "Everything flows through pumps, compressors and valves the right way round.",
                    "Turn the part round: exchange 'in' and 'out' of the step in fits.json.",
                    Directions::findings),
            new FitStatements(
                    "made for another vehicle",
                    Severity.STOP,
                    "Every part stands only in orders that it is made for.",
                    "Exchange the parts of the lines, or correct their conditions or 'madeFor' in the part master.",
                    MadeFor::findings),
            new FitStatements(
                    "terminal not named",
                    Severity.STOP,
                    "Every lug on a stud has its hole for that stud and a torque.",
                    "Take thread, torque and what secures it from the maker's data sheet, and add them under 'bolted' of the"
                            + " port; or fit the lug that the stud takes.",
                    Terminals::findings),
            new FitStatements(
                    "what every vehicle needs is missing",
                    Severity.STOP,
                    "Every vehicle has what house.json asks of all of them.",
                    "Fit one for these orders: add a line, or widen its condition and that of its position. Whether the"
                            + " house may go without is for whoever answers for the vehicle's safety, in house.json.",
                    NeededKinds::findings));

    private FitKinds() {}

    public static List<StatementKind> all() {
        return List.copyOf(ALL);
    }

    /**
     * What does not fit in the kit of one order: the same conditions as are proved of every order, each of which comes to
     * always or never with all options chosen, so that nothing is searched.
     *
     * @param catalogue with the lengths as measured on the order's vehicle
     */
    public static Findings of(Catalogue catalogue, Choices settled, Predicate<LineName> leftOut) {
        KitView kit = KitView.of(catalogue, settled, leftOut);
        return ALL.stream()
                .flatMap(kind -> kind.in(kit))
                .map(FitFinding.Possible::finding)
                .collect(Findings.collected());
    }
}
