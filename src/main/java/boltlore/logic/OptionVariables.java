package boltlore.logic;

import boltlore.catalogue.Family;
import boltlore.catalogue.Option;
import boltlore.catalogue.OptionValue;
import boltlore.choices.Choice;
import boltlore.measure.OptionName;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.logicng.formulas.Formula;
import org.logicng.formulas.FormulaFactory;
import org.logicng.formulas.Literal;
import org.logicng.formulas.Variable;

/**
 * A variable for each option value, true when it is chosen; an option with two values has one variable for the first,
 * and its negation is the second.
 */
final class OptionVariables {

    private final Family family;
    private final FormulaFactory formulas;
    private final Map<Choice, Literal> literals = new LinkedHashMap<>();
    private final List<Variable> variables = new ArrayList<>();

    OptionVariables(Family family, FormulaFactory formulas) {
        this.family = family;
        this.formulas = formulas;
        int number = 0;
        for (Option option : family.options()) {
            number = add(option, number);
        }
    }

    private int add(Option option, int number) {
        int next = number;
        if (option.values().size() == 2) {
            Variable first = variable(next++);
            literals.put(new Choice(option.name(), option.values().get(0).value()), first);
            literals.put(new Choice(option.name(), option.values().get(1).value()), first.negate());
            return next;
        }
        for (OptionValue value : option.values()) {
            literals.put(new Choice(option.name(), value.value()), variable(next++));
        }
        return next;
    }

    private Variable variable(int number) {
        Variable variable = formulas.variable("x" + number);
        variables.add(variable);
        return variable;
    }

    List<Variable> all() {
        return variables;
    }

    Map<Choice, Literal> literals() {
        return literals;
    }

    Literal of(OptionName option, String value) {
        Literal literal = literals.get(new Choice(option, value));
        if (literal == null) {
            throw new IllegalArgumentException("No value " + value + " of " + option);
        }
        return literal;
    }

    /** Each option has exactly one value. */
    List<Formula> exactlyOneValueEach() {
        List<Formula> each = new ArrayList<>();
        for (Option option : family.options()) {
            if (option.values().size() != 2) {
                List<Variable> values = option.values().stream()
                        .map(value -> of(option.name(), value.value()).variable())
                        .toList();
                each.add(formulas.exo(values));
            }
        }
        return each;
    }
}
