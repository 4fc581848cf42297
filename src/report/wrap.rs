//! Text in columns.

/// The width of a printed page, in characters: a sheet of paper in a typewriter's face.
pub(super) const WIDTH: usize = 79;

/// Puts words into lines of the page's width. The first line begins with `head`, the others with
/// as many blanks. A word longer than a line stands alone.
pub(super) fn wrapped(head: &str, text: &str) -> String {
    let indent = head.chars().count();
    let mut page = String::new();
    let mut line = head.to_owned();
    let mut is_empty = true;
    for word in text.split_whitespace() {
        let longer = line.chars().count() + usize::from(!is_empty) + word.chars().count();
        if longer > WIDTH && !is_empty {
            page.push_str(line.trim_end());
            page.push('\n');
            line = " ".repeat(indent);
            is_empty = true;
        }
        if !is_empty {
            line.push(' ');
        }
        line.push_str(word);
        is_empty = false;
    }
    page.push_str(line.trim_end());
    page.push('\n');
    page
}

/// A text cut or filled up to so many characters.
pub(super) fn cell(text: &str, width: usize) -> String {
    if text.chars().count() <= width {
        return format!("{text:width$}");
    }
    let mut cut: String = text.chars().take(width.saturating_sub(1)).collect();
    cut.push('…');
    cut
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_are_put_into_lines_under_each_other() {
        let text = "ab ".repeat(40);
        let page = wrapped("head  ", &text);
        let lines: Vec<&str> = page.lines().collect();
        assert_eq!(lines.len(), 2);
        assert!(lines[0].starts_with("head  ab ab"));
        assert!(lines[1].starts_with("      ab ab"));
        assert!(lines.iter().all(|line| line.chars().count() <= WIDTH));
    }

    #[test]
    fn a_long_word_stands_alone_and_no_word_leaves_the_head() {
        let long = "x".repeat(100);
        let page = wrapped("  ", &format!("a {long} b"));
        assert_eq!(page.lines().count(), 3);
        assert_eq!(wrapped("head ", ""), "head\n");
    }

    #[test]
    fn a_cell_counts_characters() {
        assert_eq!(cell("Zoë", 5), "Zoë  ");
        assert_eq!(cell("Zoë Ångström", 5), "Zoë …");
    }
}
