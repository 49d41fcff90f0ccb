/* What a grip says of itself, translated.  All strings are new. */
#pragma once

#include "document/document.h"
#include "draw/grip.h"

/* "Bridge beyond the rim’s centre"; for an item of a list "Course thickness 2". */
char *rw_grip_name   (const RwGrip *grip);
/* "54.5 mm", with as many digits as its steps need. */
char *rw_grip_value  (const RwGrip *grip, const RwResult *result, RwStyle style);
/* "+3.0" since another result; NULL where nothing has changed. */
char *rw_grip_change (const RwGrip *grip, const RwResult *from, const RwResult *result, RwStyle style);
/* What it drags instead of what it shows, with its value: "Bridge height 16.5 mm"; NULL: its own. */
char *rw_grip_by     (const RwGrip *grip, const RwResult *result, RwStyle style);
/* Name, value, and how it can be changed or why it can't, in a sentence or two. */
char *rw_grip_words  (const RwGrip *grip, const RwGripScene *scene, RwStyle style);

/* What a part of the drawing shows: its name, and the parameter or dimension with its value.  NULL where it
 * says nothing. */
char *rw_item_words  (const RwItem *item, const RwResult *result, RwStyle style);
