/* The text of the guide: a plain text with marks, as in data/guide.
 *
 *   ## Title                 a chapter; what stands before the first one is its own, with the title after "# "
 *   ![caption](view:pot)     a picture: a view of the build that is open, by its id
 *   - item, 1. item          lists
 *   > words                  a caution
 *   other lines              paragraphs, with an empty line between; **words** stand out
 */
#pragma once

#include <glib.h>

typedef enum
{
  RW_BLOCK_CHAPTER,
  RW_BLOCK_PARAGRAPH,
  RW_BLOCK_ITEM,
  RW_BLOCK_CAUTION,
  RW_BLOCK_PICTURE,
} RwBlockKind;

typedef struct
{
  RwBlockKind kind;
  char       *text; /* Pango markup; of a chapter plain */
  int         view; /* PICTURE: an RwView, -1 where there is none of that id */
  int         number; /* ITEM: 0 in a list without numbers */
} RwBlock;

/* The blocks of a text, in an array that frees them. */
GPtrArray *rw_guide_read (const char *text);

/* The guide in the language of the locale, else in English. */
char *rw_guide_load (void);
