namespace SwapSolver.Lines.Text;

/// <summary>What a line of text is made of.</summary>
internal enum LineToken
{
    /// <summary>Digits, with a decimal point or comma.</summary>
    Number,

    /// <summary>A fraction of one letter, as ½.</summary>
    Vulgar,

    /// <summary>A word; a percentage and a degree sign count as words.</summary>
    Word,

    /// <summary>A hyphen or dash.</summary>
    Dash,

    /// <summary>A slash.</summary>
    Slash,

    /// <summary>A plus or ampersand.</summary>
    Plus,

    /// <summary>A comma or semicolon.</summary>
    Comma,

    /// <summary>A times sign.</summary>
    Times,

    /// <summary>An opening bracket.</summary>
    Open,

    /// <summary>A closing bracket.</summary>
    Close,

    /// <summary>Any other sign; it says nothing.</summary>
    Other,
}
