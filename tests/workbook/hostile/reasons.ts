/** Why a formula keeps what it holds. */
export const DEEP = /^kept: .*nested more than 256 deep/;
export const STEPS = /^kept: takes more than the \d+ steps/;
export const INTO_ITSELF = /^kept: leads more than 1000 steps deep into itself/;
export const ARRAY = /^kept: makes an array of/;
export const UNPROVEN = /^kept: calls [A-Z.]+, which is not proven/;
export const TOO_LONG = /^kept: cannot be read: It is longer than 65536 characters$/;
export const UNREAD = /^kept: cannot be read: /;
export const CIRCLE = "kept: refers to itself in a circle";
