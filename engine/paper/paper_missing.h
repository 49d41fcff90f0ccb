/* What the project's shelf lacks, as part of a list. */
#pragma once

#include "paper_column.h"

/* A heading and a line with a box to tick for each piece that the shelf lacks stock for, with what to buy for it, spare
 * included; nothing where the shelf is empty or will do. */
void rw_paper_missing (RwColumn *column);
