.pragma library

// Small helpers for lists of words.

function joined(parts) {
    return parts.filter(part => part !== "").join(", ");
}

function has(list, one) {
    return list.includes(one);
}

function place(list, one) {
    return Math.max(0, list.indexOf(one));
}

function first(list, wanted, otherwise) {
    return list.find(wanted) ?? otherwise;
}
