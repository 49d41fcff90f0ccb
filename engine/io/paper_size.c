#include "paper_size.h"

#define IN 25.4

const RwPaper rw_papers[] = {
  { "a0", "A0", 841, 1189 },
  { "a1", "A1", 594, 841 },
  { "a2", "A2", 420, 594 },
  { "a3", "A3", 297, 420 },
  { "a4", "A4", 210, 297 },
  { "a5", "A5", 148, 210 },
  { "letter", "Letter", 8.5 * IN, 11 * IN },
  { "legal", "Legal", 8.5 * IN, 14 * IN },
  { "tabloid", "Tabloid", 11 * IN, 17 * IN },
  { "ansi-c", "ANSI C", 17 * IN, 22 * IN },
  { "ansi-d", "ANSI D", 22 * IN, 34 * IN },
  { "ansi-e", "ANSI E", 34 * IN, 44 * IN },
};

const int rw_papers_count = G_N_ELEMENTS (rw_papers);

const RwPaper *
rw_paper_find (const char *id)
{
  for (int i = 0; i < rw_papers_count; i++)
    if (g_str_equal (rw_papers[i].id, id))
      return &rw_papers[i];
  return NULL;
}
