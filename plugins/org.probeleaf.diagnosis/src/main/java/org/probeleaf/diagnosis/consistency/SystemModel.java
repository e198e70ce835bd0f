// SPDX-License-Identifier: Apache-2.0
// SPDX-FileCopyrightText: The Probeleaf authors
package org.probeleaf.diagnosis.consistency;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * A system: components, variables, and the rules that sound components keep. Immutable; built by {@link Builder}.
 */
public final class SystemModel {

    private final List<String> components;
    private final List<String> variables;
    private final List<Guarded> rules;
    private final List<List<Integer>> rulesOf;

    private SystemModel(Builder builder) {
        this.components = List.copyOf(builder.components);
        this.variables = List.copyOf(builder.variables);
        this.rules = List.copyOf(builder.rules);
        this.rulesOf = new ArrayList<>();
        variables.forEach(v -> rulesOf.add(new ArrayList<>()));
        for (int r = 0; r < rules.size(); r++) {
            for (int v : rules.get(r).rule().variables()) {
                if (!rulesOf.get(v).contains(r)) {
                    rulesOf.get(v).add(r);
                }
            }
        }
    }

    /** A rule with the components that keep it while all of them are sound. */
    record Guarded(BitSet components, Rule rule) {
    }

    public static Builder builder() {
        return new Builder();
    }

    /** Names of the components; their places are their numbers. */
    public List<String> components() {
        return components;
    }

    /** Names of the variables; their places are their numbers. */
    public List<String> variables() {
        return variables;
    }

    /** The number of a variable by its name, or -1. */
    public int variable(String name) {
        return variables.indexOf(name);
    }

    /** The number of a component by its name, or -1. */
    public int component(String name) {
        return components.indexOf(name);
    }

    List<Guarded> rules() {
        return rules;
    }

    List<Integer> rulesOf(int variable) {
        return rulesOf.get(variable);
    }

    /** Builds a model. */
    public static final class Builder {

        private final List<String> components = new ArrayList<>();
        private final List<String> variables = new ArrayList<>();
        private final List<Guarded> rules = new ArrayList<>();

        private Builder() {
        }

        /** A variable, the same for the same name; its number. */
        public int variable(String name) {
            int at = variables.indexOf(name);
            if (at < 0) {
                variables.add(name);
                return variables.size() - 1;
            }
            return at;
        }

        /** A new variable; its number. */
        public int newVariable(String name) {
            variables.add(name);
            return variables.size() - 1;
        }

        /** A new component; its number. */
        public int component(String name) {
            components.add(name);
            return components.size() - 1;
        }

        /** What a component does while it is sound. */
        public Builder rule(int component, Rule rule) {
            BitSet one = new BitSet();
            one.set(component);
            return rule(one, rule);
        }

        /** What components do together while all of them are sound. */
        public Builder rule(BitSet together, Rule rule) {
            rules.add(new Guarded((BitSet) together.clone(), rule));
            return this;
        }

        /** A new component with one rule. */
        public Builder component(String name, Rule rule) {
            return rule(component(name), rule);
        }

        public SystemModel build() {
            return new SystemModel(this);
        }
    }
}
