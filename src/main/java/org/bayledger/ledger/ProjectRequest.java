package org.bayledger.ledger;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;

/**
 * A project to create.
 *
 * @param name what it is called; it can't be changed later
 */
record ProjectRequest(@NotBlank @Size(max = 200) String name) {}
